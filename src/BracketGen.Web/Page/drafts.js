// What was typed and not saved is kept beside the job: nothing is lost when browser, program or machine stop.
import { asked } from './asking.js';

/** How long the page waits after a change before it keeps it (ms). */
const rest = 700;

export class Drafts {
  /** @param {import('./desk.js').Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.timer = 0;
    /** The job of the draft that is kept; empty without one. */
    this.job = '';
    /** What was kept last. */
    this.kept = '';
    addEventListener('pagehide', () => this.now(true));
  }

  /** Something changed: it is kept in a moment. */
  changed() {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.now(false), rest);
  }

  /**
   * Another job is open.
   * @param {string} job The job whose draft the folder has; empty without one.
   */
  opened(job) {
    clearTimeout(this.timer);
    Object.assign(this, { job, kept: '' });
  }

  /** Nothing of it is to be kept any more. */
  drop() {
    clearTimeout(this.timer);
    return this.put(this.job, {});
  }

  /** @param {boolean} isLeaving Whether the page goes away: nobody waits for the answer. */
  async now(isLeaving) {
    const { desk } = this;
    clearTimeout(this.timer);
    if (!desk.isOpen) {
      return;
    }
    const { files } = desk.message({});
    const isTyped = desk.past.length > 0 && desk.unsaved.some((path) => path in files);
    if (this.job && (!isTyped || this.job !== desk.job)) {
      await this.put(this.job, {});
    }
    if (isTyped) {
      await this.put(desk.job, files, isLeaving);
    }
  }

  /**
   * @param {string} job
   * @param {Record<string, string>} files
   */
  async put(job, files, keepalive = false) {
    const text = JSON.stringify({ job, files });
    if (!job || text === this.kept) {
      return;
    }
    const isEmpty = Object.keys(files).length === 0;
    Object.assign(this, { kept: text, job: isEmpty ? '' : job });
    try {
      if (keepalive) {
        fetch('/keep', { method: 'POST', headers: { 'content-type': 'application/json' }, body: text, keepalive });
      } else {
        await asked('/keep', { job, files });
      }
    } catch {
      // A folder that cannot be written is said when the user saves; a program that is away is said already.
      this.kept = '';
    }
  }
}
