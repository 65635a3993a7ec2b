// Sheet metal in three dimensions: straights, gored elbows, transitions, bands and caps, as closed skins.
import * as THREE from 'three';
import { D } from './store.js';

export const V = (x, y, z) => new THREE.Vector3(x, z, -y); // house inches (right, through the wall, up) to the picture's axes
export const V3 = p => V(p[0], p[1], p[2]);
const SIDES = 48, SHEET = 0.12, BAND = 1.1, RIB = 1.8, DIP = 0.34; // a hose's ribs: how far apart, how deep between

function outline([shape, wide, high], grow) {
  const a = wide / 2 + grow, b = high / 2 + grow, found = [];
  if (shape === 'rectangular') {
    const corners = [[a, -b], [a, b], [-a, b], [-a, -b]], quarter = SIDES / 4;
    for (let k = 0; k < 4; k++) for (let i = 0; i < quarter; i++) { const t = i / quarter, p = corners[k], q = corners[(k + 1) % 4]; found.push([p[0] * (1 - t) + q[0] * t, p[1] * (1 - t) + q[1] * t]); }
    return [...found.slice(quarter / 2), ...found.slice(0, quarter / 2)];
  }
  if (shape === 'oval') {
    for (const [sign, count] of [[1, SIDES / 2 + 1], [-1, SIDES / 2 - 1]]) for (let i = 0; i < count; i++) { const t = -Math.PI / 2 + Math.PI * i / (count - 1); found.push([sign * (Math.cos(t) * b + a - b), sign * Math.sin(t) * b]); }
    return [...found.slice(SIDES / 4), ...found.slice(0, SIDES / 4)];
  }
  for (let i = 0; i < SIDES; i++) { const t = i / SIDES * 2 * Math.PI; found.push([Math.cos(t) * a, Math.sin(t) * a]); }
  return found;
}
function axes(d, wide) {
  let u = wide && wide.clone().addScaledVector(d, -wide.dot(d));
  if (!u || u.length() < 1e-3) {
    const flat = [Math.abs(d.x), Math.abs(d.y), Math.abs(d.z)], i = flat.indexOf(Math.min(...flat));
    u = new THREE.Vector3(+(i === 0), +(i === 1), +(i === 2)).cross(d);
  }
  u.normalize();
  return [u, d.clone().cross(u)];
}
const ring = (at, d, wide, section, grow) => {
  const [u, v] = axes(d, wide);
  return outline(section, grow).map(([a, b]) => at.clone().addScaledVector(u, a).addScaledVector(v, b));
};

// a wall between two rows of rings, both ends closed; round skins are shaded round
function loft(outer, inner, round) {
  const n = outer[0].length, position = [], normal = [];
  const put = (p, q) => { position.push(p.x, p.y, p.z); normal.push(q.x, q.y, q.z); };
  const quad = (a, b, c, d, na, nb, nc, nd) => { put(a, na); put(b, nb); put(c, nc); put(a, na); put(c, nc); put(d, nd); };
  const skin = (low, high, flip) => {
    const out = low.map((p, i) => {
      const across = low[(i + 1) % n].clone().sub(low[(i + n - 1) % n]), along = high[i].clone().sub(p);
      return across.cross(along).normalize().multiplyScalar(flip ? -1 : 1);
    });
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n;
      let na = out[i], nb = out[j];
      if (!round) { na = nb = low[j].clone().sub(low[i]).cross(high[i].clone().sub(low[i])).normalize().multiplyScalar(flip ? -1 : 1); }
      if (flip) quad(low[i], high[i], high[j], low[j], na, na, nb, nb); else quad(low[i], low[j], high[j], high[i], na, nb, nb, na);
    }
  };
  for (let k = 0; k + 1 < outer.length; k++) { skin(outer[k], outer[k + 1], false); skin(inner[k], inner[k + 1], true); }
  for (const [a, b, sign] of [[outer[0], inner[0], -1], [outer[outer.length - 1], inner[inner.length - 1], 1]]) {
    const face = a[1].clone().sub(a[0]).cross(b[0].clone().sub(a[0])).normalize();
    for (let i = 0; i < n; i++) { const j = (i + 1) % n; if (sign > 0) quad(a[i], a[j], b[j], b[i], face, face, face, face); else quad(a[i], b[i], b[j], a[j], face.clone().negate(), face, face, face); }
  }
  const made = new THREE.BufferGeometry();
  made.setAttribute('position', new THREE.Float32BufferAttribute(position, 3));
  made.setAttribute('normal', new THREE.Float32BufferAttribute(normal, 3));
  return made;
}

