// Reading a chart with the pointer: the nearest row of its own table is told below it.
function chartReaders() {
  for (const chart of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll('.chart'))) {
    const svg = /** @type {SVGSVGElement} */ (chart.querySelector('svg'));
    const line = /** @type {SVGElement} */ (svg.querySelector('.reader'));
    const told = /** @type {HTMLElement} */ (chart.querySelector('.readout'));
    const heads = [...chart.querySelectorAll('thead th')].map((head) => head.textContent ?? '');
    const rows = [.../** @type {NodeListOf<HTMLElement>} */ (chart.querySelectorAll('tbody tr'))].map((row) => ({ x: Number(row.dataset.x), cells: [...row.children].map((c) => c.textContent) }));
    told.hidden = false;
    told.textContent = '\u00a0';
    const read = (/** @type {PointerEvent} */ event) => {
      const box = svg.getBoundingClientRect();
      const x = ((event.clientX - box.left) / box.width) * svg.viewBox.baseVal.width;
      const row = rows.reduce((best, r) => (Math.abs(r.x - x) < Math.abs(best.x - x) ? r : best));
      line.setAttribute('visibility', 'visible');
      line.setAttribute('transform', `translate(${row.x} 0)`);
      told.textContent = heads.map((head, i) => {
        const cut = head.lastIndexOf(', ');
        return `${head.slice(0, cut)} ${row.cells[i]} ${head.slice(cut + 2)}`.replace(' \u00b0', '\u00b0');
      }).join('; ');
    };
    svg.addEventListener('pointermove', read);
    svg.addEventListener('pointerdown', read);
    svg.addEventListener('pointerleave', () => {
      line.setAttribute('visibility', 'hidden');
      told.textContent = '\u00a0';
    });
  }
}
