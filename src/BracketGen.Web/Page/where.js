// Beside the picture: where the number in the focused field is on the part, and how it is measured.
import { asked } from './asking.js';
import { $, h } from './dom.js';
import { sketchesOf, sketchOf } from './sketches.js';

/**
 * Shows the worksheet's sketch of the number that is being typed.
 * @param {import('./desk.js').Desk} desk
 * @param {() => Page.Role} roleNow The profile whose fields are shown.
 */
export function whereItIs(desk, roleNow) {
  const place = $('where');
  /** The questions of a profile as it was when they were asked for. @type {Map<string, { text: string, steps: Page.MeasuringStep[], sketches: string[] }>} */
  const known = new Map();
  let turn = 0;

  /** @param {Page.Role} role */
  async function questions(role) {
    const path = desk.pathOf(role);
    const text = path === null ? undefined : desk.files[path];
    if (path === null || text === undefined || !['throttle body', 'vehicle'].includes(role.kind)) {
      return null;
    }
    const before = known.get(path);
    if (before?.text === text) {
      return before;
    }
    const [{ steps }, sketches] = await Promise.all([asked('/questions', { kind: role.kind, text }), sketchesOf(role.kind)]);
    const now = { text, steps, sketches };
    known.set(path, now);
    return now;
  }

  $('numbers').addEventListener('focusin', async (event) => {
    const mine = ++turn;
    const key = event.target instanceof HTMLElement ? event.target.dataset.path : undefined;
    const told = key ? await questions(roleNow()).catch(() => null) : null;
    if (mine !== turn) {
      return;
    }
    const step = told?.steps.find((/** @type {Page.MeasuringStep} */ s) => s.key === key && s.sketch >= 0);
    place.hidden = !step;
    place.replaceChildren(...(step && told ? [sketchOf(step, told.sketches[step.sketch]), h('p', { class: 'remark' }, step.explain)] : []));
  });
  $('numbers').addEventListener('focusout', (event) => {
    if (!(event.relatedTarget instanceof Node && $('numbers').contains(event.relatedTarget))) {
      turn++;
      place.hidden = true;
    }
  });
}
