// The page: what is open, which screen is shown, and what buttons and keys do.
import { asked, fetched, hand, Silence, textOf } from './asking.js';
import { checkPage } from './check.js';
import { $, all, button, h, question, say, toolbar } from './dom.js';
import { Desk, roles } from './desk.js';
import { differences } from './differences.js';
import { Drafts } from './drafts.js';
import { drawer } from './drawer.js';
import { dropped, texts } from './handed.js';
import { nextLook, showLook } from './look.js';
import { Measuring } from './measuring.js';
import { morePage } from './more.js';
import { newJob } from './newjob.js';
import { Numbers } from './numbers.js';
import { overPicture } from './over.js';
import { Outputs } from './outputs.js';
import { freePath, stem } from './paths.js';
import { photo } from './photo.js';
import { printing } from './printed.js';
import { startPage } from './start.js';
import { Views } from './views.js';
import { whereItIs } from './where.js';
import { fill, words } from './words.js';

const said = words.frame;

/** @param {unknown} problem Null takes the notice away. */
function notice(problem) {
  const text = textOf(problem);
  // The answer on the page is from before: it must not look like one to what was typed since.
  if (problem instanceof Silence) {
    document.body.dataset.stale = '';
  }
  $('notice').hidden = !text;
  $('notice').replaceChildren(...(text ? [h('p', {}, text), h('button', { type: 'button', onclick: () => notice(null) }, said.close)] : []));
}

const desk = new Desk((reply) => {
  if ('stale' in document.body.dataset) {
    delete document.body.dataset.stale;
    notice(null);
  }
  if (reply.refused.length) {
    notice(fill(said.refused, { keys: reply.refused.join(', ') }));
  }
  if (!$('desk').hidden) {
    refresh();
  } else if (!$('measuring').hidden) {
    undoing();
    measuring?.changed();
  }
  drafts.changed();
}, notice, (isBusy) => views.wait(isBusy && desk.bracket !== ''));

/** The measuring screens, while they are shown. @type {Measuring | null} */
let measuring = null;

const drafts = new Drafts(desk);
const numbers = new Numbers(desk, notice, (path, isExample) => openBracket(path, isExample));
numbers.onPhoto = (path) => {
  measuring = null;
  show('measuring');
  photo({ desk, path, onProblem: notice, done: (told) => {
    show('desk');
    pane('numbers');
    document.getElementById('from-photo')?.focus();
    if (told) {
      say(told, true);
    }
  } });
};
const views = new Views({
  onChoice: (number) => desk.choose(number === null ? null : desk.answer?.choices[number - 1] ?? null),
  onStrength: () => desk.deepen('strength'),
  onReport: async () => hand(await fetched('/report', desk.message({ bracket: desk.bracket })), `${stem(desk.bracket)}-report.html`),
});
desk.wanted = () => views.wanted;
views.onView = () => {
  if (desk.isPartial && !desk.busy) {
    desk.rest();
  }
};
const outputs = new Outputs(desk, (id, isAccepted) => {
  desk.accepted = isAccepted ? [...desk.accepted, id] : desk.accepted.filter((a) => a !== id);
  desk.ask();
});

/** How often a screen was shown: one that is slow to come does not take the place of a later one. */
let shows = 0;

/** Whether there is something to take back, and to save. */
function undoing() {
  button('do-undo').disabled = desk.past.length === 0;
  button('do-redo').disabled = desk.future.length === 0;
  button('do-save').disabled = desk.unsaved.length === 0;
}

function refresh() {
  const [body, vehicle] = roles.map((role) => desk.valuesOf(role).name);
  const title = desk.values[desk.job]?.document?.title || fill(said.jobTitle, { vehicle: vehicle ?? said.newVehicle, body: body ?? said.newBody });
  $('title').textContent = title;
  document.title = desk.unsaved.length ? fill(said.unsavedTitle, { title }) : title;
  undoing();
  button('do-share').disabled = false;
  button('do-units').disabled = false;
  button('do-check').disabled = false;
  $('checked').hidden = desk.bracket === '';
  $('desk').classList.toggle('checking', desk.bracket !== '');
  $('checked-name').textContent = fill(words.bracket.checking, { name: desk.values[desk.bracket]?.name ?? desk.bracket });
  $('do-units').textContent = desk.inInches ? 'in' : 'mm';
  $('do-units').setAttribute('aria-label', desk.inInches ? said.toMillimetres : said.toInches);
  numbers.show();
  views.take(desk);
  outputs.take();
}

