// The words and units that came with the document.

/** @type {Page.WordsDocument} */
const document_ = JSON.parse(document.getElementById('words')?.textContent ?? '');

/** Every text that the page shows, by section and name. */
export const words = document_.words;

/** Units that an inch job shows otherwise. */
export const units = document_.units;

/**
 * A text with its {names} filled in.
 * @param {string} text
 * @param {Record<string, string | number>} values
 */
export const fill = (text, values) => text.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? String(values[name]) : whole));
