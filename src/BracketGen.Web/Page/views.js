// The answers: the report's own sections, shown anew with each answer; pictures that keep their view and the pedal's place.
import { textOf } from './asking.js';
import { $, all, button, h, input, say, show, tabs } from './dom.js';
import { chartReaders, solidPicture, sweepMotion, sweepPicture } from './report.js';
import { fill, words } from './words.js';

const said = words.answers;

/** The tabs of the job's own bracket alone: nothing is chosen or made of one that is there already. */
const ofOwn = ['side-by-side', 'files'];

/** Parts of the report that are in view at every time, and those of a tab. */
const always = ['verdict', 'cautions', 'assumed', 'sweep'];
const partsOf = { checks: ['checks', 'cables', 'failures'], charts: ['charts'], sure: ['sure'], strength: ['strength'], flat: ['flat'], 'side-by-side': ['offers'] };

export const views = Object.entries(words.views).map(([view, label]) => ({ view, id: `tab-${view}`, panel: `panel-${view}`, label }));

/** @param {string} text */
const escaped = (text) => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** @param {string} text */
const paragraph = (text, name = '') => `<p class="${name}">${escaped(text)}</p>`;

export class Views {
  /** @param {{ onChoice: (number: number | null) => void, onStrength: () => Promise<void>, onReport: () => Promise<void> }} handlers */
  constructor({ onChoice, onStrength, onReport }) {
    this.onReport = onReport;
    /** Whether a bracket that is there already is shown. */
    this.isChecking = false;
    /** Another panel is looked at. */
    this.onView = () => {};
    this.onChoice = onChoice;
    this.onStrength = onStrength;
    this.chosen = views[0].view;
    /** What each panel shows. @type {Record<string, string>} */
    this.shown = {};
    /** @type {Record<string, string>} */
    this.notes = {};
    this.filling = 0;
    this.waiting = 0;
    /** What was shown last. @type {Page.Answer | null} */
    this.last = null;
    this.drawn = '';
    /** What else follows an answer, once its picture is there. @type {(answer: Page.Answer) => void} */
    this.onShown = () => {};
    /** What else is made of the list of choices, once it is new. @type {(answer: Page.Answer) => void} */
    this.onChoices = () => {};
    /** @type {Report.SolidPicture | null} */
    this.picture = null;
    /** @type {Report.SweepPicture | null} */
    this.sweep = null;
    $('view-panels').replaceChildren(...views.map(({ id, panel, view, label }) => h(
      'section', { id: panel, role: 'tabpanel', 'aria-labelledby': id, tabindex: '-1', hidden: view !== this.chosen }, h('h3', { class: 'panel-heading' }, label), h('div', { class: 'panel-body', id: `body-${view}` }))));
    this.list({});
    $('view-panels').addEventListener('click', (event) => this.press(event));
  }

  /**
   * Links of the verdict lead to the checks; the buttons of the choices take one.
   * @param {Event} event
   */
  press(event) {
    const pressed = /** @type {Element} */ (event.target);
    const link = pressed.closest('a[href^="#"]');
    if (link) {
      event.preventDefault();
      this.choose('checks');
      const row = document.getElementById((link.getAttribute('href') ?? '').slice(1));
      row?.scrollIntoView({ block: 'center' });
      row?.querySelector('summary')?.focus();
    }
    const choice = pressed.closest('[data-choice]');
    if (choice instanceof HTMLElement) {
      this.onChoice(Number(choice.dataset.choice));
    }
  }

  /** @param {Record<string, string>} notes What stands beside a tab's name. */
  list(notes) {
    tabs($('view-tabs'), views.filter((v) => !this.isChecking || !ofOwn.includes(v.view)).map((v) => ({ ...v, note: notes[v.view] })), `tab-${this.chosen}`, (id) => this.choose(id.slice('tab-'.length)));
    this.notes = notes;
  }

  /** @param {string} view */
  choose(view) {
    this.chosen = view;
    for (const v of views) {
      const isChosen = v.view === view;
      const tab = document.getElementById(v.id);
      tab?.setAttribute('aria-selected', String(isChosen));
      tab?.setAttribute('tabindex', isChosen ? '0' : '-1');
      $(v.panel).hidden = !isChosen;
    }
    $(`tab-${view}`).scrollIntoView({ block: 'nearest', inline: 'nearest' });
    this.onView();
  }

  /** What of the report the page shows now. */
  get wanted() { return [...always, ...(/** @type {Record<string, string[]>} */ (partsOf)[this.chosen] ?? [])]; }

  /** The first of the tabs. */
  get first() { return views[0].view; }

  /**
   * Tabs and pictures are those of the bracket that is shown.
   * @param {boolean} isChecking
   */
  turn(isChecking) {
    if (isChecking === this.isChecking) {
      return;
    }
    this.isChecking = isChecking;
    this.shown = {};
    if (isChecking && ofOwn.includes(this.chosen)) {
      this.choose(this.first);
    }
    this.list(this.notes);
  }

