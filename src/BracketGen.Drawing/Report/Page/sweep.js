// The moving picture: quadrant and wire follow a slider. The numbers are those of the page's own table; only lines are computed here.
/** @param {Picture.SweepData} data @returns {Picture.Motion} */
function sweepMotion(data) {
  const last = data.turns.length - 1;
  const mix = (/** @type {number[]} */ values, /** @type {number} */ i, /** @type {number} */ part) => values[i] + part * (values[Math.min(i + 1, last)] - values[i]);
  const groove = (/** @type {number} */ k) => [data.groove[2 * k], data.groove[2 * k + 1]];

  // Where everything is at a place between two positions: the steps are so small that a straight line joins them.
  /** @param {number} place */
  function at(place) {
    const i = Math.min(Math.floor(place), last);
    const part = place - i;
    const next = Math.min(i + 1, last);
    return {
      nearest: Math.round(place),
      turn: mix(data.turns, i, part),
      wrap: mix(data.wraps, i, part),
      from: [0, 1].map((k) => data.from[2 * i + k] + part * (data.from[2 * next + k] - data.from[2 * i + k])),
    };
  }

  // The wire from the fitting over the groove to the seat.
  /** @param {Picture.Pose} pose */
  function wire(pose) {
    const turn = (pose.turn * Math.PI) / 180;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const points = [];
    for (let k = 0; k * data.grooveStep < pose.wrap && 2 * k < data.groove.length; k++) {
      const [x, y] = groove(k);
      points.push([c * x - s * y, s * x + c * y]);
    }
    points.push(pose.from, data.seat);
    return points;
  }

  // The place between the positions at a part of the pedal's stroke.
  /** @param {number} part */
  function placeOf(part) {
    const i = Math.max(0, data.pedal.findIndex((_, k) => k === last || data.pedal[k + 1] >= part));
    const step = i < last ? data.pedal[i + 1] - data.pedal[i] : 0;
    return step > 0 ? i + Math.min(1, Math.max(0, (part - data.pedal[i]) / step)) : i;
  }

  return { at, wire, placeOf };
}

/** @param {Picture.Motion} motion @param {(pose: Picture.Pose) => void} onMove */
function sweepPicture(motion, onMove, start = 0) {
  const live = document.getElementById('sweep-live');
  const still = document.querySelector('.stills svg');
  if (!live || !still) {
    return null;
  }
  const picture = /** @type {Element} */ (still.cloneNode(true));
  picture.setAttribute('aria-label', 'Quadrant, wire, outer and bracket seen along the throttle shaft, at the pedal position of the slider');
  live.prepend(picture);
  /** @type {HTMLInputElement} */ (live.querySelector('input')).after(/** @type {Element} */ (document.querySelector('#sweep .pedal')));
  live.hidden = false;

  const slider = /** @type {HTMLInputElement} */ (document.getElementById('sweep-at'));
  const play = /** @type {HTMLElement} */ (document.getElementById('sweep-play'));
  const rows = [...document.querySelectorAll('#sweep-table tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent));
  const numbers = [...document.querySelectorAll('#sweep-numbers dd')];
  const turning = picture.querySelectorAll('.turning');
  const path = /** @type {Element} */ (picture.querySelector('.wire'));
  let shown = -1;

  // Part of the pedal's stroke, from 0 to 1.
  /** @param {number} pedal */
  function show(pedal) {
    const pose = motion.at(motion.placeOf(pedal));
    slider.value = String(Math.round(100 * pedal));
    turning.forEach((part) => part.setAttribute('transform', `rotate(${pose.turn.toFixed(3)})`));
    path.setAttribute('d', `M${motion.wire(pose).map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`);
    if (pose.nearest !== shown) {
      shown = pose.nearest;
      const [name, ...values] = rows[shown];
      numbers.forEach((number, i) => { number.textContent = values[i]; });
      slider.setAttribute('aria-valuetext', `${name}: opening ${values[0]}, pedal ${values[1]}`);
    }
    onMove(pose);
  }

  let timer = 0;
  function stop() {
    cancelAnimationFrame(timer);
    timer = 0;
    play.textContent = 'Play';
  }

  // Down slowly, as a foot does; back quickly, as springs do.
  function run() {
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      show(Number(slider.value) < 100 ? 1 : 0);
      return;
    }
    const [down, hold, back] = [3000, 500, 700];
    let began = 0;
    play.textContent = 'Pause';
    /** @param {number} now */
    function step(now) {
      began = began || now;
      const t = now - began;
      if (t >= down + hold + back) {
        show(0);
        stop();
        return;
      }
      show(t < down ? t / down : t < down + hold ? 1 : 1 - (t - down - hold) / back);
      timer = requestAnimationFrame(step);
    }
    timer = requestAnimationFrame(step);
  }

  play.addEventListener('click', () => (timer ? stop() : run()));
  slider.addEventListener('input', () => {
    stop();
    show(Number(slider.value) / 100);
  });
  show(start);
  return { stop, pedal: () => Number(slider.value) / 100 };
}
