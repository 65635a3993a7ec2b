// What lies over the picture: the plumb line from the tape, numbers, clear distances, the upright tape, flags, a measurement.
import { $, D, S, el, esc, svg } from './store.js';
import { U, figure, side } from './words.js';
import { heights, mount, nearest, short } from './answers.js';
import { capTop } from './cameras.js';
import { flag } from './marks.js';

const HTML = markup => svg(markup);

function numbers(ctx, answer) {
  if (ctx.grid.phone) return '';
  let out = '', last = -1e9;
  for (const [text, at, id] of D.numbers) {
    if (ctx.gone(at, [id])) continue;
    const q = ctx.project(at[0], at[1], at[2] - 1.2), hit = answer.barred.has(id);
    if (!ctx.inside(q) || (q[0] - last < 16 && !hit)) continue;
    out += `<text class="jn${hit ? ' hit' : ''}" x="${q[0]}" y="${q[1] + 8}">${esc(text)}</text>`;
    last = q[0];
  }
  return out;
}
function clearances(ctx, answer) { // where the duct passes between joists
  if (ctx.grid.phone || !answer.parts) return '';
  const z = (D.numbers[0] ? D.numbers[0][1][2] : D.scene.ceiling) + 4;
  const riser = answer.parts.find(p => p.k === 'straight' && Math.abs(p.d[2]) > 0.99 && Math.min(p.a[2], p.b[2]) < z && Math.max(p.a[2], p.b[2]) > z);
  if (!riser || ctx.gone([...riser.a.slice(0, 2), z], [riser.id])) return '';
  const [x, y] = riser.a, half = (riser.w && Math.abs(riser.w[1]) > 0.5 ? riser.s[2] : riser.s[1]) / 2;
  const left = D.tape.joists.filter(j => j.b <= x - half + 1e-6).pop(), right = D.tape.joists.find(j => j.a >= x + half - 1e-6);
  let out = '';
  for (const [a, b] of [left && [left.b, x - half], right && [x + half, right.a]].filter(Boolean)) {
    if (ctx.gone([(a + b) / 2, y, z], [(a === left?.b ? left : right).id])) continue;
    const p = ctx.project(a, y, z), q = ctx.project(b, y, z);
    if (b - a < 0.3 || q[0] - p[0] < 12) continue;
    out += `<g class="slack"><path d="M${p[0]} ${p[1] - 5}v10M${q[0]} ${q[1] - 5}v10M${p[0]} ${p[1]}H${q[0]}"/><text x="${(p[0] + q[0]) / 2}" y="${p[1] - 7}">${figure(b - a)}</text></g>`;
  }
  return out;
}
function ghost(ctx, answer) { // which way, and how far, the least fix goes
  const shift = answer.ghost;
  if (answer.verdict.startsWith('Works') || shift === null || !ctx.shown.DUCT) return '';
  const z = D.scene.cook.height + answer.h, y = -D.scene.hood.depth, a = ctx.project(answer.x, y, z - 3.6), b = ctx.project(answer.x + shift, y, z - 3.6), c = ctx.project(answer.x, y, z);
  const d = Math.sign(b[0] - a[0]) || 1;
  return `<g class="ghost"><path class="ga" d="M${a[0]} ${c[1] + 4}V${a[1] + 8}M${a[0]} ${a[1]}H${b[0]}M${b[0] - d * 6} ${a[1] - 5}L${b[0]} ${a[1]}L${b[0] - d * 6} ${a[1] + 5}M${b[0]} ${a[1] - 8}V${a[1] + 8}"/>${ctx.grid.phone ? '' : `<text x="${d > 0 ? a[0] - 8 : a[0] + 8}" y="${a[1] + 5}" text-anchor="${d > 0 ? 'end' : 'start'}">${U(Math.abs(shift))} ${side(shift)}</text>`}</g>`;
}

