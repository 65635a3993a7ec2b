// Beside and below the picture: ways out, findings, what to measure, the order of work.
import { $, D, L, S, el, svg } from './store.js';
import { U, FT, flow, flowUnit, getUnit, inOwn, ownUnit, quantity, writtenIn } from './words.js';
import { limitText, short } from './answers.js';
import { flag, gauge, noMark, sketch, verdictMark } from './marks.js';

const OUTCOME = { 'proven best': 'best, proven', 'best found': 'best found' };
const WORD = { broken: 'Broken', close: 'Close', fine: 'Fine', open: 'Not checked' };

export function sayAnswer(answer, moveTo) {
  const { verdict, text, second } = L.old ? { verdict: L.old.word, text: L.old.text, second: 'What stands below, greyed, is the plan of the scene before this.' } : answer;
  document.body.dataset.verdict = L.old ? 'old' : verdict.startsWith('Works') ? 'ok' : 'bad';
  $('#mark').replaceChildren(svg(L.old ? noMark : verdictMark(verdict)));
  $('#word').textContent = verdict;
  $('#sentence').textContent = text;
  $('#sentence').className = text.length > 95 ? 'long' : '';
  $('#why').textContent = second;
  const guessed = L.apply || D.live ? D.plan.assumptions.length : 0; // what is still to be measured is said with the answer
  $('#guessed').textContent = guessed && !L.old ? `${guessed} of its numbers ${guessed === 1 ? 'is' : 'are'} guessed, not measured.` : '';
  const moved = Math.abs(answer.x - D.scene.hood.x) > 0.02, follows = Math.abs(answer.cook - D.scene.cook.x) > 0.02;
  $('#goes').replaceChildren(...(answer.from ? [el('b', {}, answer.from), ', as planned again. '] : []), moved ? follows ? 'The cooktop goes with the hood. ' : 'The cooktop stays where it is. ' : '',
    answer.from ? el('button', { type: 'button', class: 'quiet', on: { click: () => moveTo(D.scene.hood.x, D.scene.hood.bottom - D.scene.cook.height) } }, 'Back') : '');
  $('#where').replaceChildren('Hood centre ', el('b', {}, U(answer.x)), ' from the left wall, ', el('b', {}, U(answer.h)), ' above the cooktop.');
  const act = $('#act'), fix = L.old || answer.verdict.startsWith('Works') ? null : answer.fixes[0];
  act.hidden = !fix;
  if (fix) {
    act.replaceChildren(el('b', {}, fix.title), el('span', {}, fix.note));
    const apply = L.apply && fix.fix && fix.fix.set;
    act.classList.toggle('plain', !!fix.still && !apply);
    act.onclick = () => apply ? L.apply(fix.fix.set) : fix.still ? document.querySelector('#finds').scrollIntoView({ block: 'nearest' }) : moveTo(fix.x, fix.h, fix.plan);
  }
  clearTimeout(sayAnswer.later);
  sayAnswer.later = setTimeout(() => { $('#live').textContent = `${verdict}. ${text}`; }, 500);
}

