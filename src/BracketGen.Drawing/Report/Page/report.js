// What the page can do beyond standing still. Each part works alone: where one cannot, the others do.
/** @type {{ sweep: Picture.SweepData, solid?: Picture.SolidData }} */
const data = JSON.parse(/** @type {HTMLElement} */ (document.getElementById('data')).textContent ?? '');
document.documentElement.classList.add('js');
const motion = sweepMotion(data.sweep);
const follow = data.solid ? solidPicture(data.solid, motion) : () => {};
sweepPicture(motion, follow);
chartReaders();

// Paper gets everything open; afterwards the screen is as it was.
addEventListener('beforeprint', () => document.querySelectorAll('details').forEach((d) => {
  if (!d.open) {
    d.open = true;
    d.dataset.shut = '';
  }
}));
addEventListener('afterprint', () => /** @type {NodeListOf<HTMLDetailsElement>} */ (document.querySelectorAll('details[data-shut]')).forEach((d) => {
  d.open = false;
  delete d.dataset.shut;
}));
