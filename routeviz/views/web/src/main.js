// The page: one state (where the hood is, which way is shown), one answer for it, everything drawn from that answer.
import { $, $$, D, L, S, dark, readData, setData, still, svg } from './store.js';
import { U, getUnit, setUnit, startUnit } from './words.js';
import { KIND, answer, fixes, heights, kindAt, mount, nearest, places } from './answers.js';
import { PATTERNS, tapeMarkup } from './tape.js';
import { LAYERS, makePicture } from './picture.js';
import { VIEWS, topOf, viewName } from './cameras.js';
import { measureText, overlay } from './overlay.js';
import { listAssumed, listFindings, listWays, markWay, sayAnswer, sayUnit, showWork } from './panels.js';
import { showAir } from './air.js';
import { startLive } from './app.js';
import { bays, setting, startFinder } from './appjoists.js';
import { lessonState, startLesson } from './lesson.js';

readData();
startUnit();
S.x = D.scene.hood.x; S.h = mount();
let A = null, picture = null, grid = {}, tape = null, measuring = false, measured = [];
const movable = () => !!D.map && D.map.x.length > 1;

// ---- one answer, drawn everywhere ----------------------------------------------------------------------------------
function work() {
  A = answer(S.x, S.h);
  if (L.cover) L.cover(A);
  const members = new Set(A.findings.filter(f => f.state === 'broken' && !f.waived).flatMap(f => f.where));
  if (!A.parts && A.why) for (const b of A.why.blockers) members.add(b[0]);
  const thing = /^(hood|cover|cooktop|counter|floor)/, flat = ['GLAZING', 'BOARD', 'SKIN', 'ROOF'];
  const layerOf = Object.fromEntries(Object.values(D.pieces).map(p => [p[2], p]));
  A.barred = new Set([...members].filter(id => layerOf[id] && (!thing.test(id) || /stud|joist|plate/.test(id)) && !flat.includes(layerOf[id][0]) && !D.glazed.includes(id)));
}
function update() {
  work();
  drawTape();
  sayAnswer(A, moveTo);
  const high = Math.ceil($('.answer').getBoundingClientRect().height); // another height of the hood may have more to say: it stays so high
  if (high > reserve.least) { reserve.least = high; $('.answer').style.minHeight = `${high}px`; }
  listFindings(A, pick, moveTo);
  markWay(A);
  for (const b of $$('[data-jump]')) { const none = movable() && goodPlace(+b.dataset.jump) === undefined; b.disabled = none || !movable(); b.title = none ? `no place that works further ${+b.dataset.jump < 0 ? 'left' : 'right'}` : ''; }
  showAir(A);
  sayUnit();
  showWork(A);
  if (picture) picture.set(A);
  over();
  if (L.moved) L.moved(A);
}
// the row of the answer is as high as any answer along the tape needs, so that nothing below it moves while the hood does
let reserved = '';
function reserve() {
  const box = $('.answer'), kept = [S.x, S.option, S.fix], key = [box.clientWidth, innerWidth, getUnit(), D.scene.name, D.fixes.length].join();
  if (key !== reserved) { reserved = key; reserve.least = 0; }
  if (D.live && !movable()) return; // its map comes later, and is not waited for
  const found = [];
  S.fix = null;
  for (const x of [D.scene.hood.x, ...places()]) { S.x = x; S.option = 0; found.push(answer(S.x, S.h)); }
  S.x = D.scene.hood.x;
  D.plan.options.forEach((_, i) => { S.option = i; found.push(answer(S.x, S.h)); });
  D.fixes.forEach((f, i) => { if (f.plan) { S.fix = i; found.push(answer(S.x, S.h)); } });
  [S.x, S.option, S.fix] = kept;
  const long = new Set(), most = (list, of) => list.reduce((a, b) => of(b) > of(a) ? b : a, list[0]);
  // a phone has no room to spare: there only answers of the kind that is shown are reckoned with
  const works = a => a.verdict.startsWith('Works'), now = answer(kept[0], S.h), narrow = innerWidth <= 720 ? found.filter(a => works(a) === works(now)) : found;
  for (const some of [narrow.filter(a => !works(a) && a.fixes.length), narrow.filter(a => works(a) || !a.fixes.length)]) {
    for (const of of [a => a.text.length, a => a.second.length + (a.from || '').length, a => a.text.length * 2 + a.second.length]) if (some.length) long.add(most(some, of));
  }
  box.style.minHeight = '';
  for (const a of long) { if (L.cover) L.cover(a); sayAnswer(a, moveTo); reserve.least = Math.max(reserve.least, Math.ceil(box.getBoundingClientRect().height)); }
  box.style.minHeight = `${reserve.least}px`;
}
let waiting = 0;
const later = () => { if (!waiting) waiting = requestAnimationFrame(() => { waiting = 0; update(); }); };

