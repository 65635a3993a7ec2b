// Drawing where there is no graphics card: light kept in the corners of what stands still, and only that part of the
// picture drawn anew in which something moved. Shadows and smooth edges come when the picture rests.
import * as THREE from 'three';

const STRIPS = 4, BANDS = 40, PAD = 6, MOST = 0.7, WAIT_MS = 12;
const OFFSETS = [[-0.25, -0.25], [0.25, 0.25], [0.25, -0.25], [-0.25, 0.25]]; // of a pixel; their mean has smooth edges

export function software() {
  const gl = document.createElement('canvas').getContext('webgl2'), info = gl && gl.getExtension('WEBGL_debug_renderer_info');
  if (!info) return false;
  const name = gl.getParameter(info.UNMASKED_RENDERER_WEBGL), lose = gl.getExtension('WEBGL_lose_context');
  if (lose) lose.loseContext();
  return /swiftshader|llvmpipe|softpipe|software|basic render/i.test(name);
}

// what falls on a face that looks along `normal`, as the lit materials reckon it
export function lightOn(normal, { sky, fill, suns }) {
  const up = 0.5 * normal.y + 0.5, total = new THREE.Color().lerpColors(sky.groundColor, sky.color, up).multiplyScalar(sky.intensity);
  total.add(fill.color.clone().multiplyScalar(fill.intensity));
  for (const sun of suns) {
    const towards = sun.position.clone().sub(sun.target.position).normalize(), share = Math.max(0, normal.dot(towards)) * sun.intensity;
    total.add(sun.color.clone().multiplyScalar(share));
  }
  return total.multiplyScalar(1 / Math.PI);
}
export function bake(geometry, lights) {
  const { normal } = geometry.attributes, colour = new Float32Array(normal.count * 3), known = new Map(), n = new THREE.Vector3();
  for (let i = 0; i < normal.count; i++) {
    n.fromBufferAttribute(normal, i);
    const key = `${Math.round(n.x * 200)},${Math.round(n.y * 200)},${Math.round(n.z * 200)}`;
    if (!known.has(key)) known.set(key, lightOn(n.clone().normalize(), lights).toArray());
    colour.set(known.get(key), i * 3);
  }
  geometry.setAttribute('color', new THREE.BufferAttribute(colour, 3));
}

// the part of the picture that things take up, in its pixels from below; null when it is not to be told
export function partOf(nodes, camera, { width, height }) {
  const box = new THREE.Box3();
  for (const node of nodes) { node.updateWorldMatrix(true, true); box.expandByObject(node); }
  if (box.isEmpty()) return { x: 0, y: 0, w: 0, h: 0 };
  const lo = [Infinity, Infinity], hi = [-Infinity, -Infinity];
  for (let i = 0; i < 8; i++) {
    const at = new THREE.Vector3(i & 1 ? box.max.x : box.min.x, i & 2 ? box.max.y : box.min.y, i & 4 ? box.max.z : box.min.z).project(camera);
    if (!(at.z > -1 && at.z < 1)) return null;
    [(at.x + 1) / 2 * width, (at.y + 1) / 2 * height].forEach((v, k) => { lo[k] = Math.min(lo[k], v); hi[k] = Math.max(hi[k], v); });
  }
  const x = Math.max(0, Math.floor(lo[0] - PAD)), y = Math.max(0, Math.floor(lo[1] - PAD));
  return { x, y, w: Math.max(0, Math.min(width, Math.ceil(hi[0] + PAD)) - x), h: Math.max(0, Math.min(height, Math.ceil(hi[1] + PAD)) - y) };
}
const joined = (a, b) => { const x = Math.min(a.x, b.x), y = Math.min(a.y, b.y); return { x, y, w: Math.max(a.x + a.w, b.x + b.w) - x, h: Math.max(a.y + a.h, b.y + b.h) - y }; };
const apart = (a, b) => a.x + a.w < b.x || b.x + b.w < a.x || a.y + a.h < b.y || b.y + b.h < a.y;

