// Places of the scene file: what stands there, what may stand there, and how it is written and read.
export function createPlaces(schema, choices) {
  const resolve = node => node && node.$ref ? schema.$defs[node.$ref.split('/').pop()] : node;
  const parts = node => { const found = resolve(node); return found && found.anyOf && !found.properties ? found.anyOf.map(resolve) : [found]; };
  const table = node => parts(node).find(n => n && n.properties);

  // the schema's word on a place; rows of a list go by name or number and have the schema of the list's items
  function at(path) {
    let node = schema, said = '';
    for (const step of path.split('.')) {
      const list = parts(node).find(n => n && n.type === 'array');
      if (list && !(table(node) || { properties: {} }).properties[step]) { node = list.items || (list.prefixItems || [])[0]; continue; }
      const inside = table(node);
      if (!inside || !inside.properties[step]) return null;
      node = inside.properties[step];
      said = node.description || (resolve(node) || {}).description || '';
    }
    return { node, said };
  }
  function kind(path) {
    const found = at(path);
    if (!found) return { kind: 'text', said: '' };
    const every = parts(found.node).filter(Boolean), said = found.said;
    const listed = every.find(n => n.enum), types = every.flatMap(n => n.type || []);
    if (choices[path]) return { kind: 'choice', options: choices[path], said };
    if (listed) return { kind: 'choice', options: listed.enum, said };
    if (types.includes('boolean')) return { kind: 'yesno', said };
    const list = every.find(n => n.type === 'array');
    if (list) { const items = parts(list.items || {}).flatMap(n => n && n.properties && !n.anyOf ? 'rows' : n && n.type || []); return { kind: items.includes('rows') && !items.includes('string') ? 'rows' : 'list', numbers: items.includes('integer') || items.includes('number') && !items.includes('string'), pairs: items.includes('array'), said }; }
    if (every.some(n => n.properties) && !types.includes('string')) return { kind: 'table', said };
    if ((types.includes('number') || types.includes('integer')) && !types.includes('string')) return { kind: 'number', said };
    return { kind: types.includes('string') && types.includes('number') ? 'measure' : 'text', said };
  }
  // every single value that a table of the format can hold
  function leaves(path) {
    const found = at(path), inside = found && table(found.node);
    if (!inside) return [];
    return Object.keys(inside.properties).flatMap(key => { const here = `${path}.${key}`, k = kind(here).kind; return k === 'table' ? leaves(here) : k === 'rows' ? [] : [here]; });
  }
  function lists(path) {
    const found = at(path), inside = found && table(found.node);
    if (found && kind(path).kind === 'rows') return [path];
    return inside ? Object.keys(inside.properties).flatMap(key => { const here = `${path}.${key}`, k = kind(here).kind; return k === 'rows' ? [here] : k === 'table' ? lists(here) : []; }) : [];
  }
  return { kind, leaves, lists };
}

export function rowNames(rows) { // as the program calls them: by name, else counted from 1
  return rows.map((row, i) => row && typeof row.name === 'string' && row.name.length <= 40 && !row.name.includes('.') ? row.name : String(i + 1));
}
export function valueAt(raw, path) {
  let here = raw;
  for (const step of path.split('.')) {
    if (here === undefined || here === null) return undefined;
    here = Array.isArray(here) ? here[rowNames(here).indexOf(step)] : here[step];
  }
  return here;
}
const one = value => Array.isArray(value) ? value.map(one).join(' at ') : typeof value === 'object' && value ? Object.values(value).join(' ') : value === true ? 'yes' : value === false ? 'no' : String(value);
export const written = value => value === undefined || value === null ? '' : Array.isArray(value) ? value.map(one).join(', ') : one(value);

// from what was typed to what the file holds; a bare number takes the unit of what stood there
const UNIT = /^[-−+]?[\d\s./-]+?\s*([A-Za-z][A-Za-z/ ]*)$/, BARE = /^[-−+]?[\d\s./-]+$/;
export function readBack(text, old, { kind, numbers, pairs }) {
  const typed = text.trim();
  if (!typed) return null;
  if (kind === 'yesno') return typed === 'yes';
  if (kind === 'number') return BARE.test(typed) && !Number.isNaN(Number(typed)) ? Number(typed) : typed;
  if (kind === 'list') {
    const first = Array.isArray(old) ? old[0] : undefined;
    return typed.split(',').map(t => t.trim()).filter(Boolean).map(t => pairs ? t.split(/\s+at\s+/) : numbers ? (Number.isNaN(Number(t)) ? t : Number(t)) : unitOf(t, first));
  }
  return kind === 'measure' ? unitOf(typed, old) : typed;
}
const unitOf = (typed, old) => { const unit = typeof old === 'string' && UNIT.exec(old.trim()); return unit && BARE.test(typed) ? `${typed} ${unit[1].trim()}` : typed; };
