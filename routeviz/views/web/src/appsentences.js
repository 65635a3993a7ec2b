// What is said of a kitchen, in sentences; a place of the scene file in braces becomes its number, which can be changed.
// `when` says whether a sentence is said at all; what no sentence says is listed after them, in the words of the format.
const measured = raw => !!(raw.ceiling && raw.ceiling.joists && raw.ceiling.joists.at && raw.ceiling.joists.at.length);
const joisted = raw => !!(raw.ceiling && raw.ceiling.joists);
const along = raw => joisted(raw) && raw.ceiling.joists.direction === 'along';
const from = raw => along(raw) ? 'out from the hood wall' : 'from the left wall';

export const GROUPS = [
  {
    name: 'Hood', tables: ['hood'],
    lead: ['The hood’s centre is {hood.centre} from the left wall, {hood.mount} above the cooktop.'],
    more: [
      'It is {hood.width} wide and {hood.depth} deep. Its body is {hood.body} high, the rim {hood.canopy}. It weighs {hood.weight}.',
      'The air leaves at the {hood.outlet.place} through {hood.outlet.section}, collar {hood.outlet.collar}, {hood.outlet.across} right of its centre line,',
      ['{hood.outlet.up} above its underside.', raw => raw.hood.outlet && raw.hood.outlet.place === 'rear'],
      ['{hood.outlet.out} out from the wall.', raw => !(raw.hood.outlet && raw.hood.outlet.place === 'rear')],
      ['The cover reaches from {hood.cover.min} to {hood.cover.max}, {hood.cover.width} wide, {hood.cover.depth} deep.', raw => !!raw.hood.cover],
      'The fan moves {hood.fan.rated} at {hood.fan.rated_at}.',
      ['Its supply enters {hood.electrical.across} right of its centre line, {hood.electrical.up} above its underside.', raw => !!raw.hood.electrical],
    ],
  },
  {
    name: 'Cooktop', tables: ['cooktop'],
    lead: ['The cooktop is {cooktop.kind}, {cooktop.width} wide, its centre {cooktop.centre} from the left wall.'],
    more: ['It is {cooktop.depth} deep, {cooktop.back} off the wall, its surface {cooktop.height} above the floor. Its burners give {cooktop.heat} together.'],
  },
  {
    name: 'Joists', tables: ['ceiling'], finder: true,
    lead: [
      [raw => `Joists every {ceiling.joists.spacing}, the first at {ceiling.joists.first} ${from(raw)}.`, raw => joisted(raw) && !measured(raw)],
      [raw => `Joists at {ceiling.joists.at} ${from(raw)}.`, measured],
      ['A concrete ceiling, {ceiling.slab} thick.', raw => !joisted(raw) && !!(raw.ceiling && raw.ceiling.slab)],
    ],
    slide: raw => joisted(raw) && !measured(raw) ? 'ceiling.joists.first' : null,
    more: [
      ['They are {ceiling.joists.size}, {ceiling.joists.kind}, and run {ceiling.joists.direction}.', joisted],
      ['Doubled: numbers {ceiling.joists.doubled}. Not there: numbers {ceiling.joists.missing}.', joisted],
      'The ceiling is {ceiling.layers}.',
    ],
  },
  {
    name: 'Room', tables: ['kitchen', 'site'],
    lead: ['The room is {kitchen.width} wide, {kitchen.depth} deep and {kitchen.ceiling} high.'], more: [],
  },
  {
    name: 'Walls', tables: ['walls', 'spaces'],
    lead: [
      ['Studs {walls.hood.studs.size} every {walls.hood.studs.spacing}, the first at {walls.hood.studs.first}; beyond the hood wall: {walls.hood.beyond}.', raw => !!(raw.walls.hood.studs && !raw.walls.hood.studs.at)],
      ['Studs {walls.hood.studs.size} at {walls.hood.studs.at}; beyond the hood wall: {walls.hood.beyond}.', raw => !!(raw.walls.hood.studs && raw.walls.hood.studs.at)],
      ['The hood wall is {walls.hood.frame}, {walls.hood.core} thick; beyond it: {walls.hood.beyond}.', raw => !raw.walls.hood.studs],
    ],
    more: ['Inside: {walls.hood.inside}. Outside: {walls.hood.outside}.', 'It carries load: {walls.hood.bearing}. Fire-rated: {walls.hood.fire_rated}. Plates: {walls.hood.plates}.'],
    rows: [{ place: 'walls.hood.openings', one: 'window or door', row: () => ({ kind: 'window', operable: true, left: '12 in', sill: '44 in', width: '24 in', height: '36 in' }) }],
  },
  {
    name: 'Above and roof', tables: ['above', 'roof', 'outdoors'],
    lead: ['Above the ceiling: {*above}.'],
    more: [['A {roof.form} roof, {roof.pitch}, ridge {roof.ridge} at {roof.ridge_at}, overhang {roof.overhang}.', raw => !!raw.roof]],
    rows: [{ place: 'outdoors', one: 'thing outdoors that the cap keeps away from', row: () => ({ kind: 'operable window', face: 'hood', left: '12 in', bottom: '60 in', width: '24 in', height: '36 in' }) }],
  },
  {
    name: 'Duct and cap', tables: ['duct', 'cap'],
    lead: ['Duct {duct.sections}, at most {duct.max_elbows} elbows, {duct.min_straight} straight between them.'],
    more: ['It may end in a wall: {cap.wall}; on the roof: {cap.roof}. It may be boxed in below the ceiling: {duct.boxing_allowed}.'],
  },
  {
    name: 'Rules', tables: ['rules', 'tolerances', 'as_built'],
    lead: ['The rules are those of {rules.profile}.'],
    more: ['The tape may be off: joists {tolerances.joists}, studs {tolerances.studs}, rafters {tolerances.rafters}.'],
  },
  {
    name: 'In the way', tables: ['obstacles'], lead: [], more: [],
    rows: [{
      place: 'obstacles', one: 'thing in the way', always: true, row: () => ({ kind: 'cabinet', left: '8 in', out: '0 in', bottom: '54 in', width: '24 in', depth: '12 in', height: '30 in' }),
      say: 'It is a {kind}, {left} from the left, {width} wide, {bottom} above the floor, {height} high, {depth} deep.',
    }],
  },
];

