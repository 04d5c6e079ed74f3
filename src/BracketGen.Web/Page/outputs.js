// Every file of the job, to download one by one: the same bytes that the command line writes.
import { fetched, hand, textOf } from './asking.js';
import { $, h, select } from './dom.js';
import { stem } from './paths.js';
import { fill, words } from './words.js';

const said = words.outputs;
const allFiles = 'all.zip';
const beamPath = 'flat-pattern-kerf.dxf';

/**
 * A choice with its label.
 * @param {string} id
 * @param {string} label
 * @param {[string, string][]} options Value and name of each.
 */
const option = (id, label, options) => h('div', { class: 'option' },
  h('label', { for: id }, label), h('select', { id }, options.map(([value, name]) => h('option', { value }, name))));

export class Outputs {
  /**
   * @param {import('./desk.js').Desk} desk
   * @param {(id: string, isAccepted: boolean) => void} onAccept
   */
  constructor(desk, onAccept) {
    this.desk = desk;
    this.onAccept = onAccept;
    this.key = '';
    this.dangers = h('div', { id: 'dangers' });
    this.status = h('p', { role: 'status', class: 'waiting', id: 'file-status' });
    $('body-files').replaceChildren(
      h('p', {}, said.same),
      this.dangers,
      h('div', { class: 'options' },
        option('file-dxf', said.machine, [['r2000', said.r2000], ['r12', said.r12]]),
        h('div', { class: 'option' }, h('label', { for: 'file-text' }, said.text),
          h('input', { id: 'file-text', inputmode: 'numeric', pattern: '[1-9][0-9]{0,5}', maxlength: 6, placeholder: said.noText })),
        option('file-step', said.step, [['ap214', said.ap214], ['ap242', said.ap242]]),
        option('file-paper', said.paper, [['', said.asJob], ['A3', said.a3], ['A4', said.a4], ['B', said.b], ['A', said.a]])),
      h('p', {}, h('button', { type: 'button', id: 'do-all-files', onclick: (/** @type {Event} */ e) => this.download(allFiles, /** @type {HTMLButtonElement} */ (e.currentTarget)) }, said.allFiles)),
      this.status,
      h('ul', { class: 'files' }, Object.entries(words.files).map(([name, what]) => h('li', {},
        h('span', {}, h('strong', {}, name), h('span', { class: 'remark' }, what)),
        h('button', { type: 'button', 'data-file': name, 'aria-label': fill(said.downloadOne, { name }), onclick: (/** @type {Event} */ e) => this.download(name, /** @type {HTMLButtonElement} */ (e.currentTarget)) }, said.download)))),
      h('p', { class: 'remark' }, said.shareSave));
  }

  take() {
    const { answer, accepted } = this.desk;
    const dangers = answer?.dangers ?? [];
    const key = JSON.stringify([dangers, accepted]);
    if (key === this.key) {
      return;
    }
    this.key = key;
    this.dangers.replaceChildren(...(dangers.length === 0 ? [] : [h('div', { class: 'warning' },
      h('p', { class: 'large' }, dangers.length === 1 ? said.safetyFailed : fill(said.safetiesFailed, { count: dangers.length })),
      h('p', {}, said.withheld),
      dangers.map((d) => h('label', { class: 'show' }, h('input', {
        type: 'checkbox', checked: accepted.includes(d.id),
        onchange: (/** @type {Event} */ e) => this.onAccept(d.id, /** @type {HTMLInputElement} */ (e.currentTarget).checked),
      }), fill(said.accept, d))))]));
  }

  /**
   * @param {string} name
   * @param {HTMLButtonElement} pressed
   */
  async download(name, pressed) {
    pressed.disabled = true;
    this.status.textContent = fill(said.making, { name });
    this.status.className = 'waiting';
    try {
      const quantity = /** @type {HTMLInputElement} */ ($('file-text'));
      if (!quantity.reportValidity()) {
        throw new Error(said.badQuantity);
      }
      const options = {
        name, accepted: this.desk.accepted, dxf: select('file-dxf').value, paper: select('file-paper').value, step: select('file-step').value,
        quantity: quantity.value === '' ? null : Number(quantity.value), kerf: name === beamPath,
      };
      const began = performance.now();
      // The files are of the bracket that passes with strength: it is shown before it is handed over.
      await this.desk.prove();
      hand(await fetched('/output', this.desk.message(options)), name === allFiles ? `${stem(this.desk.job)}.zip` : name);
      this.status.textContent = fill(said.done, { name, time: ((performance.now() - began) / 1000).toFixed(1) });
    } catch (problem) {
      this.status.textContent = textOf(problem);
      this.status.className = 'problem';
    }
    pressed.disabled = false;
    pressed.focus();
  }
}
