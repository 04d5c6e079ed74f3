// Readings taken on the fitted bracket: a form, and what they mean in the words of the command.
import { asked, textOf } from './asking.js';
import { h } from './dom.js';
import { labelled, mistakesIn, screen, table, tellMistakes, verdict } from './screens.js';
import { words } from './words.js';

const said = words.fitted;

/** What was typed stays while the page is open. @type {Record<string, string>} */
const typed = {};

/**
 * @param {{ desk: import('./desk.js').Desk, back: () => void }} handlers
 */
export function fittedPage({ desk, back }) {
  const status = h('p', { class: 'waiting', role: 'status', id: 'fitted-status' });
  const place = h('div', { id: 'fitted-answer' });
  const lengths = Object.entries(words.fittedUnits).filter(([, unit]) => unit === 'mm').map(([name]) => name);
  const unitOf = (/** @type {string} */ name) => (desk.inInches && lengths.includes(name) ? said.unit : words.fittedUnits[name]);
  const form = h('form', { class: 'readings-form', onsubmit: (/** @type {Event} */ event) => { event.preventDefault(); say(); },
    // What is said of other readings must not stand beside these.
    oninput: () => { place.replaceChildren(); status.textContent = ''; } },
    Object.entries(words.fittedReadings).map(([name, label]) => labelled(`fitted-${name}`, label, unitOf(name), typed[name] ?? '', (text) => { typed[name] = text; })),
    h('button', { type: 'submit', class: 'primary', id: 'do-fitted' }, said.say));

  async function say() {
    status.textContent = said.saying;
    place.replaceChildren();
    try {
      /** @type {Page.FittedReply} */
      const reply = await asked('/fitted', { ...desk.message({}), readings: { ...typed } });
      tellMistakes(form, reply.mistakes, 'fitted-');
      status.textContent = reply.problem ?? (Object.keys(reply.mistakes).length ? said.wrong : '');
      place.replaceChildren(...shown(reply));
    } catch (problem) {
      status.textContent = textOf(problem);
    }
  }

  screen(words.more.fitted, [h('p', {}, said.explain), form, status, place], words.more.others, back);
}

/**
 * @param {Page.FittedReply} reply
 * @returns {HTMLElement[]}
 */
function shown({ errors, answer }) {
  if (errors.length) {
    return mistakesIn(said.mistakes, errors);
  }
  return answer ? [h('h3', {}, answer.heading), verdict(answer.state, answer.verdict), table(said.caption, [said.mark, said.code, said.means], answer.rows)] : [];
}
