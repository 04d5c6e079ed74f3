// The numbers of the open job: one tab a profile, as fields or as text.
import { asked } from './asking.js';
import { $, all, h, select, tabs } from './dom.js';
import { bracketRole, drawingKey, roles } from './desk.js';
import { advice, fields } from './fields.js';
import { beside, freePath, relativeTo } from './paths.js';
import { plan, shape, unitOf } from './plan.js';
import { fill, words } from './words.js';

const said = words.numbers;

export class Numbers {
  /**
   * @param {import('./desk.js').Desk} desk
   * @param {(problem: unknown) => void} onProblem
   * @param {(path: string, isExample: boolean) => void} onBracket Another bracket is to be checked.
   */
  constructor(desk, onProblem, onBracket) {
    this.desk = desk;
    this.onProblem = onProblem;
    /** Opens the measuring screens of a profile. @type {(what: Page.ToMeasure) => void} */
    this.onMeasure = () => {};
    /** Opens the screen for a photograph of a profile. @type {(path: string) => void} */
    this.onPhoto = () => {};
    this.onBracket = onBracket;
    this.role = roles[0];
    this.isText = false;
    /** What is drawn; the same key means that the fields can stay. */
    this.drawn = '';
    /** @type {Page.Fields | null} */
    this.form = null;
    /** @type {Page.Shelf} */
    this.shelf = { folder: '', profiles: [], examples: [], drawings: [], unsaved: [] };
    /** The schema of each kind of profile. @type {Record<string, Page.Schema>} */
    this.schemas = {};
  }

  get tab() { return `profile-tab-${this.role.id}`; }

  /** Begins anew with another job. */
  reset() {
    [this.role] = this.desk.roles;
    this.drawn = '';
  }

  /** Shows the job as it is now. */
  show() {
    const { desk } = this;
    if (!desk.roles.includes(this.role)) {
      this.reset();
    }
    this.tabs();
    const path = desk.pathOf(this.role);
    const values = desk.valuesOf(this.role);
    const text = path === null ? undefined : desk.files[path];
    const mine = this.mistakes(path);
    const isBroken = text !== undefined && Object.keys(values).length === 0;
    const nodes = path !== null && text !== undefined && !isBroken ? this.nodes(values) : [];
    const asText = this.isText || isBroken;
    const next = JSON.stringify([this.role.id, path, text === undefined, asText, desk.inInches, shape(nodes)]);
    if (next !== this.drawn) {
      this.draw(path, nodes, asText, isBroken);
      this.drawn = next;
    }
    if (this.form) {
      this.form.fill(values, desk.inInches);
      this.rest(this.form.problems(mine).map((e) => (e.key ? fill(said.keyAllowed, { field: nameOf(nodes, e.key), allowed: e.allowed, advice: e.advice }) : advice([e]))));
    } else {
      this.rest(mine.map((e) => e.text));
      const area = document.getElementById('profile-text');
      if (area instanceof HTMLTextAreaElement && document.activeElement !== area) {
        area.value = text ?? '';
      }
    }
    this.picker(path);
  }

  tabs() {
    const focused = document.activeElement?.id;
    tabs($('profile-tabs'), this.desk.roles.map((r) => {
      const wrong = this.mistakes(this.desk.pathOf(r)).length;
      return { id: `profile-tab-${r.id}`, panel: 'profile-panel', label: r.label, note: wrong ? String(wrong) : '' };
    }), this.tab, (id) => {
      this.role = this.desk.roles.find((r) => `profile-tab-${r.id}` === id) ?? roles[0];
      this.drawn = '';
      this.show();
    });
    if (focused?.startsWith('profile-tab-')) {
      $(focused).focus();
    }
    $('profile-panel').setAttribute('aria-labelledby', this.tab);
  }

  /**
   * The mistakes of a profile; those of a bracket's drawing stand where the drawing is chosen.
   * @param {string | null} path
   */
  mistakes(path) {
    const { desk } = this;
    const drawing = path !== null && path === desk.bracket ? desk.drawingOf(path) : '';
    return desk.errors.flatMap((e) => (e.file === path ? [e] : drawing && e.file === drawing ? [{ ...e, key: drawingKey }] : []));
  }

  /** @param {Page.Values} values */
  nodes(values) {
    if (this.role !== bracketRole) {
      return plan(this.schema(), values);
    }
    // A bracket is measured, or drawn: which keys there are depends on that.
    const [measured, drawn] = this.schemas.bracket.oneOf ?? [];
    const nodes = plan(values[drawingKey] === undefined ? measured : drawn, values, '', words.bracketLabels);
    return nodes.map((n) => (n.path === drawingKey ? { ...n, kind: /** @type {const} */ ('drawing') } : n));
  }

  /** The job's files are picked above the fields; among them they would appear twice. */
  schema() {
    const schema = this.schemas[this.role.form];
    if (this.role.key) {
      return schema;
    }
    const above = ['units', ...roles.map((r) => r.key)];
    return { ...schema, properties: Object.fromEntries(Object.entries(schema.properties ?? {}).filter(([name]) => !above.includes(name))) };
  }