let moving = 0;
const leave = () => { moving++; S.option = 0; S.fix = null; S.picked = null; }; // what is shown was for the place that is left
function moveTo(x, h = S.h, fix = null) { // to a place of the map, or to that of a fix's own plan
  leave();
  const me = moving, x0 = S.x, h0 = S.h, t0 = performance.now(), long = still() ? 0 : 420;
  const step = () => {
    if (me !== moving) return;
    const u = long ? Math.min(1, (performance.now() - t0) / long) : 1, w = 1 - (1 - u) ** 3;
    S.x = u < 1 ? nearest(places(), x0 + (x - x0) * w) : fix !== null ? x : nearest([...places(), D.scene.hood.x], x);
    S.h = u < 1 ? h0 : fix !== null ? h : nearest([...heights(), mount()], h);
    if (u >= 1) S.fix = fix;
    update();
    if (u < 1) requestAnimationFrame(step);
  };
  step();
}
function choose(option) { leave(); S.option = option; S.x = D.scene.hood.x; S.h = mount(); update(); }
function pick(f) {
  S.picked = f.code + f.n;
  if (f.place && picture) {
    const [x, y, z] = f.place, end = A.end && A.end.kind !== null ? A.end.at : null;
    const out = end && Math.hypot(x - end[0], y - end[1], z - end[2]) < 16 || y > D.scene.wall - 0.5 || x < -3 || x > D.scene.width + 3;
    picture.go(out ? 'outside' : z > D.scene.ceiling - 6 ? 'ceiling' : 'near');
  }
  listFindings(A, pick, moveTo);
  over();
}

