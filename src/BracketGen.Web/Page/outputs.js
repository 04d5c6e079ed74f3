// Every file of the job, to fetch one by one: the same bytes that the command line writes.
import { $, Told, fetched, h, hand } from './dom.js';

const files = [
  ['flat-pattern.dxf', 'Flat pattern for laser or plasma', 'cut'], ['drawing.pdf', 'Drawing for the shop floor, with the 1:1 template'], ['setup-sheet.pdf', 'Set-up sheet for whoever fits it'],
  ['solid.step', 'Exact solid for CAD', 'cut'], ['solid.glb', 'Model to look at'], ['solid.stl', 'Model to print, for a trial fit; not a bracket'],
  ['report.html', 'Report: every check, the sweep, charts'], ['result.json', 'Everything for other programs'], ['flat-pattern-kerf.dxf', 'Way of the beam, for machines that know no kerf', 'kerf'],
];

export class Outputs {
  constructor(desk, onAccept) {
    this.desk = desk;
    const select = (id, label, ...options) => h('div', { class: 'option' }, h('label', { for: id }, label), h('select', { id }, options.map(([value, name]) => h('option', { value }, name))));
    this.dangers = h('div', { id: 'dangers' });
    this.told = h('p', { role: 'status', class: 'waiting', id: 'file-told' });
    $('body-files').replaceChildren(
      h('p', {}, 'The files are those that the command «make» writes, strength included. The first one takes a second or two.'),
      this.dangers,
      h('div', { class: 'options' },
        select('file-dxf', 'Cut file for', ['r2000', 'usual machines (2000)'], ['r12', 'old machines (R12)']),
        select('file-paper', 'Sheet of the drawing', ['', 'as the job says'], ['A3', 'A3'], ['A4', 'A4'], ['B', 'B, 17 x 11 in'], ['A', 'A, 8.5 x 11 in'])),
      this.told,
      h('ul', { class: 'files' }, files.map(([name, what]) => h('li', {},
        h('span', {}, h('strong', {}, name), h('span', { class: 'remark' }, what)),
        h('button', { type: 'button', 'data-file': name, 'aria-label': `Fetch ${name}`, onclick: (e) => this.fetch(name, e.currentTarget) }, 'Fetch')))),
      h('p', { class: 'remark' }, 'Share, at the top, packs the four profiles into one file, which page and command line read. Save writes them to the folder.'));
    this.onAccept = onAccept;
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
      h('p', { class: 'large' }, dangers.length === 1 ? 'A safety check failed.' : `${dangers.length} safety checks failed.`),
      h('p', {}, 'The cut file and the STEP file are withheld. Mend the numbers. Who knows better accepts each by name and answers for it; the drawing then carries it in large type.'),
      dangers.map((d) => h('label', { class: 'show' }, h('input', {
        type: 'checkbox', checked: accepted.includes(d.id),
        onchange: (e) => this.onAccept(d.id, e.currentTarget.checked),
      }), `${d.title} (${d.id}): I accept it and answer for it`)))]));
  }

  async fetch(name, button) {
    button.disabled = true;
    this.told.textContent = `Making ${name}…`;
    this.told.className = 'waiting';
    try {
      const options = { name, accepted: this.desk.accepted, dxf: $('file-dxf').value, paper: $('file-paper').value, kerf: name === 'flat-pattern-kerf.dxf' };
      const began = performance.now();
      hand(await fetched('/output', this.desk.message(options)), name);
      this.told.textContent = `${name} is fetched (${((performance.now() - began) / 1000).toFixed(1)} s).`;
    } catch (problem) {
      this.told.textContent = problem instanceof Told ? problem.message : String(problem);
      this.told.className = 'problem';
    }
    button.disabled = false;
    button.focus();
  }
}