  /** @param {string[]} texts Mistakes that belong to no field. */
  rest(texts) {
    $('profile-rest').replaceChildren(...texts.map((text) => h('p', { class: 'problem' }, text)));
  }

  /**
   * @param {string | null} path
   * @param {Page.Field[]} nodes
   * @param {boolean} asText
   * @param {boolean} isBroken
   */
  draw(path, nodes, asText, isBroken) {
    const held = heldField();
    const open = new Map(all('#profile-panel details[data-group]').map((d) => [d.dataset.group, d.hasAttribute('open')]));
    const scroll = $('numbers').scrollTop;
    const body = h('div', { class: 'fields' });
    $('profile-panel').replaceChildren(
      h('div', { class: 'picker' }, h('label', { for: 'pick' }, this.isPicked ? said.which : said.file), h('select', { id: 'pick', onchange: () => this.pick() }),
        h('button', { type: 'button', class: 'quiet', id: 'as-text', 'aria-pressed': String(asText), disabled: isBroken, onclick: () => this.turn() }, said.asText),
        ['body', 'vehicle'].includes(this.role.id) && path !== null && this.desk.files[path] !== undefined
          ? h('button', { type: 'button', class: 'quiet', id: 'measure-again', onclick: () => this.onMeasure({ path, kind: this.role.kind, label: this.role.label }) }, words.measuring.again) : null,
        this.role.id === 'body' && path !== null && this.desk.files[path] !== undefined ? h('button', { type: 'button', class: 'quiet', id: 'from-photo', onclick: () => this.onPhoto(path) }, words.photo.begin) : null),
      h('div', { id: 'profile-rest' }), body);
    this.form = null;
    if (path === null) {
      return;
    }
    if (this.desk.files[path] === undefined) {
      body.append(h('p', { class: 'problem', id: 'profile-missing' }, fill(said.missing, { path })));
      return;
    }
    if (asText) {
      body.append(this.area(path));
      return;
    }
    this.form = fields(body, nodes, {
      change: (changes, what) => this.change(path, changes, what),
      // What was typed is on its way, or the field shows again what the file holds.
      leave: () => {
        this.desk.leave();
        if (!this.desk.busy) {
          this.show();
        }
      },
      isPending: (key) => this.desk.isPending(path, key),
      drawings: () => this.drawings(path),
      take: (key, name, content) => this.take(path, key, name, content),
    });
    for (const details of all('details[data-group]', body)) {
      details.toggleAttribute('open', open.get(details.dataset.group) ?? details.hasAttribute('open'));
    }
    $('numbers').scrollTop = scroll;
    if (held) {
      // A field with the focus is not filled, so it is filled first; what was being typed stays.
      this.form.fill(this.desk.values[path] ?? {}, this.desk.inInches);
      hold(body, held);
    }
  }

  /** Whether the profile can be another one. */
  get isPicked() { return this.role.key !== null || this.role === bracketRole; }

  /**
   * @param {string} path
   * @param {Page.Change[]} changes
   * @param {string | null} what
   */
  async change(path, changes, what) {
    const edits = changes.map((change) => ({ file: path, ...change }));
    const drawing = path === this.desk.bracket ? edits.find((e) => e.key === drawingKey && e.value) : undefined;
    const there = drawing ? beside(path, drawing.value) : '';
    if (!there || there in this.desk.files) {
      this.desk.edit(edits, what ? `${path} ${what}` : null);
      return;
    }
    try {
      const { text } = await asked('/read', { path: there, example: false });
      this.desk.saved = { ...this.desk.saved, [there]: text };
      this.desk.takeDrawing(there, text, edits);
    } catch (problem) {
      this.onProblem(problem);
    }
  }

  /**
   * The drawings of the folder and of the page, as a bracket names them.
   * @param {string} path Of the bracket.
   */
  drawings(path) {
    const here = Object.keys(this.desk.files).filter((one) => one.toLowerCase().endsWith('.dxf'));
    return [...new Set([...this.shelf.drawings, ...here])].sort().map((one) => relativeTo(path, one));
  }

  /**
   * A drawing that was chosen or dropped: it lies beside the bracket, under a name that is free.
   * @param {string} path Of the bracket.
   * @param {string} key
   * @param {string} name
   * @param {string} content
   */
  take(path, key, name, content) {
    const plain = name.replace(/\.dxf$/i, '').replace(/[^\w-]+/g, '-').replace(/^-+|-+$/g, '') || 'flat-pattern';
    const place = freePath(beside(path, `${plain}.dxf`), (one) => (one in this.desk.files ? this.desk.files[one] !== content : this.shelf.drawings.includes(one)));
    this.desk.takeDrawing(place, content, [{ file: path, key, value: relativeTo(path, place) }]);
  }

  /** From fields to text, and back. */
  turn() {
    this.isText = !this.isText;
    this.drawn = '';
    this.show();
    $('as-text').focus();
  }

