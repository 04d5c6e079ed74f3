// Job files that are picked on the first screen or dropped anywhere on the page.

/** Longest profile that the program reads (bytes). */
const maxBytes = 2 ** 20;

/**
 * Their texts by name; what is too long for a profile is left out.
 * @param {Iterable<File>} files
 */
export async function texts(files) {
  const read = await Promise.all([...files].filter((file) => file.size <= maxBytes).map(async (file) => [file.name, await file.text()]));
  return Object.fromEntries(read);
}

/**
 * Takes files that are dropped where nothing else takes them.
 * @param {(files: Iterable<File>) => void} take
 */
export function dropped(take) {
  const hasFiles = (/** @type {DragEvent} */ event) => [...event.dataTransfer?.items ?? []].some((item) => item.kind === 'file') ?? false;
  addEventListener('dragover', (event) => {
    if (hasFiles(event)) {
      event.preventDefault();
      document.body.classList.toggle('dropping', !(event.target instanceof Element && event.target.closest('.drop')));
    }
  });
  addEventListener('dragleave', (event) => {
    if (!event.relatedTarget) {
      document.body.classList.remove('dropping');
    }
  });
  addEventListener('drop', (event) => {
    document.body.classList.remove('dropping');
    const isTaken = event.defaultPrevented;
    if (hasFiles(event)) {
      event.preventDefault();
      if (!isTaken && !/** @type {HTMLDialogElement | null} */ (document.querySelector('dialog[open]'))) {
        take(event.dataTransfer?.files ?? []);
      }
    }
  });
}
