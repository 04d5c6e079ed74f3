// Works the page as a phone does, over TLS and by its one-time code, and prints what was found amiss, one line each; nothing if all is well.
// node phone.mjs CHROMIUM PAIRING-ADDRESS
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import * as photograph from './photograph.mjs';

const [executablePath, pairing] = process.argv.slice(2);
const [start, code] = [pairing.split('#')[0], new URL(pairing).hash.match(/pair=([\w-]+)/)[1]];
const axe = readFileSync(new URL('node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const found = [];
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'] });
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, ignoreHTTPSErrors: true, reducedMotion: 'reduce' };

async function open(name, visit) {
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  page.setDefaultTimeout(120000);
  const say = (text) => found.push(`${name}: ${text}`);
  page.on('pageerror', (error) => say(`script error: ${error.message}`));
  page.on('request', (request) => {
    if (!request.url().startsWith(start) && !/^(blob|data):/.test(request.url())) {
      say(`asks for ${request.url()}`);
    }
    if (request.url().split('#')[0].includes(code) || Object.values(request.headers()).some((value) => value.includes(code))) {
      say(`tells the code in ${request.url()}`);
    }
  });
  try {
    await visit(page, say, context);
  } catch (error) {
    say(`stopped at ${error.stack.match(/phone\.mjs:\d+/g)?.join(' ')}: ${error.message.split('\n').slice(0, 3).join(' ')}`);
  }
  return context;
}

async function lookOver(page, say, where) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'] }));
  violations.forEach((v) => say(`${where}: axe-core, ${v.id}: ${v.help}`));
}

// Somebody who knows the address and not the code.
const curious = await open('a curious one', async (page, say) => {
  await page.goto(start);
  await page.waitForSelector('#pairing-without:not([hidden])');
  await lookOver(page, say, 'the page that pairs');
  await page.goto(`${start}#pair=AAAAAAAAAAAAAAAAAAAAAA`);
  await page.waitForSelector('#pairing-refused:not([hidden])');
  if (!/not the code/.test(await page.locator('#pairing-refused').textContent()) || /AAAA/.test(page.url())) {
    say(`a wrong code is answered by «${await page.locator('#pairing').innerText()}» at ${page.url()}`);
  }
});
await curious.close();

const paired = await open('the phone', async (page, say, context) => {
  // The job that the address names opens at once, and of the code nothing is left.
  await page.goto(pairing);
  await page.waitForFunction(() => document.querySelector('#strip .word')?.textContent === 'Not proven');
  if (page.url() !== `${start}#jobs%2Fplover-alder-58.toml`) {
    say(`the address is ${page.url()} after pairing`);
  }
  const cookies = await context.cookies();
  if (cookies.length !== 1 || !cookies[0].secure || !cookies[0].httpOnly || cookies[0].sameSite !== 'Strict' || await page.evaluate(() => document.cookie) !== '') {
    say(`cookies: ${JSON.stringify(cookies.map((c) => ({ ...c, value: '' })))}`);
  }

  // The photograph is taken by file input and stays in the browser.
  const sent = [];
  page.on('request', (request) => sent.push(request.postData()?.length ?? 0));
  await page.locator('.panes-switch [data-pane=numbers]').tap();
  await page.locator('#profile-tab-body').tap();
  await page.locator('#from-photo').tap();
  const picture = Buffer.from(await photograph.picture(page));
  await page.locator('#photo-file').setInputFiles({ name: 'photograph.png', mimeType: 'image/png', buffer: picture });
  await page.waitForFunction(() => !/pick a photograph/.test(document.getElementById('photo-found').textContent));
  const canvas = await page.locator('.photo-canvas').boundingBox();
  await page.touchscreen.tap(canvas.x + canvas.width / 2, canvas.y + canvas.height / 2);
  await page.waitForFunction(() => [...document.querySelectorAll('[id^=photo-count-]')].some((count) => count.textContent !== ''));
  if (Math.max(0, ...sent) > picture.length / 4) {
    say(`sends ${Math.max(...sent)} bytes beside a photograph of ${picture.length}`);
  }

  // A throttle body measured at the vehicle, its first two answers typed, saved on the shop's machine. Reloading keeps the session.
  await page.goto(start);
  await page.locator('#new-body-name').fill('Rowan 64 measured');
  await page.locator('#new-vehicle').selectOption({ label: await page.locator('#new-vehicle option').nth(1).textContent() });
  await page.locator('#new-begin').tap();
  await page.waitForSelector('#measure-heading');
  if (await page.locator('#measure-name').inputValue() === '') {
    await page.locator('#measure-name').fill('Rowan 64 measured');
  }
  for (let screen = 0; screen < 8 && !(await page.locator('#measure-bore').count()); screen++) {
    const heading = await page.locator('#measure-heading').textContent();
    await page.locator('#measure-next').tap();
    await page.waitForFunction((before) => document.querySelector('#measure-heading')?.textContent !== before, heading);
  }
  await page.locator('#measure-bore').fill('63.5');
  await page.locator('#measure-bore').blur();
  await page.waitForFunction(() => document.querySelector('[data-key=bore]').classList.contains('given'));
  await page.locator('#do-save').tap();
  await page.waitForFunction(() => document.getElementById('status').textContent === 'Saved.');
});

// Another phone with the very same picture, and one without.
for (const [name, address] of [['a second phone', pairing], ['a stranger', start]]) {
  const other = await open(name, async (page, say) => {
    const answer = await page.goto(address);
    if (answer.status() !== 403 || !/paired already/.test(await page.locator('body').innerText())) {
      say(`is answered ${answer.status()}`);
    }
  });
  await other.close();
}
await paired.close();
await browser.close();
console.log(found.join('\n'));
