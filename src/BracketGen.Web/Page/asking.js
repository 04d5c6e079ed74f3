// Requests to the program, and files from it.
import { h } from './dom.js';
import { words } from './words.js';

/** What the program says in the place of an answer; its message is for the user. */
export class Refusal extends Error {}

/** The program does not answer. */
export class Silence extends Refusal {}

/**
 * @param {string} path
 * @param {object} [message] Sent as JSON; without one the request only reads.
 */
async function ask(path, message) {
  let reply;
  try {
    reply = await fetch(path, message === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(message) });
  } catch {
    throw new Silence(words.frame.noAnswer);
  }
  if (!reply.ok) {
    throw new Refusal((await reply.text()).trim());
  }
  return reply;
}

/**
 * The program's answer.
 * @param {string} path
 * @param {object} [message]
 * @returns {Promise<any>}
 */
export const asked = async (path, message) => (await ask(path, message)).json();

/**
 * A file from the program.
 * @param {string} path
 * @param {object} message
 */
export const fetched = async (path, message) => (await ask(path, message)).blob();

/**
 * Hands a file to the user as a download.
 * @param {Blob} blob
 * @param {string} name
 */
export function hand(blob, name) {
  const link = h('a', { href: URL.createObjectURL(blob), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

/**
 * What to show of a problem.
 * @param {unknown} problem
 */
export const textOf = (problem) => (problem instanceof Refusal ? problem.message : problem ? String(problem) : '');
