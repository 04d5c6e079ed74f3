// The answers stand in a drawer under the picture: its edge is dragged, or moved by keys.
import { $ } from './dom.js';

const [least, most, usual, step] = [10, 85, 26, 5];

/** Makes the edge of the drawer work. */
export function drawer() {
  const edge = $('drawer-edge');
  /** @param {number} percent Of the height of pictures and answers together. */
  function set(percent) {
    const now = Math.round(Math.min(Math.max(percent, least), most));
    $('desk').style.setProperty('--drawer', `${now}%`);
    edge.setAttribute('aria-valuenow', String(now));
  }
  const now = () => Number(edge.getAttribute('aria-valuenow'));
  // On a narrow screen the picture stays right under the verdict, however many lines that has.
  new ResizeObserver(() => $('desk').style.setProperty('--strip', `${$('strip').offsetHeight}px`)).observe($('strip'));
  edge.addEventListener('pointerdown', (event) => {
    edge.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  edge.addEventListener('pointermove', (event) => {
    if (edge.hasPointerCapture(event.pointerId)) {
      const { bottom, height } = $('desk').getBoundingClientRect();
      set((100 * (bottom - event.clientY)) / height);
    }
  });
  edge.addEventListener('dblclick', () => set(now() < (least + most) / 2 ? most : usual));
  edge.addEventListener('keydown', (event) => {
    /** @type {Record<string, number>} */
    const places = { ArrowUp: now() + step, ArrowDown: now() - step, Home: least, End: most };
    if (places[event.key] !== undefined) {
      event.preventDefault();
      set(places[event.key]);
    }
  });
}
