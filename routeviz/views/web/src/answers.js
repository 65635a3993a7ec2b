// What is possible at one place of the hood: from the plan at its own place, from the whole-wall map elsewhere.
import { D, S } from './store.js';
import { U, FT, asWritten, elbowWords, flow, flowUnit, ownUnit, quantity, side } from './words.js';

export const KIND = {
  e0: { name: 'no elbow', height: 1 },
  e1: { name: '1 elbow', height: 0.72 },
  e2: { name: '2 elbows', height: 0.46 },
  e3: { name: '3 or more', height: 0.38 },
  bad: { name: 'blocked', height: 0.3 },
  none: { name: 'no place for the hood', height: 0.12 },
};
const STATES = ['broken', 'close', 'fine', 'open'];
const NEAR = 0.02;

export const places = () => D.map ? D.map.x : [D.scene.hood.x];
export const heights = () => D.map ? D.map.h : [mount()];
export const mount = () => D.scene.hood.bottom - D.scene.cook.height;
export const nearest = (values, value) => values.reduce((best, v) => Math.abs(v - value) < Math.abs(best - value) ? v : best, values[0]);
export const atPlan = (x, h) => Math.abs(x - D.scene.hood.x) < NEAR && Math.abs(h - mount()) < NEAR;

// broken wherever there is a way out, such as makeup air: that says nothing of a place
let everywhere = { map: null, codes: new Set() };
const musts = findings => findings.filter(([rule, state]) => state === 0 && D.map.rules[rule].must && !D.map.rules[rule].waived).map(([rule]) => D.map.rules[rule].code);
function brokenEverywhere() {
  if (everywhere.map !== D.map) {
    const found = D.map ? D.map.cells.flat().filter(cell => cell[1] >= 0).map(cell => new Set(musts(cell[8]))) : [];
    everywhere = { map: D.map, codes: new Set(found.length ? [...found[0]].filter(code => found.every(codes => codes.has(code))) : []) };
  }
  return everywhere.codes;
}
const kindOf = (verdict, elbows, way, broken) => verdict === 'No place' ? 'none' : !way || broken.some(code => !brokenEverywhere().has(code)) ? 'bad' : `e${Math.min(3, Math.ceil(elbows - 1e-9))}`;
const kindOfCell = cell => kindOf(cell.verdict, cell.elbows, cell.words, musts(cell.findings));

function cellAt(x, h) {
  const { map } = D;
  const row = map.h.indexOf(nearest(map.h, h)), column = map.x.indexOf(nearest(map.x, x));
  const [verdict, words, line, length, elbows, boxed, air, why, findings, reason, turns = -1] = map.cells[row][column];
  return {
    verdict: map.verdicts[verdict], words: words < 0 ? '' : map.words[words], line: line < 0 ? null : map.lines[line], length, elbows, turns: turns < 0 ? elbowWords(elbows) : map.words[turns], boxed,
    air, why: why < 0 ? null : map.whys[why], findings, reason, x: map.x[column], h: map.h[row],
  };
}
export const kindAt = (x, h) => { return kindOfCell(cellAt(x, h)); };

// stretches of the tape with one kind of answer at one height
export function zones(h) {
  if (!D.map) return [];
  const xs = D.map.x, found = [];
  xs.forEach((x, i) => {
    const cell = cellAt(x, h), kind = kindOfCell(cell);
    const a = i ? (xs[i - 1] + x) / 2 : Math.max(0, x - (xs[1] - x) / 2 || 0), b = i < xs.length - 1 ? (x + xs[i + 1]) / 2 : Math.min(D.scene.width, x + (x - xs[i - 1]) / 2 || x);
    const back = /^Straight back/.test(cell.words), by = kind === 'bad' && cell.why && cell.why.blockers[0] ? cell.why.blockers[0][1] : kind === 'none' ? cell.reason : '';
    const last = found[found.length - 1];
    if (last && last.kind === kind && last.by === by && last.back === back && !!last.boxed === cell.boxed > 0) { last.b = b; last.xs.push(x); }
    else found.push({ kind, by, back, a, b, xs: [x], boxed: cell.boxed > 0, tight: cell.verdict === 'Works, tight' });
  });
  return found;
}

