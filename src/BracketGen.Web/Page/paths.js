// Paths of profiles, with forward slashes.

/**
 * The path of a file that another file names.
 * @param {string} from
 * @param {string} relative
 */
export function beside(from, relative) {
  /** @type {string[]} */
  const kept = [];
  for (const part of [...from.split('/').slice(0, -1), ...relative.split('/')]) {
    if (part === '..' && kept.length && kept.at(-1) !== '..') {
      kept.pop();
    } else if (part && part !== '.') {
      kept.push(part);
    }
  }
  return kept.join('/');
}

/**
 * How one file names another.
 * @param {string} from
 * @param {string} path
 */
export function relativeTo(from, path) {
  const [folder, there] = [from.split('/').slice(0, -1), path.split('/')];
  let same = 0;
  while (same < folder.length && same < there.length - 1 && folder[same] === there[same]) {
    same++;
  }
  return [...folder.slice(same).map(() => '..'), ...there.slice(same)].join('/');
}

/**
 * What a name becomes in a path.
 * @param {string} name
 */
export const slug = (name) => name.toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 60);

/**
 * The path itself, or with a number where it is taken.
 * @param {string} path
 * @param {(path: string) => boolean} isTaken
 */
export function freePath(path, isTaken) {
  for (let number = 1; ; number++) {
    const other = number === 1 ? path : path.replace(/(\.\w+)$/, `-${number}$1`);
    if (!isTaken(other)) {
      return other;
    }
  }
}

/**
 * The last part of a path, without its ending.
 * @param {string} path
 */
export const stem = (path) => (path.split('/').at(-1) ?? '').replace('.toml', '');
