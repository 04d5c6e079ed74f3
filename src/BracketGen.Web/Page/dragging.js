// Mount holes and keep-outs are moved in the picture: by pointer or arrow keys, in steps, as one step of undo. A place that was moved is no measurement.
import { $, h, question, say, select } from './dom.js';
import { at } from './plan.js';
import { inStandard } from './units.js';
import { fill, units, words } from './words.js';

const said = words.over;
const standard = 'mm';
const inch = units.find((unit) => unit.metric === standard);

/** Steps of a move (mm): the finer where a step is some pixels wide. In an inch view they are parts of an inch. */
const [fine, coarse, parts, enough] = [0.5, 1, 64, 1];

/** @param {number[]} a @param {number[]} b */
const dot = (a, b) => a.reduce((sum, x, i) => sum + x * b[i], 0);

/** @param {number[]} v */
const unit = (v) => v.map((x) => x / Math.hypot(...v));

/** @param {number[]} a @param {number[]} b */
const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

const axes = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

/**
 * The two directions that a thing may be moved in: in its face, or along the two axes that lie most across the view.
 * @param {Page.Thing} thing
 * @param {(way: number[]) => number[]} seen How a direction is seen (px a mm).
 */
export function waysOf({ normal }, seen) {
  const facing = (/** @type {number[]} */ n) => axes.filter((axis) => Math.abs(dot(axis, n)) < 1e-6);
  if (!normal) {
    return [...axes].sort((a, b) => Math.hypot(...seen(b)) - Math.hypot(...seen(a))).slice(0, 2);
  }
  const plain = facing(normal);
  const across = plain[0] ?? unit(cross(normal, axes[2]));
  return plain.length === 2 ? plain : [across, unit(cross(normal, across))];
}

/**
 * How far a movement on the screen leads along two directions (mm); where they are seen as one, along the longer alone.
 * @param {number[]} by
 * @param {number[]} u
 * @param {number[]} v
 */
export function along(by, u, v) {
  const turn = u[0] * v[1] - u[1] * v[0];
  if (Math.abs(turn) > 0.15 * Math.hypot(...u) * Math.hypot(...v)) {
    return [(by[0] * v[1] - by[1] * v[0]) / turn, (u[0] * by[1] - u[1] * by[0]) / turn];
  }
  return Math.hypot(...u) >= Math.hypot(...v) ? [dot(by, u) / dot(u, u), 0] : [0, dot(by, v) / dot(v, v)];
}

/** Moves things by their handle. */
export class Dragging {
  /**
   * @param {import('./desk.js').Desk} desk
   * @param {() => void} draw Has the marks drawn anew.
   * @param {(point: number[]) => number[]} place Where a point is on the canvas.
   */
  constructor(desk, draw, place) {
    this.desk = desk;
    this.draw = draw;
    this.place = place;
    /** @type {Page.Thing[]} */
    this.things = [];
    this.picked = '';
    /** While it is held: where it was, and how far it has come (mm). @type {{ values: Record<string, number[]>, at: number[], from: number[], by: number[] } | null} */
    this.held = null;
    /** What was written last, until it is answered. @type {{ key: string, values: Record<string, number[]>, at: number[] } | null} */
    this.sent = null;
    /** Whether a ± has just been taken away: the move that follows is the same step of undo. */
    this.isAsked = false;
    this.handle = h('button', { type: 'button', class: 'handle', id: 'move-handle', hidden: true });
    select('pick-thing').addEventListener('change', () => this.pick(select('pick-thing').value));
    this.listen();
  }

  listen() {
    const { desk, handle } = this;
    handle.addEventListener('pointerdown', async (event) => {
      event.preventDefault();
      handle.focus();
      handle.setPointerCapture(event.pointerId);
      if (await this.mayMove() && handle.hasPointerCapture(event.pointerId)) {
        if (!this.isAsked) {
          desk.leave();
        }
        this.isAsked = false;
        this.hold([event.clientX, event.clientY]);
      }
    });
    handle.addEventListener('pointermove', (event) => {
      if (this.held) {
        this.follow([event.clientX - this.held.from[0], event.clientY - this.held.from[1]]);
      }
    });
    for (const end of ['pointerup', 'pointercancel']) {
      handle.addEventListener(end, () => this.drop());
    }
    /** @type {Record<string, number[]>} */
    const keys = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    handle.addEventListener('keydown', async (event) => {
      const way = keys[event.key];
      if (way && !event.ctrlKey && !event.metaKey && !event.altKey) {
        event.preventDefault();
        const times = event.shiftKey ? 10 : 1;
        if (await this.mayMove()) {
          this.nudge(way, times);
        }
      } else if (event.key === 'Escape') {
        this.pick('');
        $('solid-canvas').focus();
      }
    });
    handle.addEventListener('blur', () => this.desk.leave());
  }

  get now() { return this.things.find((thing) => thing.key !== '' && thing.key === this.picked); }

  get file() { return this.desk.pathOf(this.desk.roles.find((role) => role.id === 'body') ?? this.desk.roles[0]) ?? ''; }

  /** @param {Page.Thing[]} things */
  take(things) {
    this.things = things;
    const list = select('pick-thing');
    const next = [h('option', { value: '' }, said.noThing), ...things.filter((thing) => thing.moves.length > 0).map((thing) => h('option', { value: thing.key }, thing.name))];
    if (list.textContent !== next.map((o) => o.textContent).join('')) {
      list.replaceChildren(...next);
    }
    list.value = this.now ? this.picked : '';
    this.show();
  }

  /** @param {string} key */
  pick(key) {
    this.picked = key;
    this.held = null;
    select('pick-thing').value = key;
    this.show();
    this.draw();
    if (this.now) {
      this.handle.focus();
    }
  }

