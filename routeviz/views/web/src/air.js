// The air: where fan and duct meet, and where the pressure goes.
import { $, el, esc, svg } from './store.js';
import { flow, flowUnit, getUnit, inOwn, quantity } from './words.js';

const W = 460, H = 250, L = 46, B = 34, T = 14, R = 12;
const round = (v, steps) => { const s = 10 ** Math.floor(Math.log10(v)); return steps.map(k => k * s).find(k => k >= v) || 10 * s; };

function figure(air) {
  const most = Math.max(...air.fan.map(p => p[0]), air.at[0] * 1.1, 1), peak = Math.max(...air.fan.map(p => p[1]), air.at[1] * 1.2, 0.05);
  const X = q => L + q / most * (W - L - R), Y = p => H - B - Math.min(p, peak * 1.06) / (peak * 1.06) * (H - B - T);
  const inside = points => points.filter(p => p[1] <= peak * 1.06 && p[0] <= most);
  const path = points => inside(points).map(([q, p], i) => `${i ? 'L' : 'M'}${X(q).toFixed(1)} ${Y(p).toFixed(1)}`).join('');
  const step = round(most / 5, [1, 2, 2.5, 5, 10]), rise = round(peak / 4, [1, 2, 2.5, 5, 10]);
  let grid = '', words = '';
  for (let q = 0; q <= most + 1e-6; q += step) { grid += `M${X(q)} ${H - B}V${T}`; words += `<text x="${X(q)}" y="${H - B + 15}" text-anchor="middle">${flow(q)}</text>`; }
  for (let p = 0; p <= peak + 1e-9; p += rise) { grid += `M${L} ${Y(p)}H${W - R}`; words += `<text x="${L - 6}" y="${Y(p) + 4}" text-anchor="end">${getUnit() === 'mm' ? Math.round(p * 249.08891) : +p.toFixed(3)}</text>`; }
  const band = air.low.length && air.high.length ? `<path class="ab" d="${path(air.low)}${inside(air.high).slice().reverse().map(([q, p]) => `L${X(q).toFixed(1)} ${Y(p).toFixed(1)}`).join('')}Z"/>` : '';
  const drawn = inside(air.system), half = drawn[Math.floor(drawn.length * 0.45)] || [0, 0], [q, p] = air.at, lift = Y(p) < T + 34;
  return `<svg class="airfig" viewBox="0 0 ${W} ${H}" role="img" aria-label="Fan and duct meet at ${esc(flow(q))} ${flowUnit()} and ${esc(quantity(p, 'in wg'))}"><path class="ag" d="${grid}"/>${band}<path class="as" d="${path(air.system)}"/><path class="af2" d="${path(air.fan)}"/>
<path class="ap" d="M${X(q)} ${H - B}V${Y(p)}"/><circle cx="${X(q)}" cy="${Y(p)}" r="5"/><text class="al2" x="${X(q) + (X(q) > W - 150 ? -9 : 9)}" y="${Y(p) + (lift ? 18 : -10)}" text-anchor="${X(q) > W - 150 ? 'end' : 'start'}">${flow(q)} ${flowUnit()} at ${esc(quantity(p, 'in wg'))}</text>
<text class="an2" x="${X(air.fan[0][0]) + 6}" y="${Y(air.fan[0][1]) + 16}">fan</text><text class="an2 sys" x="${X(half[0])}" y="${Y(half[1]) - 9}" text-anchor="middle">duct</text>${words}<text x="${W - R}" y="${H - 4}" text-anchor="end">flow, ${flowUnit()}</text><text x="${L - 40}" y="${T - 3}">${getUnit() === 'mm' ? 'Pa' : 'in wg'}</text></svg>`;
}

export function showAir(answer) {
  const option = answer.option, air = option && option.flow, box = $('#airbox');
  box.hidden = !air;
  if (!air) return;
  $('#losses').parentElement.hidden = !air.bars.length;
  const most = Math.max(...air.bars.map(b => b[2]), 1e-6);
  const speed = quantity(air.speed, 'ft/min'), range = flow(air.band[0]) !== flow(air.band[1]) ? `, between ${flow(air.band[0])} and ${flow(air.band[1])}` : '';
  $('#airsay').textContent = `${flow(air.at[0])} of ${flow(option.label)} ${flowUnit()}${range}; ${speed} in the duct.`;
  $('#airfig').replaceChildren(air.fan.length > 1 ? svg(figure(air)) : '');
  $('#losses').replaceChildren(...air.bars.map(([label, loss, share]) => { const bar = el('i', {}); bar.style.width = `${share / most * 100}%`; return el('li', {}, el('span', {}, label), el('b', {}, bar), el('em', {}, quantity(loss, 'in wg'))); }));
  $('#airmore').replaceChildren(...inOwn(() => linesOf(air)).map(t => el('li', {}, t)));
}
function linesOf(air) { // words of the plan with numbers in them: all in the scene's own unit
  const lines = air.need.map(([label, least, upTo, met]) => `${label[0].toUpperCase()}${label.slice(1)}: ${flow(least)}${upTo ? ` to ${flow(upTo)}` : ''} ${flowUnit()}, ${met ? 'reached' : 'not reached'}.`);
  if (air.makeup && (air.makeup.needed || air.makeup.threshold !== null)) lines.push(air.makeup.needed ? `Makeup air is needed: ${flow(air.makeup.supply)} ${flowUnit()}.` : `No makeup air is asked for up to ${flow(air.makeup.threshold)} ${flowUnit()}.`);
  for (const [label, q, gain] of air.advice) if (Math.abs(gain) >= 1) lines.push(`${label[0].toUpperCase()}${label.slice(1)} would give ${flow(q)} ${flowUnit()}.`);
  return [...(air.assumption ? [`${air.assumption[0].toUpperCase()}${air.assumption.slice(1)}${/\.$/.test(air.assumption) ? '' : '.'}`] : []), ...(air.together ? [air.together] : []), ...lines, ...air.notes];
}
