// The files of a new job: profiles that are picked or still to be measured, and the job that names them.
import { asked } from './asking.js';
import { relativeTo, stem } from './paths.js';
import { fill, words } from './words.js';

/** What the job may measure: its folder and its kind. */
const measured = { body: ['throttle-bodies', 'throttle body'], vehicle: ['vehicles', 'vehicle'] };

/** Longest part number and title that a job takes. */
const [maxNumber, maxTitle] = [30, 100];

/**
 * @param {string} kind
 * @param {string} name
 */
const emptyProfile = (kind, name) =>
  `#:schema ../schemas/${kind.replace(' ', '-')}.schema.json\nprofile = "${kind}"\nname = ${JSON.stringify(name)}\n\n# ${words.newJob.unitsRemark}\n`;

/**
 * The opened job, and the profiles in it that are to be measured.
 * @param {Page.Wish} wish
 * @returns {Promise<{ opened: Page.Opened, toMeasure: Page.ToMeasure[] }>}
 */
export async function newJob(wish) {
  /** @type {Record<string, string>} */
  const files = {};
  /** @type {Page.ToMeasure[]} */
  const toMeasure = [];

  /** @param {'body' | 'vehicle' | 'shop'} id */
  async function taken(id) {
    const { source, name, slug } = wish[id];
    if (source === 'measure' && id !== 'shop') {
      const [folder, kind] = measured[id];
      const path = `${folder}/${slug}.toml`;
      files[path] = emptyProfile(kind, name);
      toMeasure.push({ path, kind, label: words.profiles[id] });
      return path;
    }
    const [from, ...rest] = source.split(' ');
    const path = rest.join(' ');
    files[path] = (await asked('/read', { path, example: from === 'example' })).text;
    return path;
  }

  const [body, vehicle, shop] = [await taken('body'), await taken('vehicle'), await taken('shop')];
  const job = `jobs/${stem(vehicle)}-${stem(body)}.toml`;
  files[job] = jobText(files, job, body, vehicle, shop);
  return { opened: { job, files, values: {} }, toMeasure };
}

/**
 * @param {Record<string, string>} files
 * @param {string} job
 * @param {string} body
 * @param {string} vehicle
 * @param {string} shop
 */
function jobText(files, job, body, vehicle, shop) {
  const name = (/** @type {string} */ path) => files[path].match(/^name = "(.*)"$/m)?.[1] ?? stem(path);
  const number = `${stem(vehicle)}-${stem(body)}`.toUpperCase().slice(0, maxNumber);
  const title = fill(words.newJob.title, { vehicle: name(vehicle), body: name(body) }).slice(0, maxTitle);
  return [
    '#:schema ../schemas/job.schema.json', 'profile = "job"', '',
    `throttle_body = "${relativeTo(job, body)}"`, `vehicle = "${relativeTo(job, vehicle)}"`, `shop = "${relativeTo(job, shop)}"`, 'units = "mm"', '',
    '[document]', `part_number = "${number}"`, 'revision = "A"', `title = "${title}"`, '',
  ].join('\n');
}
