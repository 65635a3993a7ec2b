// The data that the page shows. A live page may set it again; everything else reads it from here.
export let D = null;
export const setData = data => { D = data; };
export const readData = () => setData(JSON.parse(document.getElementById('data').textContent));

// what only a page with its program behind it can do; null while there is none
export const L = { apply: null, moved: null, cover: null, old: null };

// where the hood is, which way out is shown, which fix's own plan (null for none), what is picked
export const S = { x: 0, h: 0, option: 0, fix: null, picked: null, step: null };

export const $ = query => document.querySelector(query);
export const $$ = query => [...document.querySelectorAll(query)];

// build elements from trusted tags and untrusted words: words only ever become text
export function el(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === false || value === null || value === undefined) continue;
    if (key === 'on') for (const [event, run] of Object.entries(value)) node.addEventListener(event, run);
    else if (key === 'class') node.className = value;
    else node.setAttribute(key, value === true ? '' : value);
  }
  for (const child of children.flat(Infinity)) if (child !== null && child !== undefined && child !== '') node.append(child);
  return node;
}
// drawings are written as markup; every word in them goes through esc
export const esc = text => String(text).replace(/[&<>"']/g, c => `&#${c.charCodeAt(0)};`);
export function svg(markup) {
  const holder = document.createElement('template');
  holder.innerHTML = markup;
  return holder.content.firstElementChild;
}
export const still = () => matchMedia('(prefers-reduced-motion: reduce)').matches;
export const dark = () => {
  if (document.documentElement.dataset.paper) return false; // paper is light
  const chosen = document.documentElement.dataset.theme;
  return chosen ? chosen === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches;
};
