// Measuring screen by screen: the numbers that belong together, where they are on the part, how to measure each, and the part to scale as it grows.
import { asked } from './asking.js';
import { $, all, h, show } from './dom.js';
import { advice } from './fields.js';
import { underlayOf } from './photo.js';
import { at } from './plan.js';
import { isEmpty, rowFor } from './questions.js';
import { sketchesOf, sketchOf } from './sketches.js';
import { fill, words } from './words.js';

const said = words.measuring;

/** Asks for everything, screen by screen in the worksheet's order. Each answer goes into the open job as soon as it is given. */
export class Measuring {
  /** @param {Page.MeasuringWish} wish */
  constructor(wish) {
    this.wish = wish;
    this.desk = wish.desk;
    this.place = $('measuring');
    this.profile = 0;
    this.screen = 0;
    this.asking = 0;
    /** @type {Page.MeasuringReply} */
    this.told = { steps: [], screens: [], part: '', place: [] };
    /** @type {string[]} */
    this.sketches = [];
    /** The rows that are shown, by what they ask. @type {Map<string, Page.MeasuringRow>} */
    this.rows = new Map();
    /** What was answered and is not written yet, and the screen that follows it. @type {Promise<unknown>} */
    this.writing = Promise.resolve();
    this.form = this.formOf();
    this.head = h('div', {});
    this.heading = h('h2', { id: 'measure-heading', tabindex: '-1' });
    this.help = h('div', {});
    this.list = h('div', { class: 'questions' });
    this.back = h('button', { type: 'button', id: 'measure-back', onclick: () => this.go(this.screen - 1) }, said.back);
    this.sketch = h('div', {});
    this.isUnderlaid = true;
    this.part = h('figure', { class: 'part' });
    this.build();
  }

  build() {
    const form = h('form', {
      onsubmit: (/** @type {Event} */ event) => this.enter(event), onfocusin: (/** @type {Event} */ event) => this.light(this.rowOf(event.target)),
    }, this.list, h('div', { class: 'controls' },
      h('button', { type: 'submit', class: 'unseen', tabindex: '-1', 'aria-hidden': 'true' }, said.next),
      h('button', { type: 'button', class: 'primary', id: 'measure-next', onclick: () => this.go(this.screen + 1) }, said.next), this.back,
      h('button', { type: 'button', class: 'quiet', id: 'measure-leave', onclick: () => this.leave() }, said.leave)));
    this.place.replaceChildren(h('section', {}, this.head, h('div', { class: 'measure' }, h('div', { class: 'asked' }, this.heading, this.help, form), h('div', { class: 'shown' }, this.part, this.sketch))));
  }

  async begin() {
    await this.questions();
    // Who comes back goes on where something is open.
    this.screen = this.wish.isAgain ? Math.max(0, this.told.screens.findIndex((one) => one.steps.some((number) => this.isOpen(this.told.steps[number])))) : 0;
    this.draw();
    this.focus();
    return this;
  }

  /**
   * What the fields know, and what becomes of an answer.
   * @returns {Page.MeasuringForm}
   */
  formOf() {
    const { desk } = this;
    const measuring = this;
    return {
      get values() { return desk.values[measuring.path] ?? {}; },
      get inInches() { return desk.inInches; },
      written: (key) => at(desk.values[measuring.path] ?? {}, key),
      change: (changes, what) => this.wait(desk.edit(changes.map((change) => ({ file: this.path, ...change })), what ? `${this.path} ${what}` : null)),
      leave: () => desk.leave(),
      isPending: (key) => desk.isPending(this.path, key),
      drawings: () => [],
      take: () => {},
    };
  }

  /** The job has changed: by an answer, or one was taken back. */
  changed() { this.wait(this.follow()); }

  async follow() {
    // A program that does not answer has been told of already, and is asked again with the next answer.
    if (!this.place.hidden && await this.questions().catch(() => false)) {
      this.draw();
    }
  }

  /** Until what was answered is written, and the screen follows it. */
  async settled() {
    for (let before = null; before !== this.writing;) {
      before = this.writing;
      await before;
    }
  }

  /** @param {Promise<unknown>} work */
  async wait(work) {
    const mine = this.writing = Promise.all([this.writing, work]);
    this.list.setAttribute('aria-busy', 'true');
    await mine;
    if (mine === this.writing) {
      this.list.removeAttribute('aria-busy');
    }
  }

  get path() { return this.wish.profiles[this.profile].path; }

