// The picture to turn: drag, keys, touch and views; drawn only when something changed.
/** @param {Picture.SolidData} data @param {Picture.Motion} motion @returns {Picture.Follow | (() => void)} */
function solidPicture(data, motion) {
  const live = document.getElementById('solid-live');
  const canvas = /** @type {HTMLCanvasElement | null} */ (document.getElementById('solid-canvas'));
  let drawn;
  try {
    drawn = canvas && surface(canvas);
  } catch {
    drawn = null; // The still picture stays.
  }
  if (!drawn || !live || !canvas) {
    return () => {};
  }
  return turnable(data, motion, live, canvas, drawn);
}

/** @param {Picture.SolidData} data @param {Picture.Motion} motion @param {HTMLElement} live @param {HTMLCanvasElement} canvas @param {Picture.Surface} draw @returns {Picture.Follow} */
function turnable(data, motion, live, canvas, draw) {
  live.hidden = false;
  document.querySelector('#solid .still')?.classList.add('turned');

  // How each kind is shown: colour by its custom property, how opaque, and by which box it is switched off.
  /** @type {Record<Picture.Kind, [string, number, string]>} */
  const kinds = {
    sheet: ['--sheet', 1, ''], mount: ['--casting', 1, 'mount'], shaft: ['--casting', 1, 'moving'], fitting: ['--wire', 1, 'moving'],
    outer: ['--outer', 1, 'moving'], casting: ['--casting', 1, 'casting'], valve: ['--outer', 1, 'casting'], moving: ['--moving', 0.45, 'moving'], keepout: ['--keepout', 0.22, 'keepout'],
  };
  /** @type {Picture.LoadedPart[]} */
  let parts = [];
  /** @type {WebGLBuffer | null} */
  let wire = null;
  /** @type {Record<string, number[]>} */
  let colours = {};
  /** @type {Picture.LoadedShell | null} */
  let shell = null;
  let [paintedBy, sway] = ['bare', 0];
  // What another script lays over it: outlines, a plane that cuts it, and what is to be told after each frame.
  /** @type {(Picture.Outline & { buffer?: WebGLBuffer })[]} */
  let outlines = [];
  /** @type {number[] | null} */
  let plane = null;
  let drawnAnew = () => {};

  function load() {
    parts = data.parts.map((part) => {
      const corner = (/** @type {number} */ i) => part.points.slice(3 * i, 3 * i + 3);
      return {
        kind: part.kind, turns: part.turns,
        faces: draw.buffer(new Float32Array(part.triangles.flatMap(corner))), faceCount: part.triangles.length,
        lines: draw.buffer(new Float32Array(part.edges.flatMap(corner))), lineCount: part.edges.length / 2,
      };
    });
    wire = null;
    shell = null;
    if (data.shell) {
      const { points, triangles, stress, swing } = data.shell;
      const each = (/** @type {number[]} */ values) => draw.buffer(new Float32Array(triangles.flatMap((i) => values.slice(3 * i, 3 * i + 3))));
      const most = swing.reduce((m, v, i) => (i % 3 ? m : Math.max(m, Math.hypot(v, swing[i + 1], swing[i + 2]))), 0);
      shell = {
        count: triangles.length, points: each(points), swing: each(swing),
        stress: draw.buffer(new Float32Array(triangles.map((i) => stress[i]))),
        movement: draw.buffer(new Float32Array(triangles.map((i) => Math.hypot(...swing.slice(3 * i, 3 * i + 3)) / most))),
        bands: new Float32Array(data.shell.bands.flatMap(rgb)),
      };
    }
  }

  /** @param {string} hex */
  function rgb(hex) {
    return [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255);
  }

  function paint() {
    const style = getComputedStyle(canvas);
    const read = (/** @type {string} */ name) => rgb(style.getPropertyValue(name).trim());
    colours = Object.fromEntries([...new Set([...Object.values(kinds).map((k) => k[0]), '--sheet-line', '--wire'])].map((n) => [n, read(n)]));
  }

  // The picture is fitted to all that it shows when a view is chosen, and keeps its size while it is turned.
  /** @type {number[]} */
  let centre = [];
  /** @type {number[]} */
  let half = [];
  let depth = 0;
  /** From the middle of the bracket's box to the middle of what is seen. */
  let aside = [0, 0, 0];
  function measure() {
    centre = data.least.map((low, i) => (low + data.most[i]) / 2);
    half = data.least.map((low, i) => (data.most[i] - low) / 2);
    depth = 20 * Math.hypot(...half);
    centre = centre.map((c, k) => c + aside[k]);
  }
  measure();
  let [yaw, pitch, zoom] = [-38, 28, 1];
  let fitted = [0, 0];
  let turn = 0;
  /** @type {number[][]} */
  let path = [];
  let waiting = false;
  const boxes = [.../** @type {NodeListOf<HTMLInputElement>} */ (live.querySelectorAll('[data-show]'))];
  const off = (/** @type {string} */ what) => boxes.some((box) => box.dataset.show === what && !box.checked);

  function turned() {
    const [a, b] = [(yaw * Math.PI) / 180, (pitch * Math.PI) / 180];
    const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    // By columns: first about the picture's upright, then tilted towards the eye.
    return [ca, sb * sa, -cb * sa, 0, cb, sb, sa, -sb * ca, cb * ca];
  }

  function fit() {
    const view = turned();
    aside = [0, 0, 0];
    measure();
    const across = [0, 1].map((row) => {
      const seen = (/** @type {number[]} */ p) => p.reduce((sum, x, k) => sum + x * view[3 * k + row], 0);
      let [low, high] = [seen(centre), seen(centre)];
      for (const { points, kind } of data.parts) {
        for (let i = 0; i < points.length && !off(kinds[kind][2]); i += 3) {
          const at = seen([points[i], points[i + 1], points[i + 2]]);
          [low, high] = [Math.min(low, at), Math.max(high, at)];
        }
      }
      return { half: (high - low) / 2, by: (high + low) / 2 - seen(centre) };
    });
    fitted = across.map((a) => a.half);
    aside = [0, 1, 2].map((k) => across[0].by * view[3 * k] + across[1].by * view[3 * k + 1]);
    measure();
  }

  function camera() {
    const [w, h] = [canvas.width, canvas.height];
    const size = 0.9 * zoom * Math.min(w / fitted[0], h / fitted[1]);
    const view = turned();
    // What lies between the plane and the eye goes.
    const side = plane && plane[0] * view[2] + plane[1] * view[5] + plane[2] * view[8] < 0 ? -1 : 1;
    return { view: new Float32Array(view), centre, scale: [size / w, size / h, 1 / depth], cut: plane ? plane.map((x) => side * x) : [0, 0, 0, 0] };
  }

  function frame() {
    waiting = false;
    const ratio = Math.min(devicePixelRatio || 1, 2.5);
    const [w, h] = [Math.round(canvas.clientWidth * ratio), Math.round(canvas.clientHeight * ratio)];
    if (!w || !h) {
      return;
    }
    if (canvas.width !== w || canvas.height !== h) {
      [canvas.width, canvas.height] = [w, h];
    }
    const eye = camera();
    const near = 0.4 / depth; // Lines lie a little before the faces they belong to.
    draw.begin(w, h);
    const shown = parts.filter((part) => !off(kinds[part.kind][2]) && (part.kind !== 'sheet' || paintedBy === 'bare'));
    if (paintedBy !== 'bare' && shell) {
      draw.painted(shell.points, shell.swing, paintedBy === 'stress' ? shell.stress : shell.movement, shell.count, eye, paintedBy === 'swing' ? sway : 0, shell.bands);
    }
    for (const clear of [false, true]) {
      for (const part of shown.filter((p) => kinds[p.kind][1] < 1 === clear)) {
        const [name, opaque] = kinds[part.kind];
        const by = part.turns ? turn : 0;
        draw.faces(part.faces, part.faceCount, eye, by, [...colours[name], opaque]);
        const line = part.kind === 'sheet' ? 1.1 : 0.7;
        draw.lines(part.lines, part.lineCount, eye, by, [...colours['--sheet-line'], clear ? 0.55 : 0.9], line * ratio, near);
      }
      if (!clear && !off('moving') && path.length > 1) {
        if (wire) {
          draw.remove(wire);
        }
        wire = draw.buffer(new Float32Array(path.slice(1).flatMap((p, i) => [...path[i], ...p])));
        draw.lines(wire, path.length - 1, eye, 0, [...colours['--wire'], 1], 2.2 * ratio, 0);
      }
    }
    for (const one of outlines) {
      one.buffer ??= draw.buffer(new Float32Array(one.ends));
      // Before everything else: what is laid over is seen through the rest.
      draw.lines(one.buffer, one.ends.length / 6, eye, 0, [...colours[one.colour], 0.6], 1.3 * ratio, 0.5);
    }
    drawnAnew();
  }

  function ask() {
    if (!waiting) {
      waiting = true;
      requestAnimationFrame(frame);
    }
  }

  /** @param {number} by @param {number} up @param {number} nearer */
  function look(by, up, nearer) {
    yaw += by;
    pitch = Math.max(-90, Math.min(90, pitch + up));
    zoom = Math.max(0.3, Math.min(8, zoom * nearer));
    canvas.dataset.view = `${yaw.toFixed(1)} ${pitch.toFixed(1)}`;
    ask();
  }

  // The mouse turns, two fingers turn and bring nearer. One finger is left to the page: it scrolls.
  /** @type {Map<number, number[]>} */
  const fingers = new Map();
  const apart = () => {
    const [p, q] = [...fingers.values()];
    return Math.hypot(p[0] - q[0], p[1] - q[1]);
  };
  canvas.addEventListener('pointerdown', (e) => {
    canvas.setPointerCapture(e.pointerId);
    fingers.set(e.pointerId, [e.clientX, e.clientY]);
  });
  canvas.addEventListener('pointermove', (e) => {
    const old = fingers.get(e.pointerId);
    if (!old) {
      return;
    }
    const before = fingers.size === 2 ? apart() : 0;
    fingers.set(e.pointerId, [e.clientX, e.clientY]);
    const [by, up] = [(e.clientX - old[0]) * 0.5, (e.clientY - old[1]) * 0.5];
    if (fingers.size === 1 && e.pointerType !== 'touch') {
      look(by, up, 1);
    } else if (fingers.size === 2) {
      look(by / 2, up / 2, before > 0 ? apart() / before : 1);
    }
  });
  for (const touch of /** @type {const} */ (['touchstart', 'touchmove'])) {
    canvas.addEventListener(touch, (e) => e.touches.length > 1 && e.cancelable && e.preventDefault(), { passive: false });
  }
  for (const end of /** @type {const} */ (['pointerup', 'pointercancel'])) {
    canvas.addEventListener(end, (e) => fingers.delete(e.pointerId));
  }
  canvas.addEventListener('wheel', (e) => {
    if (e.ctrlKey) {
      e.preventDefault();
      look(0, 0, Math.exp(-e.deltaY * 0.01));
    }
  }, { passive: false });
  /** @type {Record<string, [number, number, number]>} */
  const keys = {
    ArrowLeft: [-10, 0, 1], ArrowRight: [10, 0, 1], ArrowUp: [0, -10, 1], ArrowDown: [0, 10, 1], '+': [0, 0, 1.15], '=': [0, 0, 1.15], '-': [0, 0, 1 / 1.15],
  };
  canvas.addEventListener('keydown', (e) => {
    if (keys[e.key] && !e.ctrlKey && !e.metaKey && !e.altKey) {
      e.preventDefault();
      look(...keys[e.key]);
    }
  });
  /** @type {NodeListOf<HTMLButtonElement>} */ (live.querySelectorAll('[data-yaw], [data-zoom]')).forEach((button) => button.addEventListener('click', () => {
    if (button.dataset.zoom) {
      look(0, 0, Number(button.dataset.zoom));
      return;
    }
    [yaw, pitch, zoom] = [Number(button.dataset.yaw), Number(button.dataset.pitch), 1];
    fit();
    ask();
  }));

  // The vibration is shown for some swings and then rests at its end; who wants no motion sees the end alone.
  let swinging = 0;
  /** @param {number} seconds */
  function vibrate(seconds) {
    cancelAnimationFrame(swinging);
    const began = performance.now();
    const step = (/** @type {number} */ now) => {
      const t = (now - began) / 1000;
      sway = t < seconds ? Math.sin(2 * Math.PI * t) : 1;
      frame();
      swinging = t < seconds ? requestAnimationFrame(step) : 0;
    };
    swinging = requestAnimationFrame(step);
  }
  /** @type {NodeListOf<HTMLInputElement>} */ (live.querySelectorAll('[name=paint]')).forEach((choice) => choice.addEventListener('change', () => {
    paintedBy = choice.value;
    cancelAnimationFrame(swinging);
    if (paintedBy === 'swing') {
      vibrate(matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : 8.25);
    }
    ask();
  }));
  boxes.forEach((box) => box.addEventListener('change', ask));
  canvas.addEventListener('webglcontextlost', (e) => e.preventDefault());
  canvas.addEventListener('webglcontextrestored', () => {
    draw = surface(canvas) ?? draw;
    outlines.forEach((one) => { delete one.buffer; });
    load();
    ask();
  });
  new ResizeObserver(ask).observe(canvas);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => {
    paint();
    ask();
  });
  load();
  paint();
  fit();

  // Called by the sweep: its picture's y runs down, this one's up.
  const follow = (/** @type {Picture.Pose} */ pose) => {
    turn = (-pose.turn * Math.PI) / 180;
    path = motion.wire(pose).map(([x, y]) => [x, -y, 0]);
    ask();
  };

  // Another bracket in the same place: it is seen from where the last one was, and as large.
  follow.change = (/** @type {Picture.SolidData} */ next, /** @type {Picture.Motion} */ itsMotion) => {
    parts.forEach((part) => [part.faces, part.lines].forEach(draw.remove));
    if (shell) {
      [shell.points, shell.swing, shell.stress, shell.movement].forEach(draw.remove);
    }
    const before = Math.hypot(...half);
    [data, motion] = [next, itsMotion];
    measure();
    fitted = fitted.map((size) => (size * Math.hypot(...half)) / before);
    load();
    if (!shell) {
      paintedBy = 'bare';
      cancelAnimationFrame(swinging);
    }
    ask();
  };
  follow.paint = () => {
    paint();
    ask();
  };
  follow.outline = (/** @type {Picture.Outline[]} */ next) => {
    outlines.forEach((one) => one.buffer && draw.remove(one.buffer));
    outlines = next.map(({ ends, colour }) => ({ ends, colour }));
    ask();
  };
  follow.cut = (/** @type {number[] | null} */ next) => {
    plane = next;
    ask();
  };
  follow.watch = (/** @type {() => void} */ told) => {
    drawnAnew = told;
    ask();
  };
  follow.place = (/** @type {number[]} */ point) => {
    const { view, scale } = camera();
    const seen = [0, 1].map((row) => scale[row] * point.reduce((sum, x, k) => sum + (x - centre[k]) * view[3 * k + row], 0));
    return [((1 + seen[0]) / 2) * canvas.clientWidth, ((1 - seen[1]) / 2) * canvas.clientHeight];
  };
  return follow;
}
