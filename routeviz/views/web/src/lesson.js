// A lesson: steps with something to look at, to hear, and to answer. Words and right answers come from the plans.
import { $, $$, D, L, el, svg } from './store.js';
import { ownUnit } from './words.js';

const NUMBERS = /\d (in|ft|mm|m|cfm|l\/s|m\/s|ft\/min)\b/;
// a number stays on one line with its fraction and its unit
const tied = text => text.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0').replace(/(\d) (?=(in|ft|mm|m|cfm|l\/s|m\/s|%)(?![a-z]))/g, '$1\u00a0');
let lesson = null, hooks = null, at = 0, shown = '';
const done = new Map(); // step -> { answered, picked }
const step = () => lesson.steps[at];
const state = () => { if (!done.has(at)) done.set(at, { answered: false, picked: new Set() }); return done.get(at); };
const asks = s => s.choices.length > 0 || s.candidates.length > 0;
const covered = () => step().covered && !(asks(step()) && state().answered);

// what is not to be seen yet is taken out of the answer before anything is drawn
function cover(answer) {
  answer.covered = covered();
  if (!answer.covered) return;
  answer.verdict = 'Not told yet'; answer.text = ''; answer.second = '';
  answer.findings = []; answer.fixes = []; answer.why = null; answer.ghost = null;
}

// ---- the step ---------------------------------------------------------------------------------------------------------
function bytesOf(text) { return Uint8Array.from(atob(text.trim()), c => c.charCodeAt(0)).buffer; }
function go(n, focus = true) {
  at = Math.max(0, Math.min(lesson.steps.length - 1, n));
  const s = step(), set = () => { stand(); if (focus) { scrollTo(0, 0); $('#lesson h2').focus({ preventScroll: true }); } };
  write();
  if (s.plan !== shown) {
    shown = s.plan;
    const other = lesson.plans[s.plan];
    hooks.swap(other ? other.data : lesson.first, bytesOf(other ? other.model : $('#model').textContent), set);
  } else set();
}
// what the step says in its own words is not said again under it
const toldAlready = () => { const s = step(), text = $('#sentence').textContent; return text !== '' && (s.say.includes(text) || (state().answered && s.reveal.includes(text))); };
function stand() {
  const picture = hooks.picture(), s = step();
  document.body.dataset.covered = covered() ? '1' : '0';
  $('#job').textContent = lesson.title;
  hooks.update();
  document.body.dataset.said = toldAlready() ? '1' : '0';
  if (!picture) return;
  const layers = {};
  for (const name of Object.keys(picture.shown)) layers[name] = !s.away.includes(name.toLowerCase());
  for (const box of $$('#layers input')) box.checked = layers[box.name] !== false;
  picture.layer(layers);
  picture.go(s.view);
  const row = $('.tools'), chip = $('#views [aria-pressed="true"]'); // on a phone the buttons are one row that is pushed along
  if (chip && row.scrollWidth > row.clientWidth) row.scrollLeft += chip.getBoundingClientRect().left - row.getBoundingClientRect().left - (row.clientWidth - chip.offsetWidth) / 2;
  point();
}