  get here() { return this.told.screens[this.screen]; }

  /** @param {Page.MeasuringStep} s */
  written(s) { return at(this.desk.values[this.path] ?? {}, s.key); }

  /** @param {Page.MeasuringStep} s */
  isOpen(s) { return s.default === null && isEmpty(s, this.written(s)); }

  /** Whether the answer is the newest. */
  async questions() {
    const mine = ++this.asking;
    const { kind } = this.wish.profiles[this.profile];
    const [reply, sketches] = await Promise.all([asked('/questions', { kind, text: this.desk.files[this.path] }), sketchesOf(kind)]);
    if (mine === this.asking) {
      Object.assign(this, { told: reply, sketches });
      this.screen = Math.min(this.screen, this.told.screens.length - 1);
    }
    return mine === this.asking;
  }

  /** @param {EventTarget | null} target */
  rowOf(target) {
    const element = target instanceof Element ? target.closest('.question') : null;
    return [...this.rows.values()].find((row) => row.element === element);
  }

  focus() {
    all('input,select', this.list)[0]?.focus({ preventScroll: true });
    this.light(this.rowOf(document.activeElement));
  }

  /** @param {number} to Number of the screen; before the first and after the last lead to another profile, or to the end. */
  async go(to) {
    await this.settled();
    const by = to < 0 ? -1 : to >= this.told.screens.length ? 1 : 0;
    if (this.profile + by < 0) {
      return;
    }
    if (this.profile + by >= this.wish.profiles.length) {
      this.place.hidden = true;
      this.wish.done();
      return;
    }
    if (by !== 0) {
      this.profile += by;
      this.rows = new Map();
      // Asked again where a late answer of the program asked in between: what is known may still be the other profile's.
      for (let isNewest = false; !isNewest;) {
        isNewest = await this.questions();
      }
    }
    this.screen = by === 0 ? to : by < 0 ? this.told.screens.length - 1 : 0;
    this.draw();
    this.focus();
    scrollTo({ top: 0 });
  }

  async leave() {
    await this.settled();
    this.place.hidden = true;
    this.wish.leave();
  }

  /** @param {Event} event */
  async enter(event) {
    event.preventDefault();
    const from = document.activeElement;
    const row = this.rowOf(from);
    await this.settled();
    if (row && (!row.problem.hidden || row.element.querySelector('.remark:not([hidden])'))) {
      return;
    }
    const boxes = all('input,select', this.list);
    const name = from instanceof HTMLInputElement && from.type === 'radio' ? from.name : '';
    const next = from instanceof HTMLElement ? boxes.slice(boxes.indexOf(from) + 1).find((box) => !(name && box instanceof HTMLInputElement && box.name === name)) : undefined;
    // Of several words the chosen one has the focus, as with the Tab key.
    const group = next instanceof HTMLInputElement && next.type === 'radio' ? boxes.find((box) => box instanceof HTMLInputElement && box.name === next.name && box.checked) : null;
    if (next) {
      (group ?? next).focus();
    } else {
      await this.go(this.screen + 1);
    }
  }

  /**
   * Marks on the sketch what is asked for where the cursor is.
   * @param {Page.MeasuringRow | undefined} row
   */
  light(row) {
    const number = this.here?.sketch ?? -1;
    this.sketch.replaceChildren(...(number < 0 ? [] : [sketchOf(row?.s ?? { ask: this.here.title, letter: '' }, this.sketches[number])]));
  }

  draw() {
    this.progress();
    const { title, sketch, steps } = this.here;
    this.heading.textContent = title;
    this.help.replaceChildren(...(sketch < 0 ? [] : [hints(this.told.steps[steps[0]])]));
    this.back.disabled = this.profile === 0 && this.screen === 0;
    this.rowsOf();
    this.drawPart();
    this.place.hidden = false;
  }

  /** The part to scale, over its photograph where one was measured. */
  drawPart() {
    const { part, told: { place } } = this;
    show(part, this.told.part);
    const svg = part.querySelector('svg');
    svg?.setAttribute('role', 'img');
    svg?.setAttribute('aria-label', said.part);
    part.append(h('figcaption', {}, said.partCaption));
    const underlay = place.length ? underlayOf(this.path) : null;
    if (!underlay) {
      return;
    }
    const turn = h('input', { type: 'checkbox', id: 'measure-underlay', checked: this.isUnderlaid, onchange: () => {
      this.isUnderlaid = turn.checked;
      this.drawPart();
      $('measure-underlay').focus({ preventScroll: true });
    } });
    part.append(h('label', { class: 'show' }, turn, said.underlay));
    if (this.isUnderlaid) {
      svg?.prepend(imageOf(underlay, place));
      part.append(h('p', { class: 'remark' }, said.underlayCaption));
    }
  }

