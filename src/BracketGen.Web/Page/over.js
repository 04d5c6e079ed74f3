// Work in the picture: what lies over it, and what follows each answer.
import { compare } from './compare.js';
import { $, input } from './dom.js';
import { Dimensions } from './dimensions.js';
import { Dragging } from './dragging.js';
import { Ghost } from './ghost.js';
import { Marks } from './marks.js';
import { section } from './section.js';

/**
 * @param {import('./desk.js').Desk} desk
 * @param {import('./views.js').Views} views
 * @param {import('./numbers.js').Numbers} numbers
 */
export function overPicture(desk, views, numbers) {
  const ghost = new Ghost();
  /** @type {Page.Marks} */
  let marks = { things: [], dimensions: [], stop: [] };
  /** @type {(marks: Page.Marks) => number[] | null} */
  let cut = () => null;
  /** @type {Report.Outline[]} */
  let laid = [];
  const draw = () => over.take(marks.things);
  const dimensions = new Dimensions(desk, numbers, () => draw());
  const dragging = new Dragging(desk, () => draw(), (point) => views.picture?.place(point) ?? [0, 0]);
  const over = new Marks(dimensions, dragging, () => views.picture);

  function lay() {
    const isGhost = ghost.before.length > 0;
    $('ghost-box').hidden = !isGhost;
    const before = isGhost && input('show-ghost').checked ? [{ ends: ghost.before, colour: '--wire' }] : [];
    views.picture?.outline([...before, ...laid]);
  }

  section(() => desk.inInches, (plane) => {
    cut = plane;
    views.picture?.cut(marks.stop.length ? cut(marks) : null);
  });
  input('show-ghost').addEventListener('change', lay);
  input('show-labels').addEventListener('change', draw);
  views.onShown = (answer) => {
    ghost.take(desk, answer.data?.solid ?? null);
    marks = answer.marks ?? { things: [], dimensions: [], stop: [] };
    dimensions.take(marks.dimensions);
    dragging.take(marks.things);
    lay();
    views.picture?.cut(marks.stop.length ? cut(marks) : null);
    views.picture?.watch(() => over.draw());
    draw();
  };
  views.onChoices = (answer) => compare(answer.outlines ?? [], (next) => {
    laid = next;
    lay();
  });
}
