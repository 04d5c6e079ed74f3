// What is printed: a summary of three pages, made of the answer as it stands.
import { $, h, show } from './dom.js';
import { fill, words } from './words.js';

const said = words.printed;

/** Height of a page that is A4 or a letter within its margins, in the pixels of a style sheet, and how small its text may become to fit. */
const room = 945;
const least = 0.55;

/**
 * Makes the summary as soon as the page is to be printed.
 * @param {import('./desk.js').Desk} desk
 */
export function printing(desk) {
  const place = $('printed');
  addEventListener('beforeprint', () => {
    const { answer } = desk;
    const isShown = !$('desk').hidden && answer !== null && desk.errors.length === 0;
    document.body.classList.toggle('summary', isShown);
    if (isShown && answer) {
      place.replaceChildren(...pages(desk, answer));
      for (const page of [...place.children].filter((child) => child instanceof HTMLElement)) {
        // Smaller text takes fewer lines too, so it goes down step by step.
        for (let zoom = 1; page.getBoundingClientRect().height > room && zoom > least; zoom -= 0.03) {
          page.style.zoom = String(zoom);
        }
      }
    }
  });
  addEventListener('afterprint', () => {
    document.body.classList.remove('summary');
    place.replaceChildren();
  });
}

/**
 * @param {import('./desk.js').Desk} desk
 * @param {Page.Answer} answer
 */
function pages(desk, { parts, isWhole }) {
  // What a hidden tab shows may be of the answer before: then it is said.
  const state = desk.isPartial ? said.partial : isWhole ? '' : said.quick;
  const part = (/** @type {string | undefined} */ markup) => {
    const body = h('div', {});
    show(body, markup ?? '');
    // Names are unique on a page, and a picture of the report is shown beside this one.
    body.querySelectorAll('[id]').forEach((element) => element.removeAttribute('id'));
    body.querySelectorAll('details:not(.passes)').forEach((element) => element.replaceWith(...summaryOf(element)));
    body.querySelectorAll('details.passes').forEach((element) => element.replaceWith(h('p', {}, element.querySelector('summary')?.textContent ?? '')));
    return body;
  };
  const heading = (/** @type {string} */ text) => h('h2', {}, text);
  return [
    h('section', {}, h('h1', {}, $('title').textContent ?? ''), h('p', {}, fill(said.job, { path: desk.bracket || desk.job })), state ? h('p', { class: 'problem' }, state) : null,
      h('div', { class: 'first' }, part(parts.fitted)), part(parts.trial ?? parts.verdict), heading(words.answers.cautions), part(parts.cautions)),
    h('section', {}, parts.assumed ? [heading(words.answers.assumed), part(parts.assumed)] : null, heading(words.views.checks), part(parts.checks)),
    h('section', {}, heading(words.views.flat), part(parts.flat)),
  ];
}

/**
 * The title of what opens on the screen; its text is in the report.
 * @param {Element} details
 */
function summaryOf(details) {
  return [...details.querySelector('summary')?.childNodes ?? []].map((node) => node.cloneNode(true));
}
