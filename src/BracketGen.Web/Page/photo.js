// Measuring in a photograph: the user clicks the marks of the printed target and the parts of the throttle body; the program works out where they are.
import { asked } from './asking.js';
import { $, h, input } from './dom.js';
import { PhotoView } from './photoview.js';
import { squareOn } from './squareon.js';
import { at } from './plan.js';
import { shown, typed, understood } from './units.js';
import { fill, words } from './words.js';

const said = words.photo;
const markCount = 8;

/** How long the page waits after a click before it asks (ms). */
const rest = 300;

/** Lengths to give: their names in the message. */
const lengths = ['bar', 'distance', 'shaftHeight', 'rimHeight', 'grooveHeight', 'holeHeight', 'toWire'];
const choices = ['shaftRim', 'holeRims', 'cam'];

/** What was clicked stays while the page is open, for each profile. @type {Map<string, Page.PhotoState>} */
const states = new Map();

/** @param {string} id */
const isMark = (id) => id.startsWith('mark');

/**
 * Opens the screen for the throttle body of the open job.
 * @param {Page.PhotoWish} wish
 */
export function photo(wish) {
  new PhotoScreen(wish).open();
}

/**
 * The photograph of a throttle body, laid square-on; null where none was measured since the page was opened.
 * @param {string} path Of its profile.
 * @returns {Page.Underlay | null}
 */
export function underlayOf(path) {
  const state = states.get(path);
  if (!state?.picture || !state.reply) {
    return null;
  }
  if (state.underlay?.of !== state.reply) {
    state.underlay = { of: state.reply, made: { url: squareOn(state.picture, state.reply.grid), half: state.reply.grid.half } };
  }
  return state.underlay.made;
}

class PhotoScreen {
  /** @param {Page.PhotoWish} wish */
  constructor({ desk, path, done, onProblem }) {
    this.desk = desk;
    this.path = path;
    this.done = done;
    this.onProblem = onProblem;
    this.holes = Math.max(2, this.holesThere);
    /** @type {Page.PhotoPart[]} */
    this.things = [
      ...Array.from({ length: markCount }, (_, i) => ({ id: `mark${i + 1}`, label: fill(said.mark, { number: i + 1 }), short: String(i + 1) })),
      ...['shaft', 'edge', 'pocket'].map((id) => ({ id, label: words.photoParts[id], short: words.photoParts[id] })),
      ...Array.from({ length: this.holes }, (_, i) => ({ id: `hole${i + 1}`, label: fill(said.hole, { number: i + 1 }), short: fill(said.hole, { number: i + 1 }) })),
    ];
    /** @type {Page.PhotoState} */
    this.state = states.get(path) ?? { picture: null, clicks: {}, lengths: Object.fromEntries(lengths.map((name) => [name, { value: '', plusMinus: '' }])), choices: {}, reply: null, current: 'mark1' };
    states.set(path, this.state);
    this.view = new PhotoView((x, y) => this.click(x, y), () => this.takeBack());
    this.timer = 0;
    this.turn = 0;
  }

  get values() { return this.desk.values[this.path] ?? {}; }

  get holesThere() {
    const holes = this.values.mount?.holes;
    return Array.isArray(holes) ? holes.length : 0;
  }

  get unit() { return this.desk.inInches ? 'in' : 'mm'; }

  /** @param {string} id */
  clicks(id) { return (this.state.clicks[id] ??= []); }

  open() {
    const place = $('measuring');
    place.replaceChildren(h('section', { class: 'photo' },
      h('h2', { id: 'photo-heading', tabindex: '-1' }, said.heading), h('p', {}, said.explain),
      h('p', {}, h('a', { href: '/photo-target.pdf', download: 'photo-target.pdf' }, said.target)),
      h('div', { class: 'pick' }, h('label', { for: 'photo-file' }, said.pick), this.picker()),
      h('div', { class: 'photo-work' }, this.view.element, h('div', { class: 'photo-side' },
        this.list(), h('fieldset', {}, h('legend', {}, said.lengths), h('p', { class: 'remark' }, said.heightsFrom), lengths.map((name) => this.length(name)), choices.map((name) => this.tick(name))),
        h('div', { id: 'photo-found', role: 'status' }))),
      h('div', { class: 'controls' }, h('button', { type: 'button', class: 'quiet', id: 'photo-leave', onclick: () => this.close('') }, said.leave))));
    place.hidden = false;
    this.view.show(this.state.picture);
    this.choose(this.state.current);
    this.later();
    $('photo-heading').focus();
  }

  /** @param {string} told */
  close(told) {
    clearTimeout(this.timer);
    this.turn++;
    $('measuring').hidden = true;
    this.done(told);
  }

