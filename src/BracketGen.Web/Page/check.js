// Brackets that are there already: those of the folder and of the examples, one that is entered now, and several in one table.
import { asked, textOf } from './asking.js';
import { $, all, h, input, select } from './dom.js';
import { advice } from './fields.js';
import { drawingKey } from './desk.js';
import { freePath, slug } from './paths.js';
import { fill, words } from './words.js';

const said = words.bracket;

/**
 * @param {{ desk: import('./desk.js').Desk, open: (path: string, isExample: boolean) => void, begin: (opened: Page.Bracket) => void, back: () => void }} handlers
 */
export async function checkPage({ desk, open, begin, back }) {
  /** @type {Page.Shelf} */
  const shelf = await asked('/shelf');
  const list = (/** @type {Page.ShelfEntry[]} */ entries, /** @type {boolean} */ isExample) => h('ul', { class: 'shelf' }, entries.map((p) => h('li', { class: 'ticked' },
    h('input', { type: 'checkbox', 'data-tick': p.path, 'data-example': isExample, 'aria-label': fill(said.tick, { name: p.name || p.path }) }),
    h('button', { type: 'button', 'data-bracket': p.path, onclick: () => open(p.path, isExample) }, h('strong', {}, p.name || p.path), h('span', {}, p.path), p.problem ? h('span', { class: 'problem' }, p.problem) : null))));
  const brackets = (/** @type {Page.ShelfEntry[]} */ entries) => entries.filter((p) => p.kind === 'bracket');
  // What cannot be read may be a bracket: it stays in the list and says what is wrong.
  const own = shelf.profiles.filter((p) => p.kind === 'bracket' || p.kind === '');
  const examples = brackets(shelf.examples).filter((p) => !own.some((o) => o.path === p.path));
  $('check').replaceChildren(
    h('section', {}, h('h2', { id: 'check-heading', tabindex: '-1' }, said.heading), h('p', {}, said.explain), h('button', { type: 'button', id: 'check-back', onclick: back }, said.back)),
    h('section', {}, h('h2', {}, fill(said.folder, { folder: shelf.folder })), own.length ? list(own, false) : h('p', { class: 'remark' }, said.none)),
    ...(examples.length ? [h('section', {}, h('h2', {}, said.examples), list(examples, true))] : []),
    h('section', {}, h('h2', {}, said.compareHeading), comparison(desk)),
    h('section', {}, h('h2', {}, said.new), entering(desk, shelf, begin)));
}

/**
 * @param {import('./desk.js').Desk} desk
 * @param {Page.Shelf} shelf
 * @param {(opened: Page.Bracket) => void} begin
 */
function entering(desk, shelf, begin) {
  const problem = h('p', { class: 'problem', role: 'alert', id: 'bracket-problem', hidden: true });
  return h('form', { class: 'new', onsubmit: (/** @type {Event} */ event) => {
    event.preventDefault();
    const name = input('bracket-name').value.trim();
    problem.hidden = slug(name) !== '';
    problem.textContent = said.needName;
    if (problem.hidden) {
      begin(newBracket(desk, shelf, name, select('bracket-shape').value === 'drawn'));
    } else {
      input('bracket-name').focus();
    }
  } },
  h('div', { class: 'pick' }, h('label', { for: 'bracket-name' }, said.name), h('input', { type: 'text', id: 'bracket-name', maxlength: 60, autocomplete: 'off' }),
    h('label', { for: 'bracket-shape' }, said.shape), h('select', { id: 'bracket-shape' }, h('option', { value: 'formed' }, said.formed), h('option', { value: 'drawn' }, said.drawn))),
  problem, h('button', { type: 'submit', class: 'primary', id: 'bracket-begin' }, said.begin));
}

/**
 * A bracket's file with nothing in it that nobody gave.
 * @param {import('./desk.js').Desk} desk
 * @param {Page.Shelf} shelf
 * @param {string} name
 * @param {boolean} isDrawn
 * @returns {Page.Bracket}
 */
