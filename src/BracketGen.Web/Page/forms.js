// Fields made from the profiles' own schemas: what may stand where is declared in one place, in the program.
import { h } from './dom.js';
import { alike, shown, stepped, typed } from './units.js';

const words = (name) => (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll('_', ' ');
const join = (path, name) => (path ? `${path}.${name}` : name);
export const at = (values, path) => path.split(/[.[]/).reduce((v, part) => (v === undefined || v === null ? undefined : part.endsWith(']') ? v[Number(part.slice(0, -1)) - 1] : v[part]), values);

// What fields there are, as a tree; the same list of paths means that the fields on the page can stay.
export function plan(schema, values, path = '') {
  const nodes = [];
  const required = schema.required ?? [];
  for (const [name, form] of Object.entries(schema.properties)) {
    if (form.const === undefined) {
      nodes.push(node(form, join(path, name), words(name), values, required.includes(name)));
    }
  }
  // Single numbers first, then what has a heading of its own.
  const isGroup = (n) => n.kind === 'group' || n.kind === 'list';
  return [...nodes.filter((n) => !isGroup(n)), ...nodes.filter(isGroup)];
}

function node(form, path, label, values, isRequired) {
  const base = { path, label, help: form.description ?? '', usual: form.default, isRequired };
  const written = at(values, path);
  if (form.type === 'object' && form.properties) {
    return { ...base, kind: 'group', isThere: written !== undefined, nodes: plan(form, values, path) };
  }
  if (form.type === 'object' && form.oneOf) {
    const tag = Object.entries(form.oneOf[0].properties).find(([, f]) => f.const !== undefined)[0];
    const kinds = form.oneOf.map((f) => ({ word: f.properties[tag].const, form: f }));
    const chosen = kinds.find((k) => k.word === written?.[tag]);
    const field = { kind: 'word', path: join(path, tag), label: words(tag), help: form.oneOf[0].properties[tag].description ?? '', isRequired: true, words: kinds.map((k) => k.word), kinds, owner: path };
    return { ...base, kind: 'group', isThere: written !== undefined, nodes: [field, ...(chosen ? plan(chosen.form, values, path) : [])] };
  }
  if (form.type === 'array' && form.minItems === 3 && form.maxItems === 3) {
    return { ...base, kind: 'vector', unit: unitOf(form.items) };
  }
  if (form.type === 'array' && form.items.type === 'object') {
    const count = Array.isArray(written) ? written.length : 0;
    return {
      ...base, kind: 'list', most: form.maxItems, count, item: form.items,
      nodes: Array.from({ length: count }, (_, i) => ({ ...node(form.items, `${path}[${i + 1}]`, `${label} ${i + 1}`, values, false), isItem: true })),
    };
  }
  if (form.type === 'array') {
    return { ...base, kind: 'items', isText: form.items.type === 'string' };
  }
  if (form.enum) {
    return { ...base, kind: 'word', words: form.enum };
  }
  if (form.anyOf) {
    return { ...base, kind: 'quantity', unit: unitOf(form), pattern: form.anyOf.find((f) => f.pattern)?.pattern, isMeasured: form.anyOf.some((f) => f.type === 'object') };
  }
  return { ...base, kind: form.type === 'string' ? 'text' : 'quantity', unit: '' };
}

const unitOf = (form) => (form.anyOf ?? [form]).find((f) => f.type === 'number')?.title ?? '';

export const shape = (nodes) => nodes.map((n) => `${n.path}:${n.kind}:${n.isThere ?? ''}(${n.nodes ? shape(n.nodes) : ''})`).join();

// Draws the fields, and answers with what fills them and what shows their mistakes.
export function fields(place, nodes, { change, leave, file }) {
  const all = [];
  let number = 0;
  place.replaceChildren(...nodes.map((n) => draw(n)));

  function draw(n) {
    if (n.kind === 'group' || n.kind === 'list') {
      return group(n);
    }
    const id = `f${number++}`;
    const problem = h('p', { class: 'problem', id: `${id}-problem`, hidden: true });
    const help = h('p', { class: 'help', id: `${id}-help` }, n.help, usual(n));
    const field = { n, problem, inputs: [] };
    all.push(field);
    const describe = (input) => {
      input.setAttribute('aria-describedby', `${id}-problem ${id}-help`);
      input.dataset.path = n.path;
      field.inputs.push(input);
      return input;
    };
    const parts = { quantity, vector, word, text, items }[n.kind](n, id, describe, field);
    return h('div', { class: `field ${n.kind}`, 'data-field': n.path }, parts, problem, help);
  }

  function group(n) {
    const body = h('div', { class: 'fields' }, n.nodes.map(draw));
    const remove = !n.isRequired && n.isThere ? h('button', { type: 'button', class: 'quiet', onclick: () => change([{ key: n.path, value: null }]), 'aria-label': `Take away: ${n.label}` }, 'Take away') : null;
    if (n.kind === 'list') {
      const add = n.count < n.most ? h('button', { type: 'button', class: 'quiet', 'data-add': n.path, onclick: () => change([{ key: `${n.path}[+]`, value: like(n) }]) }, `Add to ${n.label.toLowerCase()}`) : null;
      body.append(...(add ? [add] : []));
      return h('details', { class: 'group', open: n.count > 0 && n.count < 7, 'data-group': n.path }, h('summary', {}, `${n.label} `, h('span', { class: 'count' }, String(n.count))), n.help ? h('p', { class: 'about' }, n.help) : null, body);
    }
    if (n.isItem) {
      const take = h('button', { type: 'button', class: 'quiet', onclick: () => change([{ key: n.path, value: null }]), 'aria-label': `Take away: ${n.label}` }, 'Take away');
      return h('fieldset', { class: 'item' }, h('legend', {}, n.label), body, take);
    }
    if (n.isRequired || n.isThere) {
      return h('details', { class: 'group', open: true, 'data-group': n.path }, h('summary', {}, n.label), n.help ? h('p', { class: 'about' }, n.help) : null, body, remove);
    }
    return h('details', { class: 'group', 'data-group': n.path }, h('summary', {}, `${n.label} `, h('span', { class: 'count' }, 'not given')), n.help ? h('p', { class: 'about' }, n.help) : null, body);
  }

  // A new item is like the last one, so that it has every key it needs.
  const like = (n) => structuredClone(latest.values ? at(latest.values, `${n.path}[${n.count}]`) ?? skeleton(n.item) : {});

  function skeleton(form) {
    const from = form.oneOf?.[0] ?? form;
    return Object.fromEntries((from.required ?? []).map((name) => [name, begin(from.properties[name])]));
  }

  function begin(form) {
    if (form.const !== undefined) {
      return form.const;
    }
    if (form.type === 'array') {
      return form.minItems === 3 ? [0, 0, 0] : [];
    }
    const number = (form.anyOf ?? [form]).find((f) => f.type === 'number' || f.type === 'integer');
    return number ? Math.max(number.minimum, Math.min(number.maximum, 10)) : form.enum?.[0] ?? 'new';
  }

  function usual(n) {
    if (n.usual === undefined) {
      return n.isRequired || n.kind === 'word' ? '' : ' May be left out.';
    }
    const value = typeof n.usual === 'object' && n.usual !== null && !Array.isArray(n.usual) ? `${n.usual.value} ± ${n.usual.plus_minus}` : Array.isArray(n.usual) ? 'empty' : String(n.usual);
    return ` Left out: ${value}${n.unit ? ` ${n.unit}` : ''}.`;
  }

  const latest = {};
  const now = (n) => at(latest.values, n.path);

  // Typing answers while one types; arrow keys step the last digit.
  function live(input, commit) {
    let timer = 0;
    input.addEventListener('input', () => {
      clearTimeout(timer);
      timer = setTimeout(commit, 280);
    });
    input.addEventListener('change', () => {
      clearTimeout(timer);
      commit();
    });
    input.addEventListener('blur', leave);
    input.addEventListener('keydown', (event) => {
      const by = { ArrowUp: 1, ArrowDown: -1 }[event.key];
      const next = by ? stepped(input.value, by * (event.shiftKey ? 10 : 1)) : null;
      if (next !== null) {
        event.preventDefault();
        input.value = next;
        clearTimeout(timer);
        timer = setTimeout(commit, 15);
      }
    });
    return input;
  }

  function box(id, label, more = {}) {
    return h('input', { type: 'text', id, autocomplete: 'off', spellcheck: 'false', 'aria-label': label, ...more });
  }

  function quantity(n, id, describe, field) {
    const value = describe(box(id, null, { inputmode: 'decimal' }));
    const unit = h('span', { class: 'unit' });
    const plusMinus = n.isMeasured ? describe(box(`${id}-pm`, `${n.label}, plus or minus`, { inputmode: 'decimal', class: 'pm' })) : null;
    let told = '';
    // A text with a unit of another kind is shown as it stands; what is typed over it does not take that unit.
    const known = n.pattern ? new RegExp(n.pattern) : null;
    const seen = (w) => (typeof w === 'string' && known && !known.test(w) ? { ...shown(undefined, n.unit, latest.inInches), text: w } : shown(w, n.unit, latest.inInches));
    const commit = () => {
      const written = now(n);
      const isPair = written !== null && typeof written === 'object';
      const beforeValue = isPair ? written.value : written;
      const before = seen(beforeValue);
      const beforePm = seen(isPair ? written.plus_minus : undefined);
      const isSame = value.value.trim() === before.text;
      const next = isSame ? beforeValue ?? null : typed(value.value, before.unit, n.unit);
      let pm = plusMinus ? (plusMinus.value.trim() === beforePm.text ? (isPair ? written.plus_minus : null) : typed(plusMinus.value, before.unit, n.unit)) : isPair ? written.plus_minus : null;
      const key = `${value.value}|${plusMinus?.value ?? ''}`;
      if (key === told) {
        return;
      }
      told = key;
      if (next === null) {
        change([{ key: n.path, value: null }], n.path);
        return;
      }
      if (typeof next === 'string' && typeof pm === 'number') {
        pm = alike(pm, n.unit, shown(next, n.unit).unit);
      }
      if (isPair && pm !== null) {
        change([...(isSame ? [] : [{ key: `${n.path}.value`, value: next }]), { key: `${n.path}.plus_minus`, value: pm }], n.path);
      } else {
        change([{ key: n.path, value: pm === null || pm === undefined ? next : { value: next, plus_minus: pm } }], n.path);
      }
    };
    [value, plusMinus].filter(Boolean).forEach((input) => live(input, commit));
    field.fill = (written) => {
      const isPair = written !== null && typeof written === 'object';
      const main = seen(isPair ? written.value : written);
      set(value, main.text);
      unit.textContent = main.unit;
      if (plusMinus) {
        set(plusMinus, seen(isPair ? written.plus_minus : undefined).text);
      }
      // What is being typed is not told yet: an answer to an earlier question must not swallow it.
      if (!field.inputs.includes(document.activeElement)) {
        told = `${value.value}|${plusMinus?.value ?? ''}`;
      }
    };
    return [h('label', { for: id }, n.label), h('div', { class: 'entry' }, value, plusMinus ? [h('span', { class: 'sign', 'aria-hidden': 'true' }, '±'), plusMinus] : null, unit)];
  }

  function vector(n, id, describe, field) {
    const axes = ['x', 'y', 'z'];
    const inputs = axes.map((axis, i) => describe(box(`${id}-${axis}`, `${n.label}, ${axis}`, { inputmode: 'decimal', 'data-axis': i })));
    const unit = h('span', { class: 'unit' });
    const commit = () => {
      const written = now(n) ?? [];
      const next = inputs.map((input, i) => {
        const before = shown(written[i], n.unit, latest.inInches);
        return input.value.trim() === before.text && written[i] !== undefined ? written[i] : typed(input.value, before.unit, n.unit) ?? 0;
      });
      if (JSON.stringify(next) === JSON.stringify(written)) {
        return;
      }
      const isWhole = Array.isArray(written) && written.length === 3;
      change(isWhole
        ? next.map((value, i) => ({ key: `${n.path}[${i + 1}]`, value })).filter((e, i) => e.value !== written[i])
        : [{ key: n.path, value: next }], n.path);
    };
    inputs.forEach((input) => live(input, commit));
    field.fill = (written) => {
      inputs.forEach((input, i) => set(input, shown(written?.[i], n.unit, latest.inInches).text));
      unit.textContent = shown(written?.[0], n.unit, latest.inInches).unit;
    };
    return [h('span', { class: 'label' }, n.label), h('div', { class: 'entry', role: 'group', 'aria-label': n.label }, inputs.flatMap((input, i) => [h('span', { class: 'sign', 'aria-hidden': 'true' }, axes[i]), input]), unit)];
  }

  function word(n, id, describe, field) {
    const blank = n.isRequired && n.words.length ? [] : [h('option', { value: '' }, 'not given')];
    const select = describe(h('select', { id }, blank, n.words.map((w) => h('option', { value: w }, w))));
    select.addEventListener('change', () => change(n.kinds ? turned(n, select.value) : [{ key: n.path, value: select.value || null }]));
    field.fill = (written) => {
      if (written === undefined && !select.querySelector('option[value=""]')) {
        select.prepend(h('option', { value: '' }, 'choose'));
      }
      select.value = written ?? '';
    };
    return [h('label', { for: id }, n.label), h('div', { class: 'entry' }, select)];
  }

  // Another kind of thing: keys that it does not know go, those it needs come.
  function turned(n, chosen) {
    const next = n.kinds.find((k) => k.word === chosen);
    const written = at(latest.values, n.owner) ?? {};
    if (!next) {
      return [{ key: n.owner, value: null }];
    }
    const gone = Object.keys(written).filter((name) => !(name in next.form.properties));
    const come = (next.form.required ?? []).filter((name) => written[name] === undefined && next.form.properties[name].const === undefined);
    return [
      { key: n.path, value: chosen }, ...gone.map((name) => ({ key: `${n.owner}.${name}`, value: null })),
      ...come.map((name) => ({ key: `${n.owner}.${name}`, value: begin(next.form.properties[name]) })),
    ];
  }

  function text(n, id, describe, field) {
    const input = live(describe(box(id)), () => {
      if (input.value !== (now(n) ?? '')) {
        change([{ key: n.path, value: input.value === '' ? null : input.value }], n.path);
      }
    });
    field.fill = (written) => set(input, written ?? '');
    return [h('label', { for: id }, n.label), h('div', { class: 'entry' }, input)];
  }

  function items(n, id, describe, field) {
    const list = (value) => (Array.isArray(value) ? value.join(', ') : '');
    const input = live(describe(box(id)), () => {
      if (input.value !== list(now(n))) {
        const parts = input.value.split(',').map((p) => p.trim()).filter(Boolean);
        change([{ key: n.path, value: parts.length ? parts.map((p) => (n.isText ? p : typed(p, '', ''))) : n.isRequired ? [] : null }], n.path);
      }
    });
    field.fill = (written) => set(input, list(written));
    return [h('label', { for: id }, n.label), h('div', { class: 'entry' }, input)];
  }

  // What is being typed is left alone.
  function set(input, value) {
    if (document.activeElement !== input && input.value !== value) {
      input.value = value;
    }
  }

  return {
    fill(values, inInches) {
      Object.assign(latest, { values, inInches });
      all.forEach((field) => field.fill(at(values, field.n.path)));
    },
    // Each mistake at the field it belongs to; what belongs to none comes back.
    problems(errors) {
      const rest = [];
      const by = new Map();
      for (const error of errors) {
        const field = all.filter((f) => error.key === f.n.path || error.key.startsWith(`${f.n.path}.`) || error.key.startsWith(`${f.n.path}[`)).sort((a, b) => b.n.path.length - a.n.path.length)[0];
        if (field) {
          by.set(field, [...(by.get(field) ?? []), error]);
        } else {
          rest.push(error);
        }
      }
      for (const field of all) {
        const mine = by.get(field) ?? [];
        field.problem.hidden = mine.length === 0;
        field.problem.textContent = mine.map((e) => `Allowed: ${e.allowed}. ${e.advice}`).join(' ');
        field.inputs.forEach((input) => (mine.length ? input.setAttribute('aria-invalid', 'true') : input.removeAttribute('aria-invalid')));
        if (mine.length) {
          field.problem.closest('details')?.setAttribute('open', '');
        }
      }
      return rest;
    },
    file,
  };
}