// what must be known for a first plan, when nothing is known yet
export const QUESTIONS = [
  ['How large is the room?', 'It is {kitchen.width} along the hood wall, {kitchen.depth} deep and {kitchen.ceiling} high.'],
  ['What do you cook on?', 'The cooktop is {cooktop.kind}, {cooktop.width} wide and {cooktop.depth} deep, its centre {cooktop.centre} from the left wall.'],
  ['Which hood, and where?', 'One {hood.width} wide and {hood.depth} deep, {hood.fan.rated}, outlet {hood.outlet.section}. Its centre is {hood.centre} from the left wall.'],
  ['What is above the kitchen?', 'There is {*above}.'],
  ['How do the joists run?', 'They run {ceiling.joists.direction} (out from the hood wall, or along it), {ceiling.joists.size} every {ceiling.joists.spacing}, the first at {ceiling.joists.first}.', joisted],
  ['How thick is the concrete?', 'It is {ceiling.slab} thick.', raw => !joisted(raw) && !!(raw.ceiling && raw.ceiling.slab)],
  ['What is beyond the hood wall?', 'Beyond it: {walls.hood.beyond}. Its studs are {walls.hood.studs.size} every {walls.hood.studs.spacing}, the first at {walls.hood.studs.first}.'],
  ['Whose rules apply?', 'Those of {rules.profile}.'],
];

// what lies above hangs on several places at once, so each choice sets them together; what nobody said is listed as guessed
const JOISTS = { size: '2x8', spacing: '16 in', first: '14 in', direction: 'out' };
const ROOF = { form: 'gable', pitch: '4/12', ridge: 'along', ridge_at: '11 ft', overhang: '16 in', framing: { size: '2x6', spacing: '16 in', first: '14 in' } };
const roof = raw => raw.roof ? {} : { roof: ROOF };
const joists = raw => joisted(raw) ? {} : { 'ceiling.joists': JOISTS };
const leaves = (path, value) => value !== null && typeof value === 'object' ? Object.entries(value).flatMap(([key, v]) => leaves(`${path}.${key}`, v)) : [path];
function chosen(raw, kind, guessed, gone = []) {
  const places = Object.entries(guessed).flatMap(([path, value]) => leaves(path, value)), out = path => gone.some(g => path === g || path.startsWith(`${g}.`));
  const assumed = [...new Set([...(raw.assumed || []).filter(path => path !== 'above.kind' && !out(path)), ...places])];
  return { 'above.kind': kind, ...Object.fromEntries(gone.map(path => [path, null])), ...guessed, ...(assumed.length || raw.assumed ? { assumed: assumed.length ? assumed : null } : {}) };
}
const NO_STOREY = ['above.storey_height', 'above.floor'];
export const ABOVE = {
  attic: ['an attic', raw => chosen(raw, 'attic', { ...joists(raw), ...roof(raw) }, [...NO_STOREY, 'ceiling.slab'])],
  storey: ['another storey', raw => chosen(raw, 'storey', joists(raw), ['ceiling.slab'])],
  roof: ['the roof itself, no attic', raw => chosen(raw, 'roof', roof(raw), [...NO_STOREY, 'ceiling.slab'])],
  slab: ['a concrete slab', raw => chosen(raw, 'slab', raw.ceiling && raw.ceiling.slab ? {} : { 'ceiling.slab': raw.unit === 'mm' ? '200 mm' : '8 in' }, ['ceiling.joists'])],
};
