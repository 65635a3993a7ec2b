// The tape: the hood wall's real members, openings and, where they are known, what is possible at every place.
import { D, esc } from './store.js';
import { U, getUnit } from './words.js';
import { KIND, zones } from './answers.js';

export const PATTERNS = `<defs>
<pattern id="p-e0" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--up)"/></pattern>
<pattern id="p-e1" width="6" height="5" patternUnits="userSpaceOnUse"><rect width="6" height="5" fill="var(--wall)"/><rect width="6" height="1.6" y="1.6" fill="var(--pat)"/></pattern>
<pattern id="p-e2" width="8" height="8" patternUnits="userSpaceOnUse"><rect width="8" height="8" fill="var(--off)"/></pattern>
<pattern id="p-e3" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--off)"/><path d="M3 0V6" stroke="var(--offline)" stroke-width="1.2"/></pattern>
<pattern id="p-bad" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="7" height="7" fill="#fff"/><rect width="4" height="7" fill="var(--bar)"/></pattern>
<pattern id="p-none" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="1.5" cy="1.5" r="1.1" fill="var(--none)"/><circle cx="4.5" cy="4.5" r="1.1" fill="var(--none)"/></pattern>
</defs>`;

// straight back is the tail of an arrow that goes into the wall
const BACK = 'M0 -4.6A4.6 4.6 0 1 1 -.01 -4.6M-3 -3L3 3M-3 3L3 -3';
export const glyph = (kind, x, y, scale, colour, back = false) => {
  const path = back && kind === 'e0' ? BACK : { e0: 'M0 5V-5M-3 -2L0 -5.4L3 -2', e1: 'M-3 5V0Q-3 -2.5 -.5 -2.5H4M1.4 -5L4.4 -2.5L1.4 0', e2: 'M-3 5.4V2L3 -1V-5M.4 -2.6L3 -5.6L5.6 -2.6', e3: 'M-4 5.4V2H1V-1H4V-5M1.4 -2.6L4 -5.6L6.6 -2.6' }[kind];
  return path ? `<path d="${path}" transform="translate(${x} ${y}) scale(${scale})" fill="none" stroke="${colour}" stroke-width="1.7" stroke-linecap="round" stroke-linejoin="round"/>` : '';
};

// a short name for a member over its stretch of the tape: "joist 4" becomes J4
const initials = label => { const m = /^(\p{L})\p{L}*\D*?(\d+)/u.exec(label); return m ? m[1].toUpperCase() + m[2] : ''; };

function members(list, view, hit, cls) {
  const { X, s, y, height, loupe, visible } = view;
  let last = -1e9, out = '';
  for (const m of list) {
    if (!visible(m.a - 1, m.b + 1)) continue;
    const w = Math.max((m.b - m.a) * s, cls === 'jo' ? 4 : 3.4), mid = X((m.a + m.b) / 2), x = mid - w / 2, on = hit.has(m.id);
    out += `<g class="${cls}${on ? ' hit' : ''}"><rect x="${x}" y="${y}" width="${w}" height="${height}"/>`;
    if (cls === 'jo') out += `<path d="M${x} ${y}l${w} ${height}m0 ${-height}l${-w} ${height}"/>`;
    if (m.n && (mid - last > (loupe ? 60 : 15) || on)) {
      out += loupe ? `<text x="${mid + w / 2 + 4}" y="${y + (cls === 'jo' ? 12 : 8)}" style="text-anchor:start">${cls === 'jo' ? 'joist' : 'stud'} ${m.n}</text>`
        : `<text x="${mid}" y="${cls === 'jo' ? y - 3 : y + height + 10}">${m.n}</text>`;
      last = mid;
    }
    out += '</g>';
  }
  return out;
}

function ticks(view) {
  const { X, s, x0, x1, ty, th, loupe, visible } = view, end = D.scene.width;
  const small = s < 3.6;
  let out = '';
  const inside = v => v > 0 && v < end - 0.8 && !(loupe && (v - x0 < 0.7 || x1 - v < 0.7));
  if (getUnit() === 'mm') {
    const step = loupe ? 50 : s < 2.6 ? 500 : s < 8.2 ? 200 : 100;
    for (let m = 0; m <= end * 25.4 + 1e-6; m += 10) {
      const v = m / 25.4;
      if (!visible(v, v) || (small && !loupe && m % 50)) continue;
      out += `<path class="tk" d="M${X(v)} ${ty}v${m % 100 === 0 ? 13 : m % 50 === 0 ? 9 : 5}"/>`;
      if (m % step === 0 && inside(v)) out += `<text class="${m % 1000 === 0 ? 'nb' : 'nm'}" x="${X(v)}" y="${ty + th - 5}" text-anchor="middle">${m}</text>`;
    }
    return out;
  }
  const quarter = loupe ? 0.25 : small ? 2 : 0.5, step = loupe ? 1 : s < 4.4 ? 12 : s < 6.8 ? 6 : 4; // so far apart that three figures keep clear of the next
  for (let v = 0; v <= end + 1e-6; v += quarter) {
    if (!visible(v, v)) continue;
    const foot = v % 12 === 0, whole = v % 1 === 0, half = (v * 2) % 1 === 0;
    out += `<path class="tk${foot ? ' ft' : ''}" d="M${X(v)} ${ty}v${foot ? 14 : whole ? (v % 4 === 0 ? 11 : 8) : half ? (loupe ? 7 : 5) : 4}"/>`;
    if (whole && v % step === 0 && inside(v)) out += `<text class="${foot ? 'nb' : 'nm'}" x="${X(v)}" y="${ty + th - 5}" text-anchor="middle">${v}</text>`;
  }
  return out;
}

