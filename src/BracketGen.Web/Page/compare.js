// The choices laid over the picture as outlines, and one table of what tells them apart.
import { $, all, h } from './dom.js';
import { fill, words } from './words.js';

const said = words.over;

/** Colours of the outlines, in turn. */
const colours = ['--keepout', '--outer', '--moving', '--casting'];

const leading = /^([-+\u2212]?\d+(?:\.(\d+))?)(\D.*)?$/;

/**
 * A value against that of the chosen bracket.
 * @param {string} value
 * @param {string} chosen
 */
export function against(value, chosen) {
  if (value === chosen) {
    return said.same;
  }
  const [a, b] = [value, chosen].map((one) => one.match(leading));
  if (!a || !b || (a[3] ?? '') !== (b[3] ?? '')) {
    return value;
  }
  const [here, there] = [a, b].map((one) => Number(one[1].replace('\u2212', '-')));
  const by = (here - there).toFixed(Math.max((a[2] ?? '').length, (b[2] ?? '').length));
  return fill(said.differs, { value, by: `${here > there ? '+' : ''}${by}${a[3] ?? ''}` });
}

/**
 * Puts a tick on each choice, and the table under them.
 * @param {number[][]} outlines
 * @param {(laid: Report.Outline[]) => void} onLaid
 */
export function compare(outlines, onLaid) {
  const cards = all('#body-side-by-side .offer');
  onLaid([]);
  if (cards.length < 2 || cards.length !== outlines.length) {
    return;
  }
  const chosen = Math.max(0, cards.findIndex((card) => card.classList.contains('taken')));
  /** @type {Set<number>} */
  const ticked = new Set();
  const colourOf = (/** @type {number} */ i) => colours[i % colours.length];
  cards.forEach((card, i) => {
    if (i === chosen) {
      return;
    }
    const tick = h('input', { type: 'checkbox', 'data-lay': i + 1, onchange: () => {
      ticked[tick.checked ? 'add' : 'delete'](i);
      onLaid([...ticked].map((one) => ({ ends: outlines[one], colour: colourOf(one) })));
    } });
    const swatch = h('span', { class: 'swatch', 'aria-hidden': 'true' });
    swatch.style.background = `var(${colourOf(i)})`;
    card.append(h('label', { class: 'lay' }, tick, swatch, said.lay));
  });
  const order = [chosen, ...cards.keys()].filter((one, i, them) => them.indexOf(one) === i);
  const cells = cards.map((card) => all('dd', card).map((dd) => dd.textContent ?? ''));
  const names = cards.map((card) => card.getAttribute('aria-label') ?? '');
  const heads = all('dt', cards[chosen]).map((dt) => dt.textContent ?? '');
  $('body-side-by-side').append(h('div', { class: 'wide', tabindex: '0', role: 'region', 'aria-label': said.table }, h('table', { id: 'compare' },
    h('caption', {}, said.table),
    h('thead', {}, h('tr', {}, h('td', {}), order.map((i) => h('th', { scope: 'col' }, i === chosen ? fill(said.chosen, { name: names[i] }) : names[i])))),
    h('tbody', {}, heads.map((head, row) => h('tr', {}, h('th', { scope: 'row' }, head), order.map((i) => h('td', {}, i === chosen ? cells[i][row] : against(cells[i][row], cells[chosen][row])))))))));
}