  picker() {
    const picked = h('input', { type: 'file', id: 'photo-file', accept: 'image/*', onchange: async () => {
      const file = picked.files?.[0];
      if (!file) {
        return;
      }
      try {
        const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
        Object.assign(this.state, { picture, clicks: {}, reply: null });
        this.view.show(picture);
        this.choose('mark1');
        this.later();
      } catch {
        this.onProblem(said.notAPicture);
      }
    } });
    return picked;
  }

  list() {
    const radio = (/** @type {Page.PhotoPart} */ thing) => h('label', { class: 'show', title: thing.label },
      h('input', { type: 'radio', name: 'photo-thing', id: `photo-${thing.id}`, value: thing.id, 'aria-label': thing.label, onchange: () => this.choose(thing.id) }),
      thing.short, h('span', { class: 'count', id: `photo-count-${thing.id}`, 'aria-hidden': 'true' }));
    return h('fieldset', { class: 'photo-things' }, h('legend', {}, said.things),
      h('div', { class: 'photo-marks' }, this.things.slice(0, markCount).map(radio)), this.things.slice(markCount).map(radio),
      h('div', { class: 'controls' },
        h('button', { type: 'button', class: 'quiet', onclick: () => this.takeBack() }, said.takeBack),
        h('button', { type: 'button', class: 'quiet', onclick: () => this.clear() }, said.clear)));
  }

  /** @param {string} name */
  length(name) {
    const of = this.state.lengths[name];
    const box = (/** @type {'value' | 'plusMinus'} */ part, /** @type {Record<string, unknown>} */ more) => h('input', {
      type: 'text', inputmode: 'decimal', autocomplete: 'off', value: of[part], id: `photo-${name}-${part}`,
      oninput: (/** @type {Event} */ event) => {
        of[part] = /** @type {HTMLInputElement} */ (event.target).value;
        this.later();
      }, ...more });
    return h('div', { class: 'field' }, h('label', { for: `photo-${name}-value` }, words.photoGiven[name]),
      h('div', { class: 'entry' }, box('value', {}), h('span', { class: 'unit' }, this.unit), h('span', { class: 'sign', 'aria-hidden': 'true' }, '±'),
        box('plusMinus', { class: 'pm', 'aria-label': fill(said.plusMinus, { label: words.photoGiven[name] }) }), h('span', { class: 'unit' }, this.unit)),
      name === 'distance' ? h('p', { class: 'remark' }, said.mayBeEmpty) : null);
  }

  /** @param {string} name */
  tick(name) {
    return h('label', { class: 'show' }, h('input', { type: 'checkbox', id: `photo-${name}`, checked: this.state.choices[name] === true, onchange: (/** @type {Event} */ event) => {
      this.state.choices[name] = /** @type {HTMLInputElement} */ (event.target).checked;
      this.later();
    } }), words.photoGiven[name]);
  }

  /**
   * @param {number} x
   * @param {number} y
   */
  click(x, y) {
    const { things, state } = this;
    this.clicks(state.current).push([x, y]);
    // Marks are clicked one after the other.
    const next = things[things.findIndex((t) => t.id === state.current) + 1];
    if (isMark(state.current) && next && this.clicks(next.id).length < this.clicks(state.current).length) {
      this.choose(next.id);
    }
    this.changed();
  }

  takeBack() {
    this.clicks(this.state.current).pop();
    this.changed();
  }

  clear() {
    this.state.clicks[this.state.current] = [];
    this.changed();
  }

  /** @param {string} id */
  choose(id) {
    this.state.current = id;
    input(`photo-${id}`).checked = true;
    this.draw();
  }

  changed() {
    this.draw();
    this.later();
  }

  draw() {
    for (const thing of this.things) {
      const count = this.clicks(thing.id).length;
      $(`photo-count-${thing.id}`).textContent = count ? ` ${count}` : '';
      input(`photo-${thing.id}`).setAttribute('aria-label', count ? fill(said.count, { thing: thing.label, count }) : thing.label);
    }
    this.view.draw(this.things.map((t) => ({ label: isMark(t.id) ? t.short : '', isCurrent: t.id === this.state.current, clicks: this.clicks(t.id) })), this.state.reply?.overlays ?? []);
  }

