// What the screens beside numbers and bracket have alike.
import { $, all, h } from './dom.js';

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
 * The mistakes in the files, under what they are of.
 * @param {string} heading
 * @param {Page.Problem[]} errors
 */
export const mistakesIn = (heading, errors) => (errors.length ? [heading, ...errors.map((e) => e.text)].map((text) => h('p', { class: 'problem' }, text)) : []);

/**
 * A verdict with its colour; its first words say it too.
 * @param {string} state
 * @param {string} text
 */
export const verdict = (state, text) => h('div', { class: `strip ${state}` }, h('p', {}, text));

/**
 * A text field with its label, its unit, and a place for what is wrong with it.
 * @param {string} id
 * @param {string} label
 * @param {string} unit
 * @param {string} value
 * @param {(text: string) => void} take
 */
export const labelled = (id, label, unit, value, take) => h('div', { class: 'field' }, h('label', { for: id }, label),
  h('div', { class: 'entry' }, h('input', { type: 'text', id, value, autocomplete: 'off', spellcheck: 'false', maxlength: 60, 'aria-describedby': `${id}-problem`, oninput: (/** @type {Event} */ e) => take(/** @type {HTMLInputElement} */ (e.currentTarget).value) }), h('span', { class: 'unit' }, unit)),
  h('p', { class: 'problem', id: `${id}-problem`, hidden: true }));

/**
 * Shows each mistake at its field; the first wrong one gets the focus.
 * @param {HTMLElement} form
 * @param {Record<string, string>} mistakes By the name of the field.
 * @param {string} prefix Of the fields' ids.
 */
export function tellMistakes(form, mistakes, prefix) {
  for (const field of all(`input[id^=${prefix}]`, form)) {
    const told = mistakes[field.id.slice(prefix.length)] ?? '';
    const problem = $(`${field.id}-problem`);
    problem.hidden = told === '';
    problem.textContent = told;
    field.toggleAttribute('aria-invalid', false);
    if (told) {
      field.setAttribute('aria-invalid', 'true');
    }
  }
  all('[aria-invalid=true]', form)[0]?.focus();
}