function finding(rules, [rule, state, measured, limit, margin, ...place]) {
  const r = rules[rule];
  return { ...r, state: STATES[state], measured, limit, margin, place: place.length === 3 ? place : null };
}
const ORDER = { broken: 0, close: 1, fine: 2, open: 3 };
function number(found) {
  found.sort((a, b) => ORDER[a.state] - ORDER[b.state] || b.must - a.must || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));
  found.forEach((f, i) => { f.n = i + 1; });
  return found;
}
const FAR = 60; // inches; what is so far off is said in feet
export const short = f => {
  if (f.margin === null) return f.measured === null ? '' : quantity(f.measured, f.unit);
  if (/^of /.test(f.unit)) return quantity(f.measured, f.unit); // a share is told whole
  const by = Math.abs(f.margin), amount = f.unit === 'in' && by >= FAR ? FT(by) : quantity(by, f.unit);
  return f.state === 'broken' ? `${amount} ${f.relation === 'at most' || f.relation === 'exactly' && f.measured > f.limit ? 'over' : 'short'}` : `${amount} spare`;
};
export const limitText = f => f.limit === null || (!f.relation && f.measured !== null) ? '' : // settled otherwise: no limit to compare with
  `${f.relation || (f.measured === null ? 'asks for' : '')} ${quantity(f.limit, f.unit)}`.trim();

const airText = air => air === null ? 'flow unknown' : `${flow(air)} of ${flow(D.scene.rated)} ${flowUnit()}`;
export const wayText = (words, turns, length, boxed, air) =>
  `${words}: ${turns}, ${FT(length)}${boxed > 0 ? `, ${FT(boxed)} boxed in the room` : ''}, ${airText(air)}.`;

const inside = title => title[0].toLowerCase() + title.slice(1); // as it stands in a sentence
// what stands in the way and how, by its kind
const HARDLY = 1 / 64; // inches; the plan's own
function met([id, label, over, , , , kind]) {
  if (kind === 'zone') return id ? `${/^the /.test(label) ? '' : 'the '}${label} is in the way` : label;
  if (kind === 'straight') return `${label} would be ${U(over)} too short`;
  if (kind === 'keep-out') return label === 'lot line' ? 'the lot line is too near for a cap' : `${label} is ${over < HARDLY ? '' : `${U(over)} `}too near for a cap`;
  return `${label} is ${over > 0 ? `${U(over)} into` : 'too close to'} the duct`;
}
function blockedText(why, fix) {
  const first = why && why.blockers[0];
  const what = first ? met(first) : 'no way out was found';
  return `Blocked: ${what}.${fix ? ` ${fix.shift && !fix.fix ? `Shift ${U(Math.abs(fix.shift))} ${side(fix.shift)} and ${fix.elbows === 0 ? `it goes straight ${fix.back ? 'back' : 'up'}` : `it works with ${fix.turns}`}` : fix.title}.` : ''}`;
}
function secondText(elbows, why) {
  if (elbows === 0) return 'Simpler? There is none: no elbow is the fewest a duct can have.';
  const first = why && why.blockers[0];
  if (!first) return '';
  let text = `Not ${why.wanted}: ${met(first)}.`;
  if (first[6] !== 'zone' && why.sure && why.shift !== null) text += ` Shift ${why.cook ? 'hood and cooktop ' : ''}${U(Math.abs(why.shift))} ${side(why.shift)} and it goes ${why.goes}${!why.cook && why.against.length ? ` (against advice: ${why.against.map(inside).join(' and ')})` : ''}.`;
  return text;
}

