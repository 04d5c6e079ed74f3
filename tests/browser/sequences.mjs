// Works the fields of the page at random and compares each of them with what the file holds, as the program read it; prints what differs, one line each.
// node sequences.mjs CHROMIUM ADDRESS-OF-EXAMPLES COUNT SEED
import { chromium } from 'playwright-core';

const [executablePath, examples, count, seed] = process.argv.slice(2);
const found = [];
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'] });
const context = await browser.newContext({ reducedMotion: 'reduce', viewport: { width: 1400, height: 900 } });
const page = await context.newPage();
page.setDefaultTimeout(120000);
page.on('pageerror', (error) => found.push(`script error: ${error.message}`));

// What the program last said of the files, and how many questions are still open. The answer's pictures are left out: no field comes from them.
await page.addInitScript(() => {
  const ask = window.fetch;
  window.seen = { open: 0, values: {}, marked: {}, job: '' };
  window.fetch = async (path, request) => {
    window.seen.open++;
    try {
      const reply = await ask(path, request);
      if (['/work', '/open'].includes(path) && reply.ok) {
        const told = await reply.clone().json();
        // What the page has already is named by its mark only.
        for (const [holder, file, mark] of told.new ?? []) {
          if (holder === 'values') {
            window.seen.marked[mark] = told.values[file];
          }
        }
        const same = (told.same ?? []).filter(([holder]) => holder === 'values').map(([, file, mark]) => [file, window.seen.marked[mark]]);
        window.seen.values = { ...window.seen.values, ...told.values, ...Object.fromEntries(same) };
        window.seen.job = told.job;
      }
      return reply;
    } finally {
      window.seen.open--;
    }
  };
});

await page.goto(`${examples}#jobs%2Fplover-alder-58.toml`);
await page.waitForFunction(() => document.querySelector('#strip .word')?.textContent === 'Not proven');

// A bracket that is there already has fields of its own: corners, ends of bends, directions.
await page.locator('#do-check').click();
await page.locator('[data-bracket="brackets/shelf-upright-34.toml"]').click();
await page.waitForFunction(() => /Put a spacer/.test(document.getElementById('body-verdict').textContent));