  show() {
    const { now } = this;
    this.handle.hidden = !now;
    const whole = now && this.values(now);
    $('move-told').textContent = !now ? said.stopFound : whole ? said.moveHow : fill(said.otherUnit, { name: now.name });
    if (now) {
      this.handle.setAttribute('aria-label', fill(said.move, { name: now.name }));
      this.handle.title = now.name;
    }
  }

  /**
   * The points of a thing as its file has them (mm); null where one is written in a unit that is not known here.
   * @param {Page.Thing} thing
   */
  values(thing) {
    if (this.sent?.key === thing.key && this.desk.busy) {
      return this.sent.values;
    }
    const written = at(this.desk.values[this.file], thing.key);
    const points = Object.fromEntries(thing.moves.map((move) => [move, [0, 1, 2].map((i) => inStandard(written?.[move]?.[i], standard))]));
    return Object.values(points).flat().some((x) => x === null) ? null : /** @type {Record<string, number[]>} */ (points);
  }

  /** Whether it may be moved now: a measured place asks first, because its ± would no longer be true. */
  async mayMove() {
    const { desk } = this;
    // A ± may just have been typed: what another edit leads to is waited for.
    while (desk.busy && desk.last !== this.what) {
      await desk.running;
    }
    const { now, file } = this;
    if (!now || !this.values(now)) {
      return false;
    }
    const written = at(desk.values[file], now.key);
    if (written?.plus_minus === undefined) {
      return true;
    }
    const answer = await question(fill(said.measuredHeading, { name: now.name }), h('p', {}, said.measured), [[said.moveIt, 'move'], [said.leaveIt, '']]);
    if (answer === 'move') {
      desk.edit([{ file, key: `${now.key}.plus_minus`, value: null }], this.what);
      this.isAsked = true;
    }
    this.handle.focus();
    return false;
  }

  get what() { return `${this.file} move ${this.picked}`; }

  get step() {
    if (this.desk.inInches && inch) {
      return inch.factor / parts;
    }
    return Math.max(...axes.map((axis) => Math.hypot(...this.seen(axis)))) * fine >= enough ? fine : coarse;
  }

  /** @param {number[]} way */
  seen(way) {
    const [a, b] = [this.place([0, 0, 0]), this.place(way)];
    return [b[0] - a[0], b[1] - a[1]];
  }

  /** @param {number[]} from Where the pointer is. */
  hold(from) {
    const { now } = this;
    const values = now && this.values(now);
    if (now && values) {
      const here = this.sent?.key === now.key && this.desk.busy ? this.sent.at : now.at;
      this.held = { values, at: here, from, by: [0, 0, 0] };
    }
  }

  /** @param {number[]} by How far the pointer has come (px). */
  follow(by) {
    const { now, held } = this;
    if (!now || !held) {
      return;
    }
    const ways = waysOf(now, (way) => this.seen(way));
    const far = along(by, this.seen(ways[0]), this.seen(ways[1]));
    this.move(ways, far);
  }

  /**
   * @param {number[]} way On the screen.
   * @param {number} times Steps.
   */
  nudge(way, times) {
    const { now } = this;
    if (!now) {
      return;
    }
    this.hold([0, 0]);
    const ways = waysOf(now, (one) => this.seen(one));
    const towards = ways.map((one) => {
      const [x, y] = this.seen(one);
      return (x * way[0] + y * way[1]) / (Math.hypot(x, y) || 1);
    });
    const best = Math.abs(towards[0]) >= Math.abs(towards[1]) ? 0 : 1;
    const far = [0, 0];
    far[best] = Math.sign(towards[best]) * times * this.step;
    this.move(ways, far);
    this.drop();
  }

  /**
   * Moves what is held to the nearest step, and writes it.
   * @param {number[][]} ways
   * @param {number[]} far How far along each (mm), from where it was.
   */
  move(ways, far) {
    const { now, held, step } = this;
    if (!now || !held) {
      return;
    }
    const first = held.values[now.moves[0]];
    const steps = ways.map((way, i) => (Math.abs(far[i]) < step / 2 ? 0 : Math.round((dot(first, way) + far[i]) / step) * step - dot(first, way)));
    const by = [0, 1, 2].map((k) => steps[0] * ways[0][k] + steps[1] * ways[1][k]);
    if (by.every((x, k) => Math.abs(x - held.by[k]) < 1e-9)) {
      return;
    }
    const edits = now.moves.flatMap((move) => [0, 1, 2].filter((k) => Math.abs(by[k]) > 1e-9 || Math.abs(held.by[k]) > 1e-9)
      .map((k) => ({ file: this.file, key: `${now.key}.${move}[${k + 1}]`, value: this.written(held.values[move][k] + by[k]) })));
    held.by = by;
    this.draw();
    this.desk.edit(edits, this.what);
  }

  /** @param {number} length mm. */
  written(length) {
    return this.desk.inInches && inch ? `${Number((length / inch.factor).toFixed(6))} ${inch.inch}` : Number(length.toFixed(4)) + 0;
  }

  drop() {
    const { now, held } = this;
    this.held = null;
    if (now && held && held.by.some((x) => x !== 0)) {
      const shift = (/** @type {number[]} */ point) => point.map((x, k) => x + held.by[k]);
      this.sent = { key: now.key, values: Object.fromEntries(Object.entries(held.values).map(([move, point]) => [move, shift(point)])), at: shift(held.at) };
      say(fill(said.moved, { name: now.name }), true);
    }
  }

  /** Where the handle is (mm). */
  get point() {
    const { held, now, sent } = this;
    return held ? held.at.map((x, k) => x + held.by[k]) : sent && sent.key === now?.key && this.desk.busy ? sent.at : now?.at;
  }
}
