// The photograph on the page: moved, zoomed and clicked by pointer or keys, with what was clicked and found drawn over it.
import { h } from './dom.js';
import { words } from './words.js';

const said = words.photo;

/** A pointer that moved no farther than this has clicked (CSS pixels). */
const still = 5;
const wheelZoom = 1.2;
const mostZoom = 16;

export class PhotoView {
  /**
   * @param {(x: number, y: number) => void} onClick With the place in pixels of the photograph.
   * @param {() => void} onTakeBack
   */
  constructor(onClick, onTakeBack) {
    this.onClick = onClick;
    this.onTakeBack = onTakeBack;
    /** @type {ImageBitmap | null} */
    this.picture = null;
    this.scale = 1;
    this.offset = { x: 0, y: 0 };
    this.cross = { x: 0, y: 0 };
    /** @type {Map<number, { x: number, y: number }>} */
    this.pointers = new Map();
    this.moved = 0;
    /** @type {Page.PhotoThing[]} */
    this.things = [];
    /** @type {Page.PhotoOverlay[]} */
    this.overlays = [];
    this.canvas = h('canvas', { class: 'photo-canvas', tabindex: '0', role: 'application', 'aria-label': said.canvas, 'aria-describedby': 'photo-help' });
    const press = (/** @type {string} */ label, /** @type {() => void} */ act) => h('button', { type: 'button', class: 'quiet', onclick: act }, label);
    this.element = h('div', { class: 'photo-view' }, this.canvas,
      h('div', { class: 'controls' }, press(said.nearer, () => this.zoom(wheelZoom * wheelZoom)), press(said.farther, () => this.zoom(1 / wheelZoom / wheelZoom)), press(said.whole, () => this.fit())),
      h('p', { class: 'remark', id: 'photo-help' }, said.help));
    this.listen();
  }

  /** @param {ImageBitmap | null} picture */
  show(picture) {
    this.picture = picture;
    requestAnimationFrame(() => this.fit());
  }

  /** Size of the canvas (CSS pixels). */
  get size() { return { width: this.canvas.clientWidth || 1, height: this.canvas.clientHeight || 1 }; }

  get fitting() { return this.picture ? Math.min(this.size.width / this.picture.width, this.size.height / this.picture.height) : 1; }

  fit() {
    if (this.picture) {
      const { width, height } = this.size;
      this.scale = this.fitting;
      this.offset = { x: (width - this.scale * this.picture.width) / 2, y: (height - this.scale * this.picture.height) / 2 };
      this.cross = { x: this.picture.width / 2, y: this.picture.height / 2 };
    }
    this.paint();
  }

  /**
   * @param {number} by
   * @param {{ x: number, y: number }} [about] Where the photograph stays (CSS pixels).
   */
  zoom(by, about = { x: this.size.width / 2, y: this.size.height / 2 }) {
    const next = Math.min(Math.max(this.scale * by, this.fitting * 0.5), mostZoom);
    const ratio = next / this.scale;
    this.offset = { x: about.x - ratio * (about.x - this.offset.x), y: about.y - ratio * (about.y - this.offset.y) };
    this.scale = next;
    this.paint();
  }

  /** @param {{ x: number, y: number }} seen */
  toPicture(seen) { return { x: (seen.x - this.offset.x) / this.scale, y: (seen.y - this.offset.y) / this.scale }; }

  /** @param {{ x: number, y: number }} place */
  toCanvas(place) { return { x: this.offset.x + this.scale * place.x, y: this.offset.y + this.scale * place.y }; }

  listen() {
    const { canvas } = this;
    const where = (/** @type {PointerEvent | WheelEvent} */ event) => ({ x: event.offsetX, y: event.offsetY });
    canvas.addEventListener('pointerdown', (event) => {
      canvas.setPointerCapture(event.pointerId);
      this.pointers.set(event.pointerId, where(event));
      this.moved = this.pointers.size > 1 ? Infinity : 0;
    });
    canvas.addEventListener('pointermove', (event) => {
      const before = this.pointers.get(event.pointerId);
      if (!before) {
        return;
      }
      const now = where(event);
      const other = [...this.pointers].find(([id]) => id !== event.pointerId)?.[1];
      this.pointers.set(event.pointerId, now);
      this.moved += Math.hypot(now.x - before.x, now.y - before.y);
      if (other) {
        this.zoom(Math.hypot(now.x - other.x, now.y - other.y) / Math.max(1, Math.hypot(before.x - other.x, before.y - other.y)), { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 });
      } else if (this.moved > still) {
        this.offset = { x: this.offset.x + now.x - before.x, y: this.offset.y + now.y - before.y };
        this.paint();
      }
    });
    canvas.addEventListener('pointerup', (event) => {
      const isClick = this.pointers.delete(event.pointerId) && this.moved <= still;
      if (isClick && event.button === 0) {
        this.mark(this.toPicture(where(event)));
      }
    });
    canvas.addEventListener('pointercancel', (event) => this.pointers.delete(event.pointerId));
    canvas.addEventListener('wheel', (event) => {
      event.preventDefault();
      this.zoom(event.deltaY < 0 ? wheelZoom : 1 / wheelZoom, where(event));
    }, { passive: false });
    canvas.addEventListener('keydown', (event) => this.key(event));
    canvas.addEventListener('focus', () => this.paint());
    canvas.addEventListener('blur', () => this.paint());
    new ResizeObserver(() => this.paint()).observe(canvas);
  }

