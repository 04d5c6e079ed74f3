// Small functions for elements.
const policy = window.trustedTypes?.createPolicy('page', { createHTML: (text) => text }) ?? { createHTML: (/** @type {string} */ text) => text };

/**
 * An element that is there.
 * @param {string} id
 * @returns {HTMLElement}
 */
export function $(id) {
  const found = document.getElementById(id);
  if (!found) {
    throw new Error(id);
  }
  return found;
}

/** @param {string} id */
export const button = (id) => /** @type {HTMLButtonElement} */ ($(id));

/** @param {string} id */
export const input = (id) => /** @type {HTMLInputElement} */ ($(id));

/** @param {string} id */
export const select = (id) => /** @type {HTMLSelectElement} */ ($(id));

/** How long what was done is told before the next answer may stand in its place (ms). */
const told = 5000;
let until = 0;

/**
 * Says in the foot what was done, or what was answered; the latter waits until the former was read.
 * @param {string} text
 * @param {boolean} isDone
 */
export function say(text, isDone) {
  if (isDone || Date.now() >= until) {
    $('status').textContent = text;
    until = isDone ? Date.now() + told : 0;
  }
}

/**
 * Elements by a selector.
 * @param {string} selector
 * @param {ParentNode} within
 * @returns {HTMLElement[]}
 */
export const all = (selector, within = document) => [...within.querySelectorAll(selector)].map((element) => /** @type {HTMLElement} */ (element));

/**
 * h('button', { type: 'button', onclick }, 'Save'): attributes, listeners, and properties that are not attributes; children are nodes or text.
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} name
 * @param {Record<string, any>} attributes
 * @param {...Page.Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function h(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) {
      continue;
    }
    if (key.startsWith('on')) {
      made.addEventListener(key.slice(2), value);
    } else if (['value', 'checked', 'disabled', 'hidden'].includes(key)) {
      Object.assign(made, { [key]: value });
    } else {
      made.setAttribute(key, value === true ? '' : value);
    }
  }
  made.append(...nodes(children));
  return made;
}

/**
 * @param {Page.Child[]} children
 * @returns {(Node | string)[]}
 */
function nodes(children) {
  return children.flatMap((child) => (Array.isArray(child) ? nodes(child) : child ? [child] : []));
}

/**
 * Shows markup that the program wrote, in which whatever a user wrote is escaped.
 * @param {Element} place
 * @param {string} markup
 */
export function show(place, markup) {
  // The policy's markup is no string for the browser, and one for the type checker.
  place.innerHTML = /** @type {string} */ (policy.createHTML(markup));
  for (const element of all('[data-style]', place)) {
    element.style.cssText = element.dataset.style ?? '';
  }
}

/**
 * Tabs by the ARIA Authoring Practices: one of them in the order of the Tab key, arrow keys between them.
 * @param {HTMLElement} list
 * @param {{ id: string, panel: string, label: string, note?: string }[]} items
 * @param {string} chosen
 * @param {(id: string) => void} choose
 */
export function tabs(list, items, chosen, choose) {
  list.replaceChildren(...items.map(({ id, panel, label, note }) => h('button', {
    type: 'button', role: 'tab', id, 'aria-controls': panel, 'aria-selected': String(id === chosen), tabindex: id === chosen ? '0' : '-1',
    onclick: () => choose(id),
  }, label, note ? h('span', { class: 'note' }, note) : null)));
  list.onkeydown = (event) => {
    const next = nextIn(event, items.findIndex((item) => item.id === document.activeElement?.id), items.length);
    if (next >= 0) {
      const { id } = items[next];
      choose(id);
      $(id).focus();
    }
  };
}

/**
 * Where an arrow key, Home or End leads in a row, round its ends; -1 where the key is none of them, or the focus not in the row.
 * @param {KeyboardEvent} event
 * @param {number} at
 * @param {number} count
 */
function nextIn(event, at, count) {
  /** @type {Record<string, number>} */
  const places = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: count - 1 };
  const next = places[event.key];
  if (at < 0 || next === undefined) {
    return -1;
  }
  event.preventDefault();
  return (next + count) % count;
}

/**
 * A toolbar by the ARIA Authoring Practices: one of its buttons in the order of the Tab key, arrow keys between them.
 * @param {HTMLElement} bar
 */
export function toolbar(bar) {
  const buttons = () => all('button', bar).filter((b) => !b.hidden && !(b instanceof HTMLButtonElement && b.disabled));
  const one = (/** @type {Element | null} */ now) => all('button', bar).forEach((b) => { b.tabIndex = b === now ? 0 : -1; });
  one(buttons()[0] ?? null);
  bar.addEventListener('focusin', (event) => one(/** @type {Element} */ (event.target)));
  bar.addEventListener('keydown', (event) => {
    const here = buttons();
    const next = nextIn(event, here.findIndex((b) => b === document.activeElement), here.length);
    if (next >= 0) {
      here[next].focus();
    }
  });
}

/**
 * A question in a dialog; the answer is the value of the button, or null.
 * @param {string} heading
 * @param {HTMLElement} content
 * @param {[string, string][]} buttons Label and value of each.
 * @returns {Promise<string | null>}
 */
export function question(heading, content, buttons) {
  const dialog = /** @type {HTMLDialogElement} */ ($('dialog'));
  return new Promise((resolve) => {
    dialog.replaceChildren(
      h('h2', { id: 'dialog-heading' }, heading), content,
      h('div', { class: 'controls' }, buttons.map(([label, value]) => h('button', { type: 'button', onclick: () => dialog.close(value) }, label))));
    dialog.onclose = () => resolve(dialog.returnValue || null);
    dialog.returnValue = '';
    dialog.showModal();
  });
}
