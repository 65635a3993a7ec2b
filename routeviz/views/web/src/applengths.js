// Lengths as people write them: read, and moved by a step.
const LENGTH = /^\s*([-−]?)(?:(\d+(?:\.\d+)?)(?:[\s-]+(\d+)\/(\d+))?|(\d+)\/(\d+))\s*(in|"|mm|cm)?\s*$/;
const parsed = text => typeof text === 'number' ? { value: text, unit: undefined } : read(LENGTH.exec(text || ''));
const read = m => m && { value: (m[1] ? -1 : 1) * (Number(m[2] || 0) + (m[3] ? m[3] / m[4] : 0) + (m[5] ? m[5] / m[6] : 0)), unit: m[7] };
export function inchesOf(text) {
  const found = parsed(text);
  if (!found || !Number.isFinite(found.value)) return null;
  return found.unit === 'mm' ? found.value / 25.4 : found.unit === 'cm' ? found.value / 2.54 : found.value;
}
export function stepped(text, by) {
  const now = inchesOf(text);
  if (now === null) return null;
  const { unit } = parsed(text);
  if (unit === 'mm' || unit === 'cm') return `${Math.round(now * 25.4 + by * 20) / (unit === 'cm' ? 10 : 1)} ${unit}`;
  return written64(now + by);
}
export function written64(value) {
  const n = Math.round(Math.abs(value) * 64), whole = Math.floor(n / 64);
  let top = n % 64, bottom = 64;
  while (top && top % 2 === 0) { top /= 2; bottom /= 2; }
  return `${value < 0 && n ? '-' : ''}${top ? `${whole ? `${whole} ` : ''}${top}/${bottom}` : whole} in`;
}