/** @param {'start' | 'measuring' | 'check' | 'more' | 'desk'} what */
function show(what) {
  shows++;
  for (const id of ['start', 'measuring', 'check', 'more', 'desk']) {
    $(id).hidden = id !== what;
  }
  if (what === 'desk') {
    numbers.drawn = '';
    refresh();
    pane($('desk').dataset.pane ?? '');
  }
}

/** @param {string} name */
function pane(name) {
  $('desk').dataset.pane = name;
  all('.panes-switch button').forEach((b) => b.setAttribute('aria-pressed', String(b.dataset.pane === name)));
}

/** @param {() => Promise<unknown>} work */
async function attempt(work) {
  notice(null);
  try {
    await work();
  } catch (problem) {
    notice(problem);
  }
}

async function mayLeave() {
  if (!desk.isOpen || desk.unsaved.length === 0 || desk.past.length === 0) {
    return true;
  }
  const isGoing = (await question(said.unsavedHeading, h('p', {}, desk.unsaved.join(', ')), [[said.discard, 'go'], [said.stay, '']])) === 'go';
  if (isGoing) {
    await drafts.drop();
  }
  return isGoing;
}

/** What the numbers need to know once. */
async function prepare() {
  const isNew = Object.keys(numbers.schemas).length === 0;
  [numbers.shelf, numbers.schemas] = await Promise.all([asked('/shelf'), isNew ? asked('/forms') : numbers.schemas]);
}

/**
 * @param {Page.Opened} opened
 * @param {boolean} isSaved
 */
async function load(opened, isSaved) {
  const { unsaved = {}, isSaved: isThere = true } = opened;
  const isDraft = Object.keys(unsaved).length > 0 || !isThere;
  const isWanted = Object.keys(unsaved).length > 0
    && (await question(said.draftHeading, h('p', {}, fill(said.draftFiles, { files: Object.keys(unsaved).join(', ') })), [[said.draftTake, 'take'], [said.draftLeave, 'leave']])) !== 'leave';
  drafts.opened(isDraft ? opened.job : '');
  await desk.open(opened, isSaved && isThere);
  address(isSaved ? opened.job : '');
  numbers.reset();
  show('desk');
  if (isWanted) {
    await desk.replace(unsaved);
  } else if (!isThere) {
    desk.remember(null);
  }
}

/**
 * The open job stands in the address bar, and Back leads to what was open before.
 * @param {string} job Empty where it is not in the folder, and on the first screen.
 */
function address(job) {
  const hash = `#${encodeURIComponent(job)}`;
  if (location.hash !== hash && !(hash === '#' && location.hash === '')) {
    history.pushState(null, '', hash);
  }
}

const open = (/** @type {string} */ path, /** @type {boolean} */ isExample) => attempt(async () => {
  if (await mayLeave()) {
    // Everything that is needed is asked for at once: the first picture should not wait for one answer after another.
    const [opened] = await Promise.all([asked('/open', { path, example: isExample }), prepare()]);
    await load(opened, !isExample && opened.job === path);
  }
});

const handed = (/** @type {Iterable<File>} */ files) => attempt(async () => {
  if (await mayLeave()) {
    const [opened] = await Promise.all([asked('/take', { files: await texts(files) }), prepare()]);
    await load(opened, false);
  }
});

/**
 * The bracket is shown at once, and whole as soon as that is calculated.
 * @param {Page.Bracket} opened
 * @param {boolean} isSaved
 */
async function checkOn(opened, isSaved) {
  numbers.shelf = await asked('/shelf');
  views.choose(views.first);
  const asking = desk.check(opened, isSaved);
  numbers.reset();
  show('desk');
  await asking;
  if (desk.errors.length === 0 && desk.bracket === opened.path) {
    await views.ask();
  } else {
    pane('numbers');
  }
}

