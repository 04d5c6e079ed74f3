// The job that lies open: texts of its profiles, what was saved, what can be undone, and one question to the program at a time.
import { asked } from './dom.js';

export const roles = [
  ['body', 'throttle_body', 'Throttle body', 'throttle-body', 'throttle body'], ['vehicle', 'vehicle', 'Vehicle', 'vehicle', 'vehicle'],
  ['shop', 'shop', 'Shop', 'shop', 'shop'], ['job', null, 'Job', 'job', 'job'],
].map(([id, key, label, form, kind]) => ({ id, key, label, form, kind }));

export function beside(from, relative) {
  const kept = [];
  for (const part of [...from.split('/').slice(0, -1), ...relative.split('/')]) {
    if (part === '..' && kept.length && kept.at(-1) !== '..') {
      kept.pop();
    } else if (part && part !== '.') {
      kept.push(part);
    }
  }
  return kept.join('/');
}

export function relativeTo(from, path) {
  const [folder, there] = [from.split('/').slice(0, -1), path.split('/')];
  let same = 0;
  while (same < folder.length && same < there.length - 1 && folder[same] === there[same]) {
    same++;
  }
  return [...folder.slice(same).map(() => '..'), ...there.slice(same)].join('/');
}

export class Desk {
  constructor(onChange, onProblem) {
    Object.assign(this, { onChange, onProblem, job: null, files: {}, values: {}, errors: [], answer: null, engine: 0, choice: 1, accepted: [] });
    Object.assign(this, { saved: {}, past: [], future: [], waiting: [], busy: false, last: null, revision: 0, turns: 0, later: 0 });
  }

  open({ job, files, values }, saved) {
    Object.assign(this, { job, files, values, saved: saved ? { ...files } : {}, past: [], future: [], waiting: [], errors: [], answer: null, choice: 1, accepted: [], last: null });
    this.revision++;
    return this.ask();
  }

  pathOf(role) {
    const name = role.key ? this.values[this.job]?.[role.key] : null;
    return role.key ? (typeof name === 'string' ? beside(this.job, name) : null) : this.job;
  }

  valuesOf(role) { return this.values[this.pathOf(role)] ?? {}; }

  get inInches() { return this.values[this.job]?.units === 'in'; }

  get unsaved() { return Object.keys(this.files).filter((path) => this.files[path] !== this.saved[path]); }

  now() { return { files: this.files, values: this.values, job: this.job, choice: this.choice }; }

  // Changes of one field without leaving it are one step back.
  remember(what) {
    if (what === null || what !== this.last) {
      this.past.push(this.now());
      this.past.splice(0, Math.max(0, this.past.length - 200));
    }
    this.future = [];
    this.last = what;
  }

  edit(edits, what = null) {
    this.remember(what);
    const keys = new Set(edits.map((e) => `${e.file} ${e.key}`));
    this.waiting = [...this.waiting.filter((e) => e.key.endsWith('[+]') || !keys.has(`${e.file} ${e.key}`)), ...edits];
    return this.ask();
  }

  // Whole texts: typed as text, or another profile picked.
  replace(files, what = null, edits = []) {
    this.remember(what);
    this.files = { ...this.files, ...files };
    this.waiting.push(...edits);
    return this.ask();
  }

  choose(choice) {
    this.remember(null);
    this.choice = choice;
    return this.ask();
  }

  // What was typed just before is on its way to the program: it is the step to take back.
  async step(from, to) {
    while (this.busy) {
      await this.running;
    }
    if (this[from].length === 0) {
      return;
    }
    this[to].push(this.now());
    Object.assign(this, this[from].pop());
    this.last = null;
    await this.ask();
  }

  undo() { return this.step('past', 'future'); }

  redo() { return this.step('future', 'past'); }

  leave() { this.last = null; }

  // Only what the job names goes along: a profile that was put aside stays on the page for undo, and is not sent or packed.
  message(more) {
    const edits = more.edits ?? [];
    const named = new Set([this.job, ...roles.map((role) => this.pathOf(role)), ...edits.map((e) => e.file)]);
    edits.filter((e) => e.file === this.job && typeof e.value === 'string' && roles.some((r) => r.key === e.key)).forEach((e) => named.add(beside(this.job, e.value)));
    const files = Object.fromEntries(Object.entries(this.files).filter(([path]) => named.has(path) || Object.keys(this.files).length <= 4));
    return { job: this.job, files, choice: this.choice, accepted: this.accepted, ...more };
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
    try {
      do {
        this.again = false;
        const edits = this.waiting;
        const message = this.message({ edits, depth: 'quick' });
        this.waiting = [];
        const revision = ++this.revision;
        this.take(await asked('/work', message), revision);
      } while (this.again || this.waiting.length > 0);
    } catch (problem) {
      this.onProblem(problem);
    } finally {
      this.busy = false;
    }
    // The other brackets and what would mend it take longer: asked when the hand rests.
    if (this.errors.length === 0) {
      this.later = setTimeout(() => this.deepen('offers'), 350);
    }
  }

  async deepen(depth) {
    clearTimeout(this.later);
    const revision = this.revision;
    const turn = ++this.turns;
    try {
      const reply = await asked('/work', this.message({ depth }));
      if (revision === this.revision && turn === this.turns && !this.busy) {
        this.take(reply, revision);
      }
    } catch (problem) {
      this.onProblem(problem);
    }
  }

  take(reply, revision) {
    if (revision !== this.revision || reply.job !== this.job) {
      return;
    }
    const files = { ...this.files, ...reply.files };
    if (Object.keys(reply.files).some((path) => reply.files[path] !== this.files[path])) {
      this.files = files;
    }
    Object.assign(this, { values: { ...this.values, ...reply.values }, errors: reply.errors, refused: reply.refused });
    if (reply.answer?.depth === 'Quick') {
      this.engine = reply.engine;
    }
    if (reply.answer) {
      this.answer = reply.answer;
      this.choice = reply.answer.choice;
    }
    this.onChange(reply);
  }
}
