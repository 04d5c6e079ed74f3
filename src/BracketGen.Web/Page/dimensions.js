// Dimensions in the picture: the field with the focus shows what its number measures; one that is picked in the picture leads to its field, and can be typed there.
import { $, all, h, input, select } from './dom.js';
import { at } from './plan.js';
import { shown, typed, understood } from './units.js';
import { fill, words } from './words.js';

const said = words.over;
const standard = 'mm';

/** @param {Page.Dimension} d */
const nameOf = (d) => `${d.role} ${d.key} ${d.axis}`;

/** @param {any} raw */
const isPair = (raw) => raw !== null && typeof raw === 'object';

export class Dimensions {
  /**
   * @param {import('./desk.js').Desk} desk
   * @param {import('./numbers.js').Numbers} numbers
   * @param {() => void} draw Has the marks drawn anew.
   */
  constructor(desk, numbers, draw) {
    this.desk = desk;
    this.numbers = numbers;
    this.draw = draw;
    /** @type {Page.Dimension[]} */
    this.known = [];
    /** What is shown by itself, by name; empty for none. */
    this.lit = '';
    /** Whether somebody picked it: it stays while the focus goes elsewhere. */
    this.isPicked = false;
    this.entry = h('input', { type: 'text', id: 'dimension-value', autocomplete: 'off', inputmode: 'decimal' });
    this.unit = h('span', { class: 'unit' });
    this.box = h('div', { class: 'dimension', hidden: true }, this.entry, this.unit);
    this.listen();
  }

  listen() {
    const [list, tick] = [select('pick-dimension'), input('show-dimensions')];
    list.addEventListener('change', () => {
      const one = this.known.find((d) => nameOf(d) === list.value);
      this.light(list.value, true);
      if (one) {
        this.toField(one);
      }
    });
    tick.addEventListener('change', this.draw);
    $('numbers').addEventListener('focusin', (event) => {
      const target = /** @type {HTMLElement} */ (event.target);
      const { path, axis } = target.dataset;
      const one = path ? this.known.find((d) => d.role === this.numbers.role.id && d.key === path && (d.axis < 0 || String(d.axis) === axis)) : undefined;
      if (one) {
        this.light(nameOf(one), this.isPicked && this.lit === nameOf(one));
      } else if (path && !this.isPicked) {
        this.light('', false);
      }
    });
    $('numbers').addEventListener('focusout', (event) => {
      const next = event.relatedTarget;
      if (!this.isPicked && !(next instanceof Node && ($('numbers').contains(next) || this.box.contains(next)))) {
        this.light('', false);
      }
    });
    this.entry.addEventListener('change', () => this.write());
    this.entry.addEventListener('keydown', (event) => {
      if (event.key === 'Escape') {
        this.light('', false);
        $('solid-canvas').focus();
      }
    });
    this.entry.addEventListener('blur', () => this.desk.leave());
  }

  /**
   * @param {string} name
   * @param {boolean} isPicked
   */
  light(name, isPicked) {
    Object.assign(this, { lit: name, isPicked });
    select('pick-dimension').value = name;
    this.fill();
    this.draw();
  }

  /** @param {Page.Dimension} d @returns {any} What the file holds. */
  written(d) {
    const role = this.desk.roles.find((r) => r.id === d.role);
    const raw = role ? at(this.desk.valuesOf(role), d.key) : undefined;
    return d.axis < 0 ? (isPair(raw) ? raw.value : raw) : raw?.[d.axis];
  }

  /** @param {Page.Dimension} d */
  text(d) {
    const { text, unit } = shown(this.written(d), standard, this.desk.inInches);
    return `${text} ${unit}`;
  }

  get now() { return this.known.find((d) => nameOf(d) === this.lit); }

  /** @param {Page.Dimension[]} dimensions */
  take(dimensions) {
    // What a file leaves out has no number to show.
    this.known = dimensions.filter((d) => this.written(d) !== undefined);
    const list = select('pick-dimension');
    const next = [h('option', { value: '' }, said.noDimension), ...this.known.map((d) => h('option', { value: nameOf(d) }, d.name))];
    if (list.textContent !== next.map((o) => o.textContent).join('')) {
      list.replaceChildren(...next);
    }
    list.value = this.now ? this.lit : '';
    this.fill();
  }

  fill() {
    const { now } = this;
    this.box.hidden = !now;
    if (now && document.activeElement !== this.entry) {
      const { text, unit } = shown(this.written(now), standard, this.desk.inInches);
      this.entry.value = text;
      this.unit.textContent = unit;
      this.entry.setAttribute('aria-label', fill(said.dimension, { name: now.name }));
      this.entry.setCustomValidity('');
    }
  }

  /** The same edit as the field's own. */
  write() {
    const { now, desk } = this;
    const role = desk.roles.find((r) => r.id === now?.role);
    const file = role ? desk.pathOf(role) : null;
    if (!now || !role || file === null) {
      return;
    }
    const { text, ask } = understood(this.entry.value);
    this.entry.setCustomValidity(ask === undefined ? '' : fill(words.fields.comma, { typed: this.entry.value }));
    const value = typed(text, this.unit.textContent ?? '', standard);
    if (!this.entry.reportValidity() || value === null || value === this.written(now)) {
      return;
    }
    const raw = at(desk.valuesOf(role), now.key);
    desk.edit([{ file, key: now.axis >= 0 ? `${now.key}[${now.axis + 1}]` : isPair(raw) ? `${now.key}.value` : now.key, value }], `${file} ${now.key}`);
  }

  /**
   * Gives the focus to the field of a dimension, or to the box at the dimension where the fields are not in view.
   * @param {Page.Dimension} d
   */
  toField(d) {
    if (this.numbers.role.id !== d.role) {
      document.getElementById(`profile-tab-${d.role}`)?.click();
    }
    const field = all('[data-path]', $('numbers')).find((one) => one.dataset.path === d.key && !one.classList.contains('pm') && (d.axis < 0 || one.dataset.axis === String(d.axis)));
    for (let around = field?.closest('details'); around; around = around.parentElement?.closest('details')) {
      around.open = true;
    }
    const isSeen = field && field.offsetParent !== null;
    (isSeen ? field : this.entry).focus();
  }

  /** The dimensions to draw now: the one that is lit, and all of them where that is ticked. */
  drawn() {
    const { now } = this;
    const others = input('show-dimensions').checked ? this.known.filter((d) => d !== now) : [];
    return { now, others };
  }

  /** @param {Page.Dimension} d */
  handle(d) {
    return h('button', { type: 'button', class: 'dimension-mark', tabindex: '-1', title: d.name, 'aria-label': fill(said.pickDimension, { name: d.name, value: this.text(d) }), onclick: () => {
      this.light(nameOf(d), true);
      this.toField(d);
    } }, this.text(d));
  }
}