// ---- what is pointed at -------------------------------------------------------------------------------------------------
function hull(points) { // round the outside of flat points
  const p = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]), cross = (o, a, b) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  const half = list => list.reduce((out, q) => { while (out.length > 1 && cross(out[out.length - 2], out[out.length - 1], q) <= 0) out.pop(); out.push(q); return out; }, []).slice(0, -1);
  return [...half(p), ...half([...p].reverse())];
}
function point() {
  const picture = hooks.picture(), sheet = $('#pointing');
  if (!picture) return;
  const host = $('#pic'), w = host.clientWidth, h = host.clientHeight;
  sheet.setAttribute('viewBox', `0 0 ${w} ${h}`);
  let shapes = '';
  for (const body of step().marks.flatMap(m => m.bodies)) {
    const seen = body.map(p => picture.project(...p)).filter(q => q[2] < 1);
    if (seen.length > 2) shapes += `M${hull(seen).map(q => `${q[0].toFixed(1)} ${q[1].toFixed(1)}`).join('L')}Z`;
  }
  // one outline round all of them: what lies inside of a shape is left out
  const out = shapes && `<mask id="p-round"><rect width="${w}" height="${h}" fill="#fff"/><path d="${shapes}" fill="#000"/></mask><g mask="url(#p-round)"><path class="pa" d="${shapes}"/><path class="pb" d="${shapes}"/></g>`;
  sheet.innerHTML = out;
  letters(picture, w, h);
}
// letters stand over their places, as near as is free, each with a line to its own (views/lessons/poles.py does the same on paper)
const off = (p, a, b) => { const dx = b[0] - a[0], dy = b[1] - a[1], long = dx * dx + dy * dy, t = long ? Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / long)) : 0; return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy); };
const apart = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);
function standing(feet, w, h, r) {
  const pace = 2 * r + 2, steps = [], found = [];
  for (let col = -8; col <= 8; col++) for (let row = -14; row < 14; row++) if (row) steps.push([Math.abs(row) + 1.3 * Math.abs(col) + (row < 0 ? 3 : 0), col, row]);
  steps.sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]);
  for (const foot of feet) {
    const free = steps.map(([, col, row]) => [foot[0] + col * pace, foot[1] - (row + 0.2) * pace]).filter(p => p[0] > r && p[0] < w - r && p[1] > r && p[1] < h - r && found.every(o => apart(p, o) >= 2 * r) && feet.every(f => apart(p, f) >= r));
    const clear = free.find(p => found.every((o, i) => apart(feet[i], foot) <= r / 2 || (off(o, foot, p) >= r + 2 && off(p, feet[i], o) >= r + 2)));
    found.push(clear || free[0] || foot);
  }
  return found;
}
function letters(picture, w, h) { // the checks to choose from stand in the picture too
  const box = $('#letters'), poles = $('#poles'), s = step(), { picked, answered } = state(), seen = [];
  box.replaceChildren(); poles.innerHTML = '';
  if (answered) return; // the flags stand there now
  for (const c of s.candidates) {
    if (!c.place) continue;
    const [x, y, z] = picture.project(...c.place);
    if (z < 1 && x >= 0 && y >= 0 && x <= w && y <= h) seen.push([c, [x, y]]);
  }
  const feet = seen.map(([, at]) => at), spots = standing(feet, w, h, w < 620 ? 15 : 13), line = spots.map((p, i) => `M${feet[i].map(v => v.toFixed(1)).join(' ')}L${p.map(v => v.toFixed(1)).join(' ')}`).join('');
  poles.setAttribute('viewBox', `0 0 ${w} ${h}`);
  poles.innerHTML = `<path class="pl" d="${line}"/><path class="pk" d="${line}"/>${feet.map(([x, y]) => `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="3.5"/>`).join('')}`;
  seen.forEach(([c], i) => {
    const b = el('button', { type: 'button', class: 'letter', 'aria-pressed': String(picked.has(c.letter)), 'aria-label': `${c.letter}: ${c.title}`, on: { click: () => toggle(c) } }, c.letter);
    b.style.left = `${spots[i][0]}px`; b.style.top = `${spots[i][1]}px`;
    box.append(b);
  });
}
function toggle(c) {
  const { picked, answered } = state();
  if (answered) return;
  if (picked.has(c.letter)) picked.delete(c.letter); else picked.add(c.letter);
  const box = $(`#lesson input[value="${c.letter}"]`);
  if (box) box.checked = picked.has(c.letter);
  point();
}