function fixButtons(answer, moveTo) {
  if (!answer.fixes.length) return null;
  // a fix that the page can show is a button; one that only a new plan can show is said in full
  return el('div', { class: 'fixes' }, answer.fixes.slice(0, 6).map((fix, i) => L.apply && fix.fix && fix.fix.set
    ? el('button', { class: `fix${i ? '' : ' first'}`, on: { click: () => L.apply(fix.fix.set) } }, el('b', {}, fix.title), el('span', {}, fix.note))
    : fix.still ? el('div', { class: 'fix plain' }, el('b', {}, fix.title), el('span', {}, fix.note), fix.more ? el('span', {}, fix.more) : null)
    : el('button', { class: `fix${i ? '' : ' first'}`, on: { click: () => moveTo(fix.x, fix.h, fix.plan) } }, el('b', {}, fix.title), el('span', {}, fix.note))));
}
function row(f, answer, pick, moveTo, withFix) {
  const numbers = [['measured', f.measured === null ? '' : quantity(f.measured, f.unit)], ['limit', limitText(f)], ['spare', f.margin === null ? '' : quantity(f.margin, f.unit).replace(/ of .*/, '')]].filter(([, v]) => v);
  const meter = gauge(f);
  const head = el('button', { class: 'go', 'aria-label': `${WORD[f.state]} ${f.n}: ${f.title}. ${numbers.map(([k, v]) => `${k} ${v}`).join(', ')}.${f.place ? ' Show the place' : ''}`, on: { click: () => pick(f) } },
    el('span', { class: 'fw' }, svg(flag(f.state, f.n))),
    el('span', { class: 'ft' }, el('b', {}, f.title), numbers.length ? el('span', { class: 'nums' }, numbers.map(([k, v]) => el('span', {}, el('i', {}, k), k === 'spare' ? el('strong', {}, v) : v))) : null),
    meter ? svg(meter) : null);
  const words = [f.detail, f.remedy, f.waived ? `Waived: ${f.waived}` : ''].filter(Boolean);
  return el('li', { class: `find ${f.state}${S.picked === f.code + f.n ? ' sel' : ''}` }, head, words.map(w => el('div', { class: 'det' }, w)), el('div', { class: 'src' }, f.source), withFix ? fixButtons(answer, moveTo) : null);
}
function brief(f, pick) {
  const words = !limitText(f) && !f.relation, said = f.measured === null ? f.detail : `${words ? inOwn(() => quantity(f.measured, f.unit)) : quantity(f.measured, f.unit)}${limitText(f) ? `, needs ${limitText(f)}` : f.relation ? '' : `, ${f.detail}`}.`;
  return el('li', { class: `brief${S.picked === f.code + f.n ? ' sel' : ''}` }, el('button', { class: 'bgo', on: { click: () => pick(f) } },
    svg(flag(f.state, f.n, 22)), el('span', {}, el('b', {}, f.title), el('i', {}, [said, f.source].filter(Boolean).map(t => t.replace(/[.\s]+$/, '')).join('. '))), f.state === 'fine' ? el('strong', {}, short(f)) : null));
}
export function listFindings(answer, pick, moveTo) {
  const of = state => answer.findings.filter(f => f.state === state), broken = of('broken'), close = of('close'), fine = of('fine'), open = of('open');
  const works = answer.verdict.startsWith('Works'), musts = broken.some(f => f.must && !f.waived);
  if (!works && !answer.parts && !broken.length) $('#count').replaceChildren('no duct to check');
  else $('#count').replaceChildren(el('b', {}, String(broken.length)), broken.length && works && !musts ? ' broken, none a must ' : ' broken ', el('i', {}, '·'), ' ', el('b', {}, String(close.length)), ' close ', el('i', {}, '·'), ' ', el('b', {}, String(fine.length)), ' fine');
  $('#finds').replaceChildren(...[...broken, ...close].map((f, i) => row(f, answer, pick, moveTo, i === 0 && f.state === 'broken')));
  if (!broken.length && !close.length) $('#finds').append(el('li', { class: 'none' }, !answer.verdict.startsWith('Works') ? 'No duct could be laid, so its own checks were not made.' : answer.findings.length ? 'Nothing is broken and nothing is close.' : 'Nothing has been checked here.'));
  if (!broken.length && answer.fixes.length && !answer.verdict.startsWith('Works')) $('#finds').prepend(el('li', { class: 'find broken' }, fixButtons(answer, moveTo)));
  for (const [id, list, one, many] of [['#fine', fine, 'check is fine', 'checks are fine'], ['#open', open, 'check was not made', 'checks were not made']]) {
    const box = $(id);
    box.hidden = !list.length;
    if (id === '#fine' && !box.dataset.set) { box.open = list.length <= 7; box.dataset.set = '1'; }
    box.querySelector('summary').textContent = `${list.length} ${list.length === 1 ? one : many}`;
    box.querySelector('ul').replaceChildren(...list.map(f => brief(f, pick)));
  }
}

export function listWays(choose) {
  const { options } = D.plan;
  $('#ways').hidden = !options.length;
  $('#alts').replaceChildren(...options.slice(0, 6).map((o, i) => {
    const { route } = o, air = o.air === null ? 'flow unknown' : `${flow(o.air)} ${flowUnit()}`;
    const facts = [route.turns, FT(route.length), air];
    const note = o.broken ? `${o.broken} broken` : i === 0 ? OUTCOME[D.plan.outcome] || '' : route.boxed > 0 ? `${FT(route.boxed)} boxed in` : '';
    const button = el('button', { class: `alt${o.broken ? ' bad' : ''}`, 'aria-label': `Way ${route.id}: ${route.words}, ${facts.join(', ')}. ${note}`, on: { click: () => choose(i) } },
      el('span', { class: 'al' }, route.id), svg(sketch(route)), el('b', {}, route.end.kind === 'roof' ? 'Through the roof' : route.end.kind ? `Through ${route.end.label}` : 'Ends indoors'), el('span', { class: 'af' }, facts.map((t, k) => [k ? el('br') : null, t])), el('span', { class: 'an' }, note));
    button.dataset.way = i;
    return button;
  }));
}
export const markWay = answer => {
  const { options } = D.plan, count = ['No way', 'One way', 'Two ways', 'Three ways', 'Four ways', 'Five ways'][options.length] || `${options.length} ways`;
  $('#waysname').textContent = `${count} out${answer.planned ? '' : ` at ${U(D.scene.hood.x)}, as planned`}`; // the ways are those of the plan's own place
  for (const b of $('#alts').children) b.setAttribute('aria-pressed', String(answer.planned && +b.dataset.way === S.option));
};