let bandWords = []; // where the upright tape's words stand
function uprightTape(ctx, answer) {
  bandWords = [];
  const knob = $('#ht'), { band, scene, map } = D, ok = ['square', 'near', 'room'].includes(ctx.view);
  if (!ok) { knob.hidden = true; return ''; }
  const phone = ctx.grid.phone, reach = scene.hood.width / 2 + (phone ? 5 : 6.5), right = answer.x + reach + 12 < scene.width, hand = right ? 1 : -1;
  const x = answer.x + hand * reach, base = scene.cook.height, span = Math.ceil(Math.max(38, band.hi + 5, answer.h + 5));
  const at = v => ctx.project(x, 0, base + v), foot = at(0), head = at(span), lo = at(band.lo), hi = at(band.hi), me = at(answer.h), w = phone ? 11 : 15;
  let ticks = '';
  for (let v = 0; v <= span; v++) { if (phone && v % 2) continue; const p = at(v); ticks += `M${p[0] - w / 2} ${p[1]}h${v % 12 === 0 ? w : v % 6 === 0 ? w * 0.6 : w * 0.33}`; }
  const label = (v, words, up) => { // its words keep the flags away
    if (!words && !map) return '';
    const p = at(v), near = Math.abs(p[1] - me[1]) < 21, tx = p[0] + hand * (w / 2 + 5), anchor = right ? 'start' : 'end', room = Math.floor(((right ? ctx.width - tx : tx) - 12 - U(v).length * 6.8) / 6.6), short = words.length > room ? room < 8 ? '' : words.slice(0, room - 1) + '…' : words;
    const wide = U(v).length * 6.8 + (words && !phone ? 5 + short.length * 6.6 : 0), ty = p[1] + (up ? -4 : 13);
    if (!near) bandWords.push([right ? tx - 2 : tx - wide - 2, ty - 13, right ? tx + wide + 2 : tx + 2, ty + 4]);
    return `<g class="lim"><path d="M${p[0] - w / 2 - 3} ${p[1]}h${w + 6}"/>${near ? '' : `<text x="${tx}" y="${ty}" text-anchor="${anchor}"><tspan class="hv">${U(v)}</tspan>${words && !phone ? `<tspan class="hs" dx="5">${esc(short)}</tspan>` : ''}</text>`}</g>`;
  };
  knob.hidden = false;
  knob.style.left = `${me[0]}px`; knob.style.top = `${me[1]}px`; knob.dataset.side = hand;
  knob.band = [lo[1], hi[1]];
  $('#httxt').textContent = U(answer.h);
  const levels = heights(), text = `${U(answer.h)} above the cooktop. Between ${U(band.lo)}${band.loWhy ? `, ${band.loWhy}` : ''}, and ${U(band.hi)}${band.hiWhy ? `, ${band.hiWhy}` : ''}`;
  for (const [name, value] of [['aria-valuemin', levels[0]], ['aria-valuemax', levels[levels.length - 1]], ['aria-valuenow', answer.h], ['aria-valuetext', text]]) knob.setAttribute(name, value);
  return `<g class="vt"><path class="vb" d="M${foot[0] - w / 2} ${foot[1]}L${head[0] - w / 2} ${head[1]}h${w}L${foot[0] + w / 2} ${foot[1]}z"/>${band.hi > band.lo ? `<path class="vz" d="M${hi[0] - w / 2} ${hi[1]}h${w}L${lo[0] + w / 2} ${lo[1]}h${-w}z"/>` : ''}<path class="tk" d="${ticks}"/>${band.hi > band.lo ? label(band.lo, band.loWhy, false) + label(band.hi, band.hiWhy, true) : ''}</g>`;
}

function measurement(ctx, points) {
  if (!points.length) return '';
  const q = points.map(p => ctx.project(...p.at));
  let out = q.map(p => `<circle cx="${p[0]}" cy="${p[1]}" r="4.5"/>`).join('');
  if (points.length === 2) {
    const [a, b] = points.map(p => p.at), d = b.map((v, i) => v - a[i]), mid = [(q[0][0] + q[1][0]) / 2, (q[0][1] + q[1][1]) / 2];
    out = `<path d="M${q[0][0]} ${q[0][1]}L${q[1][0]} ${q[1][1]}"/>${out}<text x="${mid[0]}" y="${mid[1] - 10}" text-anchor="middle">${U(Math.hypot(...d))}</text>`;
  }
  return `<g class="ms">${out}</g>`;
}
export const measureText = points => {
  if (points.length < 2) return points.length ? `From ${points[0].label}. Now the second point.` : 'Touch two points of the picture; corners attract.';
  const [a, b] = points.map(p => p.at), d = b.map((v, i) => Math.abs(v - a[i]));
  const parts = [['across', d[0]], ['in depth', d[1]], ['up', d[2]]].filter(([, v]) => v > 0.03).map(([w, v]) => `${U(v)} ${w}`);
  return `${U(Math.hypot(...d))} from ${points[0].label} to ${points[1].label}${parts.length > 1 ? `: ${parts.join(', ')}` : ''}.`;
};

