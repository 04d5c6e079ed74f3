// What the screens beside numbers and bracket have alike.
import { $, h } from './dom.js';

/**
 * One of the screens: its heading, the way back, and what is on it.
 * @param {string} heading
 * @param {Page.Child} content
 * @param {string} backLabel
 * @param {() => void} back
 */
export function screen(heading, content, backLabel, back) {
  $('more').replaceChildren(h('section', {},
    h('h2', { id: 'more-heading', tabindex: '-1' }, heading), h('p', {}, h('button', { type: 'button', id: 'more-back', onclick: back }, backLabel)), content));
  $('title').textContent = heading;
  $('more-heading').focus();
}

/**
 * A table that can be wider than the page.
 * @param {string} caption
 * @param {string[]} heads
 * @param {string[][]} rows
 */
export const table = (caption, heads, rows) => h('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': caption },
  h('table', { class: 'wide' }, h('caption', {}, caption), h('thead', {}, h('tr', {}, heads.map((text) => h('th', { scope: 'col' }, text)))),
    h('tbody', {}, rows.map((row) => h('tr', {}, row.map((text, at) => (at ? h('td', {}, text) : h('th', { scope: 'row' }, text))))))));

/**
 * A verdict with its colour; its first words say it too.
 * @param {string} state
 * @param {string} text
 */
export const verdict = (state, text) => h('div', { class: `strip ${state}` }, h('p', {}, text));
