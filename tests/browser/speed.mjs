// How long from a key in a number to the painted answer (sweep and picture), and how much a reply weighs: node speed.mjs CHROMIUM TIMES ADDRESS [ADDRESS ...]
// Each address serves the examples; several are asked in turn, key by key, so that they share whatever else the machine does.
import { chromium } from 'playwright-core';

const [executablePath, times, ...addresses] = process.argv.slice(2);
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'] });
const pages = [];
for (const address of addresses) {
  const page = await (await browser.newContext({ viewport: { width: 1400, height: 900 } })).newPage();
  page.setDefaultTimeout(60000);
  const weights = [];
  page.on('response', async (reply) => reply.url().endsWith('/work') && weights.push((await reply.body().catch(() => [])).length));
  await page.goto(address);
  await page.locator('[data-open="jobs/plover-alder-58.toml"]').first().click();
  await page.waitForFunction(() => /\d/.test(document.getElementById('sweep')?.textContent ?? ''));
  await page.locator('[data-path="quadrant.pitch_radius"]').first().focus();
  await page.waitForTimeout(3000);
  pages.push({ address, page, weights, all: [] });
}

// Two frames after the sweep's numbers are new, they and the picture are on the screen.
const once = () => new Promise((done) => {
  const sweep = document.getElementById('sweep');
  const before = sweep.textContent;
  const began = performance.now();
  const seen = () => (sweep.textContent === before ? requestAnimationFrame(seen) : requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - began))));
  document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key: window.turn ? 'ArrowDown' : 'ArrowUp', bubbles: true, cancelable: true }));
  window.turn = !window.turn;
  requestAnimationFrame(seen);
});
for (let i = 0; i < Number(times); i++) {
  for (const one of pages) {
    one.weights.length = 0;
    one.all.push(await one.page.evaluate(once));
    await one.page.waitForTimeout(900);
    one.weight = one.weights[0];
  }
}
await browser.close();
const median = (numbers) => [...numbers].sort((a, b) => a - b)[numbers.length >> 1];
for (const { address, all, weight } of pages) {
  console.log(`${address}: median ${Math.round(median(all))} ms, fastest ${Math.round(Math.min(...all))} ms, of ${all.length}; a reply weighs ${Math.round(weight / 1000)} kB`);
}