// flags keep off each other, off the tape's words and off the buttons: a later one steps up its pole until it is free
function pins(ctx, answer, onPick) {
  const box = $('#flags');
  box.replaceChildren();
  let poles = '';
  const taken = [], knob = $('#ht');
  if (!knob.hidden) { const x = parseFloat(knob.style.left), y = parseFloat(knob.style.top); taken.push(knob.dataset.side === '-1' ? [x - 84, y - 16, x + 12, y + 16] : [x - 12, y - 16, x + 84, y + 16]); }
  taken.push(...bandWords);
  const stage = $('#pic').getBoundingClientRect();
  for (const id of ['.step', '#key', '#rulertxt', '#trying']) { const r = $(id).getBoundingClientRect(); if (r.width) taken.push([r.left - stage.left - 4, r.top - stage.top - 4, r.right - stage.left + 4, r.bottom - stage.top + 4]); }
  const clear = (x, y, wide, tall) => !taken.some(t => x < t[2] && t[0] < x + wide && y - tall < t[3] && t[1] < y), POLE = 3;
  for (const f of answer.findings) {
    const sel = S.picked === f.code + f.n;
    if (!f.place || f.state === 'open' || (f.state === 'fine' && !sel)) continue;
    if (ctx.behind && f.place[1] < D.scene.wall - 1 && f.place[2] < D.scene.ceiling + 6) continue;
    if (ctx.gone(f.place, f.where)) continue;
    const q = ctx.project(...f.place);
    if (!ctx.inside(q)) continue;
    // the flag stands above its place, broken ones on a pole; with its words, when they are shown
    const broken = f.state === 'broken', pole = broken ? 26 : 0, tall = broken ? 32 : 22, said = broken || sel ? short(f) || f.title : '', wide = (broken ? 40 : 28) + (said ? said.length * 7 + 12 : 0);
    const first = Math.max(q[1] - pole, tall + 4), up = Array.from({ length: 24 }, (_, i) => first - 8 * i).filter(v => v >= tall + 4), down = Array.from({ length: 24 }, (_, i) => Math.max(first, q[1] + tall + 2) + 8 * i).filter(v => v <= ctx.height - 4);
    // to the right of its pole, else to the left of it, and never out of the picture; where it can, its pole too keeps off what stands there already
    const right = Math.max(4, Math.min(q[0], ctx.width - wide - 4)), left = Math.max(4, Math.min(q[0] - wide + 4, ctx.width - wide - 4));
    const tries = [[right, up.slice(0, 12)], [left, up.slice(0, 12)], [right, down.slice(0, 12)], [left, down.slice(0, 12)], [right, up.slice(12)], [right, down.slice(12)]];
    const every = tries.flatMap(([at, ys]) => ys.map(v => [at, v])).filter(([at, v]) => clear(at, v, wide, tall)), poled = ([, v]) => v - tall > q[1] - 1 ? clear(q[0] - 1, v - tall, POLE, v - tall - q[1]) : clear(q[0] - 1, q[1], POLE, q[1] - v);
    const [x, y] = every.find(poled) ?? every[0] ?? [right, first], under = y - tall > q[1] - 1;
    taken.push([x, y - tall, x + wide, y], under ? [q[0] - 1, q[1], q[0] + 2, y - tall] : [q[0] - 1, y, q[0] + 2, q[1]]);
    const pin = el('button', { class: `pin ${f.state}${sel ? ' sel' : ''}`, 'aria-label': `Flag ${f.n}: ${f.title}`, on: { click: () => onPick(f) } }, HTML(flag(f.state === 'fine' ? 'close' : f.state, f.n, f.state === 'broken' ? 32 : 22)), el('span', {}, short(f) || f.title));
    pin.style.left = `${x / ctx.width * 100}%`; pin.style.top = `${y / ctx.height * 100}%`;
    if (Math.abs(q[0] - x) > 2) pin.classList.add('aside'); // its own pole would stand beside its place
    poles += `<path d="M${q[0]} ${q[1]}V${under ? y - tall : y}"/>`;
    pin.style.setProperty('--at', `${q[0] - x}px`);
    box.append(pin);
    const real = pin.offsetWidth; // narrower than it was reckoned: what stands left of its pole moves up to it
    if (x < q[0] - 8 && x + real < q[0]) pin.style.left = `${(q[0] - real + 4) / ctx.width * 100}%`;
  }
  box.prepend(svg(`<svg class="poles" viewBox="0 0 ${ctx.width} ${ctx.height}" aria-hidden="true">${poles}</svg>`)); // under every word
}

export function overlay(ctx, answer, measured, onPick) {
  const sheet = $('#over');
  sheet.setAttribute('viewBox', `0 0 ${ctx.width} ${ctx.height}`);
  let out = '';
  if (ctx.view === 'square') {
    const foot = ctx.project(answer.x, answer.end ? answer.end.at[1] : -9, capTop(answer.end) || D.scene.cook.height + answer.h + D.scene.hood.body);
    const straight = answer.end && answer.end.kind === 'roof' && Math.abs(answer.end.at[0] - answer.x) < 0.2;
    out += `<path class="plumb" d="M${ctx.tapeAt} 0V${Math.max(0, straight || !answer.end ? foot[1] : ctx.project(answer.x, -9, D.scene.ceiling + 8)[1])}"/>${numbers(ctx, answer)}${clearances(ctx, answer)}${ghost(ctx, answer)}`;
  }
  out += uprightTape(ctx, answer) + measurement(ctx, measured);
  sheet.innerHTML = out;
  pins(ctx, answer, onPick);
}
export const levelNear = h => nearest(heights(), h) ?? mount();
