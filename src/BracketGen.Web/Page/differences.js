// Two texts beside each other, line by line.

/** More lines than this are not compared one by one: they are shown as taken out and put in. */
const maxLines = 1500;

/**
 * The lines that differ, in order, each with - or + before it: the longest common lines stay (Hunt and Szymanski's problem, by the plain table).
 * @param {string} there
 * @param {string} here
 */
export function differences(there, here) {
  const [a, b] = [there.split('\n'), here.split('\n')];
  if (a.length > maxLines || b.length > maxLines) {
    return [...a.map((line) => `- ${line}`), ...b.map((line) => `+ ${line}`)];
  }
  // Row i, column j: how many lines are common from there on.
  const width = b.length + 1;
  const common = new Uint16Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      common[i * width + j] = a[i] === b[j] ? common[(i + 1) * width + j + 1] + 1 : Math.max(common[(i + 1) * width + j], common[i * width + j + 1]);
    }
  }
  /** @type {string[]} */
  const told = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      [i, j] = [i + 1, j + 1];
    } else if (j >= b.length || (i < a.length && common[(i + 1) * width + j] >= common[i * width + j + 1])) {
      told.push(`- ${a[i++]}`);
    } else {
      told.push(`+ ${b[j++]}`);
    }
  }
  return told;
}
