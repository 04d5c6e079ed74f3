// Small help with elements, and with asking the program.
const policy = window.trustedTypes?.createPolicy('workbench', { createHTML: (text) => text }) ?? { createHTML: (text) => text };

export const $ = (id) => document.getElementById(id);

// h('button', { type: 'button', onclick }, 'Save'): attributes, listeners, properties that are no attributes; children are nodes or text.
export function h(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) {
      continue;
    }
    if (key.startsWith('on')) {
      made.addEventListener(key.slice(2), value);
    } else if (['value', 'checked', 'disabled', 'hidden'].includes(key)) {
      made[key] = value;
    } else {
      made.setAttribute(key, value === true ? '' : value);
    }
  }
  made.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== false));
  return made;
}

// Markup that the program wrote, in which whatever a user wrote is escaped.
export function show(place, markup) {
  place.innerHTML = policy.createHTML(markup);
  for (const element of place.querySelectorAll('[data-style]')) {
    element.style.cssText = element.dataset.style;
  }
}

export class Told extends Error {}

async function ask(path, message) {
  let reply;
  try {
    reply = await fetch(path, message === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(message) });
  } catch {
    throw new Told('The program does not answer. Is it still running?');
  }
  if (!reply.ok) {
    throw new Told((await reply.text()).trim());
  }
  return reply;
}

export const asked = async (path, message) => (await ask(path, message)).json();
export const fetched = async (path, message) => (await ask(path, message)).blob();

export function hand(blob, name) {
  const link = h('a', { href: URL.createObjectURL(blob), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

// Tabs as the ARIA practices have them: one of them in the order of the Tab key, arrow keys between them.
export function tabs(list, items, chosen, choose) {
  list.replaceChildren(...items.map(({ id, panel, label, note }) => h('button', {
    type: 'button', role: 'tab', id, 'aria-controls': panel, 'aria-selected': String(id === chosen), tabindex: id === chosen ? '0' : '-1',
    onclick: () => choose(id),
  }, label, note ? h('span', { class: 'note' }, note) : null)));
  list.onkeydown = (event) => {
    const at = items.findIndex((item) => item.id === document.activeElement.id);
    const next = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: items.length - 1 }[event.key];
    if (at >= 0 && next !== undefined) {
      event.preventDefault();
      const id = items[(next + items.length) % items.length].id;
      choose(id);
      $(id).focus();
    }
  };
}

// A question in a dialog; the answer is the value of the button, or null.
export function question(heading, content, buttons) {
  const dialog = $('dialog');
  return new Promise((resolve) => {
    dialog.replaceChildren(
      h('h2', { id: 'dialog-heading' }, heading), ...[content].flat(),
      h('div', { class: 'controls' }, buttons.map(([label, value]) => h('button', { type: 'button', onclick: () => dialog.close(value) }, label))));
    dialog.onclose = () => resolve(dialog.returnValue || null);
    dialog.returnValue = '';
    dialog.showModal();
  });
}