const RULING = { allowed: 'May be cut', 'allowed within these numbers': 'May be cut within this', 'not allowed': 'May not be cut', 'engineer or maker decides': 'Engineer or maker decides' };
const member = m => el('li', {}, // may this member be cut: the question asked first
  el('b', {}, m.label), el('strong', { class: m.verdict === 'not allowed' ? 'no' : '' }, RULING[m.verdict] || m.verdict),
  m.allowed !== null && m.ours !== null ? el('span', { class: 'num' }, `${m.measure}: ours ${U(m.ours)}, at most ${U(m.allowed)}`) : null,
  el('span', {}, m.rule), m.detail && m.detail !== m.rule ? el('span', {}, m.detail) : null, m.remedy ? el('span', {}, m.remedy) : null,
  m.framing.length ? el('span', {}, `An opening would need: ${m.framing.map(([name, size, long, count]) => `${count > 1 ? `${count} × ` : ''}${name}${size ? ` ${size}` : ''}${long === null ? '' : `, ${U(long)}`}`).join('; ')}.`) : null,
  el('em', {}, m.source));
const upper = text => text[0].toUpperCase() + text.slice(1), lower = text => text[0].toLowerCase() + text.slice(1);
const ticked = new Set(); // what was ticked stays so while another way is looked at
function tick(key) {
  const box = el('input', { type: 'checkbox', checked: ticked.has(key), on: { change: () => { if (box.checked) ticked.add(key); else ticked.delete(key); } } });
  return box;
}
const measure = way => ([what, assumed, slack, changes]) => el('li', {}, el('label', {}, tick(`${way} ${what}`), el('span', {}, el('b', {}, upper(what)), el('span', {}, assumed), el('em', {}, `${U(slack)} to spare; the plan changes at ${changes}`))));
const step = way => ([text, hold, caution]) => el('li', {}, el('label', {}, tick(`${way} ${text}`), el('span', {}, text, hold ? el('em', {}, ` Go on only when: ${lower(hold)}`) : null, caution ? el('em', { class: 'mind' }, ` ${caution}`) : null)));

// what to measure, to cut and to do, each for the way and place that is shown; where that was not worked out it is said instead
let listed = [];
export function showWork(answer) {
  const first = D.plan.options[0], { work } = answer, kept = first ? { ...first.work, members: first.members } : { measure: [], steps: [], members: D.members };
  const away = first ? `Worked out for way ${first.route.id} with the hood at ${U(D.scene.hood.x)}, ${U(D.scene.hood.bottom - D.scene.cook.height)} above the cooktop; plan again for this place.` : 'Plan again for this place.';
  const early = work && work.steps.length && !answer.verdict.startsWith('Works') ? 'Nothing to cut yet: clear what is broken first.' : '';
  const now = [answer.work, answer.members, answer.planned && S.option, getUnit(), away, early];
  if (now.every((v, i) => v === listed[i]) && now.length === listed.length) return;
  listed = now;
  const way = answer.option ? answer.option.route.id : '';
  for (const [id, found, had, make, note] of [['#members', answer.members, kept.members, member, ''], ['#measures', work && work.measure, kept.measure, measure(way), ''], ['#work', work && work.steps, kept.steps, step(way), early]]) {
    const section = $(id), say = section.querySelector('.away');
    section.hidden = !(found || had).length;
    say.hidden = !!found && !note; say.textContent = found ? note : away;
    section.querySelector('ul,ol').replaceChildren(...inOwn(() => (found || []).map(make)));
    section.querySelector('.asis').hidden = ownUnit() || !(found && found.length);
    const lead = section.querySelector('.lead:not(.away,.asis)');
    if (lead) lead.hidden = !found;
  }
}
// where words and numbers stand in different units, the words say which
export function sayUnit() {
  for (const p of document.querySelectorAll('.asis')) { p.hidden = ownUnit(); p.textContent = `${p.dataset.what} ${p.dataset.air ? writtenIn().replace(',', D.scene.metric ? ' and l/s,' : ' and cfm,') : writtenIn()}.`.trim().replace(/^i/, 'I'); }
}
export function listAssumed() {
  $('#taken').hidden = !D.plan.assumptions.length;
  $('#assumed').replaceChildren(...D.plan.assumptions.map(([name, value, reason]) => el('li', {}, el('b', {}, name), ` ${value}. `, el('em', {}, reason))));
  $('#taken summary').textContent = `${D.plan.assumptions.length} ${D.plan.assumptions.length === 1 ? 'number was' : 'numbers were'} not measured`;
}