const openBracket = (/** @type {string} */ path, /** @type {boolean} */ isExample) => attempt(async () => checkOn({ path, ...await asked('/bracket', { path, example: isExample }) }, !isExample));

const check = () => attempt(async () => {
  const turn = shows;
  await checkPage({
    desk, open: openBracket, begin: (opened) => attempt(() => checkOn(opened, false)), back: () => show('desk'),
  });
  if (turn !== shows) {
    return;
  }
  show('check');
  $('title').textContent = words.bracket.heading;
  $('check-heading').focus();
});

/** A job that was put together on another screen. */
const take = (/** @type {Page.Opened} */ opened) => attempt(async () => {
  if (await mayLeave()) {
    await prepare();
    await load(opened, false);
  }
});

const more = () => attempt(async () => {
  show('more');
  morePage({ desk, take, back: () => (desk.isOpen ? show('desk') : start()) });
});

const leaveBracket = () => attempt(async () => {
  const asking = desk.check(null, false);
  numbers.reset();
  show('desk');
  await asking;
});

/**
 * @param {Page.ToMeasure[]} profiles
 * @param {boolean} isAgain Whether they may be measured in part already.
 */
async function measureAll(profiles, isAgain) {
  show('measuring');
  measuring = null;
  measuring = await new Measuring({
    desk, profiles, isAgain, unitOf: (kind, key) => numbers.unitOf(kind, key),
    done: () => { show('desk'); $('main').focus(); }, leave: () => { show('desk'); pane('numbers'); },
  }).begin();
}

numbers.onMeasure = (toMeasure) => attempt(() => measureAll([toMeasure], true));

const begin = (/** @type {Page.Wish} */ wish) => attempt(async () => {
  if (!(await mayLeave())) {
    return;
  }
  await prepare();
  const { opened, toMeasure } = await newJob(wish);
  await load(opened, false);
  if (toMeasure.length > 0) {
    await measureAll(toMeasure, false);
  }
});

const start = (/** @type {unknown} */ told = null) => attempt(async () => {
  const turn = shows;
  await startPage({ open, take: handed, begin, back: desk.isOpen ? () => show('desk') : null });
  if (turn !== shows) {
    return;
  }
  show('start');
  $('title').textContent = said.title;
  document.title = said.program;
  if (told) {
    notice(told);
  }
});

const save = () => attempt(async () => {
  const message = (/** @type {boolean} */ replace) => ({ files: desk.unsaved.map((path) => ({ path, text: desk.files[path], was: desk.saved[path] ?? null })), replace });
  if (desk.unsaved.length === 0) {
    return;
  }
  const { changed } = await asked('/save', message(false));
  if (changed.length > 0) {
    const choice = await question(said.overwriteHeading, await changesOnDisk(changed), [[said.saveAside, 'aside'], [said.overwrite, 'yes'], [said.leave, '']]);
    if (choice === 'aside') {
      await saveAside(changed);
      return;
    }
    if (choice !== 'yes') {
      return;
    }
    await asked('/save', message(true));
  }
  desk.saved = { ...desk.saved, ...desk.files };
  await drafts.now(false);
  numbers.shelf = await asked('/shelf');
  address(desk.job);
  refresh();
  say(said.saved, true);
});

const maxDifferences = 120;

/**
 * What differs between the folder and the page.
 * @param {string[]} changed Paths.
 */
async function changesOnDisk(changed) {
  const told = await Promise.all(changed.map(async (file) => {
    const { text } = await asked('/read', { path: file, example: false }).catch(() => ({ text: '' }));
    const lines = differences(text, desk.files[file]);
    return [h('p', {}, fill(said.differences, { file })), h('pre', { class: 'differences', tabindex: '0' }, lines.slice(0, maxDifferences).join('\n')),
      lines.length > maxDifferences ? h('p', {}, fill(said.moreLines, { count: lines.length - maxDifferences })) : null];
  }));
  return h('div', {}, h('p', {}, fill(said.changedOnDisk, { files: changed.join(', ') })), told);
}

/**
 * Saves the page's files beside those of the folder that have changed, and goes on with them.
 * @param {string[]} changed Paths.
 */
