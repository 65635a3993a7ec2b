// Numbers as people read them: fractions of an inch or millimetres, feet only from 12 in.
import { D } from './store.js';

let unit = 'in';
export const setUnit = name => { unit = name; };
export const getUnit = () => unit;

const mixed = (value, parts) => {
  const n = Math.floor(Math.abs(value) * parts + 0.5);
  const whole = Math.floor(n / parts);
  let top = n % parts, bottom = parts;
  while (top && top % 2 === 0) { top /= 2; bottom /= 2; }
  const sign = value < 0 && n ? '−' : '';
  return sign + (top ? (whole ? `${whole} ` : '') + `${top}/${bottom}` : String(whole));
};
export const inches = (value, parts = 16) => `${mixed(value, parts)} in`;
export const U = value => unit === 'mm' ? `${value < -0.019 ? '−' : ''}${Math.floor(Math.abs(value) * 25.4 + 0.5)} mm` : inches(value);
export const figure = value => U(value).replace(/ (in|mm)$/, '');
export const FT = value => {
  if (unit === 'mm') return Math.abs(value) * 25.4 >= 1000 ? `${(value * 0.0254).toFixed(2)} m` : U(value);
  const n = Math.floor(Math.abs(value) + 0.5);
  if (n < 12) return inches(value, 1);
  const feet = Math.floor(n / 12), rest = n % 12;
  return `${value < 0 ? '−' : ''}${feet} ft${rest ? ` ${rest} in` : ''}`;
};
const METRIC = { cfm: [0.4719474432, 'l/s', 0], 'ft/min': [0.00508, 'm/s', 1], 'in wg': [249.08891, 'Pa', 0], ft: [0.3048, 'm', 1], lb: [0.45359237, 'kg', 0] };
const PLACES = { cfm: 0, 'ft/min': 0, 'in wg': 2, ft: 0, lb: 0 };
export const quantity = (value, of) => {
  if (of === 'in') return U(value);
  if (/^of /.test(of)) return `${+value.toPrecision(2)} ${of}`.replace('-', '−');
  const [factor, name, places] = of in METRIC ? (unit === 'mm' ? METRIC[of] : [1, of, PLACES[of]]) : [1, of, null];
  const text = places === null ? String(+value.toPrecision(4)) : (value * factor).toFixed(places);
  return `${text.replace('-', '−')} ${name}`.trim();
};
export const flow = cfm => unit === 'mm' ? `${Math.round(cfm * 0.4719474432)}` : `${Math.round(cfm)}`;
export const flowUnit = () => unit === 'mm' ? 'l/s' : 'cfm';
const COUNT = ['no elbow', 'one elbow', 'two elbows', 'three elbows', 'four elbows', 'five elbows', 'six elbows'];
export const elbowWords = n => Math.abs(n - Math.round(n)) < 1e-9 && COUNT[Math.round(n)] || `${n} elbows`;
export const side = shift => shift < 0 ? 'left' : 'right';
// words that were written with the plan keep the scene's unit: they are said whole in it, and named as such
export const ownUnit = () => (unit === 'mm') === D.scene.metric;
export const inOwn = make => { const shown = unit; startUnit(); try { return make(); } finally { unit = shown; } };
export const writtenIn = () => `in ${D.scene.metric ? 'millimetres' : 'inches'}, as the scene is written`;
export const asWritten = text => ownUnit() || !(D.scene.metric ? /\d (mm|m|cm)\b/ : /\d (in|ft)\b/).test(text) ? text : `${text.replace(/\.$/, '')} (${writtenIn()})${/\.$/.test(text) ? '.' : ''}`;
export const startUnit = () => setUnit(D.scene.metric ? 'mm' : 'in');
