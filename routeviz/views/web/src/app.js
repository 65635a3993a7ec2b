// The page with its program behind it: changes go there, plans come back. Without it the page stays what it is offline.
import { $, D, L, S, el } from './store.js';
import { U } from './words.js';
import { atPlan, mount } from './answers.js';
import { makePanel } from './apppanel.js';
import { written64 } from './applengths.js';

const PAUSE_MS = 1500, TRIES = 4;

async function send(name, body) {
  const reply = await fetch(name, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body || {}) });
  return reply.json();
}
const bytesOf = text => Uint8Array.from(atob(text), c => c.charCodeAt(0)).buffer;

export function startLive({ swap, moveTo, refresh }) {
  const { schema, choices, questions } = D.live;
  let have = D.live.number, news = 0, more = '', state = null, held = [], waiting = [], busy = false, gone = false, chain = Promise.resolve(), note = '';
  document.body.dataset.live = '1';
  $('#deskbar').hidden = $('#measured').hidden = false;
  $('#measured > h2').textContent = questions ? 'A few questions' : 'As measured';

  // ---- changes: one at a time; what comes in between is sent together afterwards ------------------------------------
  // values said together stand or fall together; what is refused waits, named, and holds back nothing else
  const places = groups => new Set(groups.flatMap(g => Object.keys(g.values)));
  const without = (groups, paths) => groups.map(g => ({ ...g, values: Object.fromEntries(Object.entries(g.values).filter(([path]) => !paths.has(path))) })).filter(g => Object.keys(g.values).length);
  async function change(values) {
    const paths = new Set(Object.keys(values));
    held = without(held, paths); waiting = without(waiting, paths);
    if (paths.size) waiting.push({ values, said: true });
    if (busy || gone) return;
    busy = true;
    do {
      const now = [...held, ...waiting];
      waiting = [];
      try {
        const reply = await send('change', { changes: now.map(g => g.values) }), late = places(waiting);
        // a value that waits since nothing was taken after it is the last step: Undo takes back that one first
        held = without(reply.held.map(i => ({ values: now[i].values, at: now[i].said ? reply.state.revision : now[i].at })), late);
        panel.settle(new Set([...places(held), ...late]), places(now));
        panel.refuse(reply.mistakes, places(held)); take(reply.state);
      } catch (fault) { lost(); }
    } while (waiting.length && !gone);
    busy = false;
  }
  const panel = makePanel($('#measured > div'), { schema, choices, questions }, {
    change, refused: path => places(held).has(path),
    forget: path => { held = path ? without(held, new Set([path])) : []; drop(); },
    add: async (place, row) => act('add', { place, row }),
    answered: () => { $('#measured > h2').textContent = 'As measured'; },
  });
  async function act(name, body) {
    if (gone) return null;
    try {
      const reply = await send(name, body);
      if (reply.mistakes) panel.refuse(reply.mistakes, places(held));
      if (reply.trouble) { note = reply.trouble; notice(); }
      if (reply.state) take(reply.state);
      return reply;
    } catch (fault) { lost(); return null; }
  }
  const drop = () => { if (held.length) change({}); else { panel.refuse([], places(held)); if (state) take(state); } };
  const lastHeld = () => state && held.filter(g => g.at === state.revision).pop();
  function undo() {
    const last = lastHeld();
    if (!last) return act('undo');
    held = held.filter(g => g !== last);
    panel.settle(places(held), places([last]));
    return drop();
  }
  const redo = () => act('redo');
  async function save() {
    note = '';
    await act('save');
    notice();
  }

  // ---- what is known of the desk --------------------------------------------------------------------------------------
  function take(next) {
    if (state && next.revision < state.revision) return;
    state = next;
    panel.show(state);
    $('#undo').disabled = !(state.undo || lastHeld()) || gone; $('#redo').disabled = !state.redo || gone; $('#save').disabled = gone || (!state.unsaved && state.disk === 'same');
    const wait = places(held).size, but = wait ? `, without ${wait} ${wait === 1 ? 'value that is' : 'values that are'} refused` : '';
    $('#saved').textContent = state.unsaved ? `${state.file}: not saved` : state.disk === 'same' ? `${state.file}: saved${but}` : state.file;
    notice();
  }
  function doing(found) {
    const box = $('#doing');
    box.hidden = !found.doing && !found.stopped && !found.trouble;
    const part = found.part === null ? '' : ` ${Math.round(found.part * 10) * 10} of 100`;
    box.replaceChildren(...(found.doing ? [el('span', { class: 'turning', 'aria-hidden': 'true' }), el('span', {}, `${found.doing}${part}`), el('button', { type: 'button', class: 'quiet', on: { click: () => act('stop') } }, 'stop')]
      : found.stopped ? [el('span', {}, 'stopped'), el('button', { type: 'button', class: 'quiet', on: { click: () => act('goon') } }, 'go on')]
        : found.trouble ? [el('span', { class: 'barword' }, `not planned: ${found.trouble}`)] : []));
  }
  // where the scene on the desk was not planned, the answer that is shown is an older one and must not look like one
  function outdated(found) {
    const old = !found.doing && (found.trouble || found.stopped) && found.state.revision !== D.live.number;
    const now = !old ? null : found.trouble ? { word: 'Not planned', text: `This was not planned: ${found.trouble.replace(/\.?$/, '.')}` } : { word: 'Stopped', text: 'Planning was stopped before it had an answer.' };
    if (JSON.stringify(now) === JSON.stringify(L.old)) return;
    L.old = now;
    refresh();
  }
  function notice() {
    const box = $('#notice'), say = [];
    const button = (words, run) => el('button', { type: 'button', on: { click: run } }, words);
    if (gone) say.push(el('p', {}, el('b', {}, 'The program behind this page has ended. '), 'What you see stays and the hood can still be moved; changes can no longer be planned or saved. ', button('Try again', again), state ? button('Keep the scene as a file', keepText) : null));
    else {
      if (state && state.disk === 'changed') say.push(el('p', {}, el('b', {}, `${state.file} was changed by something else. `), state.unsaved ? 'Yours can be had back with Undo. ' : '', button('Take up what is in the file', () => act('load')), button('Keep mine', () => act('keep'))));
      if (state && state.disk === 'gone') say.push(el('p', {}, el('b', {}, `${state.file} is no longer there. `), 'Save writes it anew.'));
      if (note) say.push(el('p', {}, el('b', {}, note)));
    }
    const away = gone ? null : elsewhere(), trying = $('#trying');
    trying.hidden = !away;
    trying.replaceChildren(...(away || []));
    trying.style.top = `${$('#rulertxt').hidden ? 10 : $('#rulertxt').offsetHeight + 20}px`;
    box.hidden = !say.length;
    box.replaceChildren(...say);
  }
  function elsewhere() { // the hood was moved along the map, while the scene has it where it was
    if (!state || atPlan(S.x, S.h)) return null;
    return [el('span', {}, 'You are trying the hood at ', el('b', {}, U(S.x)), ...(S.h !== mount() ? [', ', el('b', {}, U(S.h)), ' up'] : []), '; the scene has it at ', U(D.scene.hood.x), '. '),
      el('button', { type: 'button', class: 'main', on: { click: hang } }, 'Hang it here'), el('button', { type: 'button', on: { click: () => moveTo(D.scene.hood.x, mount()) } }, 'Back')];
  }
  const said = value => D.scene.metric ? `${Math.round(value * 254) / 10} mm` : written64(value);
  function hang() {
    const dx = S.x - D.scene.hood.x, raw = state.raw, changes = {};
    if (Math.abs(dx) > 0.01) {
      if (!D.map || D.map.follows) changes['cooktop.centre'] = said(D.scene.cook.x + dx);
      if (raw.hood.centre !== undefined || !D.map || !D.map.follows) changes['hood.centre'] = said(S.x);
    }
    if (Math.abs(S.h - mount()) > 0.01) changes['hood.mount'] = said(S.h);
    change(changes);
  }
  function keepText() {
    const link = el('a', { href: URL.createObjectURL(new Blob([state.text], { type: 'text/plain' })), download: state.file });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  }

  // ---- what comes back ------------------------------------------------------------------------------------------------
  const show = (data, model) => { chain = chain.then(() => new Promise(done => swap(data, model, done))); return chain; };
  async function hear(found) {
    news = found.news;
    doing(found);
    take(found.state);
    if (found.plan) {
      const { data, base } = found.plan;
      let model = found.plan.model === null ? null : found.plan.model ? bytesOf(found.plan.model) : null;
      if (found.plan.model === null) { // a step was missed: the whole picture anew
        const reply = await fetch('model'), number = Number(reply.headers.get('x-plan'));
        if (number !== data.live.number) return; // newer still; its news follow
        model = await reply.arrayBuffer();
      }
      have = data.live.number; more = '';
      await show(data, model);
      panel.plan(D.plan.assumptions);
      document.title = document.title.replace(/^.*: duct plan/, `${data.scene.name}: duct plan`);
      document.body.dataset.plan = have; document.body.dataset.base = base;
    } else if (found.rest) { // all of the plan whose answer is shown
      more = '';
      await show(found.rest, null);
      panel.plan(D.plan.assumptions);
    } else if (found.more) {
      const key = `${found.more.fixes.length}/${!!found.more.map}`;
      if (key !== more) { more = key; await show({ ...D, fixes: found.more.fixes, map: found.more.map }, null); }
    }
    outdated(found);
    document.body.dataset.doing = found.doing;
  }
  async function listen() {
    for (let tries = 0; ;) {
      try {
        const reply = await fetch(`news?after=${news}&have=${have}&whole=${D.live.whole ? 1 : 0}&wall=${D.map && D.plan ? 1 : 0}&wait=25`);
        const found = reply.ok ? await reply.json() : { ending: true };
        if (found.ending) { lost(); return; }
        tries = 0;
        await hear(found);
      } catch (fault) {
        if (++tries >= TRIES) { lost(); return; }
        await new Promise(done => setTimeout(done, PAUSE_MS / TRIES));
      }
    }
  }
  function lost() {
    if (gone) return;
    gone = true; L.apply = null;
    document.body.dataset.live = 'gone';
    $('#doing').hidden = true;
    panel.disable(true);
    for (const id of ['#undo', '#redo', '#save']) $(id).disabled = true;
    notice();
  }
  function again() {
    gone = false; L.apply = change; news = 0;
    document.body.dataset.live = '1';
    panel.disable(false); notice(); if (state) take(state);
    listen();
  }

  // ---- wiring -----------------------------------------------------------------------------------------------------------
  L.apply = change; L.moved = notice;
  L.preview = async (marks, offset) => gone ? null : send('preview', { marks, offset }).catch(() => { lost(); return null; });
  $('#undo').onclick = undo; $('#redo').onclick = redo; $('#save').onclick = () => save();
  addEventListener('keydown', e => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
    const key = e.key.toLowerCase(), typing = e.target.matches('input[type=text],textarea') && e.target.value !== e.target.defaultValue;
    if (key === 's') { e.preventDefault(); save(); }
    else if (!typing && key === 'z') { e.preventDefault(); if (e.shiftKey) redo(); else undo(); }
    else if (!typing && key === 'y') { e.preventDefault(); redo(); }
  });
  panel.plan(D.plan.assumptions);
  listen();
}