// the parts to draw when something went from one part of the picture to another; null for all of it
export function parts(before, after, { width, height }) {
  if (!before || !after) return null;
  const found = (apart(before, after) ? [before, after] : [joined(before, after)]).filter(p => p.w > 0 && p.h > 0);
  return found.reduce((sum, p) => sum + p.w * p.h, 0) > MOST * width * height ? null : found;
}
// the ground runs from one colour to another; bands that are cleared cost next to nothing, a picture of it half of all drawing
function clearTo({ top, foot }, renderer, { height }, { x, y, w, h }) {
  const a = new THREE.Color(top), b = new THREE.Color(foot), deep = Math.ceil(height / BANDS), share = (n, k) => Math.round((a[k] + (b[k] - a[k]) * n) * 255) / 255;
  a.convertLinearToSRGB(); b.convertLinearToSRGB();
  for (let i = 0; i < BANDS; i++) {
    const low = Math.max(y, i * deep), high = Math.min(y + h, (i + 1) * deep), n = 1 - (i + 0.5) / BANDS;
    if (high <= low) continue;
    renderer.setScissor(x, low, w, high - low);
    renderer.setClearColor(new THREE.Color().setRGB(share(n, 'r'), share(n, 'g'), share(n, 'b'), THREE.SRGBColorSpace));
    renderer.clear(true, false, false);
  }
}
export function drawParts(renderer, scene, camera, list, tint, room) {
  renderer.setScissorTest(true); renderer.autoClear = false;
  for (const part of list) {
    clearTo(tint, renderer, room, part);
    renderer.setScissor(part.x, part.y, part.w, part.h); renderer.clear(false, true, true);
    renderer.render(scene, camera);
  }
  renderer.setScissorTest(false); renderer.autoClear = true;
}

// the finished picture lies over the quick one: the mean of some that are a part of a pixel apart
export function makeRest(renderer, host, { shade, jitter, tint }) {
  const sheet = document.createElement('canvas'), paper = sheet.getContext('2d');
  let turn = 0;
  sheet.className = 'rest'; sheet.hidden = true; sheet.setAttribute('aria-hidden', 'true');
  host.insertBefore(sheet, renderer.domElement.nextSibling);
  const gl = renderer.getContext(), from = renderer.domElement;
  const put = share => { paper.globalAlpha = share; paper.drawImage(from, 0, 0); };
  const size = () => { sheet.width = from.width; sheet.height = from.height; sheet.style.width = from.style.width; sheet.style.height = from.style.height; };
  function strip(k, i, scene, camera, room) {
    const wide = Math.ceil(room.width / STRIPS);
    jitter(OFFSETS[k]);
    drawParts(renderer, scene, camera, [{ x: i * wide, y: 0, w: wide, h: room.height }], tint(), room);
    jitter([0, 0]);
    if (i === STRIPS - 1) put(1 / (k + 1));
  }
  return {
    end() { turn++; sheet.hidden = true; },
    // strip by strip, the next one only when the last is done, so that a hand that moves again need not wait
    begin(scene, camera, room) {
      const mine = ++turn;
      size(); put(1); sheet.hidden = false;
      shade();
      const go = step => {
        if (mine !== turn || step === STRIPS * OFFSETS.length) return;
        strip(Math.floor(step / STRIPS), step % STRIPS, scene, camera, room);
        const fence = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
        gl.flush();
        const look = () => {
          const done = mine !== turn || gl.getSyncParameter(fence, gl.SYNC_STATUS) === gl.SIGNALED;
          if (!done) { setTimeout(look, WAIT_MS); return; }
          gl.deleteSync(fence); go(step + 1);
        };
        setTimeout(look, WAIT_MS);
      };
      go(0);
    },
    now(scene, camera, room) { // all at once, for paper
      turn++; size(); shade();
      OFFSETS.forEach((_, k) => { for (let i = 0; i < STRIPS; i++) strip(k, i, scene, camera, room); });
      sheet.hidden = false;
      return sheet;
    },
  };
}
