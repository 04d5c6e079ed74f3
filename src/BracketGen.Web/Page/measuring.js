// One number at a time: where it is on the part, how to measure it, and whether the answer can be.
import { $, asked, h, show } from './dom.js';
import { alike, shown, typed } from './units.js';
import { at } from './forms.js';


// What is asked, and where it is written; profiles in the order in which they are measured.
export async function measure({ desk, profiles, unitOf, done, leave }) {
  const place = $('measuring');
  let [profile, step, steps, sketches] = [0, 0, [], []];
  const asking = () => profiles[profile];
  const file = () => asking().path;

  async function questions() {
    const reply = await asked('/questions', { kind: asking().kind, text: desk.files[file()] });
    [steps, sketches] = [reply.steps, reply.sketches];
  }

  async function turn(to) {
    if (to < 0) {
      if (profile === 0) {
        return;
      }
      profile--;
      await questions();
      step = steps.length - 1;
    } else if (to >= steps.length) {
      if (profile === profiles.length - 1) {
        place.hidden = true;
        done();
        return;
      }
      profile++;
      step = 0;
      await questions();
    } else {
      step = to;
    }
    draw();
  }

  function draw() {
    const s = steps[step];
    const written = at(desk.values[file()] ?? {}, s.key);
    const standard = unitOf(asking().kind, s.key);
    const sketch = h('div', { class: 'sketch' });
    if (s.sketch >= 0) {
      show(sketch, sketches[s.sketch]);
      const svg = sketch.querySelector('svg');
      svg.setAttribute('role', 'img');
      svg.setAttribute('aria-label', s.letter ? `Sketch: ${s.ask} It is ${s.letter} in it.` : `Sketch for: ${s.ask}`);
      if (s.letter) {
        [...svg.querySelectorAll('text')].filter((t) => t.textContent === s.letter || t.textContent.endsWith(` ${s.letter}`)).forEach((t) => t.classList.add('here'));
      }
    }
    const problem = h('p', { class: 'problem', role: 'alert', id: 'measure-problem', hidden: true });
    const answer = entry(s, written, standard);
    const form = h('form', { onsubmit: async (event) => {
      event.preventDefault();
      const told = await take(s, standard, written);
      problem.hidden = !told;
      if (told) {
        problem.textContent = told;
        $('measure-0')?.focus();
      } else {
        await questions();
        await turn(step + 1);
      }
    } },
    answer, problem,
    h('div', { class: 'controls' },
      h('button', { type: 'submit', class: 'primary' }, 'Next'),
      h('button', { type: 'button', disabled: profile === 0 && step === 0, onclick: () => turn(step - 1) }, 'Back'),
      h('button', { type: 'button', onclick: () => turn(step + 1) }, 'Later'),
      h('button', { type: 'button', class: 'quiet', onclick: () => { place.hidden = true; leave(); } }, 'See all numbers')));
    const done = step / steps.length;
    place.replaceChildren(h('section', {},
      h('p', { class: 'progress' }, `${asking().label}: question ${step + 1} of ${steps.length}`),
      h('progress', { max: 1, value: done, 'aria-label': `${asking().label}, questions done` }),
      h('div', { class: 'measure' },
        h('div', { class: 'asked' }, h('h2', { id: 'measure-heading' }, s.ask), h('p', {}, s.explain), form,
          s.tool ? h('dl', { class: 'hints' }, h('div', {}, h('dt', {}, 'With'), h('dd', {}, s.tool)), h('div', {}, h('dt', {}, 'Often done wrong'), h('dd', {}, s.mistake))) : null),
        s.sketch >= 0 ? h('figure', {}, sketch, h('figcaption', {}, s.letter ? `${s.letter} is what is asked. Not to scale.` : 'Not to scale.')) : null)));
    place.hidden = false;
    $('measure-0')?.focus();
  }

  const box = (i, label, value, more = {}) => h('input', { type: 'text', id: `measure-${i}`, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': 'measure-problem', 'aria-label': label, value, ...more });

  function entry(s, written, standard) {
    const unit = (u) => h('span', { class: 'unit' }, u);
    if (s.form === 'Word') {
      const value = s.key === 'quadrant.groove' ? (written?.shape ?? 'round') : written ?? s.default ?? '';
      return h('fieldset', { class: 'choices' }, h('legend', { class: 'unseen' }, s.ask), s.words.map((w, i) => h('label', { class: 'show' }, h('input', { type: 'radio', name: 'measure', id: `measure-${i}`, value: w, checked: w === value }), w)));
    }
    if (s.form === 'Point') {
      return h('div', { class: 'entry' }, ['x', 'y', 'z'].flatMap((axis, i) => {
        const one = shown(written?.[i], standard, desk.inInches);
        return [h('span', { class: 'sign', 'aria-hidden': 'true' }, axis), box(i, `${s.ask} ${axis}`, one.text, { inputmode: 'decimal' })];
      }), unit(shown(written?.[0], standard, desk.inInches).unit));
    }
    if (s.form === 'Count') {
      return h('div', { class: 'entry' }, box(0, s.ask, Array.isArray(written) ? written.length : s.default ?? '', { inputmode: 'numeric' }));
    }
    if (s.form === 'Text') {
      return h('div', { class: 'entry' }, box(0, s.ask, written ?? '', { class: 'wide' }));
    }
    const isPair = written !== null && typeof written === 'object';
    const main = shown(isPair ? written.value : written, standard, desk.inInches);
    return h('div', { class: 'entry' }, box(0, s.ask, main.text || (s.default ?? ''), { inputmode: 'decimal' }),
      s.form === 'Measured' ? [h('span', { class: 'sign', 'aria-hidden': 'true' }, '±'), box(1, `${s.ask} Plus or minus`, isPair ? shown(written.plus_minus, standard, desk.inInches).text : '', { inputmode: 'decimal', class: 'pm' })] : null, unit(main.unit));
  }

  // Writes the answer; what is wrong with it comes back in words.
  async function take(s, standard, written) {
    const text = (i) => $(`measure-${i}`)?.value.trim() ?? '';
    const unit = (w) => shown(w, standard, desk.inInches).unit;
    let edits;
    if (s.form === 'Word') {
      const value = document.querySelector('[name=measure]:checked')?.value;
      if (!value) {
        return 'Choose one.';
      }
      edits = s.key !== 'quadrant.groove' ? [{ key: s.key, value }]
        : value === 'round' ? (written ? [{ key: s.key, value: null }] : [])
          : [{ key: 'quadrant.pitch_radius', value: null, mayFail: true }, { key: 'quadrant.groove.shape', value }];
    } else if (s.form === 'Count') {
      const count = Number(text(0));
      if (!/^\d+$/.test(text(0)) || count > 12) {
        return 'Answer with a whole number from 0 to 12.';
      }
      const there = Array.isArray(written) ? written.length : 0;
      edits = count > there ? Array.from({ length: count - there }, () => ({ key: `${s.key}[+]`, value: {} }))
        : Array.from({ length: there - count }, (_, i) => ({ key: `${s.key}[${there - i}]`, value: null }));
    } else if (s.form === 'Point') {
      const all = [0, 1, 2].map((i) => typed(text(i), unit(written?.[i]), standard));
      if (all.includes(null)) {
        return 'Three numbers are needed.';
      }
      edits = [{ key: s.key, value: all }];
    } else if (s.form === 'Text') {
      edits = [{ key: s.key, value: text(0) || null }];
    } else {
      const u = unit(written && typeof written === 'object' ? written.value : written);
      const value = typed(text(0), u, standard);
      const pm = s.form === 'Measured' ? typed(text(1), u, standard) : null;
      edits = [{ key: s.key, value: value === null || pm === null ? value : { value, plus_minus: typeof value === 'string' ? alike(pm, standard, shown(value, standard).unit) : pm } }];
    }
    const empty = edits.some((e) => e.value === null && !e.mayFail) && s.form !== 'Count' && s.form !== 'Word';
    if (empty && s.default === null) {
      return 'An answer is needed here; «Later» leaves it open.';
    }
    if (empty && written === undefined) {
      edits = [];
    }
    if (edits.length > 0) {
      const before = desk.files;
      await desk.edit(edits.map(({ key, value }) => ({ file: file(), key, value })));
      const wrong = desk.errors.filter((e) => e.file === file() && !e.missing && (e.key === s.key || e.key.startsWith(`${s.key}.`) || e.key.startsWith(`${s.key}[`)));
      if (wrong.length > 0) {
        desk.files = before;
        return wrong.map((e) => `Allowed: ${e.allowed}. ${e.advice}`).join(' ');
      }
    }
    return '';
  }

  await questions();
  draw();
}