function stations(part, wide) {
  const a = V3(part.a), b = V3(part.b), d = V3(part.d).normalize();
  if (part.k === 'elbow') {
    const t = V3(part.t).normalize(), axis = d.clone().cross(t).normalize(), angle = part.g * Math.PI / 180, inwards = axis.clone().cross(d);
    const centre = a.clone().addScaledVector(inwards, part.r), smooth = part.s[0] === 'rectangular', pieces = smooth ? 12 : part.n, half = angle / (pieces - 1) / 2;
    const turns = [0, ...Array.from({ length: pieces - 1 }, (_, k) => half * (2 * k + 1)), angle];
    const seams = smooth ? [] : turns.slice(1, -1).map((_, k) => k + 1);
    const at = grow => turns.map((turn, k) => {
      const inner = k > 0 && k < turns.length - 1, stretch = inner ? 1 / Math.cos(half) : 1, radial = inwards.clone().negate().applyAxisAngle(axis, turn);
      const spot = centre.clone().addScaledVector(radial, part.r);
      const points = ring(spot, d.clone().applyAxisAngle(axis, turn), wide.clone().applyAxisAngle(axis, turn), part.s, grow);
      for (const p of points) p.addScaledVector(radial, p.clone().sub(centre).dot(radial) * (stretch - 1));
      return points;
    });
    return [at(0), at(-SHEET), seams];
  }
  if (part.k === 'flex') {
    const ribs = Math.max(2, Math.round(part.l / RIB)), at = grow => Array.from({ length: 2 * ribs + 1 }, (_, i) => ring(a.clone().lerp(b, i / (2 * ribs)), d, wide, part.s, grow - (i % 2 ? 0 : DIP)));
    return [at(0), at(-SHEET), Array.from({ length: ribs }, (_, i) => 2 * i + 1)];
  }
  const same = JSON.stringify(part.s) === JSON.stringify(part.o), cuts = same ? [[0, part.s], [1, part.s]] : [[0, part.s], [0.18, part.s], [0.82, part.o], [1, part.o]];
  const at = grow => cuts.map(([q, section]) => ring(a.clone().lerp(b, q), d, wide, section, grow));
  return [at(0), at(-SHEET), same ? [] : [1, 2]];
}

const mesh = (geometry, material) => { const m = new THREE.Mesh(geometry, material); m.castShadow = true; return m; };
const loop = (points, material) => new THREE.LineLoop(new THREE.BufferGeometry().setFromPoints(points), material);

function band(at, d, wide, section, width, M) {
  const ends = [-width / 2, width / 2].map(t => at.clone().addScaledVector(d, t));
  const outer = ends.map(p => ring(p, d, wide, section, 0.22)), inner = ends.map(p => ring(p, d, wide, section, -SHEET));
  const made = mesh(loft(outer, inner, section[0] !== 'rectangular'), M.duct);
  for (const r of outer) made.add(loop(r, M.seam));
  return made;
}

const NAMES = { flex: 'flexible hose' };
export function ductOf(parts, M, broken = new Set()) {
  const group = new THREE.Group();
  let carried = null, before = null;
  for (const part of parts) {
    if (part.l < 1e-6 || part.k === 'cap' || part.k === 'open end') continue;
    const d = V3(part.d).normalize(), [wide] = axes(d, part.w ? V3(part.w) : carried);
    const [outer, inner, seams] = stations(part, wide);
    const hit = broken.has(part.id), made = mesh(loft(outer, inner, part.s[0] !== 'rectangular' && part.k !== 'flex'), hit ? M.bars : M.duct);
    made.userData = { label: NAMES[part.k] || part.k, part: part.id };
    for (const k of seams) made.add(loop(outer[k], hit ? M.barLine : M.seam));
    if (part.s[0] === 'rectangular') made.add(new THREE.LineSegments(new THREE.EdgesGeometry(made.geometry, 30), M.seam));
    group.add(made);
    const short = Math.min(part.l, before ? before.l : part.l), width = Math.min(BAND, before ? short / 3 : part.l / 2);
    const at = before ? V3(part.a) : V3(part.a).addScaledVector(d, Math.min(0.8, part.l / 2));
    if (width > 0.15) group.add(band(at, d, wide, part.s, width, M));
    const stock = D.scene.duct.stock;
    if (part.k === 'straight' && part.l > stock + 6) for (let q = stock; part.l - q > 3; q += stock) group.add(band(V3(part.a).addScaledVector(d, q), d, wide, part.s, BAND, M));
    carried = part.k === 'elbow' ? wide.clone().applyAxisAngle(d.clone().cross(V3(part.t)).normalize(), part.g * Math.PI / 180) : wide;
    before = part;
  }
  return group;
}

// a plain sleeve between two points: the duct that was wanted, its ghost, and the bars where it meets a member
export function sleeve(a, b, section, grow, material) {
  const d = b.clone().sub(a).normalize(), wide = new THREE.Vector3(1, 0, 0), ends = [a, b];
  return mesh(loft(ends.map(p => ring(p, d, wide, section, grow)), ends.map(p => ring(p, d, wide, section, grow - SHEET * 2)), section[0] !== 'rectangular'), material);
}