function newBracket(desk, shelf, name, isDrawn) {
  const path = freePath(`brackets/${slug(name)}.toml`, (other) => other in desk.files || shelf.profiles.some((p) => p.path === other));
  const written = fill(said.file, { name: JSON.stringify(name) });
  return { path, files: { [path]: isDrawn ? `${written}${drawingKey} = ""\n` : written }, values: { [path]: isDrawn ? { name, [drawingKey]: '' } : { name } } };
}

/** @param {import('./desk.js').Desk} desk */
function comparison(desk) {
  const status = h('p', { class: 'waiting', role: 'status', id: 'compare-status' });
  const ours = h('input', { type: 'checkbox', id: 'compare-ours', checked: true });
  const table = h('div', { id: 'compare-table' });
  const pressed = h('button', { type: 'button', id: 'do-compare', onclick: async () => {
    const ticked = all('#check [data-tick]').filter((tick) => /** @type {HTMLInputElement} */ (tick).checked);
    if (ticked.length === 0) {
      status.textContent = said.nothingTicked;
      return;
    }
    pressed.disabled = true;
    const wanted = [...ticked.map((tick) => ({ path: tick.dataset.tick ?? '', isExample: 'example' in tick.dataset })), ...(ours.checked ? [null] : [])];
    await compare(desk, wanted, status, table);
    pressed.disabled = false;
  } }, said.compare);
  return [h('p', {}, said.compareExplain), h('label', { class: 'show' }, ours, said.withOurs), h('p', {}, pressed), status, table];
}

/**
 * Each bracket is solved by itself: its row stands as soon as it is known.
 * @param {import('./desk.js').Desk} desk
 * @param {({ path: string, isExample: boolean } | null)[]} wanted Null for the program's own.
 * @param {HTMLElement} status
 * @param {HTMLElement} table
 */
async function compare(desk, wanted, status, table) {
  const rows = h('tbody');
  /** @type {HTMLElement | null} */
  let head = null;
  table.replaceChildren();
  for (const [i, one] of wanted.entries()) {
    status.textContent = fill(said.comparing, { number: i + 1, count: wanted.length });
    const { heads, cells } = await rowOf(desk, one);
    if (!head && heads) {
      head = h('thead', {}, h('tr', {}, heads.map((text, at) => (at ? h('th', { scope: 'col' }, text) : h('td')))));
      table.replaceChildren(h('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': said.caption }, h('table', { class: 'wide' }, h('caption', {}, said.caption), head, rows)));
    }
    rows.append(h('tr', {}, h('td', { class: 'n' }, String(i + 1)), h('th', { scope: 'row' }, cells[0]), cells.slice(1).map((text, at) => h('td', cells.length === 2 && at === 0 ? { colspan: '6', class: 'problem' } : {}, text))));
    if (!head) {
      table.replaceChildren(h('table', { class: 'wide' }, h('caption', {}, said.caption), rows));
    }
  }
  status.textContent = fill(said.compared, { count: wanted.length });
}

/**
 * What the table says of a bracket, or why nothing.
 * @param {import('./desk.js').Desk} desk
 * @param {{ path: string, isExample: boolean } | null} one
 * @returns {Promise<{ heads?: string[], cells: string[] }>}
 */
async function rowOf(desk, one) {
  const path = one?.path ?? '';
  try {
    /** @type {Record<string, string>} */
    let files = {};
    let name = path;
    if (one) {
      const opened = await asked('/bracket', { path, example: one.isExample });
      files = opened.files;
      name = opened.values[path]?.name ?? path;
    }
    const message = desk.message({ depth: 'strength', bracket: path });
    /** @type {Page.Reply} */
    const reply = await asked('/work', { ...message, files: { ...files, ...message.files } });
    return reply.answer?.row ? { heads: reply.answer.heads, cells: reply.answer.row } : { cells: [name, fill(said.notRead, { problem: advice(reply.errors.slice(0, 1)) })] };
  } catch (problem) {
    return { cells: [path, textOf(problem)] };
  }
}
