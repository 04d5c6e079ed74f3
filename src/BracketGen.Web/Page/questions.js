// One question of the measuring screens: what is measured, what its answer is given in, and what an answer changes in the profile.
import { all, h } from './dom.js';
import { besideOf, shown, typed, understood } from './units.js';
import { fill, words } from './words.js';

const said = words.measuring;

/**
 * Whether nothing is given.
 * @param {Page.MeasuringStep} s
 * @param {any} value
 */
export const isEmpty = (s, value) => value === undefined || value === null || value === '' || (s.form === 'Count' && Array.isArray(value) && value.length === 0);

/**
 * One question: its letter on the sketch, what to measure, where the answer goes, and what is wrong with it.
 * @param {Page.MeasuringStep} s
 * @param {string} standard Unit of the profile's numbers.
 * @returns {Page.MeasuringRow}
 */
export function rowFor(s, standard) {
  const id = `measure-${s.key.replaceAll(/[^a-z0-9]+/g, '-')}${s.form === 'Count' ? '-count' : ''}`;
  const problem = h('p', { class: 'problem', role: 'alert', id: `${id}-problem`, hidden: true });
  const state = h('span', { class: 'state' });
  const boxes = entry(s, id, standard);
  const element = h('div', { class: 'question', 'data-key': s.key },
    h('p', { class: 'what' }, s.letter ? h('b', { class: 'letter' }, s.letter) : null, h('span', { id: `${id}-ask` }, s.ask), state),
    h('p', { class: 'explain', id: `${id}-explain` }, s.explain), boxes.element, problem);
  const tell = (/** @type {string} */ text) => {
    problem.hidden = !text;
    problem.textContent = text;
    all('input,select', element).forEach((box) => (text ? box.setAttribute('aria-invalid', 'true') : box.removeAttribute('aria-invalid')));
  };
  return { s, standard, element, problem, state, tell, asks: false, fill: boxes.fill, read: boxes.read };
}

/** Words that can stand below each other; more of them are a list. */
const maxButtons = 5;

/** @param {string} text */
const sign = (text) => h('span', { class: 'sign', 'aria-hidden': 'true' }, text);

/** @param {any} written */
const isPair = (written) => written !== null && typeof written === 'object';

/**
 * One of a few words, or of a list.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {string} told Elements that describe it.
 * @returns {Pick<Page.MeasuringRow, 'element' | 'fill' | 'read'>}
 */
function wordEntry(s, id, told) {
  if (s.words.length > maxButtons || s.default === '') {
    const one = h('select', { id: `${id}-0`, 'aria-label': s.ask, 'aria-describedby': told }, [...(s.default ? [] : ['']), ...s.words].map((w) => h('option', { value: w }, w || said.notGiven)));
    return {
      element: h('div', { class: 'entry' }, one),
      fill: (written) => { one.value = chosenOf(s, written); },
      read: () => [{ key: s.key, value: one.value || null }],
    };
  }
  const choices = s.words.map((w, i) => h('input', { type: 'radio', name: id, id: `${id}-${i}`, value: w, 'aria-describedby': told }));
  return {
    element: h('fieldset', { class: 'choices' }, h('legend', { class: 'unseen' }, s.ask), choices.map((one, i) => h('label', { class: 'show' }, one, s.words[i]))),
    fill: (written) => choices.forEach((one) => { one.checked = one.value === chosenOf(s, written); }),
    read: (written) => {
      const chosen = choices.find((one) => one.checked);
      return chosen && chosen.value !== chosenOf(s, written) ? chosenWord(s, written, chosen.value) : [];
    },
  };
}

/**
 * What the answer is given in.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {string} standard Unit of the profile's numbers.
 * @returns {Pick<Page.MeasuringRow, 'element' | 'fill' | 'read'>}
 */