function turned(profile, M) { // a profile of (radius, height), turned about the upright axis, closed
  const points = [[0.001, profile[0][1]], ...profile, [0.001, profile[profile.length - 1][1]]].map(([r, h]) => new THREE.Vector2(r, h));
  const m = mesh(new THREE.LatheGeometry(points, 48), M.duct);
  m.add(new THREE.LineSegments(new THREE.EdgesGeometry(m.geometry, 32), M.seam));
  return m;
}
function block(x, y, z, M) { // a box between two corners of the cap's own axes: across, out, up
  const m = mesh(new THREE.BoxGeometry(x[1] - x[0], z[1] - z[0], y[1] - y[0]), M.steel);
  m.position.set((x[0] + x[1]) / 2, (z[0] + z[1]) / 2, -(y[0] + y[1]) / 2);
  m.add(new THREE.LineSegments(new THREE.EdgesGeometry(m.geometry, 30), M.seam));
  return m;
}

function roofCap(end, section, M) {
  const group = new THREE.Group(), face = D.faces[end.face], [, sx, sy] = face ? face.plane : [0, 0, 0], stub = D.scene.duct.stub;
  const reach = Math.max(section[1], section[2]) / 2, plate = new THREE.BoxGeometry(2 * reach + 10, 0.5, 2 * reach + 10), p = plate.attributes.position;
  for (let i = 0; i < p.count; i++) p.setY(i, p.getY(i) + 0.85 + p.getX(i) * sx - p.getZ(i) * sy);
  plate.computeVertexNormals();
  const flashing = mesh(plate, M.steel);
  flashing.add(new THREE.LineSegments(new THREE.EdgesGeometry(plate, 30), M.seam));
  group.add(flashing);
  const tilt = reach * Math.hypot(sx, sy), up = new THREE.Vector3(0, 1, 0), at = z => new THREE.Vector3(0, z, 0);
  const wide = section[0] === 'round' ? new THREE.Vector3(1, 0, 0) : null;
  const pipe = (z0, z1, g0, g1) => { const m = mesh(loft([ring(at(z0), up, wide, section, g0), ring(at(z1), up, wide, section, g1)], [ring(at(z0), up, wide, section, -SHEET), ring(at(z1), up, wide, section, -SHEET)], true), M.duct); m.add(loop(ring(at(z1), up, wide, section, g1), M.seam)); return m; };
  const r = section[1] / 2;
  group.add(pipe(-tilt - 0.2, Math.max(stub * 0.42, tilt + 1.2), 1.6, 0.3), pipe(-tilt, stub, 0.12, 0.12), pipe(stub - 1.6, stub - 0.9, r * 0.42, r * 0.42));
  group.add(turned([[r * 1.85, stub + 1.1], [r * 1.85, stub + 2.1], [r * 0.3, stub + 4.6], [r * 0.3, stub + 4.75]], M));
  group.position.copy(V(end.at[0], end.at[1], end.at[2] - stub)); // the duct ends one stub above the roof
  return group;
}
function wallCap(end, section, M) {
  const group = new THREE.Group(), out = V3(end.d).normalize(), upright = Math.abs(end.wide ? end.wide[2] : 0) > 0.5;
  const across = (upright ? section[2] : section[1]) / 2, up = (upright ? section[1] : section[2]) / 2, flange = (D.scene.duct.flange || section[1] + 4) / 2;
  const side = Math.max(across + 1, section[0] === 'round' ? flange - 1.2 : across + 1), deep = up + 2.6, fx = Math.max(flange, across + 2), fz = Math.max(flange, up + 2), top = up + 1.2, foot = -up - 1;
  group.add(block([-fx, fx], [0.02, 0.55], [-fz, fz], M));
  const shape = new THREE.Shape([[0.55, top], [1.2, top], [deep, foot + 1.6], [deep, foot], [deep - 0.35, foot], [deep - 0.35, foot + 1.5], [0.9, top - 0.5], [0.55, top - 0.5]].map(([y, z]) => new THREE.Vector2(y, z)));
  const cheek = new THREE.Shape([[0.55, top - 0.02], [1.15, top - 0.02], [deep - 0.02, foot + 1.58], [deep - 0.02, foot], [0.55, foot]].map(([y, z]) => new THREE.Vector2(y, z)));
  const sweep = (s, wide, x) => { const g = new THREE.ExtrudeGeometry(s, { depth: wide, bevelEnabled: false }); g.applyMatrix4(new THREE.Matrix4().set(0, 0, 1, x, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 0, 1)); const m = mesh(g, M.steel); m.add(new THREE.LineSegments(new THREE.EdgesGeometry(g, 30), M.seam)); group.add(m); };
  sweep(shape, 2 * side, -side); sweep(cheek, 0.25, -side + 0.01); sweep(cheek, 0.25, side - 0.26);
  const flap = block([-across, across], [0.85, 1.05], [-up, up - 0.1], M);
  flap.rotation.x = -0.35; group.add(flap);
  const x = out.clone().cross(new THREE.Vector3(0, 1, 0));
  group.applyMatrix4(new THREE.Matrix4().makeBasis(x, new THREE.Vector3(0, 1, 0), out.clone().negate()).setPosition(V3(end.at)));
  return group;
}
export const capOf = (end, section, M) => end.kind === null ? new THREE.Group() : end.kind === 'roof' ? roofCap(end, section, M) : wallCap(end, section, M);
