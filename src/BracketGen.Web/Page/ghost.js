// What is laid over the bracket as outlines: the bracket before the last change, and other brackets of the choice.

/** @param {Report.SolidData} solid @returns {number[]} The edges of its sheet, six numbers each. */
export function edgesOf(solid) {
  const sheet = solid.parts.find((part) => part.kind === 'sheet');
  return sheet ? sheet.edges.flatMap((i) => sheet.points.slice(3 * i, 3 * i + 3)) : [];
}

/** Keeps the bracket of before until the next change. */
export class Ghost {
  constructor() {
    this.job = '';
    /** @type {Record<string, string>} */
    this.files = {};
    /** @type {number[]} */
    this.now = [];
    /** The bracket before the last change; empty where that left it as it was. @type {number[]} */
    this.before = [];
  }

  /**
   * @param {import('./desk.js').Desk} desk
   * @param {Report.SolidData | null} solid
   */
  take({ job, bracket, files }, solid) {
    const edges = solid ? edgesOf(solid) : [];
    const isSame = JSON.stringify(edges) === JSON.stringify(this.now);
    const shown = `${job} ${bracket}`;
    if (shown !== this.job) {
      this.before = [];
    } else if (files !== this.files) {
      this.before = isSame ? [] : this.now;
    } else if (!isSame) {
      // The same numbers, and a bracket that was found by looking further.
      this.before = [];
    }
    // While there is no bracket, the one of before stays what the next is held against.
    if (edges.length > 0 || shown !== this.job) {
      this.now = edges;
    }
    Object.assign(this, { job: shown, files });
  }
}
