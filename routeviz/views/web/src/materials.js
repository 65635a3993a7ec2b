// How things look: honest flat colour, steel with a soft highlight, bars where something is broken, and cut faces flat.
import * as THREE from 'three';
import { D } from './store.js';

export const TINT = {
  light: { top: '#f6f1e8', foot: '#e9e1d3', edge: '#5b5144', timber: '#7a5a30', sky: 1.9, sun: 1.15, fill: 0.55, zone: '#12646b', steel: '#b7c1c9', duct: '#ffffff' },
  dark: { top: '#2b2925', foot: '#1d1c19', edge: '#17150f', timber: '#4a3413', sky: 1.05, sun: 0.95, fill: 0.3, zone: '#63c5cb', steel: '#aab3ba', duct: '#d0d0d0' },
};

function canvas(width, height, paint) {
  const c = document.createElement('canvas');
  c.width = width; c.height = height;
  paint(c.getContext('2d'), width, height);
  const made = new THREE.CanvasTexture(c);
  made.colorSpace = THREE.SRGBColorSpace;
  return made;
}
const brushed = (light, mid, low) => canvas(128, 128, (g, w, h) => {
  g.fillStyle = mid; g.fillRect(0, 0, w, h);
  const across = g.createLinearGradient(0, 0, w, 0);
  [[0, low], [0.18, mid], [0.36, light], [0.46, '#fff'], [0.56, light], [0.8, mid], [1, low]].forEach(stop => across.addColorStop(...stop));
  g.globalAlpha = 0.85; g.fillStyle = across; g.fillRect(0, 0, w, h);
  const down = g.createLinearGradient(0, 0, 0, h);
  down.addColorStop(0, 'rgba(255,255,255,.55)'); down.addColorStop(0.45, 'rgba(255,255,255,0)'); down.addColorStop(1, 'rgba(40,48,56,.45)');
  g.globalAlpha = 1; g.fillStyle = down; g.fillRect(0, 0, w, h);
});
export const ground = tint => canvas(8, 256, (g, w, h) => { const l = g.createLinearGradient(0, 0, 0, h); l.addColorStop(0, tint.top); l.addColorStop(1, tint.foot); g.fillStyle = l; g.fillRect(0, 0, w, h); });

// the duct's holes in what it passes: up to eight capsules, set once for each place
const MOST = 8;
export const holes = { count: { value: 0 }, from: { value: Array.from({ length: MOST }, () => new THREE.Vector3()) }, to: { value: Array.from({ length: MOST }, () => new THREE.Vector3()) }, radius: { value: 0 } };
export function setHoles(parts, V3) {
  const straight = (parts || []).filter(p => p.k === 'straight' && p.s[0] === 'round').slice(0, MOST);
  holes.count.value = straight.length;
  straight.forEach((p, i) => { holes.from.value[i].copy(V3(p.a)); holes.to.value[i].copy(V3(p.b)); holes.radius.value = p.s[1] / 2 - 0.05; });
}

const POSITION = ['#include <begin_vertex>', '#include <begin_vertex>\nvPlace = (modelMatrix * vec4(position, 1.0)).xyz;'];
const rgbOf = hex => hex.match(/\w\w/g).map(v => (parseInt(v, 16) / 255).toFixed(3)).join(',');
// closed solids only: painting the inner side of a skin flat makes a cut look solid
function dress(material, { cut, pierced, bars }) {
  material.onBeforeCompile = shader => {
    shader.vertexShader = shader.vertexShader.replace('#include <common>', '#include <common>\nvarying vec3 vPlace;').replace(...POSITION);
    let head = 'varying vec3 vPlace;\n', start = '', colour = '', finish = '';
    if (pierced) {
      Object.assign(shader.uniforms, { holeCount: holes.count, holeFrom: holes.from, holeTo: holes.to, holeRadius: holes.radius });
      head += `uniform int holeCount; uniform vec3 holeFrom[${MOST}]; uniform vec3 holeTo[${MOST}]; uniform float holeRadius;\n`;
      start = `for (int i = 0; i < ${MOST}; i++) { if (i >= holeCount) break; vec3 run = holeTo[i] - holeFrom[i], off = vPlace - holeFrom[i]; float t = dot(off, run) / dot(run, run); if (t > -0.01 && t < 1.02 && length(off - run * t) < holeRadius) discard; }\n`;
    }
    if (bars) colour = 'float bar = step(0.5, fract((vPlace.x + vPlace.y - vPlace.z) / 3.6)); diffuseColor.rgb = mix(vec3(0.54, 0.033, 0.011), vec3(1.0), bar);\n';
    if (cut) finish = `\nif (!gl_FrontFacing) gl_FragColor = vec4(${rgbOf(cut)}, 1.0);`;
    shader.fragmentShader = shader.fragmentShader.replace('#include <common>', '#include <common>\n' + head)
      .replace('#include <clipping_planes_fragment>', '#include <clipping_planes_fragment>\n' + start)
      .replace('#include <color_fragment>', '#include <color_fragment>\n' + colour)
      .replace('#include <colorspace_fragment>', '#include <colorspace_fragment>' + finish);
  };
  material.customProgramCacheKey = () => [cut || '', +!!pierced, +!!bars].join();
  return material;
}

