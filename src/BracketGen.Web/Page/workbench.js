// The page: what lies open, what is shown of it, and what the keys do.
import { $, Told, asked, fetched, h, hand, question, tabs } from './dom.js';
import { Desk, relativeTo, roles } from './desk.js';
import { fields, plan, shape } from './forms.js';
import { Outputs } from './outputs.js';
import { measure } from './measuring.js';
import { startPage } from './start.js';
import { Views } from './views.js';

let [role, isText, form, drawn, shelf, forms] = [roles[0], false, null, '', null, null];

function notice(problem) {
  const text = problem instanceof Told ? problem.message : problem ? String(problem) : '';
  $('notice').hidden = !text;
  $('notice').replaceChildren(...(text ? [h('p', {}, text), h('button', { type: 'button', onclick: () => notice(null) }, 'Close')] : []));
}

const desk = new Desk((reply) => {
  if (reply.refused?.length) {
    notice(new Told(`This cannot be written into the profile by itself: ${reply.refused.join(', ')}. See its text.`));
  }
  if (!$('desk').hidden) {
    refresh();
  }
}, notice);

const views = new Views({
  onChoice: (choice) => desk.choose(choice),
  onStrength: () => desk.deepen('strength'),
});
const outputs = new Outputs(desk, (id, isAccepted) => {
  desk.accepted = isAccepted ? [...desk.accepted, id] : desk.accepted.filter((a) => a !== id);
  desk.ask();
});

function refresh() {
  const job = desk.values[desk.job] ?? {};
  const title = job.document?.title || `${desk.valuesOf(roles[1]).name ?? 'New vehicle'} on ${desk.valuesOf(roles[0]).name ?? 'new throttle body'}`;
  $('title').textContent = title;
  document.title = `${desk.unsaved.length ? '• ' : ''}${title}, workbench`;
  $('do-undo').disabled = desk.past.length === 0;
  $('do-redo').disabled = desk.future.length === 0;
  $('do-save').disabled = desk.unsaved.length === 0;
  $('do-share').disabled = false;
  $('do-units').disabled = false;
  $('do-units').textContent = desk.inInches ? 'in' : 'mm';
  $('do-units').setAttribute('aria-label', desk.inInches ? 'in: units, change to millimetres' : 'mm: units, change to inches');
  profiles();
  views.take(desk);
  outputs.take();
}

// The numbers: one tab a profile, as fields or as text.
function profiles() {
  const focused = document.activeElement?.id;
  tabs($('profile-tabs'), roles.map((r) => {
    const wrong = desk.errors.filter((e) => e.file === desk.pathOf(r)).length;
    return { id: `profile-tab-${r.id}`, panel: 'profile-panel', label: r.label, note: wrong ? String(wrong) : '' };
  }), `profile-tab-${role.id}`, (id) => {
    role = roles.find((r) => `profile-tab-${r.id}` === id);
    drawn = '';
    profiles();
  });
  if (focused?.startsWith('profile-tab-')) {
    $(focused)?.focus();
  }
  $('profile-panel').setAttribute('aria-labelledby', `profile-tab-${role.id}`);

  const path = desk.pathOf(role);
  const values = desk.values[path] ?? {};
  const mine = desk.errors.filter((e) => e.file === path);
  const isBroken = desk.files[path] !== undefined && Object.keys(values).length === 0;
  const schema = path ? hidden(forms[role.form]) : null;
  const nodes = schema && !isBroken ? plan(schema, values) : [];
  const next = JSON.stringify([role.id, path, isText || isBroken, desk.inInches, shape(nodes)]);
  if (next !== drawn) {
    draw(path, nodes, isText || isBroken, isBroken);
    drawn = next;
  }
  if (form) {
    form.fill(values, desk.inInches);
    rest(form.problems(mine));
  } else {
    rest(mine, true);
    const area = $('profile-text');
    if (area && document.activeElement !== area) {
      area.value = desk.files[path] ?? '';
    }
  }
  picker(path);
}

// The job's files are picked above; here they would say the same twice.
function hidden(schema) {
  const { throttle_body, vehicle, shop, units, ...properties } = schema.properties;
  return role.key ? schema : { ...schema, properties };
}

function rest(errors, isWhole = false) {
  $('profile-rest').replaceChildren(...errors.map((e) => h('p', { class: 'problem' }, isWhole ? e.text : `${e.key ? `${e.key}: ` : ''}Allowed: ${e.allowed}. ${e.advice}`)));
}