function entry(s, id, standard) {
  const told = `${id}-explain ${id}-problem`;
  const box = (/** @type {number} */ i, /** @type {string} */ label, /** @type {Record<string, unknown>} */ more = {}) => h('input', {
    type: 'text', id: `${id}-${i}`, autocomplete: 'off', spellcheck: 'false', 'aria-label': label, 'aria-describedby': told, ...more,
  });
  /** What is being typed is not written over. @type {(one: HTMLInputElement, text: string) => void} */
  const put = (one, text) => {
    if (one !== document.activeElement || one.dataset.shown === one.value) {
      one.value = text;
    }
    one.dataset.shown = text;
  };
  if (s.form === 'Word') {
    return wordEntry(s, id, told);
  }
  if (s.form === 'Count' || s.form === 'Text') {
    const one = box(0, s.ask, s.form === 'Count' ? { inputmode: 'numeric' } : { class: 'wide' });
    return {
      element: h('div', { class: 'entry' }, one),
      fill: (written) => put(one, s.form === 'Count' ? (Array.isArray(written) && written.length > 0 ? String(written.length) : '') : written ?? ''),
      read: (written) => (s.form === 'Count' ? counted(s, written, one.value.trim()) : [{ key: s.key, value: one.value.trim() || null }]),
    };
  }
  const isPoint = s.form === 'Point';
  const labels = isPoint ? ['x', 'y', 'z'].map((axis) => fill(said.axis, { ask: s.ask, axis })) : [s.ask, ...(s.form === 'Measured' ? [fill(said.plusMinus, { ask: s.ask })] : [])];
  const inputs = labels.map((label, i) => box(i, label, { inputmode: 'decimal', ...(!isPoint && i === 1 ? { class: 'pm' } : {}) }));
  const units = inputs.map(() => h('span', { class: 'unit' }));
  const pieces = (/** @type {any} */ written) => (isPoint ? [0, 1, 2].map((i) => written?.[i]) : isPair(written) ? [written.value, written.plus_minus] : [written, undefined]);
  return {
    element: h('div', { class: 'entry' }, isPoint ? [inputs.flatMap((one, i) => [sign('xyz'[i]), one]), units[0]] : inputs.flatMap((one, i) => [i === 1 ? sign('±') : null, one, units[i]])),
    fill: (written, inInches) => inputs.forEach((one, i) => {
      const seen = shown(pieces(written)[i], standard, inInches);
      put(one, seen.text);
      units[i].textContent = seen.unit;
    }),
    read: () => {
      const texts = inputs.map((one) => understood(one.value.trim()));
      const comma = texts.find((one) => one.ask !== undefined)?.ask;
      if (comma !== undefined) {
        return fill(said.comma, { number: comma });
      }
      const values = texts.map((one, i) => typed(one.text, units[i].textContent ?? '', standard));
      if (isPoint) {
        // No coordinate is made up: the point is written when it is whole.
        return values.every((value) => value === null) ? [{ key: s.key, value: null }] : values.includes(null) ? said.point : [{ key: s.key, value: values }];
      }
      const [value, margin = null] = values;
      return [{ key: s.key, value: value === null || margin === null ? value : { value, plus_minus: besideOf(value, margin, standard) } }];
    },
  };
}

/**
 * The word that is written, or stands where nothing is written.
 * @param {Page.MeasuringStep} s
 * @param {any} written
 */
const chosenOf = (s, written) => (s.key === 'quadrant.groove' ? (written?.shape ?? 'round') : s.key === 'pedal.table' ? (written ? 'table' : s.default) : written ?? s.default ?? '');

/**
 * As many tables as were counted.
 * @param {Page.MeasuringStep} s
 * @param {any} written
 * @param {string} text
 * @returns {Page.Change[] | string}
 */
function counted(s, written, text) {
  const there = Array.isArray(written) ? written.length : 0;
  const count = text === '' ? 0 : Number(text);
  if (!/^\d*$/.test(text) || count > s.max) {
    return fill(said.count, { max: s.max });
  }
  return count > there ? Array.from({ length: count - there }, () => ({ key: `${s.key}[+]`, value: {} }))
    : Array.from({ length: there - count }, (_, i) => ({ key: `${s.key}[${there - i}]`, value: null }));
}

/**
 * @param {Page.MeasuringStep} s
 * @param {any} written
 * @param {string} value
 * @returns {Page.Change[]}
 */
function chosenWord(s, written, value) {
  if (s.key === 'pedal.table') {
    return value !== 'table' ? [{ key: s.key, value: null }] : [{ key: 'pedal.lever_ratio', value: null }, { key: 'pedal.table[+]', value: {} }, { key: 'pedal.table[+]', value: {} }];
  }
  if (s.key !== 'quadrant.groove') {
    return [{ key: s.key, value }];
  }
  return value === 'round' ? [{ key: s.key, value: null }]
    : [{ key: 'quadrant.pitch_radius', value: null }, ...(written ? [{ key: s.key, value: null }] : []), { key: 'quadrant.groove.shape', value }];
}

/**
 * Writes an answer where it says something new; a question about it stands beside it until it is answered.
 * @param {import('./desk.js').Desk} desk
 * @param {string} file
 * @param {Page.MeasuringRow} row
 * @param {any} written
 * @returns {Promise<boolean>} Whether something was written.
 */
export async function write(desk, file, row, written) {
  const changes = row.read(written);
  if (row.asks && typeof changes !== 'string') {
    row.tell('');
  }
  row.asks = typeof changes === 'string';
  if (typeof changes === 'string') {
    row.tell(changes);
    return false;
  }
  const isNew = changes.some((change) => change.key !== row.s.key || JSON.stringify(change.value) !== JSON.stringify(written ?? null));
  if (isNew) {
    await desk.edit(changes.map((change) => ({ file, ...change })));
  }
  return isNew;
}