// ---- the tape -------------------------------------------------------------------------------------------------------
function measureGrid() {
  const w = $('#stage').clientWidth, phone = w < 620, left = phone ? 44 : 128, right = phone ? 14 : w > 900 ? 112 : 40, high = $('#pic').clientHeight || 480;
  const top = topOf(A), pad = phone ? 4 : 6, foot = phone ? 20 : 28; // the counter must stay in the picture
  const s = Math.min((w - left - right) / D.scene.width, (high - pad) / (top - foot));
  grid = { w, s, left: left + Math.max(0, (w - left - right - s * D.scene.width) / 2), phone, top, pad, high };
}
const hits = () => A.barred;
function drawTape() {
  const bad = !A.covered && !A.verdict.startsWith('Works'), own = A.covered || !D.map ? null : { x: A.x, kind: A.kind, back: /^Straight back/.test(A.words), boxed: false, by: '' };
  tape = tapeMarkup({ own, width: grid.w, s: grid.s, left: grid.left, x: A.x, h: A.h, hit: hits(), bad });
  const sheet = $('#tape');
  sheet.setAttribute('viewBox', `0 0 ${grid.w} ${tape.height}`);
  sheet.style.height = `${tape.height}px`;
  sheet.innerHTML = tape.markup;
  const hang = $('#hang');
  hang.style.left = `${tape.at / grid.w * 100}%`; hang.style.top = `${tape.ty + tape.th + 4}px`;
  $('#hangtxt').textContent = U(A.x);
  $('#hangtxt').classList.toggle('flip', tape.at > grid.w - 130);
  const xs = places();
  for (const [name, value] of [['aria-valuemin', xs[0]], ['aria-valuemax', xs[xs.length - 1]], ['aria-valuenow', A.x], ['aria-valuetext', `${U(A.x)} from the left wall. ${A.verdict}. ${A.text}`]]) hang.setAttribute(name, value);
  const loupe = $('#loupe');
  if (!grid.phone) return;
  const width = grid.w, s = 15, span = width / s, x0 = Math.max(0, Math.min(D.scene.width - span, A.x - span / 2));
  const close = tapeMarkup({ own, width, s, left: 0, x0, x1: x0 + span, x: A.x, h: A.h, hit: hits(), loupe: true, bad });
  loupe.setAttribute('viewBox', `0 0 ${width} ${close.height}`);
  loupe.style.height = `${close.height}px`;
  loupe.innerHTML = close.markup.replace(PATTERNS, '');
}
function drag(node) {
  node.addEventListener('pointerdown', down => {
    if (!movable() || down.target.closest('#ht')) return;
    node.setPointerCapture(down.pointerId);
    const box = $('#stage').getBoundingClientRect(), loupe = node.id === 'loupe', start = S.x, at = down.clientX, grip = node.id === 'hang' ? down.clientX - box.left - tape.at : 0;
    moving++;
    const move = e => {
      const x = loupe ? start - (e.clientX - at) / 15 : (e.clientX - box.left - grip - grid.left) / grid.s;
      leave(); S.x = nearest(places(), x); later();
    };
    if (!loupe) move(down);
    node.onpointermove = move;
    node.onpointerup = node.onpointercancel = () => { node.onpointermove = null; };
    if (!loupe) down.preventDefault();
    $('#hang').focus({ preventScroll: true });
  });
}
const shift = (list, value, by) => { const near = list.indexOf(nearest(list, value)); return list[Math.min(list.length - 1, Math.max(0, near + by))]; };
function nudge(by) { leave(); S.x = shift(places(), S.x, by); update(); }
function perInch() { const xs = places(); return xs.length < 2 ? 1 : Math.max(1, Math.round(1 / ((xs[xs.length - 1] - xs[0]) / (xs.length - 1)))); }
function setHeight(h) { if (S.fix !== null) S.x = nearest(places(), S.x); leave(); S.h = nearest(heights(), h); later(); }
function goodPlace(by) { // the next stretch that works, at its middle
  const xs = places(), works = x => ['e0', 'e1', 'e2', 'e3'].includes(kindAt(x, S.h));
  const runs = [];
  xs.forEach((x, i) => { if (!works(x)) return; const last = runs[runs.length - 1], kind = kindAt(x, S.h); if (last && last.end === i - 1 && last.kind === kind) { last.end = i; last.xs.push(x); } else runs.push({ end: i, kind, xs: [x] }); });
  const middles = runs.map(r => r.xs[Math.floor((r.xs.length - 1) / 2)]);
  return by > 0 ? middles.find(v => v > S.x + 0.2) : middles.filter(v => v < S.x - 0.2).pop();
}
function jump(by) { const next = goodPlace(by); if (next !== undefined) moveTo(next); }

// ---- over the picture ------------------------------------------------------------------------------------------------
function over() {
  if (!picture || !A) return;
  const outside = $('#views [data-v="outside"]'), words = viewName('outside', A);
  if (outside && outside.textContent !== words) outside.textContent = words;
  const width = $('#pic').clientWidth, height = $('#pic').clientHeight;
  const inside = p => p[2] < 1 && p[0] > 6 && p[0] < width - 6 && p[1] > 6 && p[1] < height - 6;
  overlay({ width, height, grid, view: picture.view(), project: picture.project, inside, gone: picture.gone, shown: picture.shown, behind: picture.behind(), tapeAt: tape.at }, A, measured, pick);
}
function layout() {
  reserve();
  work();
  measureGrid();
  if (picture) { picture.set(A); picture.size({ width: $('#pic').clientWidth, height: $('#pic').clientHeight, grid }); }
  update();
}

