// Which fields a profile has, as a tree made from its schema: what may be entered is declared in one place, in the program.
import { fill, words } from './words.js';

/**
 * What a field is called: by its key where it has a name of its own.
 * @param {Page.Naming} naming
 * @param {string} path
 */
const called = (naming, path) => naming[path.replace(/\[\d+\]/g, '')];

/** @param {string} name */
const label = (name) => (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll('_', ' ');

/**
 * @param {string} path
 * @param {string} name
 */
const join = (path, name) => (path ? `${path}.${name}` : name);

/**
 * The value at a key such as mount.holes[2].at; undefined if there is none.
 * @param {any} values
 * @param {string} path
 * @returns {any}
 */
export const at = (values, path) => path.split(/[.[]/).reduce((v, part) => (v === undefined || v === null ? undefined : part.endsWith(']') ? v[Number(part.slice(0, -1)) - 1] : v[part]), values);

/** @param {Page.Schema | undefined} form */
export const unitOf = (form) => (form?.anyOf ?? [form]).find((f) => f?.type === 'number')?.title ?? '';

/**
 * The fields; the same {@link shape} means that the fields on the page can stay.
 * @param {Page.Schema} schema
 * @param {Page.Values} values
 * @param {string} path
 * @param {Page.Naming} naming What fields are called, by their keys.
 * @returns {Page.Field[]}
 */
export function plan(schema, values, path = '', naming = {}) {
  const nodes = [];
  const required = schema.required ?? [];
  for (const [name, form] of Object.entries(schema.properties ?? {})) {
    if (form.const === undefined) {
      const place = join(path, name);
      nodes.push(node(form, place, called(naming, place) ?? label(name), values, required.includes(name), naming));
    }
  }
  // Single numbers first, then what has a heading of its own.
  const isGroup = (/** @type {Page.Field} */ n) => n.kind === 'group' || n.kind === 'list';
  return [...nodes.filter((n) => !isGroup(n)), ...nodes.filter(isGroup)];
}

/**
 * @param {Page.Schema} form
 * @param {string} path
 * @param {string} name
 * @param {Page.Values} values
 * @param {boolean} isRequired
 * @param {Page.Naming} naming
 * @returns {Page.Field}
 */
function node(form, path, name, values, isRequired, naming) {
  const base = { path, label: name, help: (form.description ?? '').replace(/\[([^\]]+)\]/g, '$1'), default: form.default, isRequired, unit: '', words: [], nodes: [], isThere: false };
  const written = at(values, path);
  if (form.type === 'object' && form.properties) {
    return { ...base, kind: 'group', isThere: written !== undefined, nodes: plan(form, values, path, naming) };
  }
  if (form.type === 'object' && form.oneOf) {
    return { ...base, kind: 'group', isThere: written !== undefined, nodes: variants(form.oneOf, path, values, written, naming) };
  }
  if (form.type === 'array' && form.minItems === 3 && form.maxItems === 3) {
    return { ...base, kind: 'vector', unit: unitOf(form.items), axes: ['x', 'y', 'z'], needed: 3 };
  }
  if (form.type === 'array' && form.prefixItems) {
    return { ...base, kind: 'vector', unit: unitOf(form.prefixItems[0]), axes: [...axesOf(form.description ?? ''), 'r'].slice(0, form.maxItems), needed: form.minItems };
  }
  if (form.type === 'array' && (form.items?.type === 'object' || form.items?.prefixItems)) {
    return { ...base, ...list(form, form.items, path, name, values, written, naming) };
  }
  if (form.type === 'array') {
    return { ...base, kind: 'items', isText: form.items?.type === 'string' };
  }
  if (form.enum) {
    return { ...base, kind: 'word', words: form.enum };
  }
  // Words that may be spelled in more than one way: what stands in the file is one of them.
  const choice = form.anyOf?.find((f) => f.enum)?.enum;
  if (choice) {
    return { ...base, kind: 'word', words: typeof written === 'string' && !choice.includes(written) ? [...choice, written] : choice };
  }
  if (form.anyOf) {
    return { ...base, kind: 'quantity', unit: unitOf(form), pattern: form.anyOf.find((f) => f.pattern)?.pattern, isMeasured: form.anyOf.some((f) => f.type === 'object') };
  }
  return { ...base, kind: form.type === 'string' ? 'text' : 'quantity' };
}

/**
 * The names of the two coordinates on a flange: its description says which of them are meant.
 * @param {string} help
 */
const axesOf = (help) => (help.includes('[u, v') ? ['u', 'v'] : ['x', 'y']);

/**
 * A thing of several kinds: the word that says which, and the fields of that kind.
 * @param {Page.Schema[]} forms
 * @param {string} path
 * @param {Page.Values} values
 * @param {any} written
 * @param {Page.Naming} naming
 * @returns {Page.Field[]}
 */
function variants(forms, path, values, written, naming) {
  const [tag, first] = Object.entries(forms[0].properties ?? {}).find(([, f]) => f.const !== undefined) ?? ['', {}];
  const kinds = forms.map((form) => ({ word: form.properties?.[tag].const ?? '', form }));
  const chosen = kinds.find((k) => k.word === written?.[tag]);
  /** @type {Page.Field} */
  const field = {
    kind: 'word', path: join(path, tag), label: label(tag), help: first.description ?? '', default: undefined, isRequired: true, isThere: false, unit: '', nodes: [],
    words: kinds.map((k) => k.word), kinds, owner: path,
  };
  return [field, ...(chosen ? plan(chosen.form, values, path, naming) : [])];
}

/**
 * @param {Page.Schema} form
 * @param {Page.Schema} item
 * @param {string} path
 * @param {string} name
 * @param {Page.Values} values
 * @param {any} written
 * @param {Page.Naming} naming
 */
function list(form, item, path, name, values, written, naming) {
  const count = Array.isArray(written) ? written.length : 0;
  // The coordinates of an item are told of with the list.
  const told = item.prefixItems ? { ...item, description: form.description } : item;
  const one = (/** @type {number} */ i) => node(told, `${path}[${i}]`, fill(called(naming, `${path}[]`) ?? words.fields.item, { label: name, number: i }), values, false, naming);
  return { kind: /** @type {const} */ ('list'), maxCount: form.maxItems ?? Infinity, count, item, nodes: Array.from({ length: count }, (_, i) => ({ ...one(i + 1), isItem: true })) };
}

/**
 * Which fields there are, as text.
 * @param {Page.Field[]} nodes
 * @returns {string}
 */
export const shape = (nodes) => nodes.map((n) => `${n.path}:${n.kind}:${n.isThere}(${shape(n.nodes)})`).join();