  /**
   * A bracket that is there already is solved in every corner of its ±: where that takes longer, the page says so.
   * @param {boolean} isWaiting
   */
  wait(isWaiting) {
    clearTimeout(this.waiting);
    if (isWaiting) {
      this.waiting = setTimeout(() => { $('checked-status').textContent = said.calculating; }, 400);
    } else {
      $('checked-status').textContent = '';
    }
  }

  /** @param {import('./desk.js').Desk} desk */
  strip(desk) {
    const { answer, errors } = desk;
    const strip = $('strip');
    strip.className = `strip ${errors.length ? 'wrong' : answer?.verdict.state ?? ''}`;
    if (errors.length) {
      const isOpen = errors.every((e) => e.open);
      const [one, several] = isOpen ? [said.missing, said.missings] : [said.mistake, said.mistakes];
      strip.replaceChildren(h('p', { class: 'word' }, errors.length === 1 ? one : fill(several, { count: errors.length })), h('p', {}, answer ? said.before : said.nothing));
    } else if (!answer) {
      strip.replaceChildren(h('p', { class: 'word' }, said.calculating));
    } else {
      strip.replaceChildren(h('p', { class: 'word' }, answer.verdict.word), h('p', {}, answer.verdict.sentence), ...(answer.chosenText ? [h('p', {}, answer.chosenText)] : []), ...this.toProve(answer));
    }
    $('desk').classList.toggle('stale', errors.length > 0);
    say(answer && !errors.length ? fill(words.frame.answered, { time: Math.round(desk.solveTime) }) : words.frame.aid, false);
  }

  /**
   * The button that calculates what the verdict waits for.
   * @param {Page.Answer} answer
   */
  toProve({ verdict, hasStrength, hasBracket, isWhole }) {
    if (this.isChecking) {
      return isWhole ? [] : [h('button', { type: 'button', class: 'quiet', id: 'strip-strength', title: words.bracket.wholeWhy, onclick: () => this.ask() }, words.bracket.whole)];
    }
    return verdict.state === 'not-proven' && !hasStrength && hasBracket
      ? [h('button', { type: 'button', class: 'quiet', id: 'strip-strength', onclick: () => { this.choose('strength'); this.ask(); } }, said.calculate)] : [];
  }

  /** @param {import('./desk.js').Desk} desk */
  take(desk) {
    this.turn(desk.bracket !== '');
    this.strip(desk);
    const { answer } = desk;
    $('desk').classList.toggle('empty', !answer && this.isChecking);
    if (!answer || desk.errors.length) {
      return;
    }
    // The pictures first: the eye waits for them, and the tables take longer to build.
    const focused = document.activeElement?.id;
    this.pictures(answer);
    this.onShown(answer);
    this.last = answer;
    clearTimeout(this.filling);
    this.filling = setTimeout(() => {
      const opened = new Set([...all('#view-panels details[open] summary code').map((c) => c.textContent), ...all('.passes[open]').map((d) => d.id)]);
      this.fill(answer, opened);
      if (focused && document.activeElement?.id !== focused) {
        document.getElementById(focused)?.focus({ preventScroll: true });
      }
    });
  }

  /**
   * Shows markup in a panel, if it is new.
   * @param {string} view
   * @param {string} markup
   */
  part(view, markup) {
    if (this.shown[view] === markup) {
      return false;
    }
    this.shown[view] = markup;
    show($(`body-${view}`), markup);
    return true;
  }

  /**
   * @param {Page.Answer} answer
   * @param {Set<string | null>} opened The checks that were open.
   */
  fill(answer, opened) {
    const { parts } = answer;
    const cautions = parts.cautions ? `<div class="caution-box"><h3>${escaped(said.cautions)}</h3>${parts.cautions}</div>` : '';
    const assumed = parts.assumed ? `<h3>${escaped(said.assumed)}</h3>${parts.assumed}` : '';
    this.part('verdict', (this.isChecking ? parts.trial : parts.verdict) + cautions + assumed + (this.isChecking ? '' : parts.fitted ?? ''));
    if (this.isChecking) {
      this.whole(answer);
    }
    const none = paragraph(words.bracket.notSolved);
    if (this.part('checks', (parts.checks ?? none) + (parts.cables ?? '') + (parts.failures ?? ''))) {
      all('.passes').filter((d) => opened.has(d.id)).forEach((d) => d.setAttribute('open', ''));
      all('#body-checks summary code').filter((code) => opened.has(code.textContent)).forEach((code) => code.closest('details')?.setAttribute('open', ''));
    }
    if (this.part('charts', parts.charts ?? none)) {
      chartReaders();
    }
    this.part('sure', parts.sure ?? (parts.checks ? paragraph(said.notSure) : none));
    this.part('flat', parts.flat ?? paragraph(said.noFlat));
    this.choices(answer);
    this.strength(answer);
    const choices = (parts['side-by-side']?.match(/<article/g) ?? []).length;
    const notes = { checks: answer.failed ? fill(said.failed, { count: answer.failed }) : '', 'side-by-side': choices ? String(choices) : '' };
    if (JSON.stringify(notes) !== JSON.stringify(this.notes)) {
      const focused = document.activeElement?.id;
      this.list(notes);
      document.getElementById(focused ?? '')?.focus({ preventScroll: true });
    }
  }

