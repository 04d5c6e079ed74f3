// The inputs of one field: how its value is shown, and what is written of what was typed.
import { h } from './dom.js';
import { at } from './plan.js';
import { besideOf, isNumber, shown, stepped, typed, understood } from './units.js';
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
  if (document.activeElement !== input) {
    input.dataset.shown = value;
    if (input.value !== value) {
      input.value = value;
    }
  }
}

/** @param {any} written */
const isPair = (written) => written !== null && typeof written === 'object';

/**
 * Commits what was typed while the user types, and for good when the field is left; arrow keys step the last digit.
 * @param {HTMLInputElement} input
 * @param {(isLast: boolean) => void} commit
 * @param {Page.Form} form
 */
function live(input, commit, form) {
  let timer = 0;
  const soon = (/** @type {number} */ delay) => {
    clearTimeout(timer);
    timer = setTimeout(() => commit(false), delay);
  };
  const atOnce = () => {
    clearTimeout(timer);
    commit(true);
  };
  input.addEventListener('input', () => soon(280));
  input.addEventListener('change', atOnce);
  input.addEventListener('blur', () => {
    if (input.isConnected) {
      atOnce();
      form.leave();
    }
  });
  input.addEventListener('keydown', (event) => {
    const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    const next = by ? stepped(input.value, by * (event.shiftKey ? 10 : 1)) : null;
    if (next !== null) {
      event.preventDefault();
      input.value = next;
      // At once: while the program works, further keys go along with the next question.
      soon(0);
    }
  });
}

/**
 * One number in its box with its own unit: what the file holds, and what was typed instead. What is typed bare is in the unit that stood beside the box as it was typed.
 * @param {HTMLInputElement} input
 * @param {string} standard Unit of the profile's numbers.
 * @param {(raw: any) => Page.Shown} seen
 * @param {(unit: string) => void} label
 */
function number(input, standard, seen, label) {
  let base = { text: '', unit: standard };
  /** @type {any} */
  let raw;
  return {
    input,
    get raw() { return raw; },
    /** @param {any} next What the file holds. Nothing changes while it is typed into: neither text nor unit. */
    fill(next) {
      if (document.activeElement === input) {
        return;
      }
      raw = next;
      base = seen(next);
      set(input, base.text);
      label(base.unit);
    },
    /** @returns {{ value: any, ask?: string }} What it says now; null where it is empty. */
    read() {
      if (input.value.trim() === base.text) {
        return { value: raw ?? null };
      }
      const told = understood(input.value);
      return { value: typed(told.text, base.unit, standard), ask: told.ask };
    },
    /** @param {any} next What was sent for the text that stands here. */
    sent(next) {
      base = { text: input.value.trim(), unit: base.unit };
      raw = next ?? undefined;
    },
  };
}

/**
 * What has to be said before a number is written: a question with its button, or what is missing.
 * @param {string} id
 */
function remark(id) {
  const place = h('p', { class: 'remark', id: `${id}-remark`, role: 'status', hidden: true });
  return {
    place,
    get isOpen() { return !place.hidden; },
    /** @param {...Page.Child} says */
    say(...says) {
      place.hidden = false;
      place.replaceChildren(...says.map((one) => /** @type {Node | string} */ (one)));
    },
    clear() {
      place.hidden = true;
      place.replaceChildren();
    },
  };
}

/**
 * Asks whether a number with a comma is the one with a point. Nothing is written before the answer.
 * @param {ReturnType<typeof remark>} note
 * @param {HTMLInputElement} input
 * @param {string} meant
 * @param {(isLast: boolean) => void} commit
 */
function askAbout(note, input, meant, commit) {
  note.say(fill(words.fields.comma, { typed: input.value.trim() }), ' ', h('button', {
    type: 'button', class: 'quiet', onclick: () => {
      input.value = meant;
      commit(true);
    },
  }, fill(words.fields.meant, { number: meant })));
}

const both = /^(.*?\S)\s*(?:±|\+\/?-)\s*(\S.*)$/;