function draw(path, nodes, asText, isBroken) {
  const active = document.activeElement;
  const held = active?.dataset?.path ? { path: active.dataset.path, pm: active.classList.contains('pm'), axis: active.dataset.axis, text: active.value, at: active.selectionStart } : null;
  const open = new Map([...document.querySelectorAll('#profile-panel details[data-group]')].map((d) => [d.dataset.group, d.open]));
  const scroll = $('numbers').scrollTop;
  const body = h('div', { class: 'fields' });
  $('profile-panel').replaceChildren(
    h('div', { class: 'picker' }, h('label', { for: 'pick' }, role.key ? 'Which' : 'File'), h('select', { id: 'pick', onchange: pick }),
      h('button', { type: 'button', class: 'quiet', id: 'as-text', 'aria-pressed': String(asText), disabled: isBroken, onclick: () => { isText = !isText; drawn = ''; profiles(); $('as-text').focus(); } }, 'As text')),
    h('div', { id: 'profile-rest' }), body);
  form = null;
  if (asText) {
    let timer = 0;
    const area = h('textarea', { id: 'profile-text', spellcheck: 'false', rows: 34, 'aria-label': `Text of ${path}`, oninput: () => {
      clearTimeout(timer);
      timer = setTimeout(() => desk.replace({ [path]: area.value }, `text ${path}`), 350);
    }, onblur: () => desk.leave() });
    area.value = desk.files[path] ?? '';
    body.append(area);
    return;
  }
  form = fields(body, nodes, {
    file: path,
    change: (edits, what) => desk.edit(edits.map((e) => ({ file: path, ...e })), what ? `${path} ${what}` : null),
    leave: () => desk.leave(),
  });
  for (const details of body.querySelectorAll('details[data-group]')) {
    if (open.has(details.dataset.group)) {
      details.open = open.get(details.dataset.group);
    }
  }
  $('numbers').scrollTop = scroll;
  if (held) {
    const again = [...body.querySelectorAll('[data-path]')].find((i) => i.dataset.path === held.path && i.classList.contains('pm') === held.pm && i.dataset.axis === held.axis);
    // A field with the focus is not filled, so it is filled first; what was being typed stays.
    form.fill(desk.values[path] ?? {}, desk.inInches);
    if (again?.tagName === 'INPUT') {
      again.value = held.text;
    }
    again?.focus({ preventScroll: true });
    again?.setSelectionRange?.(held.at, held.at);
  }
}

function picker(path) {
  const select = $('pick');
  if (document.activeElement === select) {
    return;
  }
  const known = role.key ? [
    ...shelf.profiles.filter((p) => p.kind === role.kind).map((p) => [`folder ${p.path}`, p.name || p.path, p.path]),
    ...shelf.examples.filter((p) => p.kind === role.kind && !shelf.profiles.some((o) => o.path === p.path)).map((p) => [`example ${p.path}`, `${p.name}, example`, p.path]),
  ] : [];
  const here = [`open ${path}`, `${desk.values[path]?.name ?? (role.key ? '' : desk.job)}${desk.files[path] !== desk.saved[path] ? ' (not saved)' : ''}`.trim() || String(path), path];
  const all = [here, ...known.filter(([, , p]) => p !== path)];
  select.replaceChildren(...all.map(([value, label]) => h('option', { value }, label)));
  select.disabled = !role.key;
}

async function pick(event) {
  const [from, ...parts] = event.target.value.split(' ');
  const path = parts.join(' ');
  if (from === 'open') {
    return;
  }
  try {
    const { text } = await asked('/read', { path, example: from === 'example' });
    if (from === 'folder') {
      desk.saved[path] = text;
    }
    event.target.blur();
    await desk.replace({ [path]: text }, null, [{ file: desk.job, key: role.key, value: relativeTo(desk.job, path) }]);
  } catch (problem) {
    notice(problem);
  }
}

function show(what) {
  for (const id of ['start', 'measuring', 'desk']) {
    $(id).hidden = id !== what;
  }
  if (what === 'desk') {
    drawn = '';
    refresh();
    pane($('desk').dataset.pane);
  }
}

function pane(name) {
  $('desk').dataset.pane = name;
  document.querySelectorAll('.panes-switch button').forEach((b) => b.setAttribute('aria-pressed', String(b.dataset.pane === name)));
}
document.querySelectorAll('.panes-switch button').forEach((b) => b.addEventListener('click', () => pane(b.dataset.pane)));

async function attempt(work) {
  notice(null);
  try {
    await work();
  } catch (problem) {
    notice(problem);
  }
}