const said = await page.evaluate(async ([turns, start]) => {
  // Numbers that are the same on every run: a multiply and shift generator of 32 bits.
  let state = start;
  const random = () => {
    state = (state + 0x6D2B79F5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const pick = (list) => list[Math.floor(random() * list.length)];
  const wait = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });
  const wrong = [];
  const log = [];
  const kinds = { body: 'throttle_body', vehicle: 'vehicle', shop: 'shop', job: null };

  async function quiet() {
    for (let still = 0, tries = 0; still < 2 && tries < 3000; tries++) {
      await wait(2);
      still = window.seen.open === 0 ? still + 1 : 0;
    }
  }

  function fileValues() {
    const role = document.querySelector('#profile-tabs [aria-selected=true]').id.replace('profile-tab-', '');
    const { values, job } = window.seen;
    if (role === 'bracket') {
      return values['brackets/shelf-upright-34.toml'] ?? {};
    }
    const name = kinds[role] ? values[job]?.[kinds[role]] : null;
    const path = kinds[role] ? new URL(name, `http://x/${job}`).pathname.slice(1) : job;
    return values[decodeURIComponent(path)] ?? {};
  }

  const at = (values, path) => path.split(/[.[]/).reduce((v, part) => (v === undefined || v === null ? undefined : part.endsWith(']') ? v[Number(part.slice(0, -1)) - 1] : v[part]), values);

  // A number with its unit in millimetres, radians' degrees and newtons, by factors of this test's own; what is no such number stays a text.
  const factors = { mm: 1, in: 25.4, deg: 1, '°': 1, N: 1, lbf: 4.4482216152605, 'N m': 1, 'lbf in': 0.1129848290276167, V: 1, g: 1, lb: 453.59237, MPa: 1, ksi: 6.894757293168, 'N/mm': 1, 'lbf/in': 0.17512683524647, '%': 1, '': 1 };
  const metric = { in: 'mm', lbf: 'N', 'lbf in': 'N m', lb: 'g', ksi: 'MPa', 'lbf/in': 'N/mm' };
  function size(text, unit) {
    const parts = String(text).trim().match(/^([-+]?)(?:(\d+)[ -])?(\d+)\/(\d+)\s*(.*)$/);
    const plain = String(text).trim().match(/^([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(.*)$/);
    const [value, own] = parts ? [(parts[1] === '-' ? -1 : 1) * (Number(parts[2] ?? 0) + Number(parts[3]) / Number(parts[4])), parts[5]] : plain ? [Number(plain[1]), plain[2]] : [NaN, ''];
    const factor = factors[own || unit];
    return Number.isNaN(value) ? String(text).trim() : factor === undefined ? `${value} ${own || unit}` : value * factor;
  }
  const same = (a, b) => (typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 1e-4 * Math.max(Math.abs(a), Math.abs(b)) : a === b);


  // Every field of the tab: what it shows, with the unit beside it, is what the file holds. A number of the file without a unit is in the unit that the empty view names.
  function compare() {
    const values = fileValues();
    const inches = document.getElementById('do-units').textContent === 'in';
    for (const field of document.querySelectorAll('#profile-panel .field.quantity, #profile-panel .field.vector')) {
      const remark = field.querySelector('.remark');
      if (remark && !remark.hidden) {
        continue;
      }
      const written = at(values, field.dataset.field);
      const isVector = field.classList.contains('vector');
      const boxes = [...field.querySelectorAll('input')];
      const units = [...field.querySelectorAll('.unit')].map((u) => u.textContent);
      const pair = written !== null && typeof written === 'object' && !Array.isArray(written);
      boxes.forEach((box, i) => {
        const raw = isVector ? written?.[i] : i === 0 ? (pair ? written.value : written) : (pair ? written.plus_minus : undefined);
        const unit = isVector ? units[0] : units[i] ?? units[0];
        if (raw === undefined) {
          if (box.value !== '') {
            wrong.push(`${field.dataset.field}: shows «${box.value}» where the file has nothing, after ${log.slice(-4).join('; ')}`);
          }
          return;
        }
        // Inches beside a bare number of the file: that number is in millimetres.
        const bare = typeof raw === 'number' && inches ? metric[unit] ?? unit : unit;
        if (!same(size(box.value, unit), size(raw, bare))) {
          wrong.push(`${field.dataset.field}${i ? ' ±' : ''}: shows «${box.value}» ${unit}, the file has ${JSON.stringify(raw)}, after ${log.slice(-4).join('; ')}`);
        }
      });
    }
  }

  const texts = [
    () => (random() * 100).toFixed(Math.floor(random() * 4)), () => `${(random() * 4).toFixed(3)} in`, () => `${Math.floor(random() * 3) + 1} ${pick(['1/4', '3/8', '7/64'])} in`, () => `${(random() * 3).toFixed(2)}"`,
    () => `${(random() * 60).toFixed(1)}mm`, () => `${(random() * 30).toFixed(1)} + ${(random() * 3).toFixed(1)}`, () => `${Math.floor(random() * 40)},${Math.floor(random() * 9)}`, () => '', () => 'abc', () => `${(random() * 9).toFixed(1)} lbf`,
    () => `${(random() * 40).toFixed(1)} ± ${random().toFixed(1)}`, () => `${(random() * 2).toFixed(2)}in-0.1`, () => '-', () => `1e${Math.floor(random() * 3)}`,
  ];

  // What the file holds of every number that this turn does not touch, so that an edit of one field changes no other.
  const flat = (value, path, into) => {
    if (value !== null && typeof value === 'object') {
      Object.entries(value).forEach(([key, inner]) => flat(inner, `${path}.${key}`, into));
    } else {
      into.set(path, value);
    }
    return into;
  };

  for (let turn = 0; turn < turns && wrong.length < 12; turn++) {
    if (turn % 25 === 0) {
      // Undo may have led back to the time before the bracket.
      document.getElementById(`profile-tab-${pick(['bracket', 'body', 'vehicle', 'bracket', 'shop', 'job'])}`)?.click();
      await quiet();
      document.querySelectorAll('#profile-panel details').forEach((d) => { d.open = true; });
    }
    const fields = [...document.querySelectorAll('#profile-panel .field.quantity, #profile-panel .field.vector')];
    const field = pick(fields);
    if (!field) {
      continue;
    }
    const path = field.dataset.field;
    const before = flat(fileValues(), '', new Map());
    const edits = 1 + Math.floor(random() * 3);
    let isElsewhere = false;
    for (let i = 0; i < edits; i++) {
      // Drawn anew by an edit, the fields are others with the same key.
      const now = [...document.querySelectorAll('#profile-panel .field')].find((f) => f.dataset.field === path);
      const box = now && pick([...now.querySelectorAll('input')]);
      if (!box) {
        break;
      }
      const what = random();
      if (what < 0.08) {
        log.push('units');
        document.getElementById('do-units').click();
        isElsewhere = true;
      } else if (what < 0.16) {
        log.push('undo');
        document.getElementById('do-undo').click();
        isElsewhere = true;
      } else {
        box.focus();
        box.value = pick(texts)();
        log.push(`${path}${box.classList.contains('pm') ? ' ±' : box.dataset.axis ?? ''} ← «${box.value}»`);
        box.dispatchEvent(new Event('input', { bubbles: true }));
        if (random() < 0.3) {
          await wait(random() * 320);
        }
        if (random() < 0.2) {
          now.querySelector('.remark:not([hidden]) button')?.click();
        }
      }
    }
    document.activeElement?.blur();
    await wait(1);
    await quiet();
    compare();
    if (!isElsewhere) {
      const after = flat(fileValues(), '', new Map());
      const own = `.${path.replaceAll('[', '.').replaceAll(']', '').replace(/\.(\d+)/g, (_, d) => `.${Number(d) - 1}`)}`;
      for (const key of new Set([...before.keys(), ...after.keys()])) {
        if (before.get(key) !== after.get(key) && key !== own && !key.startsWith(`${own}.`)) {
          wrong.push(`${path}: its edit changed ${key} from ${before.get(key)} to ${after.get(key)}, after ${log.slice(-4).join('; ')}`);
        }
      }
    }
  }
  return { wrong, edits: log.length };
}, [Number(count), Number(seed)]);

found.push(...said.wrong);
await browser.close();
found.forEach((line) => console.log(line));
if (found.length === 0 && said.edits < Number(count)) {
  console.log(`only ${said.edits} edits were made`);
}
