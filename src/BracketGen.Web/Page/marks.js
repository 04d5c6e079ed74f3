// Draws what lies over the picture: names with their leaders, dimensions, and the handle of what is moved. It follows every frame.
import { $, h, input } from './dom.js';

const svg = 'http://www.w3.org/2000/svg';

/** Room between two marks, and from a mark to what it names (px). */
const [gap, off] = [3, 22];

/** @param {number[]} from @param {number[]} to */
const lineOf = (from, to) => `M${from.map((x) => x.toFixed(1)).join(' ')}L${to.map((x) => x.toFixed(1)).join(' ')}`;

/**
 * A dimension on the screen: its line with a stroke across each end.
 * @param {number[]} from
 * @param {number[]} to
 */
function dimensionLine(from, to) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const across = [(-dy / length) * 6, (dx / length) * 6];
  const stroke = (/** @type {number[]} */ p) => lineOf([p[0] - across[0], p[1] - across[1]], [p[0] + across[0], p[1] + across[1]]);
  return lineOf(from, to) + stroke(from) + stroke(to);
}

/** Width and height (px). @typedef {[number, number]} Size */

/**
 * The size of a mark.
 * @param {HTMLElement} one
 * @returns {Size}
 */
const sizeOf = (one) => [one.offsetWidth, one.offsetHeight];

/** Boxes that do not lie over each other. */
class Places {
  constructor() {
    /** @type {number[][]} */
    this.taken = [];
  }

  /** @param {number[]} box Left, top, right, bottom. */
  isFree([left, top, right, bottom]) {
    return this.taken.every(([l, t, r, b]) => right + gap < l || left - gap > r || bottom + gap < t || top - gap > b);
  }

  /**
   * The first place under a wished one that is free.
   * @param {number} x
   * @param {number} y
   * @param {Size} size Of the mark.
   */
  under(x, y, [w, tall]) {
    let top = y;
    while (!this.isFree([x, top, x + w, top + tall]) && top < y + 40 * gap) {
      top += gap;
    }
    this.taken.push([x, top, x + w, top + tall]);
    return top;
  }
}

export class Marks {
  /**
   * @param {import('./dimensions.js').Dimensions} dimensions
   * @param {import('./dragging.js').Dragging} dragging
   * @param {() => Report.SolidPicture | null} picture
   */
  constructor(dimensions, dragging, picture) {
    this.dimensions = dimensions;
    this.dragging = dragging;
    this.picture = picture;
    /** @type {{ thing: Page.Thing, label: HTMLElement }[]} */
    this.labels = [];
    /** @type {{ d: Page.Dimension, mark: HTMLElement }[]} */
    this.others = [];
    this.lines = { plain: document.createElementNS(svg, 'path'), lit: document.createElementNS(svg, 'path') };
    $('solid-lines').append(this.lines.plain, this.lines.lit);
    this.lines.lit.setAttribute('class', 'lit');
    $('solid-marks').append(dimensions.box, dragging.handle);
    this.names = h('div', {});
    $('solid-marks').prepend(this.names);
  }

  /**
   * What is there has changed.
   * @param {Page.Thing[]} things
   */
  take(things) {
    const isNamed = input('show-labels').checked;
    this.labels = isNamed ? things.map((thing) => ({ thing, label: h('span', { class: 'name' }, thing.name) })) : [];
    this.others = this.dimensions.drawn().others.map((d) => ({ d, mark: this.dimensions.handle(d) }));
    this.names.replaceChildren(...this.labels.map((one) => one.label), ...this.others.map((one) => one.mark));
    this.draw();
  }

  draw() {
    const picture = this.picture();
    const over = $('solid-over');
    const canvas = $('solid-canvas');
    if (!picture || canvas.clientWidth === 0) {
      return;
    }
    const [left, top, wide, high] = [canvas.offsetLeft, canvas.offsetTop, canvas.clientWidth, canvas.clientHeight];
    // Every size is read before anything is moved: to read one after a move has the browser lay out the page again.
    const sizes = new Map([this.dimensions.box, this.dragging.handle, ...this.labels.map((one) => one.label), ...this.others.map((one) => one.mark)].map((one) => [one, sizeOf(one)]));
    const of = (/** @type {HTMLElement} */ one) => /** @type {Size} */ (sizes.get(one));
    const put = (/** @type {HTMLElement} */ one, /** @type {number} */ x, /** @type {number} */ y) => {
      const [w, tall] = of(one);
      one.style.transform = `translate(${Math.max(0, Math.min(x, wide - w)).toFixed(1)}px, ${Math.max(0, Math.min(y, high - tall)).toFixed(1)}px)`;
    };
    Object.assign(over.style, { left: `${left}px`, top: `${top}px`, width: `${wide}px`, height: `${high}px` });
    const places = new Places();
    const { dragging: { handle, point } } = this;
    const lit = this.putLit(picture, places, put, of);
    if (point && !handle.hidden) {
      const [x, y] = picture.place(point);
      const [w, tall] = of(handle);
      put(handle, x - w / 2, y - tall / 2);
    }
    const plain = [];
    for (const { thing, label } of this.labels) {
      const [x, y] = picture.place(thing.at);
      const under = places.under(x + off, y - off, of(label));
      put(label, x + off, under);
      plain.push(lineOf([x, y], [x + off, under + of(label)[1] / 2]));
    }
    for (const { d, mark } of this.others) {
      const [from, to] = [picture.place(d.from), picture.place(d.to)];
      const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      const [w, tall] = of(mark);
      const box = [x, y, x + w, y + tall];
      // Seen end on it measures nothing here; where another stands it waits for another view.
      const isShown = Math.hypot(to[0] - from[0], to[1] - from[1]) > off && places.isFree(box) && x < wide && y < high && x > 0 && y > 0;
      mark.style.visibility = isShown ? 'visible' : 'hidden';
      if (isShown) {
        places.taken.push(box);
        put(mark, x, y);
        plain.push(dimensionLine(from, to));
      }
    }
    this.lines.plain.setAttribute('d', plain.join(''));
    this.lines.lit.setAttribute('d', lit);
  }

  /**
   * The dimension of the field with the focus: its line.
   * @param {Report.SolidPicture} picture
   * @param {Places} places
   * @param {(one: HTMLElement, x: number, y: number) => void} put
   * @param {(one: HTMLElement) => Size} of
   */
  putLit(picture, places, put, of) {
    const { box } = this.dimensions;
    const { now } = this.dimensions.drawn();
    if (!now) {
      return '';
    }
    const [from, to] = [picture.place(now.from), picture.place(now.to)];
    const [x, y] = [(from[0] + to[0]) / 2 + 8, (from[1] + to[1]) / 2 + 8];
    put(box, x, y);
    places.under(x, y, of(box));
    return dimensionLine(from, to);
  }
}
