// What came with earlier replies: a reply carries only what is new, and names the rest by its mark.

/** Pieces that are kept: those of the last few replies. */
const maxPieces = 120;

export class Kept {
  constructor() {
    /** By mark, the oldest first. @type {Map<string, unknown>} */
    this.pieces = new Map();
  }

  /** What need not be sent again. */
  get marks() { return [...this.pieces.keys()]; }

  /**
   * The reply, whole again.
   * @template {Page.Lean} T
   * @param {T} reply
   * @returns {T}
   */
  whole(reply) {
    for (const entry of reply.new ?? []) {
      const { holder, name, mark } = placeOf(reply, entry);
      this.keep(mark, holder[name]);
    }
    for (const entry of reply.same ?? []) {
      const { holder, name, mark } = placeOf(reply, entry);
      holder[name] = this.pieces.get(mark);
      this.keep(mark, holder[name]);
    }
    for (const mark of this.marks.slice(0, Math.max(0, this.pieces.size - maxPieces))) {
      this.pieces.delete(mark);
    }
    return reply;
  }

  /**
   * @param {string} mark
   * @param {unknown} piece
   */
  keep(mark, piece) {
    this.pieces.delete(mark);
    this.pieces.set(mark, piece);
  }
}

/**
 * Where a piece belongs.
 * @param {any} reply
 * @param {string[]} entry The keys that lead to it, and its mark.
 * @returns {{ holder: Record<string, unknown>, name: string, mark: string }}
 */
function placeOf(reply, entry) {
  const keys = entry.slice(0, -2);
  const [name, mark] = entry.slice(-2);
  return { holder: keys.reduce((inside, key) => inside[key], reply), name, mark };
}
