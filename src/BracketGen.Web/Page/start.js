// Where one begins: jobs of the folder, examples, a shared file, or a new job measured step by step.
import { $, asked, h } from './dom.js';

const slug = (name) => name.toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 60);

export async function startPage({ open, unpack, begin, back }) {
  const shelf = await asked('/shelf');
  const jobs = (all) => all.filter((p) => ['job', 'packed job'].includes(p.kind));
  const list = (all, example, none) => all.length === 0 ? h('p', { class: 'remark' }, none) : h('ul', { class: 'shelf' }, all.map((p) => h('li', {}, h('button', { type: 'button', 'data-open': p.path, onclick: () => open(p.path, example) },
    h('strong', {}, p.name || p.path), h('span', {}, p.path)))));

  const pick = (kind, id, label, measured) => {
    const options = [
      ...(measured ? [h('option', { value: 'measure' }, 'measure it now, step by step')] : []),
      ...shelf.profiles.filter((p) => p.kind === kind).map((p) => h('option', { value: `folder ${p.path}` }, `${p.name} (${p.path})`)),
      ...shelf.examples.filter((p) => p.kind === kind).map((p) => h('option', { value: `example ${p.path}` }, `${p.name}, example`)),
    ];
    return [h('label', { for: id }, label), h('select', { id, onchange: changed }, options)];
  };
  const bodyName = [h('label', { for: 'new-body-name' }, 'Its name'), h('input', { type: 'text', id: 'new-body-name', maxlength: 60, autocomplete: 'off' })];
  const vehicleName = [h('label', { for: 'new-vehicle-name' }, 'Its name'), h('input', { type: 'text', id: 'new-vehicle-name', maxlength: 60, autocomplete: 'off' })];
  function changed() {
    for (const [id, parts] of [['new-body', bodyName], ['new-vehicle', vehicleName]]) {
      parts.forEach((part) => { part.hidden = $(id).value !== 'measure'; });
    }
  }
  const told = h('p', { class: 'problem', role: 'alert', id: 'new-problem', hidden: true });

  const form = h('form', { class: 'new', onsubmit: (event) => {
    event.preventDefault();
    const of = (id) => $(id).value;
    const names = { body: of('new-body-name').trim(), vehicle: of('new-vehicle-name').trim() };
    const wanting = [['new-body', 'body', 'throttle body'], ['new-vehicle', 'vehicle', 'vehicle']].find(([id, key]) => of(id) === 'measure' && !slug(names[key]));
    told.hidden = !wanting;
    if (wanting) {
      told.textContent = `Give the ${wanting[2]} a name, with letters or digits.`;
      $(`${wanting[0]}-name`).focus();
      return;
    }
    begin({ body: of('new-body'), vehicle: of('new-vehicle'), shop: of('new-shop'), names, slugs: { body: slug(names.body), vehicle: slug(names.vehicle) } });
  } },
  h('div', { class: 'pick' }, pick('throttle body', 'new-body', 'Throttle body', true), bodyName),
  h('div', { class: 'pick' }, pick('vehicle', 'new-vehicle', 'Vehicle', true), vehicleName),
  h('div', { class: 'pick' }, pick('shop', 'new-shop', 'Shop', false)), told,
  h('button', { type: 'submit', class: 'primary', id: 'new-begin' }, 'Begin'));

  const shared = h('input', { type: 'file', id: 'shared', accept: '.toml', onchange: async () => {
    const [file] = shared.files;
    if (file) {
      await unpack(await file.text());
      shared.value = '';
    }
  } });

  const own = jobs(shelf.profiles);
  $('start').replaceChildren(
    h('section', {}, h('h2', {}, 'Begin a new job'), h('p', {}, 'The vehicle brings pedal and cable, the engine its throttle body. Measure both, and see what bracket joins them.'), form),
    h('section', {}, h('h2', {}, `Jobs in the folder ${shelf.folder}`), list(own, false, 'There is none yet.')),
    h('section', {}, h('h2', {}, 'Examples to look at'), list(jobs(shelf.examples), true, '')),
    h('section', {}, h('h2', {}, 'A job that somebody shared'), h('div', { class: 'pick' }, h('label', { for: 'shared' }, 'Packed job (.toml)'), shared)),
    ...(back ? [h('p', {}, h('button', { type: 'button', id: 'back-to-job', onclick: back }, 'Back to the open job'))] : []));
  changed();
}
