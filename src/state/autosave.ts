import type { StoreApi } from 'zustand/vanilla';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import type { JobState } from './jobState';
import type { Ports } from './ports';

/** From an edit to the browser's database: well within a second, and not on every key stroke. */
const WAIT_MS = 400;

interface Entry {
  readonly key: string;
  readonly version: number;
}

const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

/** Keeps the open job in the browser a moment after each change. Never overwrites what another tab kept meanwhile. */
export const makeAutosave = (store: StoreApi<JobState>, ports: Ports) => {
  let entry: Entry | null = null;
  let callOff: (() => void) | null = null;
  let waiting: Job | null = null;
  let writing: Promise<void> = Promise.resolve();

  const write = async (job: Job, to: Entry): Promise<void> => {
    const at = ports.clock();
    const text = saveJob(job);
    const say = { job: job.id, title: job.title, keptAt: at, text };
    let answer = await ports.shelf.keep({ ...to, ...say });
    let key = to.key;
    if (!answer.kept) {
      key = ports.newKey();
      answer = await ports.shelf.keep({ key, version: 0, ...say });
      ports.remember(key);
      store.setState({ parted: true, openKey: key });
    }
    if (entry?.key === to.key) entry = { key, version: answer.version };
    if (waiting === null) store.setState({ keeping: { phase: 'kept', at } });
  };

  /** Writes what waits, after whatever is being written. */
  const keepNow = (): Promise<void> => {
    callOff?.();
    callOff = null;
    writing = writing.then(async () => {
      const job = waiting;
      if (!job || !entry) return;
      waiting = null;
      try {
        await write(job, entry);
      } catch (reason) {
        waiting ??= job;
        store.setState({ keeping: { phase: 'failed', say: message(reason) } });
      }
    });
    return writing;
  };

  return {
    keepNow,
    /** From now on this entry is the one written to; version 0 is a new one. */
    openAs(next: Entry): void {
      entry = next;
      waiting = null;
      ports.remember(next.key);
      store.setState({ openKey: next.key });
    },
    changed(job: Job): void {
      waiting = job;
      store.setState({ keeping: { phase: 'waiting' } });
      callOff?.();
      callOff = ports.later(() => void keepNow(), WAIT_MS);
    },
  };
};
