// Lays a photograph square-on: each cell of the grid that the program found is drawn as two triangles.

/** Side of the picture (px). */
const side = 900;

/** So far each triangle reaches over its neighbours (px): no gap shows between them. */
const over = 0.6;

/**
 * The photograph as seen along the shaft, as the address of a JPEG.
 * @param {ImageBitmap} picture
 * @param {Page.PhotoGrid} grid
 */
export function squareOn(picture, { count, seen }) {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width: side, height: side });
  const to = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  to.fillStyle = '#ffffff';
  to.fillRect(0, 0, side, side);
  const step = side / (count - 1);
  // The grid's rows run up, the picture's down.
  const corner = (/** @type {number} */ column, /** @type {number} */ row) => {
    const i = 2 * (row * count + column);
    return { at: [column * step, side - row * step], from: [seen[i], seen[i + 1]] };
  };
  for (let row = 0; row < count - 1; row++) {
    for (let column = 0; column < count - 1; column++) {
      const [a, b, c, d] = [corner(column, row), corner(column + 1, row), corner(column + 1, row + 1), corner(column, row + 1)];
      triangle(to, picture, [a, b, c]);
      triangle(to, picture, [a, c, d]);
    }
  }
  return canvas.toDataURL('image/jpeg', 0.8);
}

/**
 * One triangle of the photograph, moved so that its corners are where they belong.
 * @param {CanvasRenderingContext2D} to
 * @param {ImageBitmap} picture
 * @param {{ at: number[], from: number[] }[]} corners
 */
function triangle(to, picture, [p, q, r]) {
  const [[ux, uy], [vx, vy]] = [q, r].map((one) => [one.from[0] - p.from[0], one.from[1] - p.from[1]]);
  const size = ux * vy - vx * uy;
  if (size === 0) {
    return;
  }
  // The affine map that takes the three places of the photograph to the three of the picture.
  const row = (/** @type {number} */ axis) => {
    const [du, dv] = [q.at[axis] - p.at[axis], r.at[axis] - p.at[axis]];
    const [along, down] = [(du * vy - dv * uy) / size, (dv * ux - du * vx) / size];
    return [along, down, p.at[axis] - along * p.from[0] - down * p.from[1]];
  };
  const [[a, c, e], [b, d, f]] = [row(0), row(1)];
  const middle = [0, 1].map((axis) => (p.at[axis] + q.at[axis] + r.at[axis]) / 3);
  to.save();
  to.beginPath();
  for (const { at } of [p, q, r]) {
    const [x, y] = [at[0] - middle[0], at[1] - middle[1]];
    const longer = 1 + over / Math.hypot(x, y);
    to.lineTo(middle[0] + longer * x, middle[1] + longer * y);
  }
  to.clip();
  to.setTransform(a, b, c, d, e, f);
  to.drawImage(picture, 0, 0);
  to.restore();
}
