// The inputs of one field: how its value is shown, and what is written of what was typed.
import { h } from './dom.js';
import { at, begin } from './plan.js';
import { alike, shown, stepped, typed } from './units.js';
import { fill, words } from './words.js';

/**
 * A text box.
 * @param {string} id
 * @param {string | null} label
 * @param {Record<string, unknown>} more
 */
const box = (id, label, more = {}) => h('input', { type: 'text', id, autocomplete: 'off', spellcheck: 'false', 'aria-label': label, ...more });

/** @param {string} mark */
const sign = (mark) => h('span', { class: 'sign', 'aria-hidden': 'true' }, mark);

/**
 * @param {string} id
 * @param {Page.Field} n
 */
const labelOf = (id, n) => h('label', { for: id }, n.label);

/**
 * Fills an input; what is being typed is left alone.
 * @param {HTMLInputElement} input
 * @param {string} value
 */
function set(input, value) {
  if (document.activeElement !== input && input.value !== value) {
    input.value = value;
  }
}

/** @param {any} written */
const isPair = (written) => written !== null && typeof written === 'object';

/**
 * Commits what was typed while the user types; arrow keys step the last digit.
 * @param {HTMLInputElement} input
 * @param {() => void} commit
 * @param {Page.Form} form
 */
function live(input, commit, form) {
  let timer = 0;
  const soon = (/** @type {number} */ delay) => {
    clearTimeout(timer);
    timer = setTimeout(commit, delay);
  };
  input.addEventListener('input', () => soon(280));
  input.addEventListener('change', () => {
    clearTimeout(timer);
    commit();
  });
  input.addEventListener('blur', form.leave);
  input.addEventListener('keydown', (event) => {
    const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    const next = by ? stepped(input.value, by * (event.shiftKey ? 10 : 1)) : null;
    if (next !== null) {
      event.preventDefault();
      input.value = next;
      soon(15);
    }
  });
}

/**
 * A number with its unit, and its ± if it is measured.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function quantity(n, id, form) {
  const value = box(id, null, { inputmode: 'decimal' });
  const unit = h('span', { class: 'unit' });
  const plusMinus = n.isMeasured ? box(`${id}-pm`, fill(words.fields.plusMinus, { label: n.label }), { inputmode: 'decimal', class: 'pm' }) : null;
  const inputs = plusMinus ? [value, plusMinus] : [value];
  let sent = '';
  const state = () => `${value.value}|${plusMinus?.value ?? ''}`;

  // A text with a unit of another kind is shown as it stands; what is typed over it does not take that unit.
  const known = n.pattern ? new RegExp(n.pattern) : null;
  const seen = (/** @type {any} */ w) => (typeof w === 'string' && known && !known.test(w) ? { ...shown(undefined, n.unit, form.inInches), text: w } : shown(w, n.unit, form.inInches));

  function commit() {
    if (state() === sent) {
      return;
    }
    sent = state();
    const written = at(form.values, n.path);
    form.change(changes(n, written, value.value, plusMinus?.value ?? null, seen), n.path);
  }

  inputs.forEach((input) => live(input, commit, form));
  return {
    inputs,
    parts: [labelOf(id, n), h('div', { class: 'entry' }, value, plusMinus ? [sign('±'), plusMinus] : null, unit)],
    fill(written) {
      const main = seen(isPair(written) ? written.value : written);
      set(value, main.text);
      unit.textContent = main.unit;
      if (plusMinus) {
        set(plusMinus, seen(isPair(written) ? written.plus_minus : undefined).text);
      }
      // What is being typed is not sent yet: an answer to an earlier question must not swallow it.
      if (!inputs.some((input) => input === document.activeElement)) {
        sent = state();
      }
    },
  };
}

/**
 * What to write for a number and its ±.
 * @param {Page.Field} n
 * @param {any} written The value in the profile.
 * @param {string} main
 * @param {string | null} plusMinus Null if the field has no ±.
 * @param {(value: any) => Page.Shown} seen
 * @returns {Page.Change[]}
 */
function changes(n, written, main, plusMinus, seen) {
  const wasPair = isPair(written);
  const beforeValue = wasPair ? written.value : written;
  const before = seen(beforeValue);
  const isSame = main.trim() === before.text;
  const next = isSame ? beforeValue ?? null : typed(main, before.unit, n.unit);
  if (next === null) {
    return [{ key: n.path, value: null }];
  }
  const beforeMargin = wasPair ? written.plus_minus : null;
  let margin = plusMinus === null || plusMinus.trim() === seen(beforeMargin ?? undefined).text ? beforeMargin : typed(plusMinus, before.unit, n.unit);
  if (typeof next === 'string' && typeof margin === 'number') {
    margin = alike(margin, n.unit, shown(next, n.unit).unit);
  }
  const hasMargin = margin !== null && margin !== undefined;
  if (wasPair && hasMargin) {
    return [...(isSame ? [] : [{ key: `${n.path}.value`, value: next }]), { key: `${n.path}.plus_minus`, value: margin }];
  }
  return [{ key: n.path, value: hasMargin ? { value: next, plus_minus: margin } : next }];
}

