// The answers: the report's own sections, shown anew with each answer; pictures that keep their view and the pedal's place.
import { $, all, button, h, input, show, tabs } from './dom.js';
import { chartReaders, solidPicture, sweepMotion, sweepPicture } from './report.js';
import { fill, words } from './words.js';

const said = words.answers;

export const views = Object.entries(words.views).map(([view, label]) => ({ view, id: `tab-${view}`, panel: `panel-${view}`, label }));

/** @param {string} text */
const escaped = (text) => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** @param {string} text */
const paragraph = (text, name = '') => `<p class="${name}">${escaped(text)}</p>`;

export class Views {
  /** @param {{ onChoice: (number: number | null) => void, onStrength: () => Promise<void> }} handlers */
  constructor({ onChoice, onStrength }) {
    this.onChoice = onChoice;
    this.onStrength = onStrength;
    this.chosen = views[0].view;
    /** What each panel shows. @type {Record<string, string>} */
    this.shown = {};
    /** @type {Record<string, string>} */
    this.notes = {};
    this.filling = 0;
    this.drawn = '';
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
    tabs($('view-tabs'), views.map((v) => ({ ...v, note: notes[v.view] })), `tab-${this.chosen}`, (id) => this.choose(id.slice('tab-'.length)));
    this.notes = notes;
  }

  /** @param {string} view */
  choose(view) {
    this.chosen = view;
    for (const v of views) {
      const isChosen = v.view === view;
      $(v.id).setAttribute('aria-selected', String(isChosen));
      $(v.id).tabIndex = isChosen ? 0 : -1;
      $(v.panel).hidden = !isChosen;
    }
    $(`tab-${view}`).scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  /** @param {import('./desk.js').Desk} desk */
  strip(desk) {
    const { answer, errors } = desk;
    const strip = $('strip');
    strip.className = `strip ${errors.length ? 'wrong' : answer?.verdict.state ?? ''}`;
    if (errors.length) {
      strip.replaceChildren(h('p', { class: 'word' }, errors.length === 1 ? said.mistake : fill(said.mistakes, { count: errors.length })), h('p', {}, answer ? said.before : said.nothing));
    } else if (answer) {
      strip.replaceChildren(h('p', { class: 'word' }, answer.verdict.word), h('p', {}, answer.verdict.sentence), ...(answer.chosenText ? [h('p', {}, answer.chosenText)] : []), ...this.toProve(answer));
    }
    $('bracket').classList.toggle('stale', errors.length > 0);
    $('status').textContent = answer && !errors.length ? fill(words.frame.answered, { time: Math.round(desk.solveTime) }) : words.frame.aid;
  }

  /**
   * The button that calculates what the verdict waits for.
   * @param {Page.Answer} answer
   */
  toProve({ verdict, hasStrength, hasBracket }) {
    return verdict.state === 'not-proven' && !hasStrength && hasBracket
      ? [h('button', { type: 'button', class: 'quiet', id: 'strip-strength', onclick: () => { this.choose('strength'); this.ask(); } }, said.calculate)] : [];
  }

  /** @param {import('./desk.js').Desk} desk */
  take(desk) {
    this.strip(desk);
    const { answer } = desk;
    if (!answer || desk.errors.length) {
      return;
    }
    // The pictures first: the eye waits for them, and the tables take longer to build.
    const focused = document.activeElement?.id;
    this.pictures(answer);
    clearTimeout(this.filling);
    this.filling = setTimeout(() => {
      const opened = new Set(all('#view-panels details[open] summary code').map((c) => c.textContent));
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
    this.part('verdict', `${parts.verdict}<div class="caution-box"><h3>${escaped(said.cautions)}</h3>${parts.cautions}</div>`);
    if (this.part('checks', parts.checks + (parts.cables ?? '') + (parts.failures ?? ''))) {
      all('#body-checks summary code').filter((code) => opened.has(code.textContent)).forEach((code) => code.closest('details')?.setAttribute('open', ''));
    }
    if (this.part('charts', parts.charts)) {
      chartReaders();
    }
    this.part('sure', parts.sure ?? paragraph(said.notSure));
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
  }

  /** @param {Page.Answer} answer */
  strength(answer) {
    if (answer.hasStrength) {
      this.part('strength', answer.parts.strength);
    } else if (this.shown.strength !== '') {
      this.shown.strength = '';
      $('body-strength').replaceChildren(
        h('p', {}, said.strengthOpen),
        h('button', { type: 'button', id: 'do-strength', onclick: () => this.ask() }, said.calculate), h('p', { class: 'waiting', role: 'status', id: 'strength-waiting' }));
    }
    if (!answer.hasStrength) {
      button('do-strength').disabled = !answer.hasBracket;
      $('strength-waiting').textContent = answer.hasBracket ? '' : said.noBracket;
    }
    const hasShell = Boolean(answer.data.solid?.shell);
    $('paint').hidden = !hasShell;
    if (!hasShell) {
      input('paint-bare').checked = true;
    }
  }

  async ask() {
    for (const id of ['do-strength', 'strip-strength', 'choices-strength'].filter((one) => document.getElementById(one))) {
      button(id).disabled = true;
    }
    const waiting = document.getElementById('strength-waiting');
    if (waiting) {
      waiting.textContent = said.calculating;
    }
    await this.onStrength();
    $(`panel-${this.chosen}`).focus({ preventScroll: true });
  }

  /** @param {Page.Answer} answer */
  pictures(answer) {
    const key = JSON.stringify([answer.data, answer.parts.sweep]);
    if (key === this.drawn) {
      return;
    }
    this.drawn = key;
    const { solid } = answer.data;
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