  progress() {
    const { steps, screens } = this.told;
    const needed = steps.filter((s) => s.default === null);
    const done = needed.filter((s) => !this.isOpen(s)).length;
    const { label } = this.wish.profiles[this.profile];
    const isListed = this.head.querySelector('details')?.open ?? false;
    this.head.replaceChildren(
      h('p', { class: 'progress' }, fill(said.progress, { profile: label, number: this.screen + 1, count: screens.length, done, needed: needed.length })),
      h('progress', { max: 1, value: needed.length === 0 ? 1 : done / needed.length, 'aria-label': fill(said.progressLabel, { profile: label }) }),
      h('details', { class: 'screens', open: isListed }, h('summary', {}, said.screens), h('ol', {}, screens.map((one, i) => {
        const still = one.steps.filter((number) => this.isOpen(steps[number])).length;
        const text = still ? fill(said.still, { title: one.title, count: still }) : one.title;
        return h('li', {}, h('button', { type: 'button', class: 'quiet', 'aria-current': i === this.screen ? 'step' : null, onclick: () => this.go(i) }, text));
      }))));
  }

  /** The rows of the screen: those that were there stay, with what has the focus. */
  rowsOf() {
    const { desk, told } = this;
    const { kind } = this.wish.profiles[this.profile];
    const next = new Map(this.here.steps.map((number) => {
      const s = told.steps[number];
      const id = [this.path, s.key, s.form, desk.inInches].join(' ');
      return [id, this.rows.get(id) ?? rowFor(s, this.wish.unitOf(kind, s.key), this.form)];
    }));
    const { list } = this;
    const isSame = [...next.keys()].join() === [...this.rows.keys()].join() && list.childElementCount > 0;
    this.rows = next;
    if (!isSame) {
      const focused = document.activeElement;
      list.replaceChildren(...[...next.values()].map((row) => row.element));
      if (focused instanceof HTMLElement && list.contains(focused)) {
        focused.focus({ preventScroll: true });
      }
    }
    for (const row of next.values()) {
      this.fill(row);
    }
  }

  /**
   * Shows what the file holds, and what is wrong with it.
   * @param {Page.MeasuringRow} row
   */
  fill(row) {
    const { desk, path } = this;
    const { s } = row;
    const value = this.written(s);
    const isGiven = !isEmpty(s, value);
    row.element.classList.toggle('given', isGiven);
    row.state.textContent = isGiven ? '' : s.default === null ? said.open : s.default ? fill(said.taken, { value: s.default }) : said.mayStayOpen;
    row.fill(value);
    const mine = desk.errors.filter((e) => e.file === path && !e.missing && (e.key === s.key || e.key.startsWith(`${s.key}.`) || e.key.startsWith(`${s.key}[`)));
    row.tell(advice(s.form === 'Count' || s.form === 'Word' ? mine.filter((e) => e.key === s.key) : mine));
  }
}

const svgNames = 'http://www.w3.org/2000/svg';

/**
 * The photograph about the shaft, as large as the picture of the part has it, under the view along the shaft alone.
 * @param {Page.Underlay} underlay
 * @param {number[]} place Scale of the picture, where the shaft is in it, and where the view ends.
 */
function imageOf({ url, half }, [scale, x, y, right]) {
  const [view, image] = [document.createElementNS(svgNames, 'svg'), document.createElementNS(svgNames, 'image')];
  const give = (/** @type {Element} */ to, /** @type {Record<string, unknown>} */ values) => Object.entries(values).forEach(([name, value]) => to.setAttribute(name, String(value)));
  const side = 2 * scale * half;
  give(view, { x: 0, y: 0, width: right, height: '100%', 'aria-hidden': 'true' });
  give(image, { href: url, x: x - side / 2, y: y - side / 2, width: side, height: side, preserveAspectRatio: 'none', opacity: 0.55 });
  view.append(image);
  return view;
}

/** @param {Page.MeasuringStep} s */
const hints = (s) => h('dl', { class: 'hints' },
  h('div', {}, h('dt', {}, said.tool), h('dd', {}, s.tool)), h('div', {}, h('dt', {}, said.mistake), h('dd', {}, s.mistake)));