/**
 * A point or a direction: x, y and z.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function vector(n, id, form) {
  const axes = ['x', 'y', 'z'];
  const inputs = axes.map((axis, i) => box(`${id}-${axis}`, fill(words.fields.axis, { label: n.label, axis }), { inputmode: 'decimal', 'data-axis': i }));
  const unit = h('span', { class: 'unit' });
  function commit() {
    const written = at(form.values, n.path) ?? [];
    const next = inputs.map((input, i) => {
      const before = shown(written[i], n.unit, form.inInches);
      return input.value.trim() === before.text && written[i] !== undefined ? written[i] : typed(input.value, before.unit, n.unit) ?? 0;
    });
    if (JSON.stringify(next) === JSON.stringify(written)) {
      return;
    }
    const isWhole = Array.isArray(written) && written.length === axes.length;
    form.change(isWhole
      ? next.map((value, i) => ({ key: `${n.path}[${i + 1}]`, value })).filter((e, i) => e.value !== written[i])
      : [{ key: n.path, value: next }], n.path);
  }
  inputs.forEach((input) => live(input, commit, form));
  return {
    inputs,
    parts: [h('span', { class: 'label' }, n.label), h('div', { class: 'entry', role: 'group', 'aria-label': n.label }, inputs.flatMap((input, i) => [sign(axes[i]), input]), unit)],
    fill(written) {
      inputs.forEach((input, i) => set(input, shown(written?.[i], n.unit, form.inInches).text));
      unit.textContent = shown(written?.[0], n.unit, form.inInches).unit;
    },
  };
}

/**
 * One of some words.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function word(n, id, form) {
  const blank = n.isRequired && n.words.length ? null : h('option', { value: '' }, words.fields.notGiven);
  const choice = h('select', { id }, blank, n.words.map((w) => h('option', { value: w }, w)));
  choice.addEventListener('change', () => form.change(n.kinds ? turned(n, choice.value, form.values) : [{ key: n.path, value: choice.value || null }], null));
  return {
    inputs: [choice],
    parts: [labelOf(id, n), h('div', { class: 'entry' }, choice)],
    fill(written) {
      if (written === undefined && !choice.querySelector('option[value=""]')) {
        choice.prepend(h('option', { value: '' }, words.fields.choose));
      }
      choice.value = written ?? '';
    },
  };
}

/**
 * Another kind of thing: keys that it does not know go, those it needs come.
 * @param {Page.Field} n
 * @param {string} chosen
 * @param {Page.Values} values
 * @returns {Page.Change[]}
 */
function turned(n, chosen, values) {
  const owner = n.owner ?? '';
  const next = n.kinds?.find((k) => k.word === chosen)?.form;
  const written = at(values, owner) ?? {};
  if (!next) {
    return [{ key: owner, value: null }];
  }
  const properties = next.properties ?? {};
  const gone = Object.keys(written).filter((name) => !(name in properties));
  const come = (next.required ?? []).filter((name) => written[name] === undefined && properties[name].const === undefined);
  return [
    { key: n.path, value: chosen }, ...gone.map((name) => ({ key: `${owner}.${name}`, value: null })),
    ...come.map((name) => ({ key: `${owner}.${name}`, value: begin(properties[name]) })),
  ];
}

/**
 * A line of text.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function text(n, id, form) {
  const line = box(id, null);
  live(line, () => {
    if (line.value !== (at(form.values, n.path) ?? '')) {
      form.change([{ key: n.path, value: line.value === '' ? null : line.value }], n.path);
    }
  }, form);
  return { inputs: [line], parts: [labelOf(id, n), h('div', { class: 'entry' }, line)], fill: (written) => set(line, written ?? '') };
}

/**
 * A list on one line, with commas.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function items(n, id, form) {
  const list = (/** @type {any} */ value) => (Array.isArray(value) ? value.join(', ') : '');
  const line = box(id, null);
  live(line, () => {
    if (line.value !== list(at(form.values, n.path))) {
      const parts = line.value.split(',').map((p) => p.trim()).filter(Boolean);
      form.change([{ key: n.path, value: parts.length ? parts.map((p) => (n.isText ? p : typed(p, '', ''))) : n.isRequired ? [] : null }], n.path);
    }
  }, form);
  return { inputs: [line], parts: [labelOf(id, n), h('div', { class: 'entry' }, line)], fill: (written) => set(line, list(written)) };
}