async function saveAside(changed) {
  const shelf = await asked('/shelf');
  const taken = new Set([...shelf.profiles.map((/** @type {Page.ShelfEntry} */ p) => p.path), ...shelf.drawings, ...Object.keys(desk.files)]);
  const paths = Object.fromEntries(changed.map((path) => [path, freePath(path, (other) => taken.has(other))]));
  await desk.rename(paths);
  await save();
  if (desk.unsaved.length === 0) {
    say(fill(said.savedAs, { files: Object.values(paths).join(', ') }), true);
  }
}

const share = () => attempt(async () => hand(await fetched('/pack', desk.message({})), `${stem(desk.job)}.packed.toml`));

const look = () => attempt(async () => {
  const remembered = nextLook();
  views.repaint();
  await remembered;
});

const help = () => question(words.keys.heading, h('dl', { class: 'keys' }, Object.entries(words.keys).filter(([name]) => `${name}Does` in words.keys)
  .map(([name, key]) => h('div', {}, h('dt', {}, key), h('dd', {}, words.keys[`${name}Does`])))), [[said.close, '']]);

const units = () => desk.edit([{ file: desk.job, key: 'units', value: desk.inInches ? 'mm' : 'in' }]);

/** @type {Record<string, () => unknown>} */
const tools = { 'do-start': () => { address(''); start(); }, 'do-undo': () => desk.undo(), 'do-redo': () => desk.redo(), 'do-save': save, 'do-share': share, 'do-units': units, 'do-look': look, 'do-keys': help, 'do-check': check, 'do-more': more, 'checked-others': check, 'checked-leave': leaveBracket };
for (const [id, act] of Object.entries(tools)) {
  $(id).addEventListener('click', act);
}
all('.panes-switch button').forEach((b) => b.addEventListener('click', () => pane(b.dataset.pane ?? '')));

/**
 * What a key does, if it does anything.
 * @param {KeyboardEvent} event
 * @param {boolean} isTyping
 * @returns {(() => unknown) | undefined}
 */
function actOf(event, isTyping) {
  const key = event.key.toLowerCase();
  const isText = event.target instanceof HTMLTextAreaElement;
  if (event.ctrlKey || event.metaKey) {
    // A text undoes its own typing.
    const undo = isText ? undefined : event.shiftKey ? () => desk.redo() : () => desk.undo();
    return { s: save, z: undo, y: isText ? undefined : () => desk.redo() }[key];
  }
  if (event.altKey) {
    return {
      n: () => { pane('numbers'); document.getElementById(numbers.tab)?.focus(); },
      b: () => { pane('bracket'); $('solid-canvas').focus(); },
      p: () => { pane('bracket'); document.getElementById('sweep-at')?.focus(); },
    }[key];
  }
  return key === '?' && !isTyping ? help : undefined;
}

addEventListener('keydown', (event) => {
  const inField = event.target instanceof Element ? event.target.closest('input[type=text], textarea, select') : null;
  const act = actOf(event, inField !== null && !(inField instanceof HTMLSelectElement));
  if (act && !/** @type {HTMLDialogElement} */ ($('dialog')).open) {
    event.preventDefault();
    // What was undone is shown in the field too, though it has the focus.
    if (inField instanceof HTMLElement && (act !== save && !event.altKey)) {
      inField.blur();
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

whereItIs(desk, () => numbers.role);
dropped(handed);
printing(desk);
overPicture(desk, views, numbers);
all('[role=toolbar]').forEach(toolbar);
drawer();
showLook();

/** Shows what the address bar says; where it cannot, the first screen says why. */
async function goWhereWanted() {
  let wanted = '';
  try {
    wanted = decodeURIComponent(location.hash.slice(1));
  } catch {
    // Somebody's own text in the address bar: the first screen.
  }
  if (!wanted.endsWith('.toml')) {
    await start();
  } else if (desk.isOpen && desk.job === wanted) {
    show('desk');
  } else {
    await open(wanted, false);
    if (desk.isOpen && desk.job !== wanted) {
      address(desk.job in desk.saved ? desk.job : '');
      show('desk');
    } else if (!desk.isOpen) {
      await start($('notice').hidden ? null : $('notice').firstElementChild?.textContent);
    }
  }
}

addEventListener('popstate', goWhereWanted);
goWhereWanted();
