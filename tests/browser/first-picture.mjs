// How long from the address to the first picture of the bracket: node first-picture.mjs CHROMIUM ADDRESS#JOB [TIMES]
import { chromium } from 'playwright-core';

const [executablePath, address, times = '10'] = process.argv.slice(2);
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'] });
const all = [];
for (let i = 0; i < Number(times); i++) {
  const page = await (await browser.newContext({ viewport: { width: 1400, height: 900 } })).newPage();
  await page.goto('about:blank');
  const began = performance.now();
  await page.goto(address, { waitUntil: 'commit' });
  // Two frames after the picture is asked for it is on the screen.
  await page.waitForFunction(() => !document.getElementById('solid-live')?.hidden && document.getElementById('solid-canvas')?.width > 300
    && new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(() => done(true))); }), null, { polling: 'raf' });
  all.push(Math.round(performance.now() - began));
  await page.context().close();
}
await browser.close();
console.log(all.join(' '), 'ms; median', [...all].sort((a, b) => a - b)[all.length >> 1], 'ms');
