// The fields of a profile on the page: groups, help, mistakes.
import { h } from './dom.js';
import { drawing } from './drawing.js';
import { items, quantity, text, vector, word } from './inputs.js';
import { at } from './plan.js';
import { fill, words } from './words.js';

const makers = { quantity, vector, word, text, items, drawing };

/** Lists up to this length are open at first. */
const maxOpen = 6;

/**
 * What is wrong with a value, for its user.
 * @param {Page.Problem[]} errors
 */
export const advice = (errors) => errors.map((p) => fill(words.fields.allowed, { allowed: p.allowed, advice: p.advice })).join(' ');

/**
 * Draws the fields, and returns what fills them and what shows their mistakes.
 * @param {HTMLElement} place
 * @param {Page.Field[]} nodes
 * @param {Pick<Page.Form, 'change' | 'leave' | 'isPending' | 'drawings' | 'take'>} handlers
 * @returns {Page.Fields}
 */
export function fields(place, nodes, handlers) {
  /** @type {Page.Form} */
  const form = { values: {}, inInches: false, ...handlers };
  /** @type {Page.DrawnField[]} */
  const drawn = [];
  place.replaceChildren(...nodes.map(draw));

  /**
   * @param {Page.Field} n
   * @returns {HTMLElement}
   */
  function draw(n) {
    return n.kind === 'group' || n.kind === 'list' ? group(n, n.nodes.map(draw), form) : field(n, n.kind);
  }

  /**
   * @param {Page.Field} n
   * @param {keyof typeof makers} kind
   */
  function field(n, kind) {
    const id = `f${drawn.length}`;
    const problem = h('p', { class: 'problem', id: `${id}-problem`, hidden: true });
    const help = h('p', { class: 'help', id: `${id}-help` }, [n.help, ifLeftOut(n)].filter(Boolean).join(' '));
    const made = makers[kind](n, id, form);
    for (const input of made.inputs) {
      input.setAttribute('aria-describedby', `${id}-problem ${id}-help`);
      input.dataset.path = n.path;
    }
    drawn.push({ n, problem, inputs: made.inputs, fill: made.fill });
    return h('div', { class: `field ${n.kind}${n.isItem ? ' row' : ''}`, 'data-field': n.path }, made.parts, n.isItem ? removing(n, form, '\u00d7') : null, problem, help);
  }

  return {
    fill(values, inInches) {
      Object.assign(form, { values, inInches });
      drawn.forEach((one) => one.fill(at(values, one.n.path)));
    },
    problems: (errors) => tellProblems(drawn, errors),
  };
}

/**
 * @param {Page.Field} n
 * @param {HTMLElement[]} inside
 * @param {Page.Form} form
 */
function group(n, inside, form) {
  const body = h('div', { class: 'fields' }, inside);
  const about = n.help ? h('p', { class: 'about' }, n.help) : null;
  const count = (/** @type {string} */ told) => h('span', { class: 'count' }, told);
  if (n.kind === 'list') {
    body.append(...(n.item && (n.count ?? 0) < (n.maxCount ?? 0) ? [adding(n, form)] : []));
    const isOpen = inside.length > 0 ? inside.length <= maxOpen : n.isRequired;
    return h('details', { class: 'group', open: isOpen, 'data-group': n.path }, h('summary', {}, `${n.label} `, count(String(inside.length))), about, body);
  }
  if (n.isItem) {
    return h('fieldset', { class: 'item' }, h('legend', {}, n.label), body, removing(n, form));
  }
  if (n.isRequired || n.isThere) {
    return h('details', { class: 'group', open: true, 'data-group': n.path }, h('summary', {}, n.label), about, body, n.isRequired ? null : removing(n, form));
  }
  return h('details', { class: 'group', 'data-group': n.path }, h('summary', {}, `${n.label} `, count(words.fields.notGiven)), about, body);
}

/**
 * @param {Page.Field} n
 * @param {Page.Form} form
 * @param {string} shown What stands on the button.
 */
const removing = (n, form, shown = words.fields.remove) => h('button', {
  type: 'button', class: 'quiet', 'aria-label': fill(words.fields.removeOne, { label: n.label }), onclick: () => form.change([{ key: n.path, value: null }], null),
}, shown);

/**
 * A new item is empty: its fields say what is missing, and no number stands in it that nobody gave.
 * @param {Page.Field} n
 * @param {Page.Form} form
 */
const adding = (n, form) => h('button', {
  type: 'button', class: 'quiet', 'data-add': n.path,
  onclick: () => form.change([{ key: `${n.path}[+]`, value: n.item?.type === 'array' ? [] : {} }], null),
}, fill(words.fields.add, { label: n.label.toLowerCase() }));

/**
 * What holds if the value is left out.
 * @param {Page.Field} n
 */
function ifLeftOut(n) {
  const value = n.default;
  if (value === undefined) {
    return n.isRequired || n.kind === 'word' ? '' : words.fields.optional;
  }
  const shown = Array.isArray(value) ? words.fields.none : typeof value === 'object' && value !== null ? `${value.value} ± ${value.plus_minus}` : String(value);
  return fill(words.fields.default, { value: n.unit && !Array.isArray(value) ? `${shown} ${n.unit}` : shown });
}

/**
 * Shows each mistake at the field it belongs to; those that belong to none come back.
 * @param {Page.DrawnField[]} drawn
 * @param {Page.Problem[]} errors
 */
function tellProblems(drawn, errors) {
  /** @type {Page.Problem[]} */
  const rest = [];
  /** @type {Map<Page.DrawnField, Page.Problem[]>} */
  const by = new Map();
  for (const error of errors) {
    const [field] = drawn.filter(({ n }) => error.key === n.path || error.key.startsWith(`${n.path}.`) || error.key.startsWith(`${n.path}[`)).sort((a, b) => b.n.path.length - a.n.path.length);
    if (field) {
      by.set(field, [...(by.get(field) ?? []), error]);
    } else {
      rest.push(error);
    }
  }
  for (const field of drawn) {
    const mine = by.get(field) ?? [];
    field.problem.hidden = mine.length === 0;
    field.problem.textContent = advice(mine);
    // What is still to be given is no mistake.
    const isWrong = mine.some((error) => !error.open);
    field.problem.classList.toggle('open', !isWrong);
    field.inputs.forEach((input) => (isWrong ? input.setAttribute('aria-invalid', 'true') : input.removeAttribute('aria-invalid')));
    if (mine.length) {
      field.problem.closest('details')?.setAttribute('open', '');
    }
  }
  return rest;
}
