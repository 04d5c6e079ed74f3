// How values are shown and written. A profile keeps the unit it was written with; numbers without a unit are in the profile's standard units.
import { units } from './words.js';

const numeric = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;
const withUnit = /^\s*([-+]?(?:\d+[ -])?\d+\/\d+|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(\S.*)?$/;

/** @param {string} text */
export const isNumber = (text) => withUnit.test(text);

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

// A number in a sum: decimal, or a fraction with or without a whole number before it.
const part = String.raw`(?:\d+ \d+\/\d+|\d+\.?\d*|\.\d+)`;
const sum = new RegExp(String.raw`^([-+]?\s*${part}(?:\s*[-+*/]\s*${part})+)\s*([^\d\s.,].*)?$`);
const fraction = /^[-+]?(?:\d+[ -])?\d+\/\d+(?!\s*[-+*/\d])/;
const comma = /^([-+]?\d*),(\d+)((?:\s*[^\d\s.,].*)?)$/;

/**
 * What was typed, as the program understands it: an inch mark is the unit, a sum its result. A comma is asked about: it may part decimals or thousands.
 * @param {string} text
 * @returns {{ text: string, ask?: string }} With `ask` it is not to be written before the user has said that this is meant.
 */
export function understood(text) {
  const plain = text.trim().replace(/\s*(?:''|["\u2033\u201d])$/, ' in').replaceAll('\u2212', '-');
  const decimal = plain.match(comma);
  if (decimal) {
    return { text: plain, ask: `${decimal[1].replace(/^[-+]?$/, '$&0')}.${decimal[2]}${decimal[3]}` };
  }
  const added = fraction.test(plain) ? null : plain.match(sum);
  if (!added) {
    return { text: plain };
  }
  const result = String(Number(resultOf(added[1]).toPrecision(10)));
  return { text: added[2] ? `${result} ${added[2]}` : result };
}

/** @param {string} written Numbers with + - * / between them; the last two bind closer. */
function resultOf(written) {
  const pieces = written.match(new RegExp(String.raw`${part}|[-+*/]`, 'g')) ?? [];
  let [total, product, sign, operator] = [0, 1, 1, '*'];
  for (const piece of pieces) {
    if ('+-*/'.includes(piece)) {
      if (piece === '+' || piece === '-') {
        total += operator === '' ? sign * product : 0;
        [product, sign, operator] = [1, (operator === '' ? 1 : sign) * (piece === '-' ? -1 : 1), '*'];
      } else {
        operator = piece;
      }
    } else {
      product = operator === '/' ? product / valueOf(piece) : product * valueOf(piece);
      operator = '';
    }
  }
  return total + sign * product;
}

/** @param {string} number */
function valueOf(number) {
  const [whole, broken] = number.includes(' ') ? number.split(' ') : number.includes('/') ? ['0', number] : [number, ''];
  const [over, under] = broken.split('/');
  return Number(whole) + (broken ? Number(over) / Number(under) : 0);
}

/**
 * What is written, in the profile's own unit; null where it is no number, or its unit is not known here.
 * @param {any} written
 * @param {string} standard Unit of the profile's numbers.
 */
export function inStandard(written, standard) {
  const { text, unit } = shown(written, standard);
  const other = counterpart(standard);
  const factor = unit === standard ? 1 : unit === other?.inch ? other.factor : null;
  const [, sign, plain] = text.trim().match(/^([-+]?)(.+)$/) ?? [];
  const value = (sign === '-' ? -1 : 1) * valueOf((plain ?? '').replace(/^(\d+)-(?=\d+\/)/, '$1 '));
  return factor === null || !plain || !Number.isFinite(value) ? null : value * factor;
}

/**
 * What was typed, as it goes into the profile; null removes the key.
 * @param {string} text As {@link understood}.
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
 * A ± beside a value: beside one that is written with its unit it is written with its own, the same size.
 * @param {any} value
 * @param {any} margin
 * @param {string} standard Unit of the profile's numbers.
 */
export const besideOf = (value, margin, standard) => (typeof value === 'string' && isNumber(value) && typeof margin === 'number' && margin !== 0 && standard ? `${margin} ${standard}` : margin);

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
