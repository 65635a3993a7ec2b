// What the stud finder said: the real bays, the joist that is in the way, and how far it is to the next free place.
// Worked out here for the joists alone; with the program behind the page also for rafters, offset and opening.
import { $, D, L, el, esc, svg } from './store.js';
import { U, figure, getUnit, side } from './words.js';
import { inchesOf } from './applengths.js';

const USUAL = [12, 16, 19.2, 24], USUAL_MM = [400 / 25.4, 600 / 25.4], OFF = 1;

export function readMarks(text, metric, reach = 1200) {
  const words = text.split(/[,;\n]|\band\b/).map(w => w.trim()).filter(Boolean);
  const found = words.map(w => metric && /^[\d.]+$/.test(w) ? Number(w) / 25.4 : inchesOf(w)).sort((a, b) => a - b);
  if (!words.length) return { trouble: '' };
  const bad = words.find(w => inchesOf(w) === null);
  if (bad !== undefined) return { trouble: `“${bad}” is not a length. Write the joists’ centres like 13 1/4, 29, 45 1/8` };
  for (let i = 1; i < found.length; i++) if (found[i] - found[i - 1] < 0.5) return { trouble: `${U(found[i])} stands in it twice. Name every joist once, by its centre` };
  const over = found.find(v => v < 0 || v > reach);
  if (over !== undefined) return { trouble: `${U(over)} is beyond the ceiling, which ends at ${U(reach)}. Count from the wall` };
  return { marks: found };
}
const middleOf = list => { const s = [...list].sort((a, b) => a - b), m = s.length >> 1; return s.length % 2 ? s[m] : (s[m - 1] + s[m]) / 2; };
const steps = (gap, spacing) => { const n = Math.max(1, Math.round(gap / spacing)); return Math.abs(gap - n * spacing) <= 2 * OFF ? n : 1; };

// the same reckoning as the program's own, which the tests hold it to
export function bays(marks, { width, reach, spacing: before, x, duct, clearance, metric }) {
  const gaps = marks.slice(1).map((v, i) => v - marks[i]);
  let spacing = before;
  if (gaps.length) { const mid = middleOf(gaps), near = (metric ? USUAL_MM : USUAL).reduce((a, b) => Math.abs(mid - b) < Math.abs(mid - a) ? b : a); spacing = Math.abs(mid - near) <= 2 * OFF ? near : mid; }
  const centres = [...marks];
  gaps.forEach((gap, i) => { const n = steps(gap, spacing); for (let k = 1; k < n; k++) centres.push(marks[i] + gap * k / n); });
  for (let v = marks[0] - spacing; v - width / 2 >= 0; v -= spacing) centres.push(v);
  for (let v = marks[marks.length - 1] + spacing; v + width / 2 <= reach; v += spacing) centres.push(v);
  centres.sort((a, b) => a - b);
  const joists = centres.map((c, i) => ({ n: i + 1, at: c, lo: c - width / 2, hi: c + width / 2, measured: marks.some(m => Math.abs(m - c) < 0.02) })).filter(j => j.lo >= -1e-9 && j.hi <= reach + 1e-9);
  const edges = [0, ...joists.flatMap(j => [j.lo, j.hi]), reach], need = duct + 2 * clearance, found = [];
  for (let i = 0; i < edges.length; i += 2) if (edges[i + 1] - edges[i] > 1 / 16) found.push({ lo: edges[i], hi: edges[i + 1], fits: edges[i + 1] - edges[i] >= need - 1e-9, here: edges[i] <= x && x <= edges[i + 1] });
  const lo = x - duct / 2, hi = x + duct / 2;
  const hit = joists.filter(j => j.lo < hi + clearance - 1e-9 && j.hi > lo - clearance + 1e-9).map(j => [`joist ${j.n}`, Math.max(0, Math.min(j.hi, hi) - Math.max(j.lo, lo))]);
  const places = found.filter(b => b.fits).map(b => [b.lo + need / 2, b.hi - need / 2]);
  const left = hit.length ? places.filter(p => p[1] < x).map(p => p[1] - x).pop() ?? null : null, right = hit.length ? places.filter(p => p[0] > x).map(p => p[0] - x)[0] ?? null : null;
  return { spacing, joists, bays: found, duct: [lo, hi], blockers: hit, left, right };
}
export function setting() {
  const { scene, tape } = D, along = tape.along, first = tape.joists[0], gap = tape.joists[1] ? (tape.joists[1].a + tape.joists[1].b - first.a - first.b) / 2 : 16;
  return { along, width: first ? first.b - first.a : 1.5, reach: along ? scene.depth : scene.width, spacing: gap, x: along ? scene.hood.out : scene.hood.x + scene.hood.across, duct: scene.duct.section[1], clearance: scene.duct.clearance, metric: scene.metric };
}
const fromServer = r => ({ ...r, joists: r.joists.map(([n, at, lo, hi, measured]) => ({ n, at, lo, hi, measured })), bays: r.bays.map(([lo, hi, fits, here]) => ({ lo, hi, fits, here })) });