async function mayLeave() {
  return desk.job === null || desk.unsaved.length === 0 || desk.past.length === 0
    || (await question('There are changes that are not saved', h('p', {}, desk.unsaved.join(', ')), [['Go on without them', 'go'], ['Stay', '']])) === 'go';
}

const open = (path, example) => attempt(async () => {
  if (!(await mayLeave())) {
    return;
  }
  const opened = await asked('/open', { path, example });
  await load(opened, !example && opened.job === path);
});

async function load(opened, isSaved) {
  shelf ??= await asked('/shelf');
  forms ??= await asked('/forms');
  await desk.open(opened, isSaved);
  history.replaceState(null, '', isSaved ? `#${encodeURIComponent(opened.job)}` : '#');
  role = roles[0];
  show('desk');
}

const unpack = (text) => attempt(async () => {
  if (await mayLeave()) {
    await load(await asked('/unpack', { text }), false);
  }
});

async function start() {
  await attempt(async () => {
    shelf = await asked('/shelf');
    await startPage({ open, unpack, begin, back: desk.job === null ? null : () => show('desk') });
    show('start');
    $('title').textContent = 'Throttle cable brackets';
    document.title = 'Workbench, BracketGen';
  });
}

const begin = (wish) => attempt(async () => {
  if (!(await mayLeave())) {
    return;
  }
  forms ??= await asked('/forms');
  const files = {};
  const taken = async (value, folder, kind, name, slug) => {
    if (value !== 'measure') {
      const [from, ...rest] = value.split(' ');
      const path = rest.join(' ');
      files[path] = (await asked('/read', { path, example: from === 'example' })).text;
      return path;
    }
    const path = `${folder}/${slug}.toml`;
    files[path] = `#:schema ../schemas/${kind.replace(' ', '-')}.schema.json\nprofile = "${kind}"\nname = ${JSON.stringify(name)}\n\n# Bare numbers are in mm, degrees, N, N m and V.\n`;
    return path;
  };
  const body = await taken(wish.body, 'throttle-bodies', 'throttle body', wish.names.body, wish.slugs.body);
  const vehicle = await taken(wish.vehicle, 'vehicles', 'vehicle', wish.names.vehicle, wish.slugs.vehicle);
  const shop = await taken(wish.shop, 'shops', 'shop', '', '');
  const end = (path) => path.split('/').at(-1).replace('.toml', '');
  const job = `jobs/${end(vehicle)}-${end(body)}.toml`;
  const name = (path) => files[path].match(/^name = "(.*)"$/m)?.[1] ?? end(path);
  files[job] = ['#:schema ../schemas/job.schema.json', 'profile = "job"', '', `throttle_body = "${relativeTo(job, body)}"`, `vehicle = "${relativeTo(job, vehicle)}"`,
    `shop = "${relativeTo(job, shop)}"`, 'units = "mm"', '', '[document]', `part_number = "${`${end(vehicle)}-${end(body)}`.toUpperCase().slice(0, 30)}"`, 'revision = "A"',
    `title = "Throttle cable bracket, ${name(vehicle)}, ${name(body)}"`.slice(0, 100), ''].join('\n');
  await load({ job, files, values: {} }, false);
  desk.past = [];
  const profiles = [[body, 'throttle body', 'Throttle body', wish.body], [vehicle, 'vehicle', 'Vehicle', wish.vehicle]]
    .filter(([, , , from]) => from === 'measure').map(([path, kind, label]) => ({ path, kind, label }));
  if (profiles.length > 0) {
    show('measuring');
    await measure({ desk, profiles, unitOf, done: () => { show('desk'); $('main').focus(); }, leave: () => { show('desk'); pane('numbers'); } });
  }
});

