// A plane that cuts the picture: across the throttle shaft, along it, or along the stop's axis, moved by a slider.
import { $, h, input, select } from './dom.js';
import { shown } from './units.js';
import { fill, words } from './words.js';

const said = words.section;

/**
 * The plane of a choice, by its normal and its distance from the origin along it; null for none.
 * @param {string} kind
 * @param {number} by How far it is moved along its normal (mm).
 * @param {Page.Marks} marks
 * @returns {number[] | null}
 */
export function planeOf(kind, by, { stop }) {
  if (kind === 'across') {
    return [0, 0, 1, by];
  }
  if (kind === 'along') {
    return [1, 0, 0, by];
  }
  if (kind === 'stop') {
    // Upright on the quadrant's plane as far as that goes, and through the axis.
    const [at, [x, y]] = [stop.slice(0, 3), stop.slice(3)];
    const length = Math.hypot(x, y);
    const normal = length > 1e-6 ? [-y / length, x / length, 0] : [0, 1, 0];
    return [...normal, normal.reduce((sum, n, i) => sum + n * at[i], 0) + by];
  }
  return null;
}

/**
 * @param {() => boolean} inInches
 * @param {(plane: (marks: Page.Marks) => number[] | null) => void} onCut
 */
export function section(inInches, onCut) {
  const [kind, slider] = [select('section-kind'), input('section-at')];
  kind.replaceChildren(...['none', 'across', 'along', 'stop'].map((value) => h('option', { value }, words.cuts[value])));
  function tell() {
    const by = Number(slider.value);
    slider.disabled = kind.value === 'none';
    const { text, unit } = shown(by, 'mm', inInches());
    const told = fill(said.at, { by: text, unit });
    slider.setAttribute('aria-valuetext', told);
    $('section-told').textContent = kind.value === 'none' ? '' : `${told}. ${said.about}`;
    onCut((marks) => planeOf(kind.value, by, marks));
  }
  kind.addEventListener('change', tell);
  slider.addEventListener('input', tell);
  slider.disabled = true;
}
