// The open job: the texts of its profiles, what was saved, what can be undone, and one question to the program at a time.
import { asked, Silence } from './asking.js';
import { Kept } from './kept.js';
import { beside, relativeTo } from './paths.js';
import { words } from './words.js';

/** @type {[string, string | null, string, string][]} */
const kinds = [['body', 'throttle_body', 'throttle-body', 'throttle body'], ['vehicle', 'vehicle', 'vehicle', 'vehicle'], ['shop', 'shop', 'shop', 'shop'], ['job', null, 'job', 'job']];

/** The profiles of a job: the key by which the job names each, its schema, its kind. @type {Page.Role[]} */
export const roles = kinds.map(([id, key, form, kind]) => ({ id, key, label: words.profiles[id], form, kind }));

/** A bracket that is there already, checked on the job. @type {Page.Role} */
export const bracketRole = { id: 'bracket', key: null, label: words.bracket.tab, form: 'bracket', kind: 'bracket' };

/** The key by which a bracket names its drawing. */
export const drawingKey = 'flat_pattern';

const maxSteps = 200;

/** How long the page waits before it asks a program again that does not answer (ms). */
const retry = 3000;

export class Desk {
  /**
   * @param {(reply: Page.Reply) => void} onChange
   * @param {(problem: unknown) => void} onProblem
   * @param {(isBusy: boolean) => void} onBusy
   */
  constructor(onChange, onProblem, onBusy) {
    this.onBusy = onBusy;
    this.onChange = onChange;
    this.onProblem = onProblem;
    /** Parts of the report that are shown now: the others are asked for when the hand rests. @type {() => string[]} */
    this.wanted = () => [];
    this.kept = new Kept();
    /** Path of the job's file; empty before one is open. */
    this.job = '';
    /** Path of the bracket that is there already and is checked; empty where the job's own is shown. */
    this.bracket = '';
    /** Every file that belongs to a bracket: none of them is the job's. @type {Set<string>} */
    this.ofBrackets = new Set();
    /** The files of a bracket as they were opened. @type {Record<string, string>} */
    this.opened = {};
    /** @type {Record<string, string>} */
    this.files = {};
    /** @type {Record<string, Page.Values>} */
    this.values = {};
    /** @type {Record<string, string>} */
    this.saved = {};
    /** @type {Page.Problem[]} */
    this.errors = [];
    /** @type {Page.Answer | null} */
    this.answer = null;
    /** How long the solver took (ms). */
    this.solveTime = 0;
    /** @type {string[]} */
    this.accepted = [];
    /** @type {Page.Step[]} */
    this.past = [];
    /** @type {Page.Step[]} */
    this.future = [];
    /** @type {Page.Edit[]} */
    this.waiting = [];
    /** @type {string | null} */
    this.last = null;
    this.busy = false;
    this.again = false;
    /** @type {Promise<void>} */
    this.running = Promise.resolve();
    this.revision = 0;
    this.turns = 0;
    this.later = 0;
  }

  get isOpen() { return this.job !== ''; }

  /**
   * @param {Page.Opened} opened
   * @param {boolean} isSaved Whether the folder has the same texts.
   */
  open({ job, files, values }, isSaved) {
    Object.assign(this, { job, files, values, saved: isSaved ? { ...files } : {}, past: [], future: [], waiting: [], errors: [], answer: null, accepted: [], last: null, bracket: '', ofBrackets: new Set() });
    this.revision++;
    return this.ask();
  }

  /** What has numbers now: the bracket that is checked first. */
  get roles() { return this.bracket ? [bracketRole, ...roles] : roles; }

  /**
   * Checks a bracket that is there already in the place of the job's own; null leads back to that.
   * @param {Page.Bracket | null} opened
   * @param {boolean} isSaved Whether the folder has the same texts.
   */
  check(opened, isSaved) {
    this.remember(null);
    // Of the one before nothing is kept but what was changed.
    this.files = Object.fromEntries(Object.entries(this.files).filter(([path, text]) => !this.ofBrackets.has(path) || text !== this.opened[path]));
    this.bracket = opened?.path ?? '';
    if (opened) {
      this.opened = { ...this.opened, ...opened.files };
      Object.keys(opened.files).forEach((path) => this.ofBrackets.add(path));
      // What was changed here and is not saved stays.
      this.files = { ...opened.files, ...this.files };
      this.values = { ...opened.values, ...this.values };
      this.saved = isSaved ? { ...this.saved, ...opened.files } : this.saved;
    }
    Object.assign(this, { answer: null, errors: [] });
    this.revision++;
    return this.ask();
  }

  /**
   * A drawing for the bracket, with the edits that name it.
   * @param {string} path
   * @param {string} content
   * @param {Page.Edit[]} edits
   */
  takeDrawing(path, content, edits) {
    this.ofBrackets.add(path);
    return this.replace({ [path]: content }, null, edits);
  }