// Unit of a bare number at a key, from the schema.
function unitOf(kind, key) {
  let form = forms[roles.find((r) => r.kind === kind).form];
  for (const part of key.split('.')) {
    const name = part.replace(/\[.*/, '');
    form = form.properties?.[name] ?? form.oneOf?.map((f) => f.properties?.[name]).find(Boolean);
    form = part.includes('[') ? form?.items : form;
    if (!form) {
      return '';
    }
  }
  const unit = (f) => (f?.anyOf ?? [f]).find((one) => one?.type === 'number')?.title ?? '';
  return form.type === 'array' ? unit(form.items) : unit(form);
}

const save = () => attempt(async () => {
  const message = (replace) => ({ files: desk.unsaved.map((path) => ({ path, text: desk.files[path], was: desk.saved[path] ?? null })), replace });
  if (desk.unsaved.length === 0) {
    return;
  }
  let { changed } = await asked('/save', message(false));
  if (changed.length > 0) {
    const text = h('p', {}, `In the folder there is something else by now under: ${changed.join(', ')}.`);
    if ((await question('Write over it?', text, [['Write over', 'yes'], ['Leave it', '']])) !== 'yes') {
      return;
    }
    ({ changed } = await asked('/save', message(true)));
  }
  desk.saved = { ...desk.saved, ...desk.files };
  shelf = await asked('/shelf');
  history.replaceState(null, '', `#${encodeURIComponent(desk.job)}`);
  refresh();
  $('told').textContent = 'Saved.';
});

const share = () => attempt(async () => {
  hand(await fetched('/pack', desk.message({})), `${desk.job.split('/').at(-1).replace('.toml', '')}.packed.toml`);
});

const looks = ['system', 'light', 'dark'];
function look(next) {
  document.documentElement.dataset.look = next;
  localStorage.setItem('look', next);
  $('do-look').setAttribute('aria-label', { system: 'Look: as the system', light: 'Light: look', dark: 'Dark: look' }[next]);
  $('do-look').textContent = { system: 'Look', light: 'Light', dark: 'Dark' }[next];
  views.repaint();
}

const keys = [
  ['Ctrl+Z, Ctrl+Y', 'undo, redo'], ['Ctrl+S', 'save the profiles'], ['Up, Down in a number', 'one step of its last digit; with Shift ten'], ['Tab, arrow keys', 'from field to field, from tab to tab'],
  ['Arrow keys in the picture', 'turn the bracket; plus and minus bring it nearer'], ['Alt+N, Alt+B', 'to the numbers, to the bracket'], ['Alt+P', 'to the pedal’s slider'], ['?', 'this list'],
];
const help = () => question('Keys', h('dl', { class: 'keys' }, keys.map(([k, what]) => h('div', {}, h('dt', {}, k), h('dd', {}, what)))), [['Close', '']]);

const units = () => desk.edit([{ file: desk.job, key: 'units', value: desk.inInches ? 'mm' : 'in' }]);
for (const [id, act] of [['do-start', start], ['do-undo', () => desk.undo()], ['do-redo', () => desk.redo()], ['do-save', save], ['do-share', share], ['do-units', units],
  ['do-look', () => look(looks[(looks.indexOf(document.documentElement.dataset.look) + 1) % 3])], ['do-keys', help]]) {
  $(id).addEventListener('click', act);
}

addEventListener('keydown', (event) => {
  const inField = event.target.closest?.('input[type=text], textarea, select');
  const isTyping = inField && inField.tagName !== 'SELECT';
  const key = event.key.toLowerCase();
  const command = event.ctrlKey || event.metaKey;
  let act = null;
  if (command && key === 's') {
    act = save;
  } else if (command && key === 'z' && event.target.tagName !== 'TEXTAREA') {
    act = event.shiftKey ? () => desk.redo() : () => desk.undo();
  } else if (command && key === 'y' && event.target.tagName !== 'TEXTAREA') {
    act = () => desk.redo();
  } else if (event.altKey && key === 'n') {
    act = () => { pane('numbers'); $(`profile-tab-${role.id}`)?.focus(); };
  } else if (event.altKey && key === 'b') {
    act = () => { pane('bracket'); $('solid-canvas').focus(); };
  } else if (event.altKey && key === 'p') {
    act = () => { pane('bracket'); $('sweep-at')?.focus(); };
  } else if (event.key === '?' && !isTyping) {
    act = help;
  }
  if (act && !$('dialog').open) {
    event.preventDefault();
    // What was undone is shown in the field too, though the hand is still in it.
    if (command && key !== 's') {
      inField?.blur();
    }
    act();
  }
});
addEventListener('beforeunload', (event) => {
  if (desk.past.length > 0 && desk.unsaved.length > 0) {
    event.preventDefault();
  }
});
matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => views.repaint());

look(looks.includes(localStorage.getItem('look')) ? localStorage.getItem('look') : 'system');
const wanted = decodeURIComponent(location.hash.slice(1));
if (wanted.endsWith('.toml')) {
  // Whatever is needed is asked for at once: the first picture should not wait for one answer after another.
  attempt(async () => {
    const all = await Promise.all([asked('/open', { path: wanted }), asked('/shelf'), asked('/forms')]);
    [shelf, forms] = all.slice(1);
    await load(all[0], all[0].job === wanted);
  }).then(() => (desk.job === null ? start() : null));
} else {
  start();
}