function strip(found, reach) {
  const W = 380, X = v => 6 + v / reach * (W - 12), top = 22, high = 30;
  let out = `<path class="ceil" d="M${X(0)} ${top + high + 0.5}H${X(reach)}"/>`;
  for (const b of found.bays) {
    const wide = X(b.hi) - X(b.lo), mid = (X(b.lo) + X(b.hi)) / 2, text = figure(b.hi - b.lo);
    if (!b.fits) out += `<rect class="nofit" x="${X(b.lo)}" y="${top}" width="${wide}" height="${high}" fill="url(#p-none)"/>`;
    if (text.length * 5.6 < wide + 6) out += `<text x="${mid}" y="${top - 8}" class="${b.here ? 'on' : ''}">${esc(text)}</text>`;
  }
  const [lo, hi] = found.duct;
  out += `<rect class="fd" x="${X(lo)}" y="${top - 4}" width="${X(hi) - X(lo)}" height="${high + 12}"/>`;
  for (const j of found.joists) {
    const w = Math.max(X(j.hi) - X(j.lo), 4), x = X(j.at) - w / 2, hit = found.blockers.some(b => b[0] === `joist ${j.n}`);
    out += `<g class="fj${j.measured ? '' : ' guess'}${hit ? ' hit' : ''}"><rect x="${x}" y="${top}" width="${w}" height="${high}"${hit ? ' fill="url(#p-bad)"' : ''}/>${j.measured && !hit ? `<path d="M${x} ${top}l${w} ${high}m0 ${-high}l${-w} ${high}"/>` : ''}<text x="${X(j.at)}" y="${top + high + 13}">${j.n}</text></g>`;
  }
  return svg(`<svg class="strip" viewBox="0 0 ${W} 72" role="img" aria-label="${esc(found.bays.map(b => `bay ${U(b.lo)} to ${U(b.hi)}, ${U(b.hi - b.lo)} clear${b.here ? ', the duct is here' : ''}${b.fits ? '' : ', too narrow'}`).join('; '))}">${out}</svg>`);
}
function tell(found, extra) {
  const say = [], place = found.bays.find(b => b.here), hit = found.blockers;
  if (!hit.length) say.push(el('p', { class: 'clear' }, '✓ ', place ? `The duct goes straight up in the bay from ${U(place.lo)} to ${U(place.hi)}: ${U(found.duct[0] - place.lo)} free on the left, ${U(place.hi - found.duct[1])} on the right.` : 'The duct goes straight up.'));
  else {
    say.push(el('p', { class: 'barword' }, el('b', {}, `${hit.map(([name, into]) => into > 0 ? `${name} is ${U(into)} into the duct` : `${name} is too close to the duct`).join('; ')}.`)));
    const ways = [found.left, found.right].filter(v => v !== null).sort((a, b) => Math.abs(a) - Math.abs(b)).map(v => `${U(Math.abs(v))} ${side(v)}`);
    say.push(el('p', {}, ways.length ? [el('b', {}, 'Least shift: '), `${ways.join(' or ')} and it goes straight up.`] : found.along ? 'The joists run along the wall, so no shift along it helps.' : 'No shift along this wall frees it.'));
    if (extra) say.push(el('p', {}, el('b', {}, 'Offset: '), extra === 'looking' ? 'looking for two equal elbows that step round it …' : extra.offset ? `${extra.offset_words}. ${extra.offset}` : 'none found that fits inside the cover.'));
    for (const [label, verdict, rule, source, pieces] of found.opening || []) say.push(el('p', {}, el('b', {}, `To cut ${label}: `), `${verdict}; ${rule} (${source}).${pieces.length ? ` An opening would need ${pieces.map(([name, size, long, count]) => `${count > 1 ? `${count} × ` : ''}${name}${size ? ` ${size}` : ''}${long === null ? '' : ` ${U(long)}`}`).join('; ')}.` : ''}`));
  }
  for (const text of found.notes || []) say.push(el('p', { class: 'lead' }, text));
  if (!found.notes) { const more = found.joists.filter(j => !j.measured).length; if (more) say.push(el('p', { class: 'lead' }, `${more} more ${more === 1 ? 'joist was' : 'joists were'} carried on at ${U(found.spacing)}; not measured. Reckoned for the joists alone.`)); }
  return say;
}

export function startFinder() {
  const field = $('#marks'), out = $('#marksay');
  if (D.scene.hood.outlet === 'rear' || (!D.tape.joists.length && !D.tape.along)) { $('#finder').hidden = true; if (!D.live) return; }
  let turn = 0, pause = 0;
  const show = (found, extra) => {
    const place = setting();
    out.replaceChildren(strip(found, place.reach), ...tell(found, extra), L.apply && found.changes ? el('button', { type: 'button', class: 'main', on: { click: () => L.apply(found.changes) } }, 'Take these joists') : '');
  };
  async function work() {
    const me = ++turn, { marks, trouble } = readMarks(field.value, getUnit() === 'mm', setting().reach);
    if (!field.value.trim() || (!marks && !L.preview)) { out.replaceChildren(...(trouble ? [el('p', { class: 'msg' }, trouble)] : [])); return; }
    if (!L.preview) { const place = setting(); show({ ...bays(marks, place), along: place.along }); return; }
    const text = marks && getUnit() === 'mm' && !D.scene.metric ? marks.map(m => `${m} in`).join(', ') : field.value, reply = await L.preview(text, false);
    if (me !== turn || !reply) { if (!reply && marks) { const place = setting(); show({ ...bays(marks, place), along: place.along }); } return; }
    if (reply.trouble) { out.replaceChildren(el('p', { class: 'msg' }, reply.trouble)); return; }
    const found = fromServer(reply);
    if (!found.blockers.length) { show(found); return; }
    show(found, 'looking');
    const later = await L.preview(text, true);
    if (me === turn && later && !later.trouble) show(found, later);
  }
  field.addEventListener('input', () => { clearTimeout(pause); pause = setTimeout(work, L.preview ? 250 : 0); });
  field.addEventListener('keydown', e => { if (e.key === 'Enter') { clearTimeout(pause); work(); } });
}