// the map's stretches, and where the hood stands between two of its places the answer of just there
function withOwn(found, own) {
  const at = own && found.find(z => own.x >= z.a - 1e-6 && own.x < z.b - 1e-6);
  if (!at || (at.kind === own.kind && at.back === own.back)) return found;
  const a = Math.max(at.a, own.x - 0.5), b = Math.min(at.b, own.x + 0.5);
  return found.flatMap(z => z !== at ? [z] : [{ ...z, b: a }, { ...z, ...own, a, b }, { ...z, a: b }].filter(p => p.b - p.a > 1e-6));
}
function stretches(view, found, x) {
  const { X, visible, x0, x1, by, bh, loupe } = view;
  let out = '', lastName = -1e9;
  for (const z of found) {
    if (!visible(z.a, z.b)) continue;
    const a = Math.max(z.a, x0), b = Math.min(z.b, x1), high = bh * KIND[z.kind].height, xa = X(a), wide = X(b) - X(a);
    const on = x >= z.a - 1e-6 && x < z.b - 1e-6;
    const line = z.kind === 'bad' ? 'var(--bar)' : z.kind === 'e2' || z.kind === 'e3' ? 'var(--offline)' : z.boxed ? 'var(--ink)' : 'none';
    out += `<g class="zn ${z.kind}${on ? ' on' : ''}"><title>${U(z.a)} to ${U(z.b)}: ${KIND[z.kind].name}${z.boxed ? ', boxed in the room' : ''}${z.by ? ` (${esc(z.by)})` : ''}</title>
<rect x="${xa + 0.4}" y="${by - high}" width="${Math.max(wide - 0.8, 1)}" height="${high}" fill="url(#p-${z.kind})" stroke="${line}" stroke-width="1.1" ${z.boxed ? 'stroke-dasharray="3 2"' : ''}/>`;
    if (wide > 13 && (z.kind === 'e0' || loupe || wide > 22)) out += glyph(z.kind, xa + wide / 2, by - high / 2, Math.min(1, wide / 16, high / 13), z.kind === 'e0' ? 'var(--onup)' : z.kind === 'e1' ? '#fff' : '#2b1c00', z.back);
    const name = z.kind === 'bad' ? initials(z.by) : '';
    if (name && wide > 15 && xa + wide / 2 - lastName > 20) { out += `<text class="bn" x="${xa + wide / 2}" y="${by - high - 3}">${name}</text>`; lastName = xa + wide / 2; }
    out += '</g>';
  }
  return out;
}

// where the hood cannot hang, and windows and doors, in words over the blade when no map covers the stretch
function blockers(view) {
  const { X, visible, x0, x1, by, bh } = view;
  let out = '';
  const row = [...D.tape.openings, ...D.tape.things];
  for (const t of row) {
    if (!visible(t.a, t.b)) continue;
    const a = X(Math.max(t.a, x0)), b = X(Math.min(t.b, x1)), wide = b - a;
    if (!D.map) out += `<rect class="th" x="${a}" y="${by - bh * 0.3}" width="${wide}" height="${bh * 0.3}" fill="url(#p-none)"/>`;
    if (t.label.length * 6.1 < wide) out += `<text class="nn" x="${(a + b) / 2}" y="${by - bh * (D.map ? 0.12 : 0.3) - 5}">${esc(t.label)}</text>`;
  }
  return out;
}

// one drawing for the whole wall and for the loupe: x0..x1 inches at s pixels an inch
export function tapeMarkup({ width, s, left, x0 = 0, x1 = D.scene.width, x, h, hit, loupe = false, bad = false, own = null }) {
  const X = v => left + (v - x0) * s, visible = (a, b) => b >= x0 && a <= x1;
  const jy = loupe ? 4 : 14, bh = loupe ? 30 : D.map ? 36 : 20, by = jy + 18 + bh, ty = by + 3, th = loupe ? 30 : 34;
  const view = { X, s, x0, x1, by, bh, ty, th, loupe, visible };
  let out = '';
  if (!loupe) out += `<g class="rowlab"><text x="${left - 9}" y="${jy + 11}">${D.tape.joists.length ? esc(D.tape.kind) : ''}</text><text x="${left - 9}" y="${by - 9}">${D.map ? 'route' : D.tape.openings.length + D.tape.things.length ? 'in the way' : ''}</text><text x="${left - 9}" y="${ty + th + 13}">${D.tape.studs.length ? 'studs' : ''}</text></g>`;
  if (!loupe && D.tape.along) out += `<text class="nn" x="${left + 4}" y="${jy + 11}" style="text-anchor:start">${esc(D.tape.along)} run along this wall</text>`;
  out += members(D.tape.joists, { ...view, y: jy, height: 16 }, hit, 'jo') + stretches(view, withOwn(zones(h), own), x) + (loupe ? '' : blockers(view));
  out += `<rect class="blade" x="${X(x0)}" y="${ty}" width="${(loupe ? width : X(D.scene.width)) - X(x0)}" height="${th}"/>${ticks(view)}`;
  if (!loupe) out += `<path class="hook" d="M${X(0)} ${ty - 3}h-5v${th + 14}h4.2v-9h.8z"/>`;
  out += members(D.tape.studs, { ...view, y: ty + th, height: loupe ? 8 : 9 }, hit, 'st');
  const at = X(x), foot = D.scene.hood.width * s;
  out += `<g class="needle${bad ? ' bad' : ''}">${loupe ? '' : `<path d="M${at - foot / 2} ${ty + th - 1}v5h${foot}v-5"/>`}<path class="ndl" d="M${at} ${jy - 4}V${by - bh - 3}M${at} ${ty}V${ty + th + 6}"/></g>`;
  return { markup: PATTERNS + out, height: ty + th + (loupe ? 14 : 22), ty, th, at };
}
