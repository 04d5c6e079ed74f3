// How values are shown and written. A profile keeps the unit it was written with; numbers without a unit are in the profile's standard units.
import { units } from './words.js';

const numeric = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;
const withUnit = /^\s*([-+]?(?:\d+[ -])?\d+\/\d+|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(\S.*)?$/;

/** @param {number} number */
const short = (number) => String(Number(number.toPrecision(5)));

/** @param {string} standard */
const counterpart = (standard) => units.find((unit) => unit.metric === standard);

/**
 * What stands in a field, and the unit beside it.
 * @param {any} written The value in the profile.
 * @param {string} standard Unit of the profile's numbers.
 * @param {boolean} [inInches]
 * @returns {Page.Shown}
 */
export function shown(written, standard, inInches = false) {
  if (typeof written === 'string') {
    const parts = written.match(withUnit);
    return parts?.[2] ? { text: parts[1], unit: parts[2] } : { text: written, unit: standard };
  }
  const other = inInches ? counterpart(standard) : undefined;
  if (typeof written === 'number') {
    return other ? { text: short(written / other.factor), unit: other.inch } : { text: String(written), unit: standard };
  }
  return { text: '', unit: other?.inch ?? standard };
}

/**
 * What was typed, as it goes into the profile; null removes the key.
 * @param {string} text
 * @param {string} unit Unit beside the field.
 * @param {string} standard Unit of the profile's numbers.
 * @returns {number | string | null}
 */
export function typed(text, unit, standard) {
  const plain = text.trim();
  if (plain === '') {
    return null;
  }
  if (numeric.test(plain)) {
    return unit === standard || !unit ? Number(plain) : `${plain} ${unit}`;
  }
  return withUnit.test(plain) && !plain.match(withUnit)?.[2] && unit ? `${plain} ${unit}` : plain;
}

/**
 * A number in the unit that another value is written with.
 * @param {any} number
 * @param {string} standard
 * @param {string} unit
 */
export function alike(number, standard, unit) {
  const other = counterpart(standard);
  return other?.inch === unit && typeof number === 'number' ? `${short(number / other.factor)} ${unit}` : number;
}

/**
 * The number one step of its last digit further; null if the text is no number.
 * @param {string} text
 * @param {number} by
 */
export function stepped(text, by) {
  if (!numeric.test(text.trim())) {
    return null;
  }
  const decimals = (text.split('.')[1] ?? '').length;
  const step = decimals > 0 ? 10 ** -decimals : 1;
  return (Number(text) + by * step).toFixed(decimals);
}
