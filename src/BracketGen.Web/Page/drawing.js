// The drawing of a bracket's flat pattern: one of the folder, or one that is chosen or dropped here.
import { h } from './dom.js';
import { fill, words } from './words.js';

const said = words.bracket;

/** Longest drawing that the program reads (bytes). */
const maxBytes = 2 ** 20;

/**
 * The file as a text in which each byte is a letter: nobody knows what letters it was written in, and it is saved as it was.
 * @param {File} file
 */
async function bytesOf(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const parts = [];
  for (let from = 0; from < bytes.length; from += 8192) {
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 8192)));
  }
  return parts.join('');
}

/**
 * @param {Page.Field} n
 * @param {string} id
 * @param {Page.Form} form
 * @returns {Page.Inputs}
 */
export function drawing(n, id, form) {
  const pick = h('select', { id, onchange: () => form.change([{ key: n.path, value: pick.value }], null) });
  const note = h('p', { class: 'remark', role: 'status', hidden: true });
  const chosen = h('input', { type: 'file', id: `${id}-file`, accept: '.dxf', onchange: () => take(chosen.files?.[0]) });

  /** @param {File | undefined} file */
  async function take(file) {
    if (!file) {
      return;
    }
    note.hidden = file.name.toLowerCase().endsWith('.dxf') && file.size <= maxBytes;
    note.textContent = note.hidden ? '' : fill(said.notDrawing, { name: file.name });
    if (note.hidden) {
      form.take(n.path, file.name, await bytesOf(file));
    }
    chosen.value = '';
  }

  const drop = h('div', {
    class: 'drop',
    ondragover: (/** @type {DragEvent} */ event) => { event.preventDefault(); drop.classList.add('over'); },
    ondragleave: () => drop.classList.remove('over'),
    ondrop: (/** @type {DragEvent} */ event) => { event.preventDefault(); drop.classList.remove('over'); take(event.dataTransfer?.files[0]); },
  }, h('label', { for: `${id}-file` }, said.upload), chosen);
  return {
    inputs: [pick],
    parts: [h('label', { for: id }, n.label), h('div', { class: 'entry' }, pick), drop, note],
    fill(written) {
      const named = typeof written === 'string' ? written : '';
      const there = form.drawings();
      const options = [...there.map((one) => [one, one]), ...(there.includes(named) ? [] : [[named, named ? fill(said.missingDrawing, { path: named }) : said.noDrawing]])];
      if (document.activeElement !== pick) {
        pick.replaceChildren(...options.map(([value, name]) => h('option', { value }, name)));
        pick.value = named;
      }
    },
  };
}
