// Product lines: vehicles down, throttle bodies across, each variant with its state; one opened as a job, the line run, watched and stopped.
import { asked, textOf } from './asking.js';
import { h, input } from './dom.js';
import { freePath } from './paths.js';
import { mistakesIn, screen } from './screens.js';
import { fill, words } from './words.js';

const said = words.line;

/** How long the page waits before it asks how far a run is (ms). */
const pause = 1000;

const wishes = ['strength', 'own', 'drawings', 'anew'];

/**
 * @param {{ take: (opened: Page.Opened) => void, back: () => void }} handlers
 */
export async function linePage({ take, back }) {
  const status = h('p', { class: 'waiting', role: 'status', id: 'line-status' });
  const list = h('div', {});
  const place = h('div', { id: 'line-answer' });
  screen(words.more.line, [list, status, place], words.more.others, back);
  try {
    /** @type {Page.Shelf} */
    const shelf = await asked('/shelf');
    const families = shelf.profiles.filter((p) => p.kind === 'family');
    list.replaceChildren(families.length === 0 ? h('p', {}, said.none) : h('ul', { class: 'shelf', 'aria-label': said.families }, families.map((p) => h('li', {},
      h('button', { type: 'button', 'data-family': p.path, onclick: () => new Line(p.path, take, status, place).show() }, h('strong', {}, p.name || p.path), h('span', {}, p.path))))));
    if (families.length === 1) {
      await new Line(families[0].path, take, status, place).show();
    }
  } catch (problem) {
    status.textContent = textOf(problem);
  }
}

class Line {
  /**
   * @param {string} path
   * @param {(opened: Page.Opened) => void} take
   * @param {HTMLElement} status
   * @param {HTMLElement} place
   */
  constructor(path, take, status, place) {
    this.path = path;
    this.take = take;
    this.status = status;
    this.place = place;
    this.matrix = h('div', { id: 'line-matrix' });
    this.told = h('div', { id: 'line-told' });
    this.bar = h('progress', { 'aria-label': said.progress, max: 1, value: 0, hidden: true });
    this.start = h('button', { type: 'button', class: 'primary', id: 'line-run', onclick: () => this.run() }, said.run);
    this.end = h('button', { type: 'button', id: 'line-stop', disabled: true, onclick: () => this.stop() }, said.stop);
    this.isWatching = false;
  }

  async show() {
    this.place.replaceChildren(
      h('div', { class: 'choices' }, wishes.map((name) => h('label', { class: 'show' }, h('input', { type: 'checkbox', id: `line-${name}`, checked: name === 'strength' }), words.lineWishes[name]))),
      h('div', { class: 'controls' }, this.start, this.end), this.bar, this.told, this.matrix);
    await this.fill();
  }

  async fill() {
    try {
      /** @type {Page.LineReply} */
      const reply = await asked('/line', { path: this.path });
      if (reply.errors.length) {
        this.place.replaceChildren(...mistakesIn(said.mistakes, reply.errors));
        return;
      }
      this.matrix.replaceChildren(...this.drawn(reply));
      this.watch(reply.run ?? null);
    } catch (problem) {
      this.status.textContent = textOf(problem);
    }
  }

  /** @param {Page.LineReply} reply */
  drawn({ name = '', outcome, place = '', columns = [], rows = [] }) {
    const caption = fill(said.caption, { name });
    const without = rows.flatMap((row) => row.cells).filter((cell) => cell.why.length > 0);
    return [
      ...(outcome ? [h('p', {}, outcome)] : []),
      h('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': caption }, h('table', { class: 'wide' }, h('caption', {}, caption),
        h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, said.vehicle), columns.map((text) => h('th', { scope: 'col' }, text)))),
        h('tbody', {}, rows.map((row) => h('tr', {}, h('th', { scope: 'row' }, row.name), row.cells.map((cell) => h('td', { class: cell.state }, h('button', {
          type: 'button', class: 'quiet', 'data-variant': cell.key, disabled: !cell.isOpen, 'aria-label': fill(said.open, { title: cell.title, word: cell.word }), onclick: () => this.open(cell.key),
        }, cell.word)))))))),
      ...(without.length ? [h('h3', {}, said.why), h('ul', {}, without.map((cell) => h('li', {}, h('strong', {}, `${cell.key}: `), cell.why.join('; '))))] : []),
      h('p', { class: 'remark' }, fill(said.places, { place })),
    ];
  }

  /** @param {string} key */
  async open(key) {
    try {
      const [opened, shelf] = await Promise.all([asked('/line-job', { path: this.path, key }), asked('/shelf')]);
      // A job that is there already is not written over: the variant is another file.
      const job = freePath(opened.job, (other) => shelf.profiles.some((/** @type {Page.ShelfEntry} */ p) => p.path === other));
      const moved = (/** @type {Record<string, any>} */ of) => Object.fromEntries(Object.entries(of).map(([path, content]) => [path === opened.job ? job : path, content]));
      this.take({ job, files: moved(opened.files), values: moved(opened.values) });
    } catch (problem) {
      this.status.textContent = textOf(problem);
    }
  }

  async run() {
    this.told.replaceChildren();
    try {
      const options = Object.fromEntries(wishes.map((name) => [name, input(`line-${name}`).checked]));
      const { run = null, errors = [] } = await asked('/line-run', { path: this.path, ...options });
      await (errors.length ? this.fill() : this.watch(run));
    } catch (problem) {
      this.status.textContent = textOf(problem);
    }
  }

  async stop() {
    this.status.textContent = said.stopping;
    this.end.disabled = true;
    await asked('/line-stop', { path: this.path }).catch((problem) => { this.status.textContent = textOf(problem); });
  }

  /**
   * Follows a run as long as the screen is there.
   * @param {Page.LineRunState | null} run
   */
  async watch(run) {
    let state = run;
    const wasRunning = Boolean(state?.isRunning);
    while (state?.isRunning && this.place.isConnected && this.matrix.isConnected) {
      this.tell(state);
      await new Promise((resolve) => { setTimeout(resolve, pause); });
      state = (await asked('/line-state', { path: this.path }).catch(() => ({ run: state }))).run;
    }
    this.tell(state);
    if (wasRunning && this.matrix.isConnected) {
      await this.fill();
      this.status.textContent = said.ended;
    }
  }

  /** @param {Page.LineRunState | null} state */
  tell(state) {
    const isRunning = Boolean(state?.isRunning);
    this.start.disabled = isRunning;
    this.end.disabled = !isRunning || this.status.textContent === said.stopping;
    this.bar.hidden = !isRunning;
    this.bar.max = state?.of || 1;
    this.bar.value = state?.done ?? 0;
    if (isRunning && this.status.textContent !== said.stopping) {
      this.status.textContent = `${said.running} ${state?.progress ?? ''}`;
    }
    const text = [state?.errors, state?.output].filter(Boolean).join('\n').trim();
    this.told.replaceChildren(...(text && !isRunning ? [h('h3', {}, said.said), h('pre', { class: 'differences', tabindex: '0', 'aria-label': said.said, role: 'region' }, text)] : []));
  }
}
