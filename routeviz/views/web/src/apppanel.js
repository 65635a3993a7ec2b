// The kitchen as measured: sentences whose numbers can be changed where they stand.
import { el } from './store.js';
import { inchesOf, stepped } from './applengths.js';
import { ABOVE, GROUPS, QUESTIONS } from './appsentences.js';
import { createPlaces, readBack, rowNames, valueAt, written } from './appschema.js';

const words = text => text.replace(/_/g, ' ');
const STEP = 0.25;
// what is asked, where the format's own word only lists what may stand there
const NAMES = {
  beyond: 'what lies beyond', frame: 'built of', 'studs.kind': 'kind of stud', 'studs.spacing': 'studs, centre to centre', 'studs.size': 'studs, size', 'studs.first': 'centre of the first stud',
  'joists.kind': 'kind of joist', 'framing.kind': 'kind of rafter', 'framing.size': 'rafters, size', 'framing.spacing': 'rafters, centre to centre', 'framing.first': 'centre of the first rafter',
};
// rafters that nobody measured are guessed over the joists, and stay there when the joists are measured
const OVER = { 'ceiling.joists.first': 'roof.framing.first', 'ceiling.joists.spacing': 'roof.framing.spacing' };

export function makePanel(host, { schema, choices, questions }, desk) {
  const places = createPlaces(schema, choices), drafts = new Map(), reads = new Map(), given = new Map(), opened = new Set();
  let state = null, mistakes = [], kept = new Set(), asked = questions, off = false, planned = {}, drawing = false;

  const beyond = raw => ['outdoors', 'room', ...(raw.spaces || []).map(s => s.name).filter(Boolean)];
  const known = path => /(^|\.)beyond$/.test(path) ? { ...places.kind(path), kind: 'choice', options: beyond(state.raw) } : places.kind(path);
  const here = (path, exact) => mistakes.filter(m => m.field === path || (!exact && m.field.startsWith(`${path}.`)));
  // what a guess stands at: in the file, or taken for it
  const stands = path => valueAt(state.raw, path) ?? ((state.assumed[path] || [])[0] || undefined);
  const assumed = path => state.assumed[path] || planned[path];

  // ---- one value -----------------------------------------------------------------------------------------------------
  function value(path) {
    const what = known(path), raw = valueAt(state.raw, path), taken = raw === undefined ? assumed(path) : state.assumed[path], shown = raw === undefined ? (taken ? taken[0] : '') : written(raw);
    const draft = drafts.get(path), text = draft ?? shown, part = partly(path), wrong = here(path).length > 0 || kept.has(path), id = `v-${path.replace(/[^\w-]/g, '_')}`;
    const name = `${words(path.replace(/\./g, ' '))}${what.said ? `: ${what.said}` : ''}${taken ? `; assumed, ${taken[1]}` : part ? `; ${part}` : ''}`;
    const common = { id, 'data-path': path, class: `val${taken || part ? ' taken' : ''}${wrong ? ' wrong' : ''}`, title: taken ? `assumed: ${taken[1]}` : part || what.said || null, 'aria-label': name, 'aria-invalid': wrong ? 'true' : null, 'aria-describedby': here(path).length ? `${id}-m` : null, disabled: off };
    let field;
    if (what.kind === 'choice' || what.kind === 'yesno') {
      const options = what.kind === 'yesno' ? ['yes', 'no'] : what.options.map(String), every = options.includes(text) ? options : [text, ...options];
      field = el('select', { ...common, on: { change: () => commit(path, field.value) } }, every.map(o => el('option', { value: o, selected: o === text }, o || 'not said')));
    } else {
      const long = what.kind === 'list'; // a list is wrapped, so that all of it can be read
      field = el(long ? 'textarea' : 'input', { ...common, ...(long ? { rows: 1 } : { type: 'text', value: text }), placeholder: 'not said', spellcheck: 'false', autocomplete: 'off', autocapitalize: 'off', enterkeyhint: 'done', on: {
        input: () => { drafts.set(path, field.value); given.delete(path); fit(field); },
        change: () => commit(path, field.value),
        blur: () => { if (!drawing) leave(path, field.value); },
        keydown: e => keyed(e, path, field),
      } });
      if (long) field.defaultValue = text;
      fit(field);
    }
    return el('span', { class: 'hold' }, field, part ? el('i', { class: 'part' }, ` (${part})`) : null);
  }
  // of a list some may be measured and some not
  function partly(path) {
    const listed = valueAt(state.raw, path), many = Object.keys(state.assumed).filter(p => p.startsWith(`${path}.`) && /^\d+$/.test(p.slice(path.length + 1))).length;
    return many && Array.isArray(listed) ? `${many} of these ${listed.length} assumed` : '';
  }
  const fit = field => { if (field.tagName === 'TEXTAREA') field.rows = Math.ceil((field.value.length || 1) / 34); field.style.width = `${Math.max(3, Math.min(44, (field.value || field.placeholder).length + 0.8))}ch`; };
  function keyed(e, path, field) {
    if (e.key === 'Enter') { e.preventDefault(); field.blur(); }
    else if (e.key === 'Escape') { drafts.delete(path); desk.forget(path); draw(); focus(path); }
    else if ((e.key === 'ArrowUp' || e.key === 'ArrowDown') && known(path).kind === 'measure') { // as on a tape: a quarter, with shift a whole
      const next = stepped(field.value, (e.key === 'ArrowUp' ? 1 : -1) * (e.shiftKey ? 1 : STEP));
      if (next) { e.preventDefault(); field.value = next; fit(field); commit(path, next); }
    }
  }
  // a field that was drawn anew while someone typed in it tells of no change when it is left: what was typed counts
  const leave = (path, text) => { if (drafts.get(path) === text && given.get(path) !== text) commit(path, text); };
  function commit(path, text) {
    given.set(path, text);
    const old = valueAt(state.raw, path);
    if (text.trim() === (old === undefined ? (assumed(path) || [''])[0] : written(old)).trim() && !desk.refused(path)) { drafts.delete(path); return; }
    const before = old ?? (assumed(path) || [])[0], sent = readBack(text, before, known(path));
    drafts.set(path, text);
    reads.set(path, typeof sent === 'string' && sent !== text.trim() ? `Read as ${sent}, for ${written(before)} stood there` : '');
    const over = OVER[path], guessed = state.raw.assumed || [];
    const along = over && guessed.includes(over) && valueAt(state.raw, 'ceiling.joists.direction') === 'out' && valueAt(state.raw, 'roof.ridge') === 'along';
    desk.change(along ? { [path]: sent, [over]: sent, assumed: guessed.filter(p => p !== path) } : { [path]: sent });
  }
  // what is missing is typed here, not added to a file
  const remedy = m => { const add = m.problem === 'missing' && /^Add \w+ = "([^"]+)"(?: to \[[\w.]+\])?(,? .*)?$/.exec(m.remedy); return add ? `Type it, like ${add[1]}${add[2] || ''}` : m.remedy; };
  const message = m => el('p', { class: 'msg', role: 'alert', 'data-field': m.field }, drafts.has(m.field) && reads.get(m.field) ? `${reads.get(m.field)}: ` : null, el('b', {}, `${m.problem}. `), remedy(m));
  function messages(paths, exact = false) {
    return paths.flatMap(path => here(path, exact).map(m => { const node = message(m); node.id = `v-${path.replace(/[^\w-]/g, '_')}-m`; return node; }));
  }

  // ---- a sentence ----------------------------------------------------------------------------------------------------
  function sentence(text, told, at = '') {
    const nodes = [], paths = [], whole = [];
    for (const piece of text.split(/(\{[^}]+\})/)) {
      const place = /^\{(.+)\}$/.exec(piece);
      if (!place) { nodes.push(piece); continue; }
      if (place[1] === '*above') { nodes.push(above()); whole.push('above.kind', 'above', 'roof', 'ceiling.joists', 'ceiling.slab'); told.add('above.kind'); continue; }
      const path = at + place[1];
      told.add(path); paths.push(path); nodes.push(value(path));
    }
    return [el('p', { class: 'saying' }, nodes), ...messages(paths), ...messages(whole, true)];
  }
  function above() {
    const now = valueAt(state.raw, 'above.kind'), taken = state.assumed['above.kind'];
    const field = el('select', { class: `val${taken ? ' taken' : ''}`, 'data-path': 'above.kind', 'aria-label': 'what lies above the ceiling', disabled: off, on: { change: () => desk.change(ABOVE[field.value][1](state.raw)) } },
      Object.entries(ABOVE).map(([key, [said]]) => el('option', { value: key, selected: key === now }, said)));
    return el('span', { class: 'hold' }, field);
  }
  const said = (list, told, at) => list.map(entry => Array.isArray(entry) ? entry : [entry, null]).filter(([, when]) => !when || when(state.raw))
    .flatMap(([text]) => sentence(typeof text === 'function' ? text(state.raw) : text, told, at));
  // what no sentence says: first what is given or assumed, then what could be said too
  function rest(paths, told) {
    const left = paths.filter(p => !told.has(p)), has = p => valueAt(state.raw, p) !== undefined || assumed(p);
    const line = p => { told.add(p); return [el('p', { class: 'saying plain' }, el('span', {}, `${labelOf(p)}: `), value(p)), ...messages([p])]; };
    // each wall under its own name
    const walls = [...new Set(left.map(wallOf))], headed = list => walls.length < 2 ? list.flatMap(line)
      : walls.flatMap(wall => { const its = list.filter(p => wallOf(p) === wall); return its.length ? [wall ? el('h4', {}, `${wall[0].toUpperCase()}${wall.slice(1)} wall`) : null, ...its.flatMap(line)] : []; });
    const given = headed(left.filter(has)), open = left.filter(p => !has(p));
    return [...given, open.length ? fold(`open ${paths[0]}`, 'What else could be said', () => headed(open)) : null];
  }
  const labelOf = path => { const [last, table] = path.split('.').reverse(); return NAMES[`${table}.${last}`] || NAMES[last] || plainly(known(path).said) || words(last); };
  const wallOf = path => (/^walls\.(\w+)\./.exec(path) || ['', ''])[1];
  const plainly = said => said && said.replace(/"(\w+)"/g, '$1').replace('one of the [[spaces]]', 'a space beyond');
  function fold(key, title, fill) {
    const box = el('details', { class: 'more', open: opened.has(key) }, el('summary', {}, title)), body = el('div');
    const full = () => { if (!body.childNodes.length) body.append(...fill().filter(Boolean)); };
    if (opened.has(key)) full();
    box.addEventListener('toggle', () => { if (box.open) { opened.add(key); full(); } else opened.delete(key); });
    box.append(body);
    return box;
  }
  function row(list, name, spec) {
    const told = new Set([`${list}.${name}.name`]), at = `${list}.${name}.`, title = words(name.replace(/-/g, ' '));
    const first = spec && spec.say ? sentence(spec.say, told, at) : [];
    return el('div', { class: 'thing' }, el('p', { class: 'thname' }, el('b', {}, /^\d+$/.test(name) ? `No ${name}` : title), el('button', { type: 'button', class: 'quiet', disabled: off, 'aria-label': `Take ${title} away`, on: { click: () => desk.change({ [`${list}.${name}`]: null }) } }, 'take away')),
      first, messages([`${list}.${name}`]), fold(`${list}.${name}`, first.length ? 'more of it' : 'its measures', () => rest(places.leaves(`${list}.${name}`), told)));
  }
  function rows(list, spec) {
    const held = valueAt(state.raw, list) || [], one = spec ? spec.one : words(list.split('.').pop()).replace(/s$/, '');
    return [...rowNames(held).map(name => row(list, name, spec)), spec ? el('button', { type: 'button', class: 'quiet add', disabled: off, on: { click: () => desk.add(list, { name: unused(spec.row().kind.split(' ').pop()), ...spec.row() }) } }, `Add a ${one}`) : null];
  }
  function unused(stem) {
    const used = JSON.stringify(state.raw);
    for (let n = 1; ; n++) if (!used.includes(`"${stem}-${n}"`)) return `${stem}-${n}`;
  }
  function slide(path) {
    const now = inchesOf(valueAt(state.raw, path)), spacing = inchesOf(valueAt(state.raw, path.replace('first', 'spacing'))) || 16;
    if (now === null) return null;
    const knob = el('input', { type: 'range', class: 'slide', min: 0, max: spacing, step: STEP, value: now, disabled: off, 'data-path': `${path} slide`, 'aria-label': 'Slide the joists', on: { input: () => desk.change({ [path]: stepped(valueAt(state.raw, path), knob.value - inchesOf(valueAt(state.raw, path))) }) } });
    return el('label', { class: 'sliding' }, el('span', {}, 'slide them'), knob);
  }

  // ---- the whole panel ------------------------------------------------------------------------------------------------
  function group(spec) {
    const told = new Set(), lists = spec.tables.flatMap(t => places.lists(t)), named = spec.rows || [];
    const lead = said(spec.lead, told), path = spec.slide && spec.slide(state.raw);
    if (path) lead.push(slide(path));
    const leaves = spec.tables.flatMap(t => places.kind(t).kind === 'rows' ? [] : places.leaves(t));
    const count = leaves.filter(p => state.assumed[p] || partly(p)).length;
    const shownRows = named.filter(r => r.always);
    return el('section', { class: 'kg' }, el('h3', {}, spec.name), lead, shownRows.flatMap(r => rows(r.place, r)),
      leaves.length || lists.length > shownRows.length ? fold(spec.name, `more${count ? `, ${count} assumed` : ''}`, () => [
        ...said(spec.more, told), ...rest(leaves, told), ...lists.filter(l => !shownRows.some(r => r.place === l)).flatMap(l => { const found = named.find(r => r.place === l), got = (valueAt(state.raw, l) || []).length; return got || found ? [el('h4', {}, words(l.split('.').slice(-2).join(' '))), ...rows(l, found)] : []; })]) : null);
  }
  function question([title, text], i) {
    const told = new Set(), body = sentence(text, told), open = [...told].filter(p => state.assumed[p]), guessed = open.filter(p => stands(p) !== undefined), agreed = guessed.filter(p => !kept.has(p));
    const done = !guessed.length && ![...told].some(p => kept.has(p) || here(p).length);
    return el('li', { class: done ? 'answered' : '' }, el('b', {}, title), body, done ? el('span', { class: 'sure' }, '✓ answered')
      : !agreed.length ? null : el('button', { type: 'button', class: 'quiet', disabled: off, on: { click: () => { const now = agreed.filter(p => !drafts.has(p)); if (now.length) desk.change(Object.fromEntries(now.map(p => [p, stands(p)]))); } } }, 'So it is')); // what was just typed is not overwritten by what stood there
  }
  const waits = () => !kept.size ? 'This cannot stand; the plan is as it was.' : kept.size === 1 ? 'One value is refused and waits; the plan goes on without it.' : `${kept.size} values are refused and wait; the plan goes on without them.`;
  function draw() {
    if (!state) return;
    const active = document.activeElement, path = host.contains(active) ? active.dataset.path : null, ends = path && /^text/.test(active.type) ? [active.selectionStart, active.selectionEnd] : null;
    const body = asked
      ? [el('p', { class: 'lead' }, 'Everything is guessed until you say it. Answer what you know; the plan follows at once.'), el('ol', { class: 'ask' }, QUESTIONS.filter(([, , when]) => !when || when(state.raw)).map(question)), el('button', { type: 'button', class: 'quiet add', on: { click: () => { asked = false; desk.answered(); draw(); } } }, 'Show everything that can be said')]
      : [el('p', { class: 'lead' }, 'Change any number. ', el('span', { class: 'val taken eg' }, 'Dotted'), ' ones are assumed, not measured.'), ...GROUPS.map(group)];
    drawing = true;
    host.replaceChildren(...body);
    drawing = false;
    const placed = new Set([...host.querySelectorAll('.msg')].map(n => n.dataset.field)), stray = mistakes.filter(m => !placed.has(m.field));
    if (mistakes.length || kept.size) host.prepend(el('div', { class: 'refused' }, el('p', {}, el('b', {}, waits()), ' ', el('button', { type: 'button', class: 'quiet', on: { click: () => { drafts.clear(); desk.forget(); draw(); } } }, 'Take back')), stray.map(m => message({ ...m, problem: `${m.field ? `${words(m.field)}: ` : ''}${m.problem}` }))));
    if (path) focus(path, ends);
  }
  function focus(path, ends) {
    const node = [...host.querySelectorAll('[data-path]')].find(n => n.dataset.path === path);
    if (!node) return;
    node.focus({ preventScroll: true });
    if (ends && node.setSelectionRange) node.setSelectionRange(...ends);
  }
  return {
    show(next) { const anew = !state || next.revision !== state.revision; state = next; if (anew) draw(); },
    // typed text goes once the scene has it; what waits keeps it, and so does the field that is being typed in
    settle(left, sent) { const typing = document.activeElement.dataset.path; for (const path of [...drafts.keys()]) if (!left.has(path) && (sent.has(path) || path !== typing)) drafts.delete(path); },
    // what the plan took besides, such as a mounting height that was chosen
    plan(list) { const next = Object.fromEntries(list.map(([field, value, reason]) => [field, [value, reason]])), same = JSON.stringify(next) === JSON.stringify(planned); planned = next; if (!same) draw(); },
    refuse(list, left) { mistakes = list; kept = left; draw(); },
    disable(yes) { off = yes; draw(); },
  };
}