// ---- wiring ------------------------------------------------------------------------------------------------------------
function buttons() {
  const views = $('#views'), off = $$('#layers input').filter(i => !i.checked).map(i => i.name), stood = picture && picture.view();
  for (const box of ['#views button', '#layers label', '#key > *']) for (const node of $$(box)) node.remove();
  for (const [name, words] of Object.entries(VIEWS)) {
    const b = document.createElement('button');
    b.dataset.v = name; b.textContent = name === 'ceiling' && !D.tape.joists.length ? 'up into the ceiling' : words;
    b.onclick = () => picture && picture.go(name);
    b.setAttribute('aria-pressed', String(name === stood));
    views.append(b);
  }
  const box = $('#layers > div');
  for (const [name, words] of Object.entries(LAYERS)) {
    if (!['DUCT'].includes(name) && !Object.values(D.pieces).some(p => p[0] === name)) continue;
    const label = document.createElement('label'), input = document.createElement('input');
    input.type = 'checkbox'; input.name = name; input.checked = !off.includes(name);
    input.onchange = () => picture && picture.layer({ [name]: input.checked });
    label.append(input, words); box.append(label);
  }
  const key = $('#key');
  const met = D.map ? new Set(D.map.h.flatMap(h => D.map.x.map(x => kindAt(x, h)))) : null;
  if (D.map) for (const [kind, { name, height }] of Object.entries(KIND)) {
    if (!met.has(kind)) continue;
    const high = Math.max(3, 12 * height), item = document.createElement('span');
    item.append(svg(`<svg width="18" height="12" aria-hidden="true"><rect x=".5" y="${12 - high}" width="17" height="${high - 0.5}" fill="url(#p-${kind})" ${kind === 'bad' ? 'stroke="var(--bar)"' : kind === 'e2' || kind === 'e3' ? 'stroke="var(--offline)"' : ''}/></svg>`), name);
    key.append(item);
  }
  if (D.map && D.map.cells.some(r => r.some(c => c[5] > 0))) {
    const item = document.createElement('span');
    item.append(svg('<svg width="18" height="12" aria-hidden="true"><rect x=".8" y="1.8" width="16.4" height="9.4" fill="none" stroke="var(--ink)" stroke-width="1.1" stroke-dasharray="3 2"/></svg>'), 'boxed in the room');
    key.append(item);
  }
  key.hidden = !D.map;
  document.body.dataset.map = movable() ? '1' : '0';
  $('.step').hidden = !movable() && !D.live; // in the app the map comes a little later, and nothing jumps for it
  for (const b of $$('.step button')) b.disabled = !movable();
  $('#hang').setAttribute('aria-disabled', String(!movable()));
  slider($('#hang'), movable(), movable() ? 'Hood place along the tape' : 'The hood on the tape');
  slider($('#ht'), heights().length > 1);
}
function slider(knob, works, name) { // what cannot be moved is a picture, and out of the way of the Tab key
  knob.setAttribute('role', works ? 'slider' : 'img'); knob.tabIndex = works ? 0 : -1;
  if (name) knob.setAttribute('aria-label', name);
}
function nudgeWords() {
  const xs = places(), step = xs.length > 1 ? xs[1] - xs[0] : 0.25;
  for (const b of $$('[data-nudge]')) { const sign = +b.dataset.nudge < 0 ? '−' : '+'; b.textContent = `${sign} ${U(step)}`; b.setAttribute('aria-label', `${U(step)} ${sign === '+' ? 'right' : 'left'}`); }
}
function cutting() {
  const range = $('#cut'), axis = $('#cutaxis'), out = $('#cutv');
    const show = () => {
    const spans = { y: [D.cut.front, D.scene.wall], x: [-6, D.scene.width + 6], z: [0, topOf(A)] };
    const [lo, hi] = spans[axis.value], t = +range.value / 100, off = axis.value === 'z' ? t >= 1 : t <= 0, value = Math.round((lo + (hi - lo) * t) * 2) / 2;
    if (picture) picture.cut(axis.value, off ? null : value);
    out.textContent = off ? 'off' : axis.value === 'y' ? (value <= 0 ? `${U(-value)} out` : `${U(value)} in`) : U(value);
    range.setAttribute('aria-valuetext', out.textContent);
  };
  axis.onchange = () => { range.value = axis.value === 'z' ? 100 : 0; show(); };
  range.oninput = show;
}
function keys() {
  $('#hang').addEventListener('keydown', e => {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[e.key], level = { ArrowDown: -1, ArrowUp: 1 }[e.key];
    if (!movable()) return;
    if (step) nudge(step * (e.shiftKey ? perInch() : 1));
    else if (level) setHeight(shift(heights(), S.h, level));
    else if (e.key === 'PageDown') jump(1);
    else if (e.key === 'PageUp') jump(-1);
    else if (e.key === 'Home') { leave(); S.x = places()[0]; update(); }
    else if (e.key === 'End') { leave(); S.x = places()[places().length - 1]; update(); }
    else return;
    e.preventDefault();
  });
  $('#ht').addEventListener('keydown', e => {
    const step = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[e.key], levels = heights();
    if (step) setHeight(shift(levels, S.h, step)); else if (e.key === 'Home') setHeight(levels[0]); else if (e.key === 'End') setHeight(levels[levels.length - 1]); else return;
    e.preventDefault();
  });
  $('#ht').addEventListener('pointerdown', down => {
    const knob = $('#ht');
    if (heights().length < 2 || !knob.band) return;
    knob.setPointerCapture(down.pointerId);
    const y0 = down.clientY, h0 = S.h, per = (D.band.hi - D.band.lo) / (knob.band[0] - knob.band[1]) || 0.2;
    knob.onpointermove = e => setHeight(h0 - (e.clientY - y0) * per);
    knob.onpointerup = knob.onpointercancel = () => { knob.onpointermove = null; };
    knob.focus(); down.preventDefault();
  });
  $('#pic').addEventListener('keydown', e => {
    const d = { ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, -0.08], ArrowDown: [0, 0.08] }[e.key];
    if (d && picture && e.target === $('#pic')) { picture.turn(...d); e.preventDefault(); }
  });
  addEventListener('keydown', e => {
    if (/INPUT|TEXTAREA|SELECT/.test(e.target.tagName) || e.ctrlKey || e.metaKey || e.altKey) return;
    if (e.key === '0') { if (picture) picture.go('square'); } else if (e.key >= '1' && e.key <= '9') { const f = A.findings.find(q => q.n === +e.key); if (f) pick(f); } else if (e.key === ']' && movable()) jump(1); else if (e.key === '[' && movable()) jump(-1); else if (e.key === 'Escape') { if (measuring) measureMode(false); $('#layers').open = false; }
  });
}
function measureMode(on) {
  measuring = on; measured = [];
  $('#ruler').setAttribute('aria-pressed', String(on));
  $('#rulertxt').hidden = !on;
  $('#rulertxt').textContent = on ? measureText([]) : '';
  $('#pic').classList.toggle('measuring', on);
  over();
}
function ruler() {
  $('#ruler').onclick = () => measureMode(!measuring);
  let down = null;
  $('#pic').addEventListener('pointerdown', e => { down = [e.clientX, e.clientY]; });
  $('#pic').addEventListener('pointerup', e => {
    if (!measuring || !picture || !down || Math.hypot(e.clientX - down[0], e.clientY - down[1]) > 5 || e.target.closest('button')) return;
    const box = $('#pic').getBoundingClientRect(), point = picture.pick(e.clientX - box.left, e.clientY - box.top);
    if (!point) return;
    measured = measured.length === 2 ? [point] : [...measured, point];
    $('#rulertxt').textContent = measureText(measured);
    over();
  });
}
function toPaper() {
  if (!picture) return;
  document.documentElement.dataset.paper = '1';
  picture.theme(); picture.draw();
  $('#still').src = picture.full().toDataURL('image/jpeg', 0.9);
  $('#stillover').replaceChildren($('#over').cloneNode(true));
  $('#stillflags').replaceChildren(...[...$('#flags').children].map(n => n.cloneNode(true)));
  $('#printpic').style.setProperty('--ar', `${$('#pic').clientWidth}/${$('#pic').clientHeight}`);
}
function wire() {
  ['#hang', '#tape', '#loupe'].forEach(id => drag($(id)));
  for (const b of $$('[data-jump]')) b.onclick = () => jump(+b.dataset.jump);
  for (const b of $$('[data-nudge]')) b.onclick = () => nudge(Math.sign(+b.dataset.nudge));
  $('#unit').onclick = () => { setUnit(getUnit() === 'in' ? 'mm' : 'in'); $('#unit').textContent = getUnit() === 'in' ? 'Show mm' : 'Show inches'; listWays(choose); nudgeWords(); layout(); };
  $('#unit').textContent = getUnit() === 'in' ? 'Show mm' : 'Show inches';
  const themeWord = () => { $('#theme').textContent = dark() ? 'Light' : 'Dark'; };
  $('#theme').onclick = () => { document.documentElement.dataset.theme = dark() ? 'light' : 'dark'; themeWord(); if (picture) picture.theme(); update(); };
  themeWord();
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => { themeWord(); if (picture) picture.theme(); update(); });
  $('#print').onclick = () => print();
  addEventListener('beforeprint', toPaper);
  addEventListener('afterprint', () => { delete document.documentElement.dataset.paper; if (picture) picture.theme(); });
  addEventListener('resize', () => { clearTimeout(layout.later); layout.later = setTimeout(layout, 60); });
}
function noPicture(fault) {
  picture = null;
  $('#nopic').hidden = false;
  $('#nopic').textContent = 'This browser draws no 3D here. The tape, the findings and the order of work are all there; the still picture shows the rest.';
  document.body.dataset.ready = 'flat';
  console.info(String(fault));
}
// another plan, or more about the same one, in place of what is shown
function swap(data, model, then = () => {}) {
  const same = data.plan === D.plan || !model && !!D.live && data.live.number === D.live.number, show = () => {
    const at = [S.x, S.h];
    setData(data);
    if (!same) { S.x = D.scene.hood.x; S.h = mount(); leave(); measured = []; if (picture) picture.furnish(); }
    else if (movable() && S.fix === null) [S.x, S.h] = [nearest([...places(), D.scene.hood.x], at[0]), nearest([...heights(), mount()], at[1])];
    $('#job').textContent = D.scene.name;
    $('#invented').hidden = !D.scene.invented;
    buttons(); nudgeWords(); listWays(choose); listAssumed(); layout(); then();
  };
  if (picture && !same) picture.read(model, data.pieces, show); else show();
}
function start() {
  $('#job').textContent = D.scene.name;
  $('#invented').hidden = !D.scene.invented;
  const begin = D.lesson ? startLesson({ swap, update, picture: () => picture }) : null;
  work(); measureGrid(); buttons(); nudgeWords(); cutting(); keys(); ruler(); wire(); listWays(choose); listAssumed();
  const bytes = Uint8Array.from(atob($('#model').textContent.trim()), c => c.charCodeAt(0)).buffer;
  try {
    picture = makePicture($('#pic'), bytes, {
      drawn: () => { over(); if (L.drawn) L.drawn(); }, failed: noPicture,
      stood: view => { for (const b of $$('#views button')) b.setAttribute('aria-pressed', String(b.dataset.v === view)); },
      ready: () => { layout(); if (begin) begin(); document.body.dataset.ready = '1'; },
    });
  } catch (fault) { noPicture(fault); }
  layout();
  startFinder();
  if (document.fonts) document.fonts.ready.then(layout); // rows are as high as their letters
  if (D.live) startLive({ swap, moveTo, refresh: update });
}
start();
// for tests and for whoever is curious
window.routeviz = { data: () => D, live: L, bays: marks => bays(marks, setting()), info: () => picture && picture.info(), state: S, answer: () => A, moveTo, setHeight, update, picture: () => picture, fixes: () => fixes(A), measured: () => measured, toPaper, lesson: lessonState };