// what is broken here, by its code and how often
const brokenOf = findings => findings.filter(f => f.state === 'broken' && !f.waived).reduce((found, f) => found.set(f.code, (found.get(f.code) || 0) + 1), new Map());
const brokenAt = cell => brokenOf(cell.findings.map(f => finding(D.map.rules, f)));
// the musts by name and the advice by number, as the plan says it
const NAMED = 3;
function clearFirst(findings) {
  const broken = findings.filter(f => f.state === 'broken' && !f.waived), advice = broken.filter(f => !f.must).length;
  const musts = [...new Set(broken.filter(f => f.must).sort((a, b) => a.code < b.code ? -1 : a.code > b.code ? 1 : 0).map(f => inside(f.title)))], more = musts.length - NAMED;
  const said = [...(more <= 1 ? musts : [...musts.slice(0, NAMED), `${more} more musts`]), ...(advice ? [`${advice} more, advice only`] : [])].join('; ');
  return `To clear first: ${said[0].toUpperCase()}${said.slice(1)}.`;
}
// a place is worth going to when it works and this one does not, or when something broken is cleared and nothing new breaks
function clears(now, cell) {
  if (!cell.verdict.startsWith('Works')) return false;
  if (!now.verdict.startsWith('Works')) return true;
  const here = brokenOf(now.findings), there = brokenAt(cell);
  return [...there].every(([code, n]) => n <= (here.get(code) || 0)) && [...here].some(([code, n]) => n > (there.get(code) || 0));
}
// the nearest places that clear something, each way: the least shift, and beside it the nearest that works with room to spare
export function fixes(now) {
  if (!D.map) return [];
  const found = [], { x, h } = now;
  for (const way of [-1, 1]) {
    const ahead = D.map.x.filter(v => (v - x) * way > NEAR).sort((a, b) => (a - b) * way);
    const works = ahead.find(v => clears(now, cellAt(v, h)));
    if (works === undefined) continue;
    found.push(works);
    if (cellAt(works, h).verdict !== 'Works') {
      const clean = ahead.find(v => cellAt(v, h).verdict === 'Works' && clears(now, cellAt(v, h)));
      if (clean !== undefined && Math.abs(clean - works) < 16) found.push(clean);
    }
  }
  return found.map(v => {
    const cell = cellAt(v, h);
    const broken = [...brokenAt(cell).values()].reduce((a, b) => a + b, 0);
    return { x: v, h, shift: v - x, verdict: cell.verdict, elbows: cell.elbows, turns: cell.turns, back: /^Straight back/.test(cell.words), broken, title: `Shift ${U(Math.abs(v - x))} ${side(v - x)}`,
      note: `planned again: ${broken} broken, ${cell.turns}${cell.verdict === 'Works, tight' ? ', tight' : ''}${D.map.follows ? '; the cooktop goes with the hood' : ''}` };
  }).sort((a, b) => Math.abs(a.shift) - Math.abs(b.shift));
}

// parts of a centre line, as the duct is drawn from
export function partsOf(line, x, bottom) {
  const p = line.p.map(([px, py, pz], i) => [px + x, py, i ? pz : pz + bottom]);
  const sub = (a, b) => a.map((v, i) => v - b[i]), norm = v => { const l = Math.hypot(...v); return v.map(q => q / l); };
  const dirs = p.slice(1).map((q, i) => norm(sub(q, p[i])));
  const parts = [], section = line.s, gores = parseInt(D.scene.duct.gores, 10) || 4;
  let at = p[0];
  dirs.forEach((d, i) => {
    const bend = line.b[i], cut = bend ? bend[0] * Math.tan(bend[1] * Math.PI / 360) : 0, corner = p[i + 1];
    const end = corner.map((v, k) => v - d[k] * cut), long = Math.hypot(...sub(end, at));
    const wide = line.w[i] >= 0 ? [0, 1, 2].map(a => +(a === line.w[i])) : null;
    if (long > 1e-3) parts.push({ k: 'straight', a: at, b: end, d, t: d, s: section, o: section, l: long, w: wide });
    if (bend) {
      const t = dirs[i + 1], next = corner.map((v, k) => v + t[k] * cut);
      const n = Math.max(2, Math.floor((gores - 1) * bend[1] / 90 + 0.5) + 1);
      parts.push({ k: 'elbow', a: end, b: next, d, t, s: section, o: section, l: bend[0] * bend[1] * Math.PI / 180, r: bend[0], g: bend[1], n, w: wide });
      at = next;
    }
  });
  const face = D.faces[line.f];
  return { parts, end: { face: line.f, kind: face ? face.kind : null, at: p[p.length - 1], d: dirs[dirs.length - 1], label: face ? face.label : '' } };
}

function wantedAt(x, h) {
  const { hood } = D.scene, dz = D.scene.cook.height + h - hood.bottom, dx = x - hood.x;
  return D.plan.wanted.map((q, i) => [q[0] + dx, q[1], hood.outlet === 'rear' || i === 0 ? q[2] + dz : q[2]]);
}

