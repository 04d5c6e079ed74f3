// Measuring step by step: one number at a time, where it is on the part, how to measure it, and whether the answer is allowed.
import { asked } from './asking.js';
import { $, all, h, input, show } from './dom.js';
import { advice } from './fields.js';
import { at } from './plan.js';
import { besideOf, shown, typed, understood } from './units.js';
import { fill, words } from './words.js';

const said = words.measuring;

/**
 * Asks everything, profile by profile, and writes the answers into the open job.
 * @param {Page.MeasuringWish} wish
 */
export async function measure({ desk, profiles, unitOf, done, leave }) {
  const place = $('measuring');
  let [profile, step] = [0, 0];
  /** @type {Page.MeasuringStep[]} */
  let steps = [];
  /** @type {string[]} */
  let sketches = [];
  const asking = () => profiles[profile];

  async function questions() {
    ({ steps, sketches } = await asked('/questions', { kind: asking().kind, text: desk.files[asking().path] }));
  }

  /** @param {number} to */
  async function turn(to) {
    if (to < 0 && profile === 0) {
      return;
    }
    if (to >= steps.length && profile === profiles.length - 1) {
      place.hidden = true;
      done();
      return;
    }
    const by = to < 0 ? -1 : to >= steps.length ? 1 : 0;
    if (by !== 0) {
      profile += by;
      await questions();
    }
    step = by === 0 ? to : by < 0 ? steps.length - 1 : 0;
    draw();
  }

  function draw() {
    const s = steps[step];
    const { path, kind, label } = asking();
    const written = at(desk.values[path] ?? {}, s.key);
    const answer = { s, written, standard: unitOf(kind, s.key), inInches: desk.inInches };
    const problem = h('p', { class: 'problem', role: 'alert', id: 'measure-problem', hidden: true });
    const form = h('form', { onsubmit: async (/** @type {Event} */ event) => {
      event.preventDefault();
      const wrong = await take(desk, path, answer);
      problem.hidden = !wrong;
      if (wrong) {
        problem.textContent = wrong;
        focusFirst();
      } else {
        await questions();
        await turn(step + 1);
      }
    } }, entry(answer), problem, h('div', { class: 'controls' },
      h('button', { type: 'submit', class: 'primary' }, said.next),
      h('button', { type: 'button', disabled: profile === 0 && step === 0, onclick: () => turn(step - 1) }, said.back),
      h('button', { type: 'button', onclick: () => turn(step + 1) }, said.later),
      h('button', { type: 'button', class: 'quiet', onclick: () => { place.hidden = true; leave(); } }, said.leave)));
    place.replaceChildren(h('section', {},
      h('p', { class: 'progress' }, fill(said.progress, { profile: label, number: step + 1, count: steps.length })),
      h('progress', { max: 1, value: step / steps.length, 'aria-label': fill(said.progressLabel, { profile: label }) }),
      h('div', { class: 'measure' },
        h('div', { class: 'asked' }, h('h2', { id: 'measure-heading' }, s.ask), h('p', {}, s.explain), form, s.tool ? hints(s) : null),
        s.sketch >= 0 ? sketchOf(s, sketches[s.sketch]) : null)));
    place.hidden = false;
    focusFirst();
  }

  await questions();
  draw();
}

const focusFirst = () => document.getElementById('measure-0')?.focus();

/** @param {Page.MeasuringStep} s */
const hints = (s) => h('dl', { class: 'hints' },
  h('div', {}, h('dt', {}, said.tool), h('dd', {}, s.tool)), h('div', {}, h('dt', {}, said.mistake), h('dd', {}, s.mistake)));

/**
 * @param {Page.MeasuringStep} s
 * @param {string} markup
 */
export function sketchOf(s, markup) {
  const sketch = h('div', { class: 'sketch' });
  show(sketch, markup);
  const svg = sketch.querySelector('svg');
  svg?.setAttribute('role', 'img');
  const letters = s.letter.split(', ').filter((l) => l);
  const several = letters.length > 1;
  const label = several ? said.sketchLetters : letters.length ? said.sketchLetter : said.sketch;
  const caption = several ? said.captionLetters : letters.length ? said.captionLetter : said.caption;
  svg?.setAttribute('aria-label', fill(label, { ask: s.ask, letter: s.letter }));
  all('text', sketch).filter((t) => letters.includes(t.textContent ?? '')).forEach((t) => t.classList.add('here'));
  return h('figure', {}, sketch, h('figcaption', {}, fill(caption, { letter: s.letter })));
}

/**
 * @param {number} i
 * @param {string} label
 * @param {unknown} value
 * @param {Record<string, unknown>} more
 */
