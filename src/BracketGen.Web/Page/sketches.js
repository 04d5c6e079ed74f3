// The worksheet's sketches: where on the part a number is measured.
import { asked } from './asking.js';
import { all, h, show } from './dom.js';
import { fill, words } from './words.js';

const said = words.measuring;

/** They are asked for once. @type {Promise<Record<string, string[]>> | null} */
let known = null;

/**
 * The sketches that the questions number.
 * @param {string} kind Vehicle or throttle body.
 */
export async function sketchesOf(kind) {
  known ??= asked('/sketches');
  try {
    return (await known)[kind] ?? [];
  } catch (problem) {
    known = null;
    throw problem;
  }
}

/**
 * @param {Pick<Page.MeasuringStep, 'ask' | 'letter'>} s
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