// an answer out of a whole plan: the page's own, or one that was made for a fix
function told(plan, x, h, option, first) {
  const every = [...plan.findings, ...(option ? option.findings : [])].map(f => finding(plan.rules, f));
  const route = option && option.route;
  const broken = every.some(f => f.state === 'broken' && f.must && !f.waived);
  const verdict = first ? plan.verdict : broken ? 'Blocked' : every.some(f => f.state === 'close' || f.state === 'broken') ? 'Works, tight' : 'Works';
  let text = asWritten(plan.answer), why = ownUnit() ? plan.second : `${secondText(route ? route.elbows : -1, plan.why)}${/Proven\.$/.test(plan.second) ? ' Proven.' : ''}`.trim();
  if (route && (!first || !ownUnit())) text = wayText(route.words, route.turns, route.length, route.boxed, option.air);
  if (!first) why = `Way ${route.id}. Way ${plan.options[0].route.id} is ${plan.outcome === 'proven best' ? 'the best, proven' : 'the best found here'}.`;
  return {
    x, h, verdict, option, kind: kindOf(verdict, route ? route.elbows : 0, route, every.filter(f => f.state === 'broken' && f.must && !f.waived).map(f => f.code)), words: route ? route.words : '',
    text, second: why, findings: number(every), parts: route ? route.parts : null, end: route ? route.end : null, elbows: route ? route.elbows : null,
    length: route ? route.length : 0, air: option ? option.air : null, why: plan.why, wanted: route ? null : wantedAt(x, h),
  };
}

// at the plan's own place: the fixes that were worked out with it; each says what planning again found
const SHIFT = /^(Shift(?: hood and cooktop)?) [^a-z]+ (?:in|mm) (left|right)(?=$|,)/;
const fixWords = f => ownUnit() || f.x === null ? asWritten(f.words) : asWritten(f.words.replace(SHIFT, (_, what, way) => `${what} ${U(Math.abs(f.x - D.scene.hood.x))} ${way}`));
function planFixes(now) {
  if (!D.fixes.length) return fixes(now);
  return D.fixes.map((f, i) => ({ x: f.x ?? now.x, h: f.h ?? now.h, shift: f.x === null ? 0 : f.x - now.x, verdict: f.verdict, elbows: f.elbows, title: fixWords(f), note: f.recheck, more: asWritten(f.answer), fix: f, plan: f.plan ? i : null, still: !f.plan }));
}
function planAnswer() {
  const { plan } = D, own = { ...told(plan, D.scene.hood.x, mount(), plan.options[S.option] || null, S.option === 0), cook: D.scene.cook.x, planned: true }, fix = planFixes(own);
  Object.assign(own, own.option ? { work: own.option.work, members: own.option.members } : { work: { measure: [], steps: [] }, members: D.members });
  if (!own.parts && !ownUnit() && own.verdict !== 'No place') own.text = blockedText(plan.why, fix[0]);
  return { ...own, fixes: fix, ghost: ghostShift(fix, own.why) };
}
// the very plan that a fix promises, not its nearest neighbour on the map
function fixAnswer(number) {
  const fix = D.fixes[number], { plan } = fix;
  return { ...told(plan, plan.x, plan.h, plan.options[0], true), cook: plan.cook, planned: false, fixes: [], ghost: null, from: fixWords(fix), work: null, members: plan.options[0].members };
}
// how far the ghost of a better place stands off: the first fix, else the shift that the plan itself has verified
const ghostShift = (fix, why) => fix.length && fix[0].shift ? fix[0].shift : why && why.sure && why.shift !== null ? why.shift : null;

export function answer(x, h) {
  if (S.fix !== null && D.fixes[S.fix] && D.fixes[S.fix].plan) return fixAnswer(S.fix);
  if (!D.map || atPlan(x, h)) return planAnswer();
  const cell = cellAt(x, h);
  const drawn = cell.line ? partsOf(cell.line, cell.x, D.scene.cook.height + cell.h) : null;
  const found = number(cell.findings.map(f => finding(D.map.rules, f))), fix = fixes({ ...cell, findings: found });
  const musts = found.filter(f => f.state === 'broken' && f.must && !f.waived);
  let text = cell.verdict === 'No place' ? asWritten(cell.reason) : blockedText(cell.why, fix[0]), second = secondText(-1, cell.why);
  if (cell.line) {
    text = wayText(cell.words, cell.turns, cell.length, cell.boxed, cell.air);
    if (musts.length) text = `${clearFirst(found)} ${text}`;
    second = secondText(cell.elbows, cell.why);
  }
  if (cell.verdict === 'No place') second = 'No duct was searched: the hood itself does not fit here.';
  return {
    ...cell, kind: kindOfCell(cell), text, second, findings: found, parts: drawn && drawn.parts, end: drawn && drawn.end,
    wanted: drawn || cell.verdict === 'No place' ? null : wantedAt(cell.x, cell.h), fixes: fix, ghost: ghostShift(fix, cell.why), planned: false, option: null, work: null, members: null, cook: D.scene.cook.x + (D.map.follows ? cell.x - D.scene.hood.x : 0), elbows: cell.line ? cell.elbows : null,
  };
}
