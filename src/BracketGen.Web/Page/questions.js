// One question of the measuring screens: what is measured, what its answer is given in, and what is wrong with it.
import { all, h } from './dom.js';
import { quantity, text, vector } from './inputs.js';
import { fill, words } from './words.js';

const said = words.measuring;

/** Words that can stand below each other; more of them are a list. */
const maxButtons = 5;

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
 * @param {Page.MeasuringForm} form
 * @returns {Page.MeasuringRow}
 */
export function rowFor(s, standard, form) {
  const id = `measure-${s.key.replaceAll(/[^a-z0-9]+/g, '-')}${s.form === 'Count' ? '-count' : ''}`;
  const problem = h('p', { class: 'problem', role: 'alert', id: `${id}-problem`, hidden: true });
  const state = h('span', { class: 'state' });
  const tell = (/** @type {string} */ told) => {
    problem.hidden = !told;
    problem.textContent = told;
    all('input,select', element).forEach((box) => (told ? box.setAttribute('aria-invalid', 'true') : box.removeAttribute('aria-invalid')));
  };
  const { inputs, parts: [ask, ...parts], fill: put } = inputsOf(s, id, standard, form, tell);
  ask.id = `${id}-ask`;
  const element = h('div', { class: 'question', 'data-key': s.key },
    h('p', { class: 'what' }, s.letter ? h('b', { class: 'letter' }, s.letter) : null, ask, state),
    h('p', { class: 'explain', id: `${id}-explain` }, s.explain), parts, problem);
  inputs.forEach((one) => one.setAttribute('aria-describedby', `${id}-explain ${id}-problem`));
  return { s, element, problem, state, tell, fill: put };
}

/**
 * Numbers, points and texts have the same fields as everywhere on the page.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {string} standard Unit of the profile's numbers.
 * @param {Page.MeasuringForm} form
 * @param {(told: string) => void} tell
 * @returns {Page.Inputs}
 */
function inputsOf(s, id, standard, form, tell) {
  const n = { kind: /** @type {const} */ ('quantity'), path: s.key, label: s.ask, help: '', default: null, isRequired: false, isThere: true, words: [], nodes: [], unit: standard, isMeasured: s.form === 'Measured', axes: ['x', 'y', 'z'] };
  switch (s.form) {
    case 'Word': return s.words.length > maxButtons || s.default === '' ? list(s, id, form) : choices(s, id, form);
    case 'Count': return count(s, id, form, tell);
    case 'Text': return text(n, id, form);
    case 'Point': return vector(n, id, form);
    default: return quantity(n, id, form);
  }
}

/**
 * One of many words, or none.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {Page.MeasuringForm} form
 * @returns {Page.Inputs}
 */
function list(s, id, form) {
  const one = h('select', { id, onchange: () => form.change([{ key: s.key, value: one.value || null }], null) },
    [...(s.default ? [] : ['']), ...s.words].map((w) => h('option', { value: w }, w || said.notGiven)));
  return { inputs: [one], parts: [h('label', { for: id }, s.ask), h('div', { class: 'entry' }, one)], fill: (written) => { one.value = chosenOf(s, written); } };
}

/**
 * One of a few words.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {Page.MeasuringForm} form
 * @returns {Page.Inputs}
 */
function choices(s, id, form) {
  const buttons = s.words.map((w, i) => h('input', { type: 'radio', name: id, id: `${id}-${i}`, value: w, onchange: () => form.change(changesTo(s, form.written(s.key), w), null) }));
  return {
    inputs: buttons,
    parts: [h('span', {}, s.ask), h('fieldset', { class: 'choices' }, h('legend', { class: 'unseen' }, s.ask), buttons.map((one, i) => h('label', { class: 'show' }, one, s.words[i])))],
    fill: (written) => buttons.forEach((one) => { one.checked = one.value === chosenOf(s, written); }),
  };
}

/**
 * How many tables there are.
 * @param {Page.MeasuringStep} s
 * @param {string} id
 * @param {Page.MeasuringForm} form
 * @param {(told: string) => void} tell
 * @returns {Page.Inputs}
 */
function count(s, id, form, tell) {
  const thereOf = (/** @type {any} */ written) => (Array.isArray(written) ? written.length : 0);
  const one = h('input', { type: 'text', id, autocomplete: 'off', inputmode: 'numeric', onchange: () => {
    const wanted = Number(one.value.trim() || 0);
    if (!/^\d*$/.test(one.value.trim()) || wanted > s.max) {
      tell(fill(said.count, { max: s.max }));
      return;
    }
    const there = thereOf(form.written(s.key));
    form.change(wanted > there ? Array.from({ length: wanted - there }, () => ({ key: `${s.key}[+]`, value: {} }))
      : Array.from({ length: there - wanted }, (_, i) => ({ key: `${s.key}[${there - i}]`, value: null })), null);
  } });
  return {
    inputs: [one],
    parts: [h('label', { for: id }, s.ask), h('div', { class: 'entry' }, one)],
    fill(written) {
      if (document.activeElement !== one || !one.value.trim()) {
        one.value = thereOf(written) > 0 ? String(thereOf(written)) : '';
      }
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
 * @param {Page.MeasuringStep} s
 * @param {any} written
 * @param {string} value
 * @returns {Page.Change[]}
 */
function changesTo(s, written, value) {
  if (s.key === 'pedal.table') {
    return value !== 'table' ? [{ key: s.key, value: null }] : [{ key: 'pedal.lever_ratio', value: null }, { key: 'pedal.table[+]', value: {} }, { key: 'pedal.table[+]', value: {} }];
  }
  if (s.key !== 'quadrant.groove') {
    return [{ key: s.key, value }];
  }
  return value === 'round' ? [{ key: s.key, value: null }]
    : [{ key: 'quadrant.pitch_radius', value: null }, ...(written ? [{ key: s.key, value: null }] : []), { key: 'quadrant.groove.shape', value }];
}
