// Flags, the verdict's mark, gauges and small sections: drawings with a meaning, the same on screen and on paper.
import { D, esc } from './store.js';

export const flag = (state, n, size = 26) => state === 'broken'
  ? `<svg class="fl" width="${size * 1.25}" height="${size}" viewBox="0 0 35 28" aria-hidden="true"><path d="M2 1V27" class="pole"/><path d="M2 2H34L28 11.5L34 21H2Z" fill="url(#p-bad)" class="pen"/><circle cx="14" cy="11.5" r="8.2" class="disc"/><text x="14" y="15.6" text-anchor="middle">${n}</text></svg>`
  : state === 'close'
    ? `<svg class="fl close" width="${size * 1.25}" height="${size}" viewBox="0 0 35 28" aria-hidden="true"><path d="M2 1V27" class="pole"/><path d="M2 3H26V20H2Z" class="pen"/><text x="14" y="16" text-anchor="middle">${n}</text></svg>`
    : state === 'fine'
      ? `<svg class="fl ok" width="${size * 1.25}" height="${size}" viewBox="0 0 35 28" aria-hidden="true"><path d="M7 14L12 19L22 8"/></svg>`
      : `<svg class="fl open" width="${size * 1.25}" height="${size}" viewBox="0 0 35 28" aria-hidden="true"><circle cx="14" cy="14" r="7"/></svg>`;

export const verdictMark = verdict => verdict.startsWith('Works')
  ? '<svg viewBox="0 0 64 64" aria-hidden="true" class="ok"><circle cx="32" cy="32" r="27"/><path d="M19 33L28 42L45 23"/></svg>'
  : '<svg viewBox="0 0 64 64" aria-hidden="true"><path d="M7 4V60" class="pole"/><path d="M7 6H60L50 23L60 40H7Z" fill="url(#p-bad)" class="pen"/></svg>';

export const noMark = '<svg viewBox="0 0 64 64" aria-hidden="true" class="old"><circle cx="32" cy="32" r="26"/><path d="M20 32H44"/></svg>';

// measured against limit on a short rule: the side that is not allowed is hatched
export function gauge(f) {
  if (f.measured === null || f.limit === null || !['at least', 'at most'].includes(f.relation)) return '';
  const inv = f.relation === 'at most', span = Math.max(Math.abs(f.measured - f.limit) * 1.7, Math.abs(f.limit) * 0.25, 1e-6);
  const lo = f.limit - span, hi = f.limit + span, W = 118, X = v => 4 + (Math.min(Math.max(v, lo), hi) - lo) / (hi - lo) * (W - 8);
  const bad = f.state === 'broken', z0 = inv ? X(f.limit) : 4, z1 = inv ? W - 4 : X(f.limit);
  let ticks = '';
  for (let i = 0; i <= 8; i++) ticks += `M${4 + i * (W - 8) / 8} 14v${i % 4 ? -3 : -5}`;
  return `<svg class="gauge" width="${W}" height="22" viewBox="0 0 ${W} 22" preserveAspectRatio="xMinYMid" aria-hidden="true"><rect x="${z0}" y="6" width="${Math.max(0, z1 - z0)}" height="8" fill="url(#p-dim)"/><path class="gb" d="M4 14H${W - 4}${ticks}"/><path class="gl" d="M${X(f.limit)} 3V18"/><path class="gm${bad ? ' bad' : ''}" d="M${X(f.measured)} 13l-4 7h8z"/></svg>`;
}

// a way out as a framer would draw it on a stud: seen from the room, or from the side when it leaves through the wall
export function sketch(route) {
  const { scene, tape } = D, points = [];
  for (const p of route.parts) {
    if (p.l < 1e-6) continue;
    points.push(p.a);
    if (p.k === 'elbow') { // a few points on the arc, by the corner rule
      const c = p.a.map((v, i) => v + p.d[i] * p.r * Math.tan(p.g * Math.PI / 360));
      for (const t of [0.25, 0.5, 0.75]) points.push(p.a.map((v, i) => (1 - t) * (1 - t) * v + 2 * t * (1 - t) * c[i] + t * t * p.b[i]));
    }
    points.push(p.b);
  }
  const range = i => Math.max(...points.map(p => p[i])) - Math.min(...points.map(p => p[i]));
  const across = range(0) >= range(1) - 0.5 || range(1) < 2 ? 0 : 1, hood = scene.hood, bottom = points[0][2] - hood.body;
  const us = points.map(p => p[across]), half = (across ? hood.depth : hood.width) / 2;
  const mid = across ? -hood.depth / 2 : points[0][0];
  const u0 = Math.min(...us, mid - half) - 8, u1 = Math.max(...us, mid + half) + (across ? 14 : 8), z0 = bottom - 4, z1 = Math.max(points[points.length - 1][2] + 9, scene.ceiling + 14);
  const k = Math.min(116 / (u1 - u0), 100 / (z1 - z0)), ox = 60 - k * (u0 + u1) / 2, X = u => (ox + k * u).toFixed(1), Y = z => (104 - k * (z - z0)).toFixed(1);
  const w = (across && route.section[0] !== 'round' ? route.section[2] : route.section[1]) * k;
  let out = `<path class="sc" d="M${X(Math.max(u0, across ? -scene.depth : 0))} ${Y(scene.ceiling)}H${X(Math.min(u1, across ? 0 : scene.width))}"/>`;
  if (across) out += `<path class="sw" d="M${X(0)} ${Y(z0)}V${Y(scene.ceiling + 10)}M${X(scene.wall)} ${Y(z0)}V${Y(scene.ceiling + 10)}"/>`;
  else for (const j of tape.joists) { if (j.a > u0 && j.b < u1) out += `<path class="sj" d="M${X(j.a)} ${Y(scene.ceiling + 0.6)}H${X(j.b)}V${Y(scene.ceiling + 8)}H${X(j.a)}Z"/>`; }
  out += `<path class="shd" d="M${X(mid - half)} ${Y(bottom)}H${X(mid + half)}L${X(points[0][across] + 7)} ${Y(bottom + hood.body)}H${X(points[0][across] - 7)}Z"/>`;
  out += `<path class="sd2" style="stroke-width:${(w + 2).toFixed(1)}" d="M${points.map(p => `${X(p[across])} ${Y(p[2])}`).join('L')}"/><path class="sd1" style="stroke-width:${Math.max(w - 2, 1).toFixed(1)}" d="M${points.map(p => `${X(p[across])} ${Y(p[2])}`).join('L')}"/>`;
  for (const p of route.parts) if (p.k === 'flex') out += `<path class="sfx" style="stroke-width:${(w + 1).toFixed(1)}" d="M${X(p.a[across])} ${Y(p.a[2])}L${X(p.b[across])} ${Y(p.b[2])}"/>`;
  const e = points[points.length - 1];
  out += route.end.kind === 'roof' ? `<path class="scap" d="M${X(e[across]) - w * 0.8} ${Y(e[2] + 4)}h${w * 1.6}l${-w * 0.5} -6h${-w * 0.6}z"/>` : route.end.kind ? `<path class="scap" d="M${X(e[across]) - 2} ${Y(e[2]) - w * 0.7}h5v${w * 1.4}h-5z"/>` : '';
  return `<svg viewBox="0 0 120 108" aria-hidden="true">${out}</svg>`;
}
export const wordsOf = text => esc(text);
