// Test bends: strips that were bent and measured, K in the words of the command, and its way into the open shop's file.
import { asked, textOf } from './asking.js';
import { roles } from './desk.js';
import { $, all, h, input, say, select } from './dom.js';
import { labelled, mistakesIn, screen, table, verdict } from './screens.js';
import { fill, words } from './words.js';

const said = words.testBend;
const names = Object.keys(words.testBendValues);

/** How many strips the form has, and how many it can have. */
const first = 2;
const most = 6;

/** What was typed stays while the page is open: strips, sheet and tool. */
const typed = { strips: /** @type {Record<string, string>[]} */ (Array.from({ length: first }, () => ({}))), stock: 0, tool: 0 };

/**
 * @param {{ desk: import('./desk.js').Desk, back: () => void }} handlers
 */
export async function testBendPage({ desk, back }) {
  const shop = desk.pathOf(roles.find((r) => r.id === 'shop') ?? roles[0]) ?? '';
  const status = h('p', { class: 'waiting', role: 'status', id: 'bend-status' });
  const place = h('div', { id: 'bend-answer' });
  const body = h('div', {});
  /** The shop's file that the answer is of. */
  let sent = '';
  screen(words.more.testBend, [h('p', {}, said.explain), body, status, place], words.more.others, back);
  const message = (/** @type {string[][]} */ strips) => ({ shop, text: desk.files[shop] ?? '', stock: typed.stock, tool: typed.tool, strips });

  async function work() {
    const strips = typed.strips.map((strip) => names.map((name) => strip[name] ?? '')).filter((strip) => strip.some((value) => value.trim()));
    if (strips.length === 0) {
      status.textContent = said.needStrip;
      return;
    }
    status.textContent = said.working;
    sent = desk.files[shop];
    place.replaceChildren();
    try {
      /** @type {Page.TestBendReply} */
      const { errors, problem, answer } = await asked('/test-bend', message(strips));
      status.textContent = problem ?? '';
      place.replaceChildren(...mistakesIn(said.mistakes, errors), ...(answer ? shown(answer, shop, write) : []));
    } catch (problem) {
      status.textContent = textOf(problem);
    }
  }

  /**
   * @param {Page.Change} edit
   * @param {number} k
   */
  async function write(edit, k) {
    const before = desk.files[shop];
    // Undone meanwhile: it is worked out anew.
    if (before !== sent) {
      await work();
      return;
    }
    await desk.edit([{ file: shop, ...edit }]);
    const isIn = desk.files[shop] !== before;
    status.textContent = fill(isIn ? said.wrote : said.notWritten, { k, file: shop });
    say(status.textContent, true);
    all('button', place).forEach((b) => b.remove());
    $('more-heading').focus();
  }

  if (!desk.files[shop]) {
    status.textContent = said.noShop;
    return;
  }
  try {
    /** @type {Page.TestBendReply} */
    const { errors, stock = [], tools = [] } = await asked('/test-bend', message([]));
    body.replaceChildren(...(errors.length ? mistakesIn(said.mistakes, errors) : [form(stock, tools, work, () => { place.replaceChildren(); status.textContent = ''; })]));
  } catch (problem) {
    status.textContent = textOf(problem);
  }
}

/**
 * @param {string[]} stock
 * @param {string[]} tools
 * @param {() => void} work
 * @param {() => void} changed
 */
function form(stock, tools, work, changed) {
  const pick = (/** @type {'stock' | 'tool'} */ what, /** @type {string} */ label, /** @type {string[]} */ options) => [
    h('label', { for: `bend-${what}` }, label),
    h('select', { id: `bend-${what}`, onchange: () => { typed[what] = Number(select(`bend-${what}`).value); } }, options.map((text, i) => h('option', { value: String(i), ...(i === typed[what] ? { selected: true } : {}) }, text)))];
  const strips = h('div', { class: 'strips' }, typed.strips.map(strip));
  const more = h('button', { type: 'button', id: 'bend-another', disabled: typed.strips.length >= most, onclick: () => {
    typed.strips.push({});
    strips.append(strip(typed.strips.at(-1) ?? {}, typed.strips.length - 1));
    more.disabled = typed.strips.length >= most;
    input(`bend-${typed.strips.length}-${names[0]}`).focus();
  } }, said.another);
  return h('form', { onsubmit: (/** @type {Event} */ event) => { event.preventDefault(); work(); }, oninput: changed },
    h('div', { class: 'pick' }, pick('stock', said.sheet, stock), pick('tool', said.tool, tools)), strips,
    h('div', { class: 'controls' }, more, h('button', { type: 'submit', class: 'primary', id: 'do-bend' }, said.work)));
}

/**
 * @param {Record<string, string>} one
 * @param {number} at
 */
const strip = (one, at) => h('fieldset', { class: 'readings-form' }, h('legend', {}, fill(said.strip, { number: at + 1 })),
  names.map((name) => labelled(`bend-${at + 1}-${name}`, words.testBendValues[name], words.testBendUnits[name], one[name] ?? '', (text) => { one[name] = text; })));

/**
 * @param {NonNullable<Page.TestBendReply['answer']>} answer
 * @param {string} file
 * @param {(edit: Page.Change, k: number) => void} write
 */
function shown({ state, heading, rows, told, k = 0, edit }, file, write) {
  return [
    h('h3', {}, heading), table(said.caption, rows[0], rows.slice(1)), verdict(state, told[0]), ...told.slice(1).map((line) => h('p', {}, line)),
    ...(edit ? [h('p', {}, h('button', { type: 'button', class: 'primary', id: 'bend-write', onclick: () => write(edit, k) }, fill(said.write, { k, file })))] : []),
  ];
}