  later() {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.work(), rest);
  }

  /** What is still to be done before the program can be asked. */
  needs() {
    const isGiven = (/** @type {string} */ name) => this.state.lengths[name].value.trim() !== '';
    const some = (/** @type {string} */ start) => this.things.filter((t) => t.id.startsWith(start) && this.clicks(t.id).length > 0).length;
    return [
      !this.state.picture && said.needsPhoto, some('mark') < 4 && said.needsMarks, some('shaft') === 0 && said.needsShaft, !isGiven('shaftHeight') && said.needsShaftHeight,
      !isGiven('grooveHeight') && said.needsGrooveHeight, some('edge') + some('pocket') > 0 && !isGiven('rimHeight') && said.needsRimHeight, some('hole') > 0 && !isGiven('holeHeight') && said.needsHoleHeight,
    ].filter((need) => need !== false);
  }

  /** Each length as it goes to the program, and the first number with a comma that has to be asked about. */
  given() {
    /** @type {string | undefined} */
    let comma;
    const plain = (/** @type {string} */ text) => {
      const told = understood(text);
      comma ??= told.ask;
      return String(typed(told.text, this.unit, 'mm') ?? '');
    };
    return { parts: Object.fromEntries(lengths.map((name) => [name, { value: plain(this.state.lengths[name].value), plusMinus: plain(this.state.lengths[name].plusMinus) }])), comma };
  }

  async work() {
    const [open, { parts, comma }, { picture, choices: chosen }] = [this.needs(), this.given(), this.state];
    if (open.length > 0 || comma !== undefined || !picture) {
      this.tell(comma === undefined ? fill(said.needs, { what: open.join('; ') }) : fill(said.comma, { number: comma }));
      return;
    }
    const mine = ++this.turn;
    try {
      /** @type {Page.PhotoReply} */
      const reply = await asked('/photo', {
        text: this.desk.files[this.path], inches: this.desk.inInches, width: picture.width, height: picture.height,
        marks: Array.from({ length: markCount }, (_, i) => ({ number: i + 1, clicks: this.clicks(`mark${i + 1}`) })),
        ...parts, isShaftRim: chosen.shaftRim === true, areHoleRims: chosen.holeRims === true, isCam: chosen.cam === true,
        shaft: this.clicks('shaft'), edge: this.clicks('edge'), pocket: this.clicks('pocket'), holes: Array.from({ length: this.holes }, (_, i) => this.clicks(`hole${i + 1}`)),
      });
      if (mine !== this.turn) {
        return;
      }
      if (reply.problem) {
        this.tell(reply.problem);
      } else {
        this.results(reply);
      }
    } catch (problem) {
      this.onProblem(problem);
    }
  }

  /** @param {string} text */
  tell(text) {
    this.turn++;
    this.state.reply = null;
    $('photo-found').replaceChildren(h('p', { class: 'remark' }, text));
    this.draw();
  }

  /** @param {Page.PhotoReply} reply */
  results(reply) {
    const { readings, about } = reply;
    this.state.reply = reply;
    // What was measured otherwise is replaced only on request.
    const lines = readings.map((r, i) => h('li', {}, h('label', {}, h('input', { type: 'checkbox', id: `photo-take-${i}`, checked: this.was(r) === null }),
      h('span', {}, h('strong', {}, r.label), h('span', {}, r.text), this.was(r)))));
    $('photo-found').replaceChildren(h('h3', {}, said.found), lines.length ? h('ul', { class: 'readings' }, lines) : h('p', {}, said.nothing),
      h('ul', { class: 'remark' }, about.map((line) => h('li', {}, line))));
    if (lines.length) {
      const take = () => this.write(readings.filter((_, i) => input(`photo-take-${i}`).checked));
      $('photo-found').append(h('button', { type: 'button', class: 'primary', id: 'photo-write', onclick: take }, said.write));
    }
    this.draw();
  }

  /**
   * What the profile has now.
   * @param {Page.PhotoReading} reading
   */
  was(reading) {
    const change = reading.changes.find((c) => c.value !== null);
    const now = change && at(this.values, change.key);
    const one = (/** @type {any} */ value) => shown(value, '', false).text;
    const text = Array.isArray(now) ? now.map(one).join(', ') : one(now?.value ?? now);
    return text ? h('span', { class: 'remark' }, fill(said.was, { value: text })) : null;
  }

  /** @param {Page.PhotoReading[]} readings */
  async write(readings) {
    const changes = readings.flatMap((r) => r.changes);
    const wanted = Math.max(0, ...changes.map((c) => Number(c.key.match(/^mount\.holes\[(\d+)\]/)?.[1] ?? 0)));
    const all = [
      ...Array.from({ length: Math.max(0, wanted - this.holesThere) }, () => ({ key: 'mount.holes[+]', value: {} })),
      // What is not there need not be taken away.
      ...changes.filter((c) => c.value !== null || at(this.values, c.key) !== undefined),
    ];
    if (all.length > 0) {
      await this.desk.edit(all.map((change) => ({ file: this.path, ...change })));
    }
    this.close(fill(said.written, { count: readings.length }));
  }
}