const box = (i, label, value, more = {}) => h('input', { type: 'text', id: `measure-${i}`, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': 'measure-problem', 'aria-label': label, value, ...more });

/** @param {string} text */
const sign = (text) => h('span', { class: 'sign', 'aria-hidden': 'true' }, text);

/** @param {any} written */
const isPair = (written) => written !== null && typeof written === 'object';

/**
 * What the answer is typed into.
 * @param {Page.MeasuringAnswer} answer
 */
function entry({ s, written, standard, inInches }) {
  const unit = (/** @type {string} */ u) => h('span', { class: 'unit' }, u);
  const seen = (/** @type {any} */ value) => shown(value, standard, inInches);
  switch (s.form) {
    case 'Word': {
      const value = s.key === 'quadrant.groove' ? (written?.shape ?? 'round') : s.key === 'pedal.table' ? (written ? 'table' : s.default) : written ?? s.default ?? '';
      return h('fieldset', { class: 'choices' }, h('legend', { class: 'unseen' }, s.ask), s.words.map((w, i) => h('label', { class: 'show' }, h('input', { type: 'radio', name: 'measure', id: `measure-${i}`, value: w, checked: w === value }), w)));
    }
    case 'Point':
      return h('div', { class: 'entry' }, ['x', 'y', 'z'].flatMap((axis, i) => [sign(axis), box(i, fill(said.axis, { ask: s.ask, axis }), seen(written?.[i]).text, { inputmode: 'decimal' })]), unit(seen(written?.[0]).unit));
    case 'Count':
      return h('div', { class: 'entry' }, box(0, s.ask, Array.isArray(written) ? written.length : s.default ?? '', { inputmode: 'numeric' }));
    case 'Text':
      return h('div', { class: 'entry' }, box(0, s.ask, written ?? '', { class: 'wide' }));
    default: {
      const main = seen(isPair(written) ? written.value : written);
      const margin = seen(isPair(written) ? written.plus_minus : undefined);
      return h('div', { class: 'entry' }, box(0, s.ask, main.text || (s.default ?? ''), { inputmode: 'decimal' }),
        unit(main.unit), s.form === 'Measured' ? [sign('±'), box(1, fill(said.plusMinus, { ask: s.ask }), margin.text, { inputmode: 'decimal', class: 'pm' }), unit(margin.unit)] : null);
    }
  }
}

const typedText = (/** @type {number} */ i) => (document.getElementById(`measure-${i}`) ? input(`measure-${i}`).value.trim() : '');

/**
 * What the answer changes in the profile, or what is wrong with it.
 * @param {Page.MeasuringAnswer} answer
 * @returns {Page.Change[] | string}
 */
function changesOf({ s, written, standard, inInches }) {
  const unit = (/** @type {any} */ value) => shown(value, standard, inInches).unit;
  switch (s.form) {
    case 'Word': {
      const chosen = document.querySelector('[name=measure]:checked');
      return chosen instanceof HTMLInputElement ? chosenWord(s, written, chosen.value) : said.choose;
    }
    case 'Count': {
      const count = Number(typedText(0));
      if (!/^\d+$/.test(typedText(0)) || count > s.max) {
        return fill(said.count, { max: s.max });
      }
      const there = Array.isArray(written) ? written.length : 0;
      return count > there ? Array.from({ length: count - there }, () => ({ key: `${s.key}[+]`, value: {} }))
        : Array.from({ length: there - count }, (_, i) => ({ key: `${s.key}[${there - i}]`, value: null }));
    }
    case 'Point': {
      const told = [0, 1, 2].map((i) => understood(typedText(i)));
      const comma = told.find((one) => one.ask !== undefined)?.ask;
      if (comma !== undefined) {
        return fill(said.comma, { number: comma });
      }
      const point = told.map((one, i) => typed(one.text, unit(written?.[i]), standard));
      return point.includes(null) ? said.point : [{ key: s.key, value: point }];
    }
    case 'Text':
      return [{ key: s.key, value: typedText(0) || null }];
    default: {
      const [main, spread] = [understood(typedText(0)), understood(s.form === 'Measured' ? typedText(1) : '')];
      const comma = main.ask ?? spread.ask;
      if (comma !== undefined) {
        return fill(said.comma, { number: comma });
      }
      const value = typed(main.text, unit(isPair(written) ? written.value : written), standard);
      const margin = typed(spread.text, unit(isPair(written) ? written.plus_minus : undefined), standard);
      return [{ key: s.key, value: value === null || margin === null ? value : { value, plus_minus: besideOf(value, margin, standard) } }];
    }
  }
}

/**
 * @param {Page.MeasuringStep} s
 * @param {any} written
 * @param {string} value
 * @returns {Page.Change[]}
 */
function chosenWord(s, written, value) {
  if (s.key === 'pedal.table') {
    return value !== 'table' ? (written ? [{ key: s.key, value: null }] : [])
      : written ? [] : [{ key: 'pedal.lever_ratio', value: null }, { key: 'pedal.table[+]', value: {} }, { key: 'pedal.table[+]', value: {} }];
  }
  if (s.key !== 'quadrant.groove') {
    return [{ key: s.key, value }];
  }
  if (value === 'round') {
    return written ? [{ key: s.key, value: null }] : [];
  }
  if (written?.shape === value) {
    return [];
  }
  return [{ key: 'quadrant.pitch_radius', value: null }, ...(written ? [{ key: s.key, value: null }] : []), { key: 'quadrant.groove.shape', value }];
}

/**
 * Writes the answer; what is wrong with it comes back in words.
 * @param {import('./desk.js').Desk} desk
 * @param {string} file
 * @param {Page.MeasuringAnswer} answer
 */
async function take(desk, file, answer) {
  const { s, written } = answer;
  const changes = changesOf(answer);
  if (typeof changes === 'string') {
    return changes;
  }
  const isEmpty = s.form !== 'Count' && s.form !== 'Word' && changes.some((e) => e.value === null);
  if (isEmpty && s.default === null) {
    return said.needed;
  }
  if (changes.length === 0 || (isEmpty && written === undefined)) {
    return '';
  }
  const before = desk.files;
  await desk.edit(changes.map((change) => ({ file, ...change })));
  const wrong = desk.errors.filter((e) => e.file === file && !e.missing && (e.key === s.key || e.key.startsWith(`${s.key}.`) || e.key.startsWith(`${s.key}[`)));
  if (wrong.length > 0) {
    desk.files = before;
  }
  return advice(wrong);
}