// one paint: as it is, `pierced` for what the duct passes through, and of both a `quick` twin whose light is in its corners
function paint(look, cut) {
  const lit = pierced => {
    const { color, ...rest } = look, made = dress(new THREE.MeshLambertMaterial(look), { cut, pierced });
    made.quick = dress(new THREE.MeshBasicMaterial({ ...rest, color, vertexColors: true }), { cut, pierced });
    return made;
  };
  const made = lit(false);
  if (!look.transparent) made.pierced = lit(true);
  return made;
}

export function makeMaterials(clipping) {
  // inner sides are only drawn while the picture is cut open
  const base = { clippingPlanes: clipping, side: THREE.FrontSide, polygonOffset: true, polygonOffsetFactor: 0.4, polygonOffsetUnits: 1 };
  const line = colour => new THREE.LineBasicMaterial({ color: colour, clippingPlanes: clipping });
  const M = {
    steel: dress(new THREE.MeshPhongMaterial({ ...base, color: '#b7c1c9', specular: '#5c6166', shininess: 26 }), { cut: '#7f8e9a' }),
    duct: dress(new THREE.MeshMatcapMaterial({ ...base, matcap: brushed('#dfe7ee', '#a3b1bd', '#5e6c78') }), { cut: '#6c7a86' }),
    bars: dress(new THREE.MeshLambertMaterial({ ...base, polygonOffsetFactor: 0, polygonOffsetUnits: -2 }), { cut: '#8e1f0c', bars: true }),
    zone: new THREE.MeshBasicMaterial({ ...base, side: THREE.DoubleSide, color: '#12646b', transparent: true, opacity: 0.1, depthWrite: false }),
    ghost: new THREE.MeshBasicMaterial({ ...base, side: THREE.DoubleSide, color: '#12646b', transparent: true, opacity: 0.22, depthWrite: false }),
    seam: line('#566472'), edge: line('#5b5144'), timber: line('#7a5a30'), zoneLine: line('#12646b'), barLine: line('#8e1f0c'), strong: line('#24272b'),
    paint: {},
  };
  for (const [name, [colour, edge, cut, metal, opacity, edges]] of Object.entries(D.materials)) {
    const made = metal ? M.steel : name === 'zone' ? M.zone : paint({ ...base, color: colour, transparent: opacity < 1, opacity }, opacity < 1 ? null : cut);
    M.paint[name] = { material: made, line: !edges ? null : name === 'zone' ? M.zoneLine : metal ? M.seam : edge === '#7a5a30' ? M.timber : M.edge, glass: opacity < 1 && name !== 'zone' };
  }
  const painted = Object.values(M.paint).filter(p => !p.glass && p.material !== M.zone).map(p => p.material);
  M.solid = [...new Set([M.steel, M.duct, M.bars, ...painted.flatMap(m => [m, m.quick, m.pierced, m.pierced && m.pierced.quick].filter(Boolean))])];
  return M;
}
export function applyTint(M, dark) {
  const t = TINT[dark ? 'dark' : 'light'];
  M.edge.color.set(t.edge); M.timber.color.set(t.timber); M.zoneLine.color.set(t.zone); M.zone.color.set(t.zone); M.ghost.color.set(t.zone);
  M.steel.color.set(t.steel); M.duct.color.set(t.duct);
  return t;
}
