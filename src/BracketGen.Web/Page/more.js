// What the page has beside numbers and bracket: one screen that leads to each.
import { h } from './dom.js';
import { fittedPage } from './fitted.js';
import { kitPage } from './kit.js';
import { linePage } from './line.js';
import { screen } from './screens.js';
import { testBendPage } from './testbend.js';
import { words } from './words.js';

const said = words.more;

/**
 * @param {{ desk: import('./desk.js').Desk, take: (opened: Page.Opened) => void, back: () => void }} handlers
 */
export function morePage({ desk, take, back }) {
  const list = () => morePage({ desk, take, back });
  /** @type {[string, string, string, boolean, () => void][]} */
  const entries = [
    ['kit', said.kit, said.kitDoes, desk.isOpen, () => kitPage({ desk, back: list })],
    ['fitted', said.fitted, said.fittedDoes, desk.isOpen, () => fittedPage({ desk, back: list })],
    ['testbend', said.testBend, said.testBendDoes, desk.isOpen, () => testBendPage({ desk, back: list })],
    ['line', said.line, said.lineDoes, true, () => linePage({ take, back: list })],
  ];
  screen(said.heading, h('ul', { class: 'shelf' }, entries.map(([id, name, does, isReady, go]) => h('li', {},
    h('button', { type: 'button', id: `more-${id}`, disabled: !isReady, onclick: go }, h('strong', {}, name), h('span', {}, isReady ? does : said.noJob))))), said.back, back);
}