  /** @param {string} path */
  area(path) {
    let timer = 0;
    const area = h('textarea', { id: 'profile-text', spellcheck: 'false', rows: 34, 'aria-label': fill(said.textOf, { path }), oninput: () => {
      clearTimeout(timer);
      timer = setTimeout(() => this.desk.replace({ [path]: area.value }, `text ${path}`), 350);
    }, onblur: () => this.desk.leave() });
    area.value = this.desk.files[path] ?? '';
    return area;
  }

  /** @param {string | null} path */
  picker(path) {
    const pick = select('pick');
    if (document.activeElement === pick) {
      return;
    }
    const { desk, role, shelf } = this;
    const others = this.isPicked ? [
      ...shelf.profiles.filter((p) => p.kind === role.kind).map((p) => [`folder ${p.path}`, p.name || p.path, p.path]),
      ...shelf.examples.filter((p) => p.kind === role.kind && !shelf.profiles.some((o) => o.path === p.path)).map((p) => [`example ${p.path}`, fill(said.example, { name: p.name }), p.path]),
    ].filter(([, , p]) => p !== path) : [];
    const name = String(desk.valuesOf(role).name ?? (this.isPicked ? path ?? '' : desk.job));
    const isSaved = path !== null && desk.files[path] === desk.saved[path];
    const here = [`open ${path}`, isSaved ? name : fill(said.notSaved, { name })];
    pick.replaceChildren(...[here, ...others].map(([value, label]) => h('option', { value }, label)));
    pick.disabled = !this.isPicked;
  }

  /** Takes another profile of the folder or of the examples. */
  async pick() {
    const picked = select('pick');
    const [from, ...parts] = picked.value.split(' ');
    const path = parts.join(' ');
    if (from === 'open' || !this.isPicked) {
      return;
    }
    if (!this.role.key) {
      picked.blur();
      this.onBracket(path, from === 'example');
      return;
    }
    try {
      const { text } = await asked('/read', { path, example: from === 'example' });
      if (from === 'folder') {
        this.desk.saved[path] = text;
      }
      picked.blur();
      await this.desk.replace({ [path]: text }, null, [{ file: this.desk.job, key: this.role.key, value: relativeTo(this.desk.job, path) }]);
    } catch (problem) {
      this.onProblem(problem);
    }
  }

  /**
   * The unit of a number without one at a key, from the schema.
   * @param {string} kind
   * @param {string} key
   */
  unitOf(kind, key) {
    /** @type {Page.Schema | undefined} */
    let form = this.schemas[roles.find((r) => r.kind === kind)?.form ?? ''];
    for (const part of key.split('.')) {
      const name = part.replace(/\[.*/, '');
      /** @type {Page.Schema | undefined} */
      const found = form?.properties?.[name] ?? form?.oneOf?.map((f) => f.properties?.[name]).find(Boolean);
      form = part.includes('[') ? found?.items : found;
    }
    return form?.type === 'array' ? unitOf(form.items) : unitOf(form);
  }
}

/**
 * What the fields call a key.
 * @param {Page.Field[]} nodes
 * @param {string} key
 * @returns {string}
 */
function nameOf(nodes, key) {
  const found = nodes.find((n) => key === n.path || key.startsWith(`${n.path}.`) || key.startsWith(`${n.path}[`));
  const inside = found && key !== found.path ? nameOf(found.nodes, key) : '';
  return found ? [found.label, inside === key ? '' : inside].filter(Boolean).join(', ') : key;
}

/**
 * The unit beside a field.
 * @param {HTMLElement} field
 */
const unitBeside = (field) => all('.unit', field.closest('.entry') ?? field).find((unit) => field.compareDocumentPosition(unit) & Node.DOCUMENT_POSITION_FOLLOWING)?.textContent ?? '';

/** The field that has the focus, and what is being typed in it. */
function heldField() {
  const active = document.activeElement;
  return active instanceof HTMLInputElement && active.dataset.path
    ? { path: active.dataset.path, isMargin: active.classList.contains('pm'), axis: active.dataset.axis, text: active.value, isTyped: active.value !== active.dataset.shown, unit: unitBeside(active), at: active.selectionStart } : null;
}

/**
 * Gives the focus back.
 * @param {HTMLElement} body
 * @param {NonNullable<ReturnType<typeof heldField>>} held
 */
function hold(body, held) {
  const again = all('[data-path]', body).find((i) => i.dataset.path === held.path && i.classList.contains('pm') === held.isMargin && i.dataset.axis === held.axis);
  if (again instanceof HTMLInputElement) {
    // What was not typed is what the file holds, in the unit that stands there now; what was typed keeps the unit that stood beside it.
    if (held.isTyped) {
      again.value = unitBeside(again) === held.unit || !/^[\s\d./+*-]+$/.test(held.text) ? held.text : `${held.text} ${held.unit}`;
    }
    again.focus({ preventScroll: true });
    again.setSelectionRange(held.at, held.at);
  } else {
    again?.focus({ preventScroll: true });
  }
}
