// The picture: the house from its glTF, the hood that moves, the duct drawn anew for each place.
import * as THREE from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { D, dark, still } from './store.js';
import { V, V3, capOf, ductOf, sleeve } from './duct.js';
import { applyTint, ground, makeMaterials, setHoles } from './materials.js';
import { pose } from './cameras.js';
import { bake, drawParts, makeRest, partOf, parts, software } from './quick.js';

const PER_M = 1 / 0.0254, REST_MS = 450;
export const LAYERS = { BOARD: 'wall and ceiling board', FRAMING: 'framing', SKIN: 'outer skin', ROOF: 'roof', KITCHEN: 'kitchen', HOOD: 'hood', COVER: 'chimney cover', DUCT: 'duct', ZONES: 'clearances', BEYOND: 'beyond the wall' };

export function makePicture(host, bytes, on) {
  let slow = software(), jitter = [0, 0];
  const renderer = new THREE.WebGLRenderer({ antialias: !slow, preserveDrawingBuffer: true });
  renderer.shadowMap.enabled = true; renderer.shadowMap.type = THREE.PCFShadowMap; renderer.toneMapping = THREE.NoToneMapping;
  renderer.domElement.tabIndex = -1; renderer.domElement.setAttribute('aria-hidden', 'true');
  host.prepend(renderer.domElement);
  const scene = new THREE.Scene(), camera = new THREE.PerspectiveCamera(30, 1, 4, 1800);
  let shift = [0, 0];
  const plain = camera.updateProjectionMatrix.bind(camera);
  camera.updateProjectionMatrix = () => { plain(); camera.projectionMatrix.elements[8] = shift[0] + jitter[0]; camera.projectionMatrix.elements[9] = shift[1] + jitter[1]; camera.projectionMatrixInverse.copy(camera.projectionMatrix).invert(); };
  const controls = new OrbitControls(camera, renderer.domElement);
  controls.enableDamping = false; controls.maxDistance = 900; controls.minDistance = 16;
  const sky = new THREE.HemisphereLight('#fffdf8', '#d8ccb9', 1.6), sun = new THREE.DirectionalLight('#fff7ea', 1.2), fill = new THREE.AmbientLight('#fff', 0.25), back = new THREE.DirectionalLight('#fff7ea', 0.5);
  sun.shadow.mapSize.set(1024, 1024); back.position.set(-80, 200, -300);
  function aim() { // the sun stands over the room that is shown
    const { width } = D.scene, spread = Math.max(130, width * 0.8);
    sun.position.set(width + 6, 250, 230); sun.target.position.set(width / 2, 60, 0);
    Object.assign(sun.shadow.camera, { left: -spread, right: spread, top: 140, bottom: -140, near: 10, far: 700 });
    sun.shadow.camera.updateProjectionMatrix(); sun.target.updateMatrixWorld();
  }
  sun.shadow.bias = -0.0006; sun.shadow.normalBias = 0.5; sun.shadow.radius = 4; sun.shadow.autoUpdate = false;
  scene.add(sky, sun, sun.target, fill, back);

  const clip = new THREE.Plane(new THREE.Vector3(0, 0, 1), 1e4), M = makeMaterials([clip]);
  const groups = Object.fromEntries(['fixed', 'hood', 'cover', 'cook', 'run', 'clash', 'keep'].map(n => [n, new THREE.Group()]));
  scene.add(groups.fixed, groups.hood, groups.cover, groups.cook, groups.run, groups.clash, groups.keep);
  const stock = new Map(), shown = Object.fromEntries(Object.keys(LAYERS).map(k => [k, true])), solidMeshes = [], batched = [];
  let batches = {}, layers = {}, bySolid = {};
  const barred = [];
  let frame = 0, current = null, ready = false, view = 'square', size = null, anim = 0;

  // where drawing is slow (no graphics card), what moved is drawn alone, and shadows come when the picture rests
  let resting = 0, whole = true, baked = null, was = null, tint = null;
  const lights = { sky, fill, suns: [sun, back] };
  function dress(quick) {
    if (quick && baked !== lights.sky.intensity) {
      for (const mesh of batched) if (mesh.userData.full.some(m => m.quick)) bake(mesh.geometry, lights);
      baked = lights.sky.intensity;
    }
    for (const mesh of batched) mesh.material = quick ? mesh.userData.quick : mesh.userData.full;
    sun.castShadow = !quick;
  }
  const finish = makeRest(renderer, host, {
    tint: () => tint,
    shade: () => { whole = true; dress(false); sun.shadow.needsUpdate = true; },
    jitter: ([x, y]) => { jitter = [x * 2 / size.width, y * 2 / size.height]; camera.updateProjectionMatrix(); },
  });
  const full = () => {
    if (slow) return finish.now(scene, camera, size);
    sun.shadow.needsUpdate = true; renderer.render(scene, camera);
    return renderer.domElement;
  };
  const draw = () => {
    frame = 0; clearTimeout(resting);
    if (!slow) renderer.render(scene, camera);
    else {
      finish.end(); dress(true); resting = setTimeout(() => finish.begin(scene, camera, size), REST_MS);
      const now = size && partOf([groups.hood, groups.cover, groups.cook, groups.run, groups.clash, groups.keep, ...barred], camera, size), moved = !whole && size && parts(was, now, size);
      if (size) drawParts(renderer, scene, camera, moved || [{ x: 0, y: 0, w: size.width, h: size.height }], tint, size);
      was = now;
    }
    whole = false; on.drawn();
  };
  function gauge() { // time one frame, the driver's work included
    const gl = renderer.getContext(), pixel = new Uint8Array(4);
    sun.castShadow = false; renderer.render(scene, camera); gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    const t = performance.now();
    renderer.render(scene, camera); gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    slow = performance.now() - t > 60; sun.castShadow = !slow;
    if (slow) theme();
  }
  const askPart = () => { if (!frame) frame = requestAnimationFrame(draw); };
  const ask = () => { whole = true; askPart(); };
  const shadows = () => { sun.shadow.needsUpdate = true; };

  function place(name, piece) {
    const [layer, group, solid, label, smooth] = D.pieces[name];
    const paint = M.paint[piece.material] || M.paint.plaster, timber = paint.line === M.timber, node = new THREE.Mesh(piece.geometry, paint.material);
    node.name = name;
    node.userData = { label, solid, layer, paint: paint.material };
    node.castShadow = !paint.glass && !timber && layer !== 'ZONES' && layer !== 'SKIN' && layer !== 'ROOF' && layer !== 'OUTER';
    node.receiveShadow = layer !== 'ZONES' && paint.material !== M.steel;
    (groups[group] || groups.fixed).add(node);
    if (solid) (bySolid[solid] = bySolid[solid] || []).push(node);
    solidMeshes.push(node);
    piece.edges = piece.edges || new THREE.EdgesGeometry(piece.geometry, 28).attributes.position.array;
    const line = paint.line || M.edge, extra = (D.lines[name] || []).flatMap(points => points.slice(1).flatMap((p, i) => [...V3(points[i]).toArray(), ...V3(p).toArray()]));
    const drawn = { node, lines: [...(paint.line && !smooth ? piece.edges : []), ...extra], line };
    if (layer === 'ZONES') { // stands alone, for it is stretched
      node.add(new THREE.LineSegments(segments(drawn.lines), line));
      (layers[layer] = layers[layer] || []).push(node);
    } else (batches[[group, layer, node.material.uuid, +node.castShadow, +node.receiveShadow]] = batches[[group, layer, node.material.uuid, +node.castShadow, +node.receiveShadow]] || []).push(drawn);
  }
  const segments = array => { const g = new THREE.BufferGeometry(); g.setAttribute('position', new THREE.Float32BufferAttribute(array, 3)); return g; };
  // what shares layer and look is drawn as one; the single meshes stay, unseen, to be picked and barred
  function batch() {
    const lineSets = {};
    for (const [key, found] of Object.entries(batches)) {
      const [group, layer] = key.split(','), first = found[0].node, position = [], normal = [], ranges = [];
      let corners = 0;
      for (const { node, lines, line } of found) {
        const flat = node.geometry.index ? node.geometry.toNonIndexed() : node.geometry, count = flat.attributes.position.count;
        node.geometry.computeBoundingBox();
        ranges.push({ start: corners, count, box: node.geometry.boundingBox }); corners += count;
        position.push(flat.attributes.position.array); normal.push(flat.attributes.normal.array);
        node.visible = false;
        (lineSets[[group, layer, line.uuid]] = lineSets[[group, layer, line.uuid]] || { group, layer, line, parts: [] }).parts.push(lines);
      }
      const geometry = new THREE.BufferGeometry();
      for (const [name, parts] of [['position', position], ['normal', normal]]) {
        const all = new Float32Array(parts.reduce((n, p) => n + p.length, 0));
        let at = 0;
        for (const p of parts) { all.set(p, at); at += p.length; }
        geometry.setAttribute(name, new THREE.BufferAttribute(all, 3));
      }
      const lit = [first.material, first.material.pierced || first.material], whole = new THREE.Mesh(geometry, lit);
      geometry.addGroup(0, corners, 0);
      Object.assign(whole.userData, { ranges, full: lit, quick: lit.map(m => m.quick || m) });
      batched.push(whole);
      whole.castShadow = first.castShadow; whole.receiveShadow = first.receiveShadow;
      groups[group].add(whole);
      (layers[layer] = layers[layer] || []).push(whole);
    }
    for (const { group, layer, line, parts } of Object.values(lineSets)) {
      const whole = new THREE.LineSegments(segments(parts.flat()), line);
      groups[group].add(whole); layers[layer].push(whole);
    }
  }
  // every piece by its name; a later model brings only those that look different
  function read(model, pieces, then) {
    if (!model) { then(); return; }
    new GLTFLoader().parse(model, '', gltf => {
      gltf.scene.traverse(node => {
        if (!node.isMesh) return;
        const name = [node.userData.name, node.name, node.parent && node.parent.name].find(n => pieces[n]);
        if (!name) return;
        node.geometry.scale(PER_M, PER_M, PER_M);
        stock.set(name, { geometry: node.geometry, material: node.material.name });
      });
      then();
    }, fault => on.failed(fault));
  }
  function furnish() { // what stands in D.pieces, out of the stock
    unbar();
    for (const name of ['fixed', 'hood', 'cover', 'cook']) wipe(groups[name]);
    batches = {}; layers = {}; bySolid = {}; solidMeshes.length = batched.length = 0; baked = null; whole = true;
    for (const name of [...stock.keys()]) if (!D.pieces[name]) stock.delete(name);
    for (const name of Object.keys(D.pieces)) if (stock.has(name)) place(name, stock.get(name));
    aim(); batch();
  }

  function pierce(run) { // only what the duct may pass through is asked, point by point, whether it does
    const pipes = (run || []).filter(p => p.k === 'straight').map(p => new THREE.Box3().setFromPoints([V3(p.a), V3(p.b)]).expandByScalar(Math.max(p.s[1], p.s[2]) / 2 + 0.5));
    for (const { geometry, userData: { ranges, full: [plain, pierced] } } of batched) {
      geometry.clearGroups();
      if (plain === pierced) { const last = ranges[ranges.length - 1]; geometry.addGroup(0, last.start + last.count, 0); continue; }
      let open = null; // neighbours that look the same go together
      for (const { start, count, box } of ranges) {
        const look = +pipes.some(p => p.intersectsBox(box));
        if (open && open.materialIndex === look) open.count += count;
        else { geometry.addGroup(start, count, look); open = geometry.groups[geometry.groups.length - 1]; }
      }
    }
  }
  const wipe = group => { for (const child of [...group.children]) { child.traverse(n => n.geometry && n.geometry.dispose()); group.remove(child); } };
  function moveHood({ x, h, cook }) {
    const rest = { x: D.scene.hood.x, z: D.scene.hood.bottom }, z = D.scene.cook.height + h, dx = x - rest.x, dz = z - rest.z, top = D.scene.hood.coverTop, foot = rest.z + D.scene.hood.body;
    groups.hood.position.copy(V(dx, 0, dz));
    groups.cook.position.copy(V(cook - D.scene.cook.x, 0, 0));
    if (top && top > foot) { // the cover stands on the hood and is stretched to where it ended before
      const k = Math.max(0.02, (top - foot - dz) / (top - foot));
      groups.cover.scale.set(1, k, 1);
      groups.cover.position.set(dx, top - top * k, 0);
    }
    for (const node of layers.ZONES || []) if (D.pieces[node.name] && D.pieces[node.name][1] === 'cook') { // from the cooktop to the hood
      const low = D.scene.cook.height + 0.6, k = Math.max(0.02, (z - low) / (rest.z - low));
      node.scale.y = k; node.position.y = low - low * k;
    }
  }
  function bar(id) {
    for (const node of bySolid[id] || []) {
      if (!node.children.length) node.add(new THREE.LineSegments(new THREE.EdgesGeometry(node.geometry, 28), M.barLine));
      node.material = M.bars; node.visible = shown[node.userData.layer] !== false; barred.push(node);
    }
  }
  function unbar() { for (const node of barred.splice(0)) { node.material = node.userData.paint; node.visible = false; } }
  // from where to where a run meets a member: rays along it, over its whole width
  const probe = new THREE.Raycaster();
  function meets(nodes, a, b, radius) {
    const d = b.clone().sub(a), long = d.length(), axis = D.scene.hood.outlet === 'rear' ? 'z' : 'y';
    d.normalize();
    const u = new THREE.Vector3(1, 0, 0), v = d.clone().cross(u), found = [];
    groups.fixed.updateMatrixWorld(true);
    for (let i = -4; i <= 4; i++) for (let j = -4; j <= 4; j++) {
      if (i * i + j * j > 16) continue;
      const at = a.clone().addScaledVector(u, i / 4 * radius).addScaledVector(v, j / 4 * radius);
      probe.set(at, d); probe.far = long;
      for (const hit of probe.intersectObjects(nodes, false)) found.push(hit.point[axis]);
    }
    return found.length > 1 ? [Math.min(...found), Math.max(...found)] : null;
  }
  function clash(answer) { // the duct that was wanted, barred where it meets something, and its ghost after the fix
    const [a, b] = answer.wanted.map(V3), section = D.scene.duct.section, axis = D.scene.hood.outlet === 'rear' ? 'z' : 'y';
    groups.run.add(sleeve(a, b, section, 0, M.duct));
    for (const [id] of answer.why ? answer.why.blockers : []) {
      const met = meets(bySolid[id] || [], a, b, section[1] / 2);
      if (!met) continue;
      const lo = a.clone(), hi = b.clone(), ends = [Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis])];
      lo[axis] = Math.max(met[0], ends[0]); hi[axis] = Math.min(met[1], ends[1]);
      if (hi[axis] - lo[axis] > 0.3 && hi[axis] - lo[axis] < 40) { const bars = sleeve(lo, hi, section, 0.16, M.bars); bars.add(new THREE.LineSegments(new THREE.EdgesGeometry(bars.geometry, 40), M.barLine)); groups.clash.add(bars); }
    }
    const fix = answer.fixes && answer.fixes[0], straight = fix ? fix.elbows === 0 : !answer.why || answer.why.goes === answer.why.wanted; // what turns has no such ghost
    if (answer.ghost !== null && straight) { const move = V(answer.ghost, 0, 0), ghost = sleeve(a.clone().add(move), b.clone().add(move), section, 0, M.ghost); ghost.castShadow = false; groups.clash.add(ghost); }
  }
  function keepOff(answer) { // on the outer wall: the distance that a finding asks for, round what it protects
    const face = answer.end && D.faces[answer.end.face];
    if (!face || face.kind === 'roof') return;
    for (const [id, , a0, b0, a1, b1] of face.keep) {
      const f = answer.findings.find(q => q.where.includes(id) && q.unit === 'in' && q.limit !== null && q.limit < 130);
      if (!f) continue;
      const r = f.limit, [u0, v0, u1, v1] = [a0, b0, a1, b1], outline = [];
      for (const [cu, cv, turn] of [[u1, v1, 0], [u0, v1, 1], [u0, v0, 2], [u1, v0, 3]]) for (let i = 0; i <= 10; i++) { const t = (turn + i / 10) * Math.PI / 2; outline.push(new THREE.Vector2(Math.min(face.hi[0], Math.max(face.lo[0], cu + r * Math.cos(t))), Math.min(face.hi[1], Math.max(0, cv + r * Math.sin(t))))); }
      const geometry = new THREE.ExtrudeGeometry(new THREE.Shape(outline), { depth: 6, bevelEnabled: false }), near = face.at + face.sign * (face.sign > 0 ? 0.5 : 6.5);
      // outline and depth to the house's axes: along the wall, up, out of it
      geometry.applyMatrix4(face.axis === 1 ? new THREE.Matrix4().set(1, 0, 0, 0, 0, 1, 0, 0, 0, 0, -1, -near, 0, 0, 0, 1) : new THREE.Matrix4().set(0, 0, 1, near, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 0, 1));
      const zone = new THREE.Mesh(geometry, M.zone);
      zone.add(new THREE.LineSegments(new THREE.EdgesGeometry(geometry, 20), M.zoneLine));
      groups.keep.add(zone);
    }
  }
  function set(answer) {
    current = answer;
    if (!ready) return;
    moveHood(answer); wipe(groups.run); wipe(groups.clash); wipe(groups.keep); unbar();
    setHoles(answer.parts, V3); pierce(answer.parts);
    if (answer.parts) {
      groups.run.add(ductOf(answer.parts, M, new Set(answer.findings.filter(f => f.state === 'broken' && !f.waived).flatMap(f => f.where))));
      const last = answer.parts[answer.parts.length - 1];
      groups.run.add(capOf({ ...answer.end, wide: last.w }, last.o || last.s, M));
    } else if (answer.wanted) clash(answer);
    keepOff(answer);
    for (const id of answer.barred) bar(id);
    visible(); shadows(); askPart();
  }
  function layer(change) {
    if (change) Object.assign(shown, change);
    visible();
    if (change) shadows();
    ask();
  }
  function visible() {
    for (const [name, nodes] of Object.entries(layers)) for (const node of nodes) node.visible = name === 'OUTER' ? shown.ROOF && view === 'outside' : shown[name] !== false;
    for (const node of barred) node.visible = shown[node.userData.layer] !== false;
    groups.run.visible = groups.clash.visible = shown.DUCT;
    groups.cover.visible = shown.COVER && view !== 'along';
    groups.keep.visible = shown.ZONES && view === 'outside';
  }
  function theme() {
    const t = tint = applyTint(M, dark());
    scene.background = slow ? null : ground(t); sky.intensity = t.sky; sun.intensity = t.sun; fill.intensity = t.fill;
    ask();
  }
  function go(name, at) {
    view = name;
    if (!current) return;
    const end = typeof name === 'string' ? pose(name, current, size) : name, from = { p: camera.position.clone(), t: controls.target.clone(), f: camera.fov, s: [...shift] };
    const t0 = performance.now(), long = at === 'now' || still() ? 0 : 700;
    cancelAnimationFrame(anim);
    const step = () => {
      const u = long ? Math.min(1, (performance.now() - t0) / long) : 1, w = u * u * (3 - 2 * u);
      camera.position.lerpVectors(from.p, end.p, w); controls.target.lerpVectors(from.t, end.t, w);
      camera.fov = from.f + (end.f - from.f) * w; shift = [0, 1].map(i => from.s[i] + (end.s[i] - from.s[i]) * w);
      camera.lookAt(controls.target); camera.updateProjectionMatrix();
      whole = true;
      if (u < 1) { anim = requestAnimationFrame(step); draw(); } else { controls.update(); if (at !== 'now') draw(); else ask(); }
    };
    step(); layer(); on.stood(view);
  }
  controls.addEventListener('start', () => { if (view) { view = null; on.stood(null); layer(); } });
  controls.addEventListener('change', ask);
  const project = (x, y, z) => { const v = V(x, y, z).project(camera); return [(v.x + 1) / 2 * size.width, (1 - v.y) / 2 * size.height, v.z]; };
  const ray = new THREE.Raycaster();
  function pick(px, py) { // the nearest thing under a point of the picture; corners within reach attract
    ray.setFromCamera(new THREE.Vector2(px / size.width * 2 - 1, 1 - py / size.height * 2), camera);
    const there = layer => layer === 'OUTER' ? shown.ROOF && view === 'outside' : layer !== 'ZONES' && shown[layer] !== false && !(layer === 'COVER' && view === 'along');
    const seen = [...solidMeshes.filter(n => there(n.userData.layer)), ...groups.run.children];
    const hit = ray.intersectObjects(seen, true).find(h => h.object.isMesh && clip.distanceToPoint(h.point) > -1e-6);
    if (!hit) return null;
    let best = hit.point.clone(), reach = 11, corner = false;
    const p = hit.object.geometry.attributes.position;
    for (let i = 0; i < p.count && p.count < 20000; i++) {
      const v = new THREE.Vector3().fromBufferAttribute(p, i).applyMatrix4(hit.object.matrixWorld), q = v.clone().project(camera);
      const d = Math.hypot((q.x + 1) / 2 * size.width - px, (1 - q.y) / 2 * size.height - py);
      if (d < reach && v.distanceTo(hit.point) < 30) { reach = d; best = v; corner = true; }
    }
    return { at: [best.x, -best.z, best.y], corner, label: hit.object.userData.label || (hit.object.parent && hit.object.parent.userData.label) || 'duct' };
  }
  read(bytes, D.pieces, () => { furnish(); ready = true; theme(); sun.castShadow = false; if (current) set(current); shadows(); on.ready(); if (!slow) setTimeout(() => { gauge(); shadows(); ask(); }, 60); });
  return {
    // from where to where a piece reaches across the room [in]
    boxOf(name) { const piece = stock.get(name); if (!piece) return null; piece.geometry.computeBoundingBox(); const { min, max } = piece.geometry.boundingBox; return [min.x, max.x, -max.z, -min.z, min.y, max.y]; },
    set, read, furnish, layer, theme, go, project, pick, ask, full, shown,
    draw() { whole = true; draw(); }, info: () => ({ slow, ...renderer.info.render }),
    size(next) { size = next; renderer.setPixelRatio(Math.min(devicePixelRatio, 2)); renderer.setSize(next.width, next.height); camera.aspect = next.width / next.height; if (view) go(view, 'now'); else { camera.updateProjectionMatrix(); ask(); } },
    cut(axis, value) { // keep what lies beyond the plane: from the room, from the left, from above
      const normal = { y: [0, 0, -1], x: [1, 0, 0], z: [0, -1, 0] }[axis];
      clip.normal.set(...normal); renderer.localClippingEnabled = value !== null; // where nothing is cut, nothing need be asked
      for (const material of M.solid) { const side = value === null ? THREE.FrontSide : THREE.DoubleSide; if (material.side !== side) { material.side = side; material.needsUpdate = true; } }
      clip.constant = value === null ? 1e4 : axis === 'y' ? -value : axis === 'x' ? -value : value;
      shadows(); ask();
    },
    // whether nothing is left of what stands at a place: cut away, or all of it taken away
    gone(place, ids) {
      if (renderer.localClippingEnabled && clip.distanceToPoint(V3(place)) < -0.01) return true;
      const duct = current && current.parts ? current.parts.map(p => p.id) : [], of = ids.flatMap(id => duct.includes(id) || id === 'cap' ? ['DUCT'] : (bySolid[id] || []).map(n => n.userData.layer));
      return of.length > 0 && of.every(layer => shown[layer] === false);
    },
    view: () => view, behind: () => camera.position.z < -D.scene.wall, canvas: renderer.domElement, camera,
    turn(side, up) {
      if (view) { view = null; on.stood(null); layer(); }
      const s = new THREE.Spherical().setFromVector3(camera.position.clone().sub(controls.target));
      s.theta += side; s.phi = Math.min(2.6, Math.max(0.2, s.phi + up));
      camera.position.copy(controls.target).add(new THREE.Vector3().setFromSpherical(s)); controls.update(); ask();
    },
  };
}
