// The answers: the report's own sections, put up anew with each answer; pictures that keep their view and the pedal's place.
import { $, h, show, tabs } from './dom.js';
import { chartReaders, solidPicture, sweepMotion, sweepPicture } from './report.js';

export const views = [
  ['verdict', 'Verdict'], ['checks', 'Checks'], ['side-by-side', 'Other brackets'], ['charts', 'Forces and travel'], ['sure', 'How sure'],
  ['strength', 'Strength'], ['flat', 'Flat pattern'], ['files', 'Files'],
].map(([view, label]) => ({ view, id: `tab-${view}`, panel: `panel-${view}`, label }));

export class Views {
  constructor({ onChoice, onStrength }) {
    Object.assign(this, { onChoice, onStrength, chosen: 'verdict', picture: null, sweep: null, shown: {} });
    $('view-panels').replaceChildren(...views.map(({ id, panel, view, label }) => h(
      'section', { id: panel, role: 'tabpanel', 'aria-labelledby': id, tabindex: '-1', hidden: view !== this.chosen }, h('h3', { class: 'panel-heading' }, label), h('div', { class: 'panel-body', id: `body-${view}` }))));
    this.list();
    // Links of the verdict lead to the checks.
    $('view-panels').addEventListener('click', (event) => {
      const link = event.target.closest('a[href^="#"]');
      if (link) {
        event.preventDefault();
        this.choose('checks');
        const row = document.getElementById(link.getAttribute('href').slice(1));
        row?.scrollIntoView({ block: 'center' });
        row?.querySelector('summary')?.focus();
      }
      const choice = event.target.closest('[data-choice]');
      if (choice) {
        this.onChoice(Number(choice.dataset.choice));
      }
    });
  }

  list(notes = {}) {
    tabs($('view-tabs'), views.map((v) => ({ ...v, note: notes[v.view] })), `tab-${this.chosen}`, (id) => this.choose(id.slice(4)));
    this.notes = notes;
  }

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

  strip(desk) {
    const { answer, errors } = desk;
    const strip = $('strip');
    strip.className = `strip ${errors.length ? 'wrong' : answer?.state ?? ''}`;
    if (errors.length) {
      strip.replaceChildren(h('p', { class: 'word' }, errors.length === 1 ? '1 mistake in the numbers' : `${errors.length} mistakes in the numbers`), h('p', {}, answer ? 'What is shown below is from before.' : 'Nothing was computed yet.'));
    } else if (answer) {
      const sentence = answer.sentence.charAt(0).toUpperCase() + answer.sentence.slice(1);
      strip.replaceChildren(h('p', { class: 'word' }, answer.word), h('p', {}, sentence));
    }
    $('bracket').classList.toggle('stale', errors.length > 0);
    $('told').textContent = answer && !errors.length
      ? `Answered in ${Math.round(desk.engine)} ms. A design aid: a competent person checks the finished installation.`
      : 'A design aid. A competent person checks the finished installation.';
  }

  take(desk) {
    this.strip(desk);
    const { answer } = desk;
    if (!answer || desk.errors.length) {
      return;
    }
    // The pictures first: the eye waits for them, and the tables take longer to put up.
    const focused = document.activeElement?.id;
    this.pictures(answer);
    clearTimeout(this.filling);
    this.filling = setTimeout(() => {
      const opened = new Set([...document.querySelectorAll('#view-panels details[open] summary code')].map((c) => c.textContent));
      this.fill(answer, opened);
      if (focused && document.activeElement?.id !== focused) {
        document.getElementById(focused)?.focus({ preventScroll: true });
      }
    });
  }

  part(view, markup) {
    if (this.shown[view] !== markup) {
      this.shown[view] = markup;
      show($(`body-${view}`), markup);
      return true;
    }
    return false;
  }

  fill(answer, opened) {
    const { parts } = answer;
    this.part('verdict', `${parts.verdict}<div class="caution-box"><h3>Cautions</h3>${parts.cautions}</div>`);
    if (this.part('checks', parts.checks)) {
      for (const code of document.querySelectorAll('#body-checks summary code')) {
        if (opened.has(code.textContent)) {
          code.closest('details').open = true;
        }
      }
    }
    if (this.part('charts', parts.charts)) {
      chartReaders();
    }
    this.part('sure', parts.sure ?? '<p>There is no probability to tell: the mechanism could not be computed.</p>');
    this.part('flat', parts.flat ?? '<p>There is no bracket, and so no flat pattern.</p>');
    this.part('side-by-side', parts['side-by-side'] ?? (answer.depth === 'Quick' ? '<p class="waiting">Looking for other brackets…</p>' : '<p>No bracket passes every check. The verdict says what stands in the way, and what would open one.</p>'));
    this.strength(answer);
    const failed = (answer.parts.checks.match(/<tr role="row" id="[^"]*" class="fail"/g) ?? []).length;
    const offers = (parts['side-by-side']?.match(/<article/g) ?? []).length;
    const notes = { checks: failed ? `${failed} failed` : '', 'side-by-side': offers ? String(offers) : '' };
    if (JSON.stringify(notes) !== JSON.stringify(this.notes)) {
      const focused = document.activeElement?.id;
      this.list(notes);
      document.getElementById(focused)?.focus({ preventScroll: true });
    }
  }

  strength(answer) {
    const done = answer.hasStrength;
    if (done) {
      this.part('strength', answer.parts.strength);
    } else if (this.shown.strength !== 'ask') {
      this.shown.strength = 'ask';
      $('body-strength').replaceChildren(
        h('p', {}, 'Not calculated for these numbers: whether the bracket bends, shakes or cracks is not known. It takes a second or two.'),
        h('button', { type: 'button', id: 'do-strength', onclick: () => this.ask() }, 'Calculate strength'), h('p', { class: 'waiting', role: 'status', id: 'strength-waiting' }));
    }
    if (!done && $('do-strength')) {
      $('do-strength').disabled = !answer.hasBracket;
      $('strength-waiting').textContent = answer.hasBracket ? '' : 'There is no bracket.';
    }
    $('paint').hidden = !answer.data.solid?.shell;
    if (!answer.data.solid?.shell) {
      document.querySelector('[name=paint][value=bare]').checked = true;
    }
  }

  async ask() {
    $('do-strength').disabled = true;
    $('strength-waiting').textContent = 'Calculating…';
    await this.onStrength();
    $('panel-strength').focus({ preventScroll: true });
  }

  pictures(answer) {
    const key = JSON.stringify(answer.data);
    if (key === this.drawn) {
      return;
    }
    this.drawn = key;
    const motion = sweepMotion(answer.data.sweep);
    $('no-solid').hidden = answer.data.solid !== null;
    if (answer.data.solid) {
      if (this.picture) {
        this.picture.change(answer.data.solid, motion);
        $('solid-live').hidden = false;
      } else {
        const made = solidPicture(answer.data.solid, motion);
        this.picture = made.change ? made : null;
      }
    } else {
      $('solid-live').hidden = true;
    }
    const pedal = this.sweep?.pedal() ?? 0;
    this.sweep?.stop();
    const opened = $('sweep').querySelector('details')?.open ?? false;
    show($('sweep'), answer.parts.sweep);
    const details = $('sweep').querySelector('details');
    if (details) {
      details.open = opened;
    }
    const follow = answer.data.solid && this.picture ? this.picture : () => {};
    this.sweep = sweepPicture(motion, follow, pedal);
  }

  repaint() { this.picture?.paint(); }
}
