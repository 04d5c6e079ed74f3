// A photograph of a target and a throttle body, drawn by a camera of its own. Millimetres on the face; pixels of the photograph.
export const [width, height] = [3200, 2400];

const focal = 3000;
const eye = [150, -60, 480];
const shaft = [6, -9];
const [shaftHeight, rimHeight] = [33, 28.5];
const [outer, pocketRadius, pocketAngle] = [34.5, 31.5, -20];
export const holes = [[-50, -22], [-50, 12]];
export const truth = { outer, pocketAngle };

const minus = (a, b) => a.map((x, i) => x - b[i]);
const dot = (a, b) => a.reduce((sum, x, i) => sum + x * b[i], 0);
const cross = ([a, b, c], [d, e, f]) => [b * f - c * e, c * d - a * f, a * e - b * d];
const unit = (a) => a.map((x) => x / Math.hypot(...a));
const ahead = unit(eye.map((x) => -x));
const right = unit(minus([1, 0, 0], ahead.map((x) => x * dot([1, 0, 0], ahead))));
const down = cross(ahead, right);

export function see(x, y, z) {
  const d = minus([x, y, z], eye);
  return [width / 2 + (focal * dot(d, right)) / dot(d, ahead), height / 2 + (focal * dot(d, down)) / dot(d, ahead)];
}

const round = (radius, degrees, z) => see(shaft[0] + radius * Math.cos((degrees * Math.PI) / 180), shaft[1] + radius * Math.sin((degrees * Math.PI) / 180), z);

/** What to click, by the name of the thing. */
export const clicks = {
  ...Object.fromEntries([[-80, -105], [0, -105], [80, -105], [80, 0], [80, 105], [0, 105], [-80, 105], [-80, 0]].map(([x, y], i) => [`mark${i + 1}`, [see(x, y, 0)]])),
  shaft: [see(...shaft, shaftHeight)],
  edge: Array.from({ length: 9 }, (_, i) => round(outer, -20 + 17 * i, rimHeight)),
  pocket: [round(pocketRadius, pocketAngle, rimHeight)],
  hole1: [see(shaft[0] + holes[0][0], shaft[1] + holes[0][1], 0)],
  hole2: [see(shaft[0] + holes[1][0], shaft[1] + holes[1][1], 0)],
};

/** The photograph as a PNG, drawn in the browser. */
export const picture = (page) => page.evaluate(async ({ width: w, height: h, places, rim, disc }) => {
  const canvas = new OffscreenCanvas(w, h);
  const to = canvas.getContext('2d');
  to.fillStyle = '#8d8f8c';
  to.fillRect(0, 0, w, h);
  const line = (points, colour) => {
    to.fillStyle = colour;
    to.beginPath();
    points.forEach(([x, y]) => to.lineTo(x, y));
    to.fill();
  };
  line(disc, '#f5f4ef');
  line(rim, '#5a5248');
  for (const [x, y] of places) {
    to.fillStyle = '#111';
    to.beginPath();
    to.arc(x, y, 14, 0, 7);
    to.fill();
    to.fillStyle = '#fff';
    to.fillRect(x - 2, y - 2, 4, 4);
  }
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  return [...new Uint8Array(await blob.arrayBuffer())];
}, { width, height, places: Object.values(clicks).flat(), rim: Array.from({ length: 90 }, (_, i) => round(outer, 4 * i, rimHeight)), disc: [[-100, -140], [100, -140], [100, 140], [-100, 140]].map(([x, y]) => see(x, y, 0)) });