  /**
   * The drawing that a bracket names; empty where it names none.
   * @param {string} bracket
   */
  drawingOf(bracket) {
    const name = this.values[bracket]?.[drawingKey];
    return typeof name === 'string' && name ? beside(bracket, name) : '';
  }

  /**
   * The path of a profile; null if the job names none.
   * @param {Page.Role} role
   */
  pathOf(role) {
    if (role === bracketRole) {
      return this.bracket || null;
    }
    const name = role.key ? this.values[this.job]?.[role.key] : null;
    return role.key ? (typeof name === 'string' ? beside(this.job, name) : null) : this.job;
  }

  /**
   * @param {Page.Role} role
   * @returns {Page.Values}
   */
  valuesOf(role) { return this.values[this.pathOf(role) ?? ''] ?? {}; }

  get inInches() { return this.values[this.job]?.units === 'in'; }

  get unsaved() { return Object.keys(this.files).filter((path) => this.files[path] !== this.saved[path]); }

  /** @returns {Page.Step} */
  now() { return { files: this.files, values: this.values, job: this.job, bracket: this.bracket }; }

  /**
   * Changes of one field without leaving it are one step back.
   * @param {string | null} what The field.
   */
  remember(what) {
    if (what === null || what !== this.last) {
      this.past.push(this.now());
      this.past.splice(0, Math.max(0, this.past.length - maxSteps));
    }
    this.future = [];
    this.last = what;
  }

  /**
   * @param {Page.Edit[]} edits
   * @param {string | null} what The field.
   */
  edit(edits, what = null) {
    this.remember(what);
    const keys = new Set(edits.map((e) => `${e.file} ${e.key}`));
    this.waiting = [...this.waiting.filter((e) => e.key.endsWith('[+]') || !keys.has(`${e.file} ${e.key}`)), ...edits];
    return this.ask();
  }

  /**
   * Whether an edit of a key, or of a part of it, has not been sent yet: what comes back before is older than what stands in its field.
   * @param {string} file
   * @param {string} key
   */
  isPending(file, key) { return this.waiting.some((e) => e.file === file && (e.key === key || e.key.startsWith(`${key}.`) || e.key.startsWith(`${key}[`))); }

  /**
   * Whole texts: typed as text, or another profile picked.
   * @param {Record<string, string>} files
   * @param {string | null} what
   * @param {Page.Edit[]} edits
   */
  replace(files, what = null, edits = []) {
    this.remember(what);
    this.files = { ...this.files, ...files };
    this.waiting.push(...edits);
    return this.ask();
  }

  /**
   * The same job with some of its files under other paths.
   * @param {Record<string, string>} paths By the path of now.
   */
  rename(paths) {
    this.remember(null);
    const moved = (/** @type {Record<string, any>} */ of) => Object.fromEntries(Object.entries(of).map(([path, content]) => [paths[path] ?? path, content]));
    const named = roles.map((role) => ({ role, path: this.pathOf(role) }));
    const job = paths[this.job] ?? this.job;
    const bracket = paths[this.bracket] ?? this.bracket;
    const drawing = this.drawingOf(this.bracket);
    const isDrawingMoved = drawing && (bracket !== this.bracket || drawing in paths);
    Object.values(paths).filter((_, i) => this.ofBrackets.has(Object.keys(paths)[i])).forEach((path) => this.ofBrackets.add(path));
    this.files = moved(this.files);
    this.values = moved(this.values);
    this.saved = Object.fromEntries(Object.entries(this.saved).filter(([path]) => !(path in paths)));
    Object.assign(this, { job, bracket });
    return this.edit([
      ...named.flatMap(({ role, path }) => (role.key && path && paths[path] ? [{ file: job, key: role.key, value: relativeTo(job, paths[path]) }] : [])),
      ...(isDrawingMoved ? [{ file: bracket, key: drawingKey, value: relativeTo(bracket, paths[drawing] ?? drawing) }] : []),
    ]);
  }

  /**
   * The bracket that the job is to have, written into the job; null for the best. Others that pass are known with strength only, so it is calculated at once.
   * @param {Page.Values | null} choice
   */
  async choose(choice) {
    await this.edit([{ file: this.job, key: 'chosen', value: choice }]);
    if (this.errors.length === 0) {
      await this.deepen('strength');
    }
  }

  /**
   * What was typed just before is on its way to the program: it is the step to take back.
   * @param {'past' | 'future'} from
   * @param {'past' | 'future'} to
   */
  async step(from, to) {
    while (this.busy) {
      await this.running;
    }
    const step = this[from].pop();
    if (!step) {
      return;
    }
    this[to].push(this.now());
    Object.assign(this, step);
    this.last = null;
    await this.ask();
  }