  /** @param {{ x: number, y: number }} place */
  mark(place) {
    const { picture } = this;
    if (picture && place.x >= 0 && place.y >= 0 && place.x <= picture.width && place.y <= picture.height) {
      this.cross = place;
      this.onClick(Math.round(place.x * 10) / 10, Math.round(place.y * 10) / 10);
    }
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    const step = event.shiftKey ? 1 : 12 / this.scale;
    const move = (/** @type {number} */ x, /** @type {number} */ y) => () => {
      this.cross = { x: this.cross.x + x * step, y: this.cross.y + y * step };
      this.keepInView();
      this.paint();
    };
    /** @type {Record<string, () => void>} */
    const acts = {
      ArrowLeft: move(-1, 0), ArrowRight: move(1, 0), ArrowUp: move(0, -1), ArrowDown: move(0, 1), Enter: () => this.mark(this.cross), ' ': () => this.mark(this.cross),
      Backspace: () => this.onTakeBack(), '+': () => this.zoom(wheelZoom, this.toCanvas(this.cross)), '-': () => this.zoom(1 / wheelZoom, this.toCanvas(this.cross)),
    };
    if (acts[event.key] && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      acts[event.key]();
    }
  }

  keepInView() {
    const { x, y } = this.toCanvas(this.cross);
    const { width, height } = this.size;
    this.offset = { x: this.offset.x - Math.max(0, x - width + 20) + Math.max(0, 20 - x), y: this.offset.y - Math.max(0, y - height + 20) + Math.max(0, 20 - y) };
  }

  /**
   * @param {Page.PhotoThing[]} things
   * @param {Page.PhotoOverlay[]} overlays
   */
  draw(things, overlays) {
    Object.assign(this, { things, overlays });
    this.paint();
  }

  paint() {
    const { canvas, picture } = this;
    const ratio = devicePixelRatio || 1;
    const { width, height } = this.size;
    Object.assign(canvas, { width: Math.round(width * ratio), height: Math.round(height * ratio) });
    const to = canvas.getContext('2d');
    if (!to) {
      return;
    }
    to.scale(ratio, ratio);
    if (picture) {
      to.drawImage(picture, this.offset.x, this.offset.y, this.scale * picture.width, this.scale * picture.height);
    }
    for (const { what, line } of this.overlays) {
      this.stroke(to, what === 'axis' ? '#ffd400' : what === 'wire' ? '#ff4fd8' : '#00e5ff', () => {
        for (let i = 0; i < line.length; i += 2) {
          const p = this.toCanvas({ x: line[i], y: line[i + 1] });
          to.lineTo(p.x, p.y);
        }
      });
    }
    to.font = getComputedStyle(canvas).font;
    for (const { label, isCurrent, clicks } of this.things) {
      clicks.forEach(([x, y], i) => {
        const p = this.toCanvas({ x, y });
        this.cross4(to, p, isCurrent ? '#ff3b30' : '#2ecc40', 8);
        if (label && i === 0) {
          to.fillStyle = isCurrent ? '#ff3b30' : '#2ecc40';
          to.fillText(label, p.x + 9, p.y - 9);
        }
      });
    }
    if (picture && document.activeElement === canvas) {
      this.cross4(to, this.toCanvas(this.cross), '#ffd400', 16);
    }
  }

  /**
   * A light line over a dark one: it shows on any photograph.
   * @param {CanvasRenderingContext2D} to
   * @param {string} colour
   * @param {() => void} trace
   */
  stroke(to, colour, trace) {
    for (const [style, width] of /** @type {[string, number][]} */ ([['rgb(0 0 0 / 65%)', 4], [colour, 1.5]])) {
      to.strokeStyle = style;
      to.lineWidth = width;
      to.beginPath();
      trace();
      to.stroke();
    }
  }

  /**
   * @param {CanvasRenderingContext2D} to
   * @param {{ x: number, y: number }} p
   * @param {string} colour
   * @param {number} arm
   */
  cross4(to, p, colour, arm) {
    this.stroke(to, colour, () => {
      for (const [x, y] of [[1, 0], [-1, 0], [0, 1], [0, -1]]) {
        to.moveTo(p.x + 2 * x, p.y + 2 * y);
        to.lineTo(p.x + arm * x, p.y + arm * y);
      }
    });
  }
}
