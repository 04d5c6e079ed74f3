// Works report pages in a browser as people do, and prints what was found amiss, one line each; nothing where all is well.
// node report.mjs CHROMIUM PAGE...
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const [executablePath, ...pages] = process.argv.slice(2);
const axe = readFileSync(new URL('node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const found = [];

// Every look at every width in CI (BRACKETGEN_LONG), otherwise each of them once.
const looks = process.env.BRACKETGEN_LONG === '1'
  ? [['light', 360], ['light', 1400], ['dark', 360], ['dark', 1400]]
  : [['light', 360], ['dark', 1400]];
const browser = await chromium.launch({
  executablePath,
  // A machine without a graphics card draws in software.
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});

async function open(file, options, visit) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  page.setDefaultTimeout(180000);
  const say = (text) => found.push(`${file.split('/').slice(-2).join('/')} ${JSON.stringify(options)}: ${text}`);
  page.on('pageerror', (error) => say(`script error: ${error.message}`));
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && !/GPU stall/.test(message.text()) && say(`console: ${message.text()}`));
  page.on('request', (request) => request.url().startsWith('file:') || say(`asks for ${request.url()}`));
  await page.goto(pathToFileURL(file).href);
  await visit(page, say);
  await context.close();
}

// A busy machine draws late.
async function changes(look, before) {
  for (let tries = 0; tries < 50; tries++) {
    if (await look() !== before) {
      return true;
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return false;
}

const numbers = (page) => page.locator('#sweep-numbers dd').allTextContents();

for (const file of pages) {
  for (const [colorScheme, width] of looks) {
    await open(file, { viewport: { width, height: 800 }, colorScheme }, async (page, say) => {
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > width) {
        say(`is ${wide} wide`);
      }
      await page.evaluate(() => document.querySelectorAll('details').forEach((d) => { d.open = true; }));
      await page.evaluate(axe);
      const result = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'] }));
      if (result.passes.length < 30) {
        say(`axe-core looked at only ${result.passes.length} rules`);
      }
      for (const v of result.violations) {
        say(`axe-core, ${v.id} (${v.impact}): ${v.help}: ${v.nodes.map((n) => n.target).join('; ')}`);
      }
    });
  }

  // By keyboard alone: the slider moves quadrant and numbers, and the last row is the floor.
  await open(file, { viewport: { width: 900, height: 800 } }, async (page, say) => {
    const rows = await page.locator('#sweep-table tbody tr').evaluateAll((all) => all.map((r) => [...r.children].map((c) => c.textContent)));
    const before = await page.locator('#sweep-live .turning').first().getAttribute('transform');
    await page.locator('#sweep-at').focus();
    await page.keyboard.press('End');
    const shown = await numbers(page);
    if (shown.join() !== rows.at(-1).slice(1).join()) {
      say(`at the floor the numbers are ${shown.join()}, the table says ${rows.at(-1).join()}`);
    }
    if (await page.locator('#sweep-live .turning').first().getAttribute('transform') === before) {
      say('the quadrant does not turn');
    }
    if (!(await page.locator('#sweep-at').getAttribute('aria-valuetext')).includes(rows.at(-1)[1])) {
      say('the slider does not say the opening');
    }
    await page.keyboard.press('Home');
    if ((await numbers(page)).join() !== rows[0].slice(1).join()) {
      say('back at the start the numbers are others');
    }

    // The picture to turn shows something, and something else once it is turned.
    const canvas = page.locator('#solid-canvas');
    if (await canvas.count()) {
      const look = async () => (await canvas.screenshot()).toString('base64');
      await page.waitForTimeout(300);
      const one = await look();
      await canvas.focus();
      for (let i = 0; i < 5; i++) {
        await page.keyboard.press('ArrowRight');
      }
      if (!(await changes(look, one))) {
        say('the bracket does not turn with the arrow keys');
      }
      const other = await look();
      await page.locator('button[data-pitch="90"]').click();
      if (!(await changes(look, other))) {
        say('the view from above shows nothing new');
      }
    }

    // Reading a chart tells the nearest row of its table.
    const chart = page.locator('#chart-pull');
    await chart.locator('> svg').hover({ position: { x: 120, y: 90 } });
    if (!/wire pull|by geometry/.test(await chart.locator('.readout').textContent())) {
      say('the chart tells nothing under the pointer');
    }
  });

  // Playing takes the valve open and brings it back shut; who wants no motion gets none.
  await open(file, { viewport: { width: 900, height: 800 }, reducedMotion: 'no-preference' }, async (page, say) => {
    await page.locator('#sweep-play').click();
    // Seen on the way rather than after a time: a busy machine draws late.
    const isUnderWay = await page.waitForFunction(() => {
      const at = Number(document.getElementById('sweep-at').value);
      return at > 5 && at < 100;
    }, null, { timeout: 60000 }).catch(() => null);
    if (!isUnderWay) {
      say('playing does not move the pedal');
    }
    await page.waitForFunction(() => document.getElementById('sweep-play').textContent === 'Play');
    if (await page.locator('#sweep-at').inputValue() !== '0') {
      say('the pedal does not come back');
    }
  });
  await open(file, { viewport: { width: 900, height: 800 }, reducedMotion: 'reduce' }, async (page, say) => {
    await page.locator('#sweep-play').click();
    if (await page.locator('#sweep-at').inputValue() !== '100') {
      say('without motion the button should go straight to the floor');
    }
  });

  // Without script both ends of the sweep are there, every check, and no dead control.
  await open(file, { viewport: { width: 900, height: 800 }, javaScriptEnabled: false }, async (page, say) => {
    const seen = async (what) => page.locator(what).evaluateAll((all) => all.length).catch(() => -1);
    if (await page.locator('.stills svg').first().isVisible() !== true || await page.locator('.stills svg').nth(1).isVisible() !== true) {
      say('without script the sweep is not shown');
    }
    for (const control of ['#sweep-play', '#solid-canvas']) {
      if (await seen(control) > 0 && await page.locator(control).isVisible()) {
        say(`without script ${control} is shown and does nothing`);
      }
    }
    if (!(await page.locator('.checks tbody tr').first().isVisible()) || !(await page.locator('#chart-pull > svg').isVisible())) {
      say('without script checks or charts are not shown');
    }
  });
}

await browser.close();
found.forEach((line) => console.log(line));
