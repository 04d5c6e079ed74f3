// The kit: which of the parts at hand make the throttle body complete, in the words of the command, and its files.
import { asked, fetched, hand, textOf } from './asking.js';
import { h } from './dom.js';
import { mistakesIn, screen, table, verdict } from './screens.js';
import { fill, words } from './words.js';

const said = words.kit;

/**
 * @param {{ desk: import('./desk.js').Desk, back: () => void }} handlers
 */
export function kitPage({ desk, back }) {
  const status = h('p', { class: 'waiting', role: 'status', id: 'kit-status' });
  const strength = h('input', { type: 'checkbox', id: 'kit-strength', checked: true, onchange: () => solve() });
  const again = h('button', { type: 'button', id: 'do-kit', onclick: () => solve() }, said.solve);
  const place = h('div', { id: 'kit-answer' });
  /** What the answer was made from: its files are of the same. @type {Record<string, unknown>} */
  let message = {};

  async function solve() {
    again.disabled = true;
    strength.disabled = true;
    status.textContent = said.solving;
    place.replaceChildren();
    try {
      const isSaved = desk.job in desk.saved;
      const { files, examples } = await asked('/parts', { job: desk.job, text: desk.files[desk.job], example: !isSaved });
      message = { ...desk.message({}), parts: files, strength: strength.checked };
      /** @type {Page.KitReply} */
      const reply = await asked('/kit', message);
      status.textContent = said.solved;
      place.replaceChildren(...shown(reply), ...(examples.length ? [notSaved(files, examples, status)] : []));
    } catch (problem) {
      status.textContent = textOf(problem);
    }
    again.disabled = false;
    strength.disabled = false;
  }

  /**
   * @param {Page.KitReply} reply
   * @returns {HTMLElement[]}
   */
  function shown({ errors, answer }) {
    if (!answer) {
      return mistakesIn(said.mistakes, errors);
    }
    return [
      h('h3', {}, answer.heading), verdict(answer.state, answer.verdict), ...(answer.noLists ? [h('p', {}, answer.noLists)] : []),
      table(answer.set, answer.heads, answer.rows), ...answer.account.map((line) => h('p', {}, line)),
      ...answer.lists.flatMap((list) => [h('h3', {}, list.heading), h('ul', {}, list.lines.map((line) => h('li', {}, line)))]),
      h('h3', {}, said.files),
      h('ul', { class: 'files' }, answer.files.map((name) => h('li', {},
        h('span', {}, h('strong', {}, name), h('span', { class: 'remark' }, words.kitFiles[name])),
        h('button', { type: 'button', 'data-kit-file': name, 'aria-label': fill(said.downloadOne, { name }), onclick: () => download(name) }, said.download)))),
    ];
  }

  /** @param {string} name */
  async function download(name) {
    status.textContent = fill(said.making, { name });
    try {
      hand(await fetched('/kit-file', { ...message, name }), name);
      status.textContent = fill(said.made, { name });
    } catch (problem) {
      status.textContent = textOf(problem);
    }
  }

  screen(words.more.kit, [h('p', { class: 'remark' }, fill(said.lists, { job: words.profiles.job })), h('label', { class: 'show' }, strength, said.strength), h('p', {}, again), status, place], words.more.others, back);
  solve();
}

/**
 * The lists of an example, so that they lie beside the job when it is saved.
 * @param {Record<string, string>} files
 * @param {string[]} paths
 * @param {HTMLElement} status
 */
function notSaved(files, paths, status) {
  const box = h('div', { id: 'kit-lists' }, h('p', {}, fill(said.example, { files: paths.join(', ') })), h('button', { type: 'button', id: 'kit-save', onclick: async () => {
    try {
      const { changed } = await asked('/save', { files: paths.map((path) => ({ path, text: files[path], was: null })), replace: false });
      status.textContent = changed.length ? said.taken : said.savedLists;
      box.hidden = changed.length === 0;
    } catch (problem) {
      status.textContent = textOf(problem);
    }
  } }, said.saveLists));
  return box;
}