  undo() { return this.step('past', 'future'); }

  redo() { return this.step('future', 'past'); }

  leave() { this.last = null; }

  /**
   * The job as a message. Only what the job names goes along, and the bracket that is asked about: a profile that was put aside stays on the page for undo, and is not sent or packed.
   * @param {Record<string, unknown> & { edits?: Page.Edit[], bracket?: string }} more
   */
  message(more) {
    const edits = more.edits ?? [];
    const checked = more.bracket ?? '';
    const named = new Set([this.job, checked, this.drawingOf(checked), ...roles.map((role) => this.pathOf(role)), ...edits.map((e) => e.file)]);
    edits.filter((e) => e.file === checked && e.key === drawingKey && typeof e.value === 'string').forEach((e) => named.add(beside(checked, e.value)));
    edits.filter((e) => e.file === this.job && typeof e.value === 'string' && roles.some((r) => r.key === e.key)).forEach((e) => named.add(beside(this.job, e.value)));
    const files = Object.fromEntries(Object.entries(this.files).filter(([path]) => named.has(path) || (Object.keys(this.files).length <= roles.length && !this.ofBrackets.has(path))));
    return { job: this.job, files, accepted: this.accepted, ...more };
  }

  async ask() {
    if (this.busy) {
      this.again = true;
      return this.running;
    }
    this.busy = true;
    this.running = this.run();
    return this.running;
  }

  async run() {
    clearTimeout(this.later);
    this.onBusy(true);
    /** @type {Page.Edit[]} */
    let edits = [];
    try {
      do {
        this.again = false;
        edits = this.waiting;
        const message = this.message({ edits, depth: 'quick', bracket: this.bracket, wanted: this.bracket ? [] : this.wanted() });
        this.waiting = [];
        const revision = ++this.revision;
        this.take(await this.work(message), revision);
        edits = [];
      } while (this.again || this.waiting.length > 0);
    } catch (problem) {
      // Nothing typed is lost while the program is away: it goes along with the next question.
      if (problem instanceof Silence) {
        this.waiting = [...edits, ...this.waiting];
        this.later = setTimeout(() => this.ask(), retry);
      }
      this.onProblem(problem);
    } finally {
      this.busy = false;
      this.onBusy(false);
    }
    // The remedies take longer: the page asks for them when the user pauses, and for the parts that are not shown.
    if (this.waiting.length === 0 && this.errors.length === 0 && this.answer && (this.answer.failed > 0 || this.isPartial) && !this.bracket) {
      this.later = setTimeout(() => this.rest(), 350);
    }
  }

  /** Whether parts of the report are still those of an answer before. */
  get isPartial() { return (this.answer?.open ?? []).length > 0; }

  /** What the quick answer left out. */
  rest() { return this.deepen(this.answer && this.answer.failed > 0 && this.answer.depth === 'Quick' ? 'remedies' : 'quick'); }

  /** @param {object} message */
  async work(message) { return this.kept.whole(await asked('/work', { ...message, has: this.kept.marks })); }

  /** @param {'quick' | 'remedies' | 'strength'} depth */
  async deepen(depth) {
    clearTimeout(this.later);
    const { revision } = this;
    const turn = ++this.turns;
    try {
      const reply = await this.work(this.message({ depth, bracket: this.bracket }));
      if (revision === this.revision && turn === this.turns && !this.busy) {
        this.take(reply, revision);
      }
    } catch (problem) {
      this.onProblem(problem);
    }
  }

  /** Has the bracket shown that the files are made of: which one passes is known with strength only. */
  async prove() {
    while (this.busy) {
      await this.running;
    }
    if (this.errors.length === 0 && this.answer && !this.answer.isWhole) {
      await this.deepen('strength');
    }
  }

  /**
   * @param {Page.Reply} reply
   * @param {number} revision Of the job that was asked about.
   */
  take(reply, revision) {
    if (revision !== this.revision || reply.job !== this.job) {
      return;
    }
    const files = { ...this.files, ...reply.files };
    if (Object.keys(reply.files).some((path) => reply.files[path] !== this.files[path])) {
      this.files = files;
    }
    this.values = { ...this.values, ...reply.values };
    this.errors = reply.errors;
    const { answer } = reply;
    if (answer) {
      const open = answer.open ?? [];
      // What was asked for again was not solved again.
      this.solveTime = answer.depth === 'Quick' && (open.length > 0 || !this.isPartial) ? reply.solveTime : this.solveTime;
      const before = Object.fromEntries(Object.entries(this.answer?.parts ?? {}).filter(([id]) => open.includes(id)));
      this.answer = { ...answer, parts: { ...before, ...answer.parts } };
    }
    this.onChange(reply);
  }
}