// ---- the panel ----------------------------------------------------------------------------------------------------------
const say = words => { const live = $('#lessonlive'); live.textContent = ''; setTimeout(() => { live.textContent = words; }, 60); };
const mark = right => svg(right ? '<svg viewBox="0 0 20 20" aria-hidden="true" class="tick"><path d="M3 11L8 16L17 4"/></svg>' : '<svg viewBox="0 0 20 20" aria-hidden="true" class="cross"><path d="M4 4L16 16M16 4L4 16"/></svg>');
function numbered(s) { // in the other unit: the text stays as the scene is written, and says so
  const words = [s.say, s.ask, s.reveal, ...s.choices.map(c => c.say + c.because), ...s.candidates.map(c => c.measured + c.needs)].join(' ');
  return NUMBERS.test(words) ? el('p', { class: 'lead asis', 'data-what': 'This text has its numbers', 'data-air': /cfm|l\/s/.test(words) ? '1' : '', hidden: ownUnit() }) : null;
}
function write() {
  const s = step(), panel = $('#lesson'), { answered } = state();
  panel.replaceChildren(...[
    el('div', { class: 'count' }, el('h1', {}, lesson.title), el('span', {}, `Step ${at + 1} of ${lesson.steps.length}`)),
    el('ol', { class: 'dots', 'aria-hidden': 'true' }, lesson.steps.map((_, i) => el('li', { class: i === at ? 'on' : i < at ? 'was' : '' }))),
    el('h2', { tabindex: '-1' }, s.title),
    el('p', { class: 'cap' }, tied(s.say)),
    numbered(s),
    asks(s) ? question(s) : null,
    el('div', { class: 'walk' },
      el('button', { type: 'button', class: 'back', disabled: at === 0, on: { click: () => go(at - 1) } }, 'Back'),
      asks(s) && !answered ? el('button', { type: 'button', class: 'check', on: { click: judge } }, 'Check') : null,
      at === lesson.steps.length - 1 ? el('button', { type: 'button', class: asks(s) && !answered ? 'again' : 'again main', on: { click: again } }, 'Begin again')
        : el('button', { type: 'button', class: asks(s) && !answered ? 'next' : 'next main', on: { click: () => go(at + 1) } }, 'Next'))].filter(Boolean));
}
function again() { done.clear(); go(0); } // what was answered is asked anew
function question(s) {
  const { picked, answered } = state(), many = s.candidates.length > 0;
  const rows = many ? s.candidates.map(c => ({ key: c.letter, right: c.broken, head: c.title, note: c.measured, after: [c.needs, c.source].filter(Boolean).join(' '), letter: c.letter }))
    : s.choices.map((c, i) => ({ key: String(i), right: c.right, head: c.say, note: '', after: picked.has(String(i)) || c.right ? c.because : '', letter: '' }));
  const list = rows.map(r => {
    const chosen = picked.has(r.key), good = many ? chosen === r.right : r.right;
    const verdict = !answered ? '' : many ? (r.right ? (chosen ? 'Broken: found' : 'Broken: not found') : chosen ? 'Not broken' : '') : r.right ? 'Right' : chosen ? 'Not so' : '';
    return el('label', { class: `opt${answered ? (r.right ? ' right' : '') + (verdict && !good ? ' miss' : '') : ''}` },
      el('input', { type: many ? 'checkbox' : 'radio', name: 'answer', value: r.key, checked: chosen, disabled: answered, on: { change: e => { if (!many) picked.clear(); if (e.target.checked) picked.add(r.key); else picked.delete(r.key); point(); } } }),
      el('span', {}, r.letter ? el('b', { class: 'let' }, `${r.letter} `) : null, el('b', {}, r.head), r.note ? el('i', {}, ` ${r.note}`) : null,
        verdict ? el('em', {}, mark(good), verdict) : null, answered && r.after && (many ? verdict : true) ? el('small', {}, tied(r.after)) : null));
  });
  return el('fieldset', {}, el('legend', {}, tied(s.ask)), list, answered ? el('div', { class: 'reveal' }, el('b', {}, result(s)), s.reveal ? ` ${tied(s.reveal)}` : '') : null);
}
function result(s) {
  const { picked } = state();
  if (s.choices.length) return s.choices.some((c, i) => c.right && picked.has(String(i))) ? 'Right.' : picked.size ? 'Not so.' : 'This is the answer.';
  const broken = s.candidates.filter(c => c.broken), found = broken.filter(c => picked.has(c.letter)).length, extra = [...picked].length - found;
  return `${found} of ${broken.length} found${extra ? `, ${extra} that ${extra === 1 ? 'is' : 'are'} not broken` : ''}.`;
}
function judge() {
  state().answered = true;
  write(); stand();
  const s = step();
  say(`${result(s)} ${s.reveal}`);
  $('#lesson .walk .main').focus({ preventScroll: true });
  $('#lesson .reveal').scrollIntoView({ block: 'nearest' });
}

// ---- start --------------------------------------------------------------------------------------------------------------
export function startLesson(given) {
  lesson = { ...D.lesson, first: D }; hooks = given;
  document.body.classList.add('lesson');
  $('#job').textContent = lesson.title;
  const answer = $('.answer'), sentence = $('#sentence');
  $('.bench').prepend(el('section', { id: 'lesson', 'aria-label': `Lesson: ${lesson.title}` }));
  $('#stage').after(answer);
  sentence.setAttribute('role', 'heading'); sentence.setAttribute('aria-level', '2');
  $('main').append(el('div', { id: 'lessonlive', class: 'sr', role: 'status' }));
  $('#flags').before(svg('<svg id="pointing" aria-hidden="true"></svg>')); // under the flags, whose words are to be read
  $('#pic').append(svg('<svg id="poles" aria-hidden="true"></svg>'), el('div', { id: 'letters' }));
  const drawn = L.drawn;
  L.cover = cover;
  L.drawn = () => { if (drawn) drawn(); point(); };
  addEventListener('keydown', e => {
    if (e.ctrlKey || e.metaKey || e.altKey || /TEXTAREA|SELECT/.test(e.target.tagName) || e.target.closest('[role=slider],#pic') || (e.target.tagName === 'INPUT' && e.target.type !== 'checkbox')) return;
    if (e.key === 'ArrowRight' || e.key === 'PageDown') go(at + 1); else if (e.key === 'ArrowLeft' || e.key === 'PageUp') go(at - 1); else return;
    e.preventDefault();
  });
  write();
  return () => go(0, false);
}
export const lessonState = () => ({ at, steps: lesson.steps.length, plan: shown, ...state(), picked: [...state().picked] });
