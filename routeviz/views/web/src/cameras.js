// Where to stand. "square" is a one-point view that hangs from the tape: on the wall's face an inch has the tape's scale.
import * as THREE from 'three';
import { D } from './store.js';
import { V } from './duct.js';

export const VIEWS = { square: 'square to the wall', ceiling: 'under the joists', along: 'beside the duct', outside: 'at the cap', room: 'in the room' };
// where a duct has no end there is no cap to stand at: the outer wall is looked at
export const viewName = (view, answer) => view !== 'outside' || answer && answer.end && answer.end.kind !== null ? VIEWS[view] : 'outside';

export const capTop = end => end && end.kind === 'roof' ? end.at[2] + 5 : null;

// stand in a direction so far off that all points just fit
function fit(points, direction, degrees, aspect, pad = 0.06) {
  const towards = direction.clone().normalize(), up = new THREE.Vector3(0, 1, 0), half = Math.tan(degrees * Math.PI / 360);
  const forward = towards.clone().negate(), right = forward.clone().cross(up).normalize(), top = right.clone().cross(forward);
  const target = points.reduce((s, p) => s.add(p), new THREE.Vector3()).multiplyScalar(1 / points.length);
  let distance = 400;
  for (let i = 0; i < 50; i++) {
    const eye = target.clone().addScaledVector(towards, distance), lo = [1e9, 1e9], hi = [-1e9, -1e9];
    for (const p of points) {
      const off = p.clone().sub(eye), depth = Math.max(1, off.dot(forward)), uv = [off.dot(right) / (depth * half * aspect), off.dot(top) / (depth * half)];
      uv.forEach((v, k) => { lo[k] = Math.min(lo[k], v); hi[k] = Math.max(hi[k], v); });
    }
    const ratio = Math.max(hi[0] - lo[0], hi[1] - lo[1]) / (2 - 4 * pad), size = half * distance;
    target.addScaledVector(right, (lo[0] + hi[0]) / 2 * size * aspect).addScaledVector(top, (lo[1] + hi[1]) / 2 * size);
    distance *= 1 + (ratio - 1) * 0.8;
  }
  return { p: target.clone().addScaledVector(towards, distance), t: target, f: degrees, s: [0, 0] };
}
const corners = (lo, hi) => { const found = []; for (const x of [lo[0], hi[0]]) for (const y of [lo[1], hi[1]]) for (const z of [lo[2], hi[2]]) found.push(V(x, y, z)); return found; };

// the highest thing that the square view must show, as it falls on the wall's plane
export function topOf(answer) {
  const ez = 76, distance = 340, lift = (z, y) => ez + (z - ez) * distance / (distance + y);
  const roofs = Object.values(D.faces).filter(f => f.kind === 'roof').map(f => f.plane[0] + f.plane[2] * -20 + Math.max(0, f.plane[1] * D.scene.width));
  let top = D.scene.ceiling + 14;
  if (roofs.length) top = Math.max(top, Math.min(lift(Math.max(...roofs), -20), D.scene.ceiling + 34));
  const cap = answer && capTop(answer.end);
  if (cap) top = Math.max(top, lift(cap, answer.end.at[1]) + 4);
  return Math.min(top, D.scene.ceiling + 90);
}

export function pose(view, answer, { width, height, grid }) {
  const { scene } = D, aspect = width / height, x = answer.x, bottom = scene.cook.height + answer.h, end = answer.end;
  if (view === 'square') {
    const distance = 340, ez = 76, xc = (width / 2 - grid.left) / grid.s, f = 2 * Math.atan(height / (2 * grid.s * distance)) * 180 / Math.PI;
    const zc = grid.top - (height / 2 - grid.pad) / grid.s, k = 1 / Math.tan(f * Math.PI / 360);
    return { p: V(xc, -distance, ez), t: V(xc, 0, ez), f, s: [0, k * (zc - ez) / distance] };
  }
  const lean = x <= scene.width / 2 + 12 ? 1 : -1, front = Math.max(D.cut.front, -40), high = capTop(end) || scene.ceiling + 26;
  if (view === 'ceiling') return fit(corners([x - 32, front, scene.ceiling - 12], [x + 32, 0, Math.min(high, scene.ceiling + 24)]), V(0.16 * lean, -1, -0.34), 42, aspect);
  if (view === 'near') return fit(corners([x - scene.hood.width / 2 - 14, -scene.hood.depth, bottom - 14], [x + scene.hood.width / 2 + 14, 0, scene.ceiling]), V(0.42 * lean, -1, 0.12), 38, aspect);
  if (view === 'room') return fit([...corners([-6, D.cut.front, 0], [scene.width + 6, 0, scene.ceiling + 10]), V(x, -9, high)], V(0.42 * lean, -1, 0.16), 34, aspect, 0.02);
  const run = answer.parts ? answer.parts.flatMap(p => [p.a, p.b]) : answer.wanted || [[x, -9, bottom + scene.hood.body], [x, -9, scene.ceiling + 10]];
  const reach = scene.duct.section[1] + 2, lo = [0, 1, 2].map(i => Math.min(...run.map(p => p[i])) - reach), hi = [0, 1, 2].map(i => Math.max(...run.map(p => p[i])) + reach);
  if (view === 'along' || !end || end.kind === null) return view === 'outside' ? fit(corners([0, scene.wall, 10], [scene.width, scene.wall, scene.ceiling]), V(-0.5, 1, 0.2), 34, aspect) : fit(corners(lo, hi), V(-0.5 * lean, -1, 0.22), 36, aspect);
  const [ex, ey, ez] = end.at, away = ex > scene.width / 2 ? -0.55 : 0.55;
  if (end.kind === 'roof') return fit(corners([ex - 36, ey - 12, ez - 12], [ex + 36, ey + 24, high]), V(away, ey > -scene.depth / 2 ? 1 : -1, 0.55), 32, aspect);
  const out = V(...end.d), across = out.clone().cross(new THREE.Vector3(0, 1, 0)), at = V(ex, ey, ez);
  const points = [[-44, -30], [44, -30], [-44, 28], [44, 28]].map(([s, v]) => at.clone().addScaledVector(across, s).add(new THREE.Vector3(0, v, 0)));
  const wanted = Math.abs(across.x) > 0.5 ? Math.sign(away) * Math.sign(across.x) : 1;
  return fit(points, out.clone().addScaledVector(across, 0.6 * wanted).add(new THREE.Vector3(0, 0.22, 0)), 34, aspect);
}
