// The first screen: jobs of the folder, examples, a shared file, or a new job measured step by step.
import { asked, fetched, hand, textOf } from './asking.js';
import { $, h, input, select } from './dom.js';
import { slug } from './paths.js';
import { fill, words } from './words.js';

const said = words.start;

/** What is measured: the selection of its source, the input of its name. */
const measured = [{ source: 'new-body', needName: said.nameBody }, { source: 'new-vehicle', needName: said.nameVehicle }];

/** @param {{ source: string }} of */
const nameId = ({ source }) => `${source}-name`;

/**
 * @param {{ open: (path: string, isExample: boolean) => void, take: (files: Iterable<File>) => Promise<unknown>, begin: (wish: Page.Wish) => void, back: (() => void) | null }} handlers
 */
export async function startPage({ open, take, begin, back }) {
  /** @type {Page.Shelf} */
  const shelf = await asked('/shelf');
  const jobs = (/** @type {Page.ShelfEntry[]} */ entries) => entries.filter((p) => ['job', 'packed job'].includes(p.kind));
  const list = (/** @type {Page.ShelfEntry[]} */ entries, /** @type {boolean} */ isExample) => h('ul', { class: 'shelf' }, entries.map((p) => h('li', {},
    h('button', { type: 'button', 'data-open': p.path, onclick: () => open(p.path, isExample) }, h('strong', {}, p.name || p.path), h('span', {}, p.path), p.problem ? h('span', { class: 'problem' }, p.problem) : null))));
  // What cannot be read may be a job: it stays in the list and says what is wrong.
  const own = shelf.profiles.filter((p) => ['job', 'packed job', ''].includes(p.kind));
  // A job that was begun and never saved.
  own.push(...shelf.unsaved.filter((path) => !shelf.profiles.some((p) => p.path === path)).map((path) => ({ path, kind: 'job', name: '', problem: said.unsaved })));
  $('start').replaceChildren(
    h('section', {}, h('h2', {}, said.newHeading), h('p', {}, said.newExplain), newJob(shelf, begin)),
    h('section', {}, h('h2', {}, fill(said.jobsHeading, { folder: shelf.folder })), own.length ? list(own, false) : h('p', { class: 'remark' }, said.noJobs)),
    h('section', {}, h('h2', {}, said.examplesHeading), list(jobs(shelf.examples), true)),
    h('section', {}, h('h2', {}, said.worksheetHeading), h('p', {}, said.worksheetExplain), worksheet()),
    h('section', {}, h('h2', {}, said.sharedHeading), h('div', { class: 'pick' }, h('label', { for: 'shared' }, said.shared), shared(take)), h('p', { class: 'remark' }, said.sharedExplain)),
    ...(back ? [h('p', {}, h('button', { type: 'button', id: 'back-to-job', onclick: back }, said.back))] : []));
  showNames();
}

/**
 * @param {Page.Shelf} shelf
 * @param {(wish: Page.Wish) => void} begin
 */
function newJob(shelf, begin) {
  const pick = (/** @type {string} */ kind, /** @type {string} */ id, /** @type {string} */ label, isMeasured = true) => {
    const options = [
      isMeasured ? h('option', { value: 'measure' }, said.measureNow) : null,
      shelf.profiles.filter((p) => p.kind === kind).map((p) => h('option', { value: `folder ${p.path}` }, fill(said.fromFolder, { name: p.name, path: p.path }))),
      shelf.examples.filter((p) => p.kind === kind).map((p) => h('option', { value: `example ${p.path}` }, fill(said.fromExamples, { name: p.name }))),
    ];
    return [h('label', { for: id }, label), h('select', { id, onchange: showNames }, options)];
  };
  const name = (/** @type {string} */ id) => [h('label', { for: id }, said.name), h('input', { type: 'text', id, maxlength: 60, autocomplete: 'off' })];
  const problem = h('p', { class: 'problem', role: 'alert', id: 'new-problem', hidden: true });
  return h('form', { class: 'new', onsubmit: (/** @type {Event} */ event) => submit(event, problem, begin) },
    h('div', { class: 'pick' }, pick('throttle body', 'new-body', said.body), name('new-body-name')),
    h('div', { class: 'pick' }, pick('vehicle', 'new-vehicle', said.vehicle), name('new-vehicle-name')),
    h('div', { class: 'pick' }, pick('shop', 'new-shop', said.shop, false)), problem,
    h('button', { type: 'submit', class: 'primary', id: 'new-begin' }, said.begin));
}

/** Only what is measured needs a name. */
function showNames() {
  for (const of of measured) {
    const isHidden = select(of.source).value !== 'measure';
    document.querySelectorAll(`[for=${nameId(of)}], #${nameId(of)}`).forEach((part) => part.toggleAttribute('hidden', isHidden));
  }
}

/**
 * @param {Event} event
 * @param {HTMLElement} problem
 * @param {(wish: Page.Wish) => void} begin
 */
function submit(event, problem, begin) {
  event.preventDefault();
  const name = (/** @type {string} */ id) => input(id).value.trim();
  const wanting = measured.find((of) => select(of.source).value === 'measure' && !slug(name(nameId(of))));
  problem.hidden = !wanting;
  if (wanting) {
    problem.textContent = wanting.needName;
    input(nameId(wanting)).focus();
    return;
  }
  const [body, vehicle] = measured.map((of) => ({ source: select(of.source).value, name: name(nameId(of)), slug: slug(name(nameId(of))) }));
  begin({ body, vehicle, shop: { source: select('new-shop').value, name: '', slug: '' } });
}

/** The sheet to take to the vehicle. */
function worksheet() {
  const status = h('p', { class: 'problem', role: 'status' });
  return h('div', { class: 'new' },
    h('div', { class: 'pick' }, h('label', { for: 'worksheet-paper' }, said.paper), h('select', { id: 'worksheet-paper' }, h('option', { value: 'A4' }, said.a4), h('option', { value: 'A' }, said.a))),
    h('p', {}, h('button', { type: 'button', id: 'do-worksheet', onclick: async () => {
      try {
        hand(await fetched('/worksheet', { paper: select('worksheet-paper').value }), 'measuring-worksheet.pdf');
        status.textContent = '';
      } catch (problem) {
        status.textContent = textOf(problem);
      }
    } }, said.worksheet)), status);
}

/** @param {(files: Iterable<File>) => Promise<unknown>} take */
function shared(take) {
  const picked = h('input', { type: 'file', id: 'shared', accept: '.toml', multiple: true, onchange: async () => {
    if (picked.files?.length) {
      await take(picked.files);
      picked.value = '';
    }
  } });
  return picked;
}
