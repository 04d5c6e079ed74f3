// How values are shown and written. A profile keeps the unit it was written with; bare numbers are in the profile's standard units.
// Factors: NIST Special Publication 811 (2008), appendix B.8, products of exact numbers.
const pound = 0.45359237 * 9.80665;
const inches = {
  mm: ['in', 25.4], N: ['lbf', pound], 'N m': ['lbf in', (pound * 25.4) / 1000], 'N/mm': ['lbf/in', pound / 25.4],
};
const numeric = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;
const withUnit = /^\s*([-+]?(?:\d+[ -])?\d+\/\d+|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(\S.*)?$/;

const short = (number) => String(Number(number.toPrecision(5)));

// What stands in a field, and the unit beside it.
export function shown(written, standard, inInches) {
  if (typeof written === 'string') {
    const parts = written.match(withUnit);
    return parts?.[2] ? { text: parts[1], unit: parts[2] } : { text: written, unit: standard };
  }
  const other = inInches ? inches[standard] : undefined;
  if (typeof written === 'number') {
    return other ? { text: short(written / other[1]), unit: other[0] } : { text: String(written), unit: standard };
  }
  return { text: '', unit: other ? other[0] : standard };
}

// What was typed, as it goes into the profile; null takes the key away.
export function typed(text, unit, standard) {
  const plain = text.trim();
  if (plain === '') {
    return null;
  }
  if (numeric.test(plain)) {
    return unit === standard || !unit ? Number(plain) : `${plain} ${unit}`;
  }
  return withUnit.test(plain) && !plain.match(withUnit)[2] && unit ? `${plain} ${unit}` : plain;
}

// A bare number in the unit that another value is written with.
export function alike(number, standard, unit) {
  const other = inches[standard];
  return other?.[0] === unit && typeof number === 'number' ? `${short(number / other[1])} ${unit}` : number;
}

// One step of the last digit shown.
export function stepped(text, by) {
  if (!numeric.test(text.trim())) {
    return null;
  }
  const decimals = (text.split('.')[1] ?? '').length;
  const step = decimals > 0 ? 10 ** -decimals : 1;
  return (Number(text) + by * step).toFixed(decimals);
}