/**
 * A number with its unit, and its ± with its own if it is measured.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function quantity(n, id, form) {
  // A text with a unit of another kind is shown as it stands; what is typed over it does not take that unit.
  const known = n.pattern ? new RegExp(n.pattern) : null;
  const seen = (/** @type {any} */ w) => (typeof w === 'string' && known && !known.test(w) ? { ...shown(undefined, n.unit, form.inInches), text: w } : shown(w, n.unit, form.inInches));
  const [unit, marginUnit] = [h('span', { class: 'unit' }), h('span', { class: 'unit' })];
  const value = number(box(id, null, { inputmode: 'decimal' }), n.unit, seen, (u) => { unit.textContent = u; });
  const margin = n.isMeasured ? number(box(`${id}-pm`, fill(words.fields.plusMinus, { label: n.label }), { inputmode: 'decimal', class: 'pm' }), n.unit, seen, (u) => { marginUnit.textContent = u; }) : null;
  const inputs = margin ? [value.input, margin.input] : [value.input];
  const note = remark(id);

  /** @param {boolean} isLast Whether the field is left. */
  function commit(isLast) {
    const pair = margin ? value.input.value.match(both) : null;
    if (margin && pair) {
      [, value.input.value, margin.input.value] = pair;
    }
    const [main, spread] = [value.read(), margin?.read() ?? { value: null }];
    if (main.ask !== undefined || spread.ask !== undefined) {
      askAbout(note, main.ask !== undefined || !margin ? value.input : margin.input, main.ask ?? spread.ask ?? '', commit);
      return;
    }
    note.clear();
    const [next, nextMargin] = [main.value, besideOf(main.value, spread.value, n.unit)];
    if (next === (value.raw ?? null) && nextMargin === (margin?.raw ?? null)) {
      return;
    }
    // Emptied to be typed anew: its ± stays.
    if (next === null && nextMargin !== null && !isLast) {
      return;
    }
    const changes = changesOf(n.path, value.raw, margin?.raw, next, nextMargin);
    value.sent(next);
    margin?.sent(next === null ? null : nextMargin);
    form.change(changes, n.path);
  }

  inputs.forEach((input) => live(input, commit, form));
  return {
    inputs,
    parts: [labelOf(id, n), h('div', { class: 'entry' }, value.input, margin ? [unit, sign('±'), margin.input, marginUnit] : unit), note.place],
    fill(written) {
      if (note.isOpen || form.isPending(n.path)) {
        return;
      }
      value.fill(isPair(written) ? written.value : written);
      margin?.fill(isPair(written) ? written.plus_minus : undefined);
    },
  };
}

/**
 * What to write for a number and its ±: nothing but what was typed anew.
 * @param {string} path
 * @param {any} wasValue
 * @param {any} wasMargin
 * @param {any} value
 * @param {any} margin
 * @returns {Page.Change[]}
 */
function changesOf(path, wasValue, wasMargin, value, margin) {
  if (value === null) {
    return [{ key: path, value: null }];
  }
  if (wasValue !== undefined && wasMargin !== undefined && margin !== null) {
    return [...(value === wasValue ? [] : [{ key: `${path}.value`, value }]), ...(margin === wasMargin ? [] : [{ key: `${path}.plus_minus`, value: margin }])];
  }
  return [{ key: path, value: margin !== null ? { value, plus_minus: margin } : value }];
}

/**
 * A point or a direction: its coordinates in one unit; one that is written in another unit shows it. The last one of a corner, its rounding, may stay empty.
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function vector(n, id, form) {
  const axes = n.axes ?? [];
  const needed = n.needed ?? axes.length;
  const unit = h('span', { class: 'unit' });
  const seen = (/** @type {any} */ raw) => {
    const [here, one] = [shown(undefined, n.unit, form.inInches).unit, shown(raw, n.unit, form.inInches)];
    return one.unit === here ? one : { text: isNumber(one.text) ? `${one.text} ${one.unit}` : one.text, unit: here };
  };
  const numbers = axes.map((axis, i) => number(box(`${id}-${axis}`, fill(words.fields.axis, { label: n.label, axis }), { inputmode: 'decimal', 'data-axis': i }), n.unit, seen, (u) => { unit.textContent = u; }));
  const inputs = numbers.map((one) => one.input);
  const note = remark(id);

  /** @param {boolean} isLast Whether the field is left. */
  function commit(isLast) {
    const read = numbers.map((one) => one.read());
    const asking = read.findIndex((one) => one.ask !== undefined);
    if (asking >= 0) {
      askAbout(note, inputs[asking], read[asking].ask ?? '', commit);
      return;
    }
    note.clear();
    const next = read.map((one) => one.value);
    const was = numbers.map((one) => one.raw ?? null);
    if (next.every((value, i) => value === was[i])) {
      return;
    }
    const given = next.slice(0, needed).filter((value) => value !== null).length;
    // An item of a list goes by its button, not by clearing its numbers.
    if ((given > 0 && given < needed) || (given === 0 && n.isItem)) {
      // No coordinate is made up: what was whole stays as it was, what is new waits for the rest.
      if (isLast && next.some((value) => value !== null) && was.every((value) => value === null)) {
        note.say(fill(words.fields.whole, { axes: axes.slice(0, needed).join(', ') }));
      }
      return;
    }
    const isSame = next.every((value, i) => (value === null) === (was[i] === null));
    numbers.forEach((one, i) => one.sent(next[i]));
    form.change(given === 0 ? [{ key: n.path, value: null }]
      : isSame ? next.map((value, i) => ({ key: `${n.path}[${i + 1}]`, value })).filter((e, i) => e.value !== was[i])
        : [{ key: n.path, value: next.filter((value) => value !== null) }], n.path);
  }

  inputs.forEach((input) => live(input, commit, form));
  return {
    inputs,
    parts: [h('span', { class: 'label' }, n.label), h('div', { class: 'entry', role: 'group', 'aria-label': n.label }, inputs.flatMap((input, i) => [sign(axes[i]), input]), unit), note.place],
    fill(written) {
      // While a hand is in one of them, none is filled: they are typed together.
      if (note.isOpen || form.isPending(n.path) || inputs.some((input) => input === document.activeElement)) {
        return;
      }
      numbers.forEach((one, i) => one.fill(written?.[i]));
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
 * Another kind of thing: keys that it does not know go. Those it needs are missing until somebody gives them.
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
  return [{ key: n.path, value: chosen }, ...gone.map((name) => ({ key: `${owner}.${name}`, value: null }))];
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