  /**
   * Under what is said of a bracket that is there already: what is still to be calculated, and its report.
   * @param {Page.Answer} answer
   */
  whole(answer) {
    const status = h('p', { class: 'waiting', role: 'status', id: 'whole-status' }, answer.isWhole ? '' : words.bracket.wholeWhy);
    const report = h('button', { type: 'button', id: 'bracket-report', disabled: !answer.hasBracket, onclick: async () => {
      status.textContent = words.bracket.making;
      report.disabled = true;
      try {
        await this.onReport();
        status.textContent = words.bracket.made;
      } catch (problem) {
        status.textContent = textOf(problem);
      }
      report.disabled = false;
    } }, words.bracket.report);
    document.getElementById('whole-bar')?.remove();
    $('body-verdict').prepend(h('div', { class: 'controls', id: 'whole-bar' }, answer.isWhole ? [] : [h('button', { type: 'button', id: 'do-whole', onclick: () => this.ask() }, words.bracket.whole)], report, status));
  }

  /**
   * The brackets that pass, known with strength only, and the way back from the chosen one to the best.
   * @param {Page.Answer} answer
   */
  choices(answer) {
    const chosen = answer.chosenText ? paragraph(answer.chosenText) : '';
    const isOpen = !answer.isWhole && answer.hasBracket && (answer.isChosen || !answer.failed);
    const list = answer.parts['side-by-side'] ?? paragraph(isOpen ? said.choicesOpen : said.noChoice);
    if (!this.part('side-by-side', chosen + list)) {
      return;
    }
    if (answer.isChosen) {
      $('body-side-by-side').prepend(h('button', { type: 'button', id: 'take-best', onclick: () => this.onChoice(null) }, said.best));
    }
    if (isOpen) {
      $('body-side-by-side').append(h('button', { type: 'button', id: 'choices-strength', onclick: () => this.ask() }, said.calculate));
    }
    this.onChoices(answer);
  }

  /** @param {Page.Answer} answer */
  strength(answer) {
    if (answer.hasStrength) {
      this.part('strength', answer.parts.strength);
    } else if (!answer.data) {
      this.part('strength', paragraph(words.bracket.notSolved));
    } else if (this.shown.strength !== '') {
      this.shown.strength = '';
      $('body-strength').replaceChildren(
        h('p', {}, said.strengthOpen),
        h('button', { type: 'button', id: 'do-strength', onclick: () => this.ask() }, said.calculate), h('p', { class: 'waiting', role: 'status', id: 'strength-waiting' }));
    }
    if (!answer.hasStrength && answer.data) {
      button('do-strength').disabled = !answer.hasBracket;
      $('strength-waiting').textContent = answer.hasBracket ? '' : said.noBracket;
    }
    const hasShell = Boolean(answer.data?.solid?.shell);
    $('paint').hidden = !hasShell;
    if (!hasShell) {
      input('paint-bare').checked = true;
    }
  }

  async ask() {
    for (const id of ['do-strength', 'strip-strength', 'choices-strength', 'do-whole'].filter((one) => document.getElementById(one))) {
      button(id).disabled = true;
    }
    for (const waiting of ['strength-waiting', 'whole-status'].map((id) => document.getElementById(id)).filter((one) => one !== null)) {
      waiting.textContent = this.isChecking ? words.bracket.calculating : said.calculating;
    }
    const before = this.shown.verdict;
    await this.onStrength();
    // It was not calculated: the button can be pressed again.
    if (this.isChecking && before === this.shown.verdict && this.last && !this.last.isWhole) {
      this.whole(this.last);
    }
    $(`panel-${this.chosen}`).focus({ preventScroll: true });
  }

  /** @param {Page.Answer} answer */
  pictures(answer) {
    const key = JSON.stringify([answer.data, answer.parts.sweep]);
    if (key === this.drawn) {
      return;
    }
    this.drawn = key;
    $('no-solid').textContent = this.isChecking ? words.bracket.notInPlace : words.pictures.none;
    if (!answer.data) {
      this.sweep?.stop();
      this.sweep = null;
      $('sweep').replaceChildren();
      $('solid-live').hidden = true;
      $('no-solid').hidden = false;
      return;
    }
    const { solid } = answer.data;
    $('solid-about').textContent = answer.about;
    const motion = sweepMotion(answer.data.sweep);
    $('no-solid').hidden = solid !== null;
    if (!solid) {
      $('solid-live').hidden = true;
    } else if (this.picture) {
      this.picture.change(solid, motion);
      $('solid-live').hidden = false;
    } else {
      const made = solidPicture(solid, motion);
      this.picture = 'change' in made ? made : null;
    }
    const pedal = this.sweep?.pedal() ?? 0;
    this.sweep?.stop();
    const isOpen = $('sweep').querySelector('details')?.open ?? false;
    show($('sweep'), answer.parts.sweep);
    $('sweep').querySelector('details')?.toggleAttribute('open', isOpen);
    this.sweep = sweepPicture(motion, solid && this.picture ? this.picture : () => {}, pedal);
  }

  repaint() { this.picture?.paint(); }
}
