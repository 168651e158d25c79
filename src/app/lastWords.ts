import { withoutPictures } from '../job/pictures';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import type { JobStore } from '../state/jobStore';
import type { Shelf } from '../storage/shelf';

/**
 * A change made so shortly before the tab was left that the browser's database cannot take it any more: a page that
 * goes away gets no answers from it. Its text is put where writing is immediate, and into the database next time.
 */
interface Words {
  /** When the entry was kept last: still so next time, nobody else has written to it. */
  readonly keptAt: string;
  readonly title: string;
  readonly text: string;
}
const nameOf = (key: string): string => `last-words ${key}`;

const say = (key: string, words: Words): void => {
  try {
    localStorage.setItem(nameOf(key), JSON.stringify(words));
  } catch {
    // no room, or not allowed: what the database gets in time is all there is
  }
};
const forget = (key: string): void => {
  try {
    localStorage.removeItem(nameOf(key));
  } catch {
    // nothing was said either
  }
};

/** Answers what to do when the tab is left with a change that waits to be kept. */
export const listen = (store: JobStore): (() => void) => {
  let keptAt: string | null = null;
  store.subscribe(() => {
    const { keeping, openKey } = store.getState();
    if (keeping.phase !== 'kept' || keeping.at === keptAt) return;
    keptAt = keeping.at;
    if (openKey !== null) forget(openKey);
  });
  return () => {
    const { openKey, history } = store.getState();
    const job: Job | undefined = history?.now;
    if (openKey !== null && job && keptAt !== null)
      say(openKey, { keptAt, title: job.title, text: saveJob(withoutPictures(job)) });
  };
};

/** Keeps what was said last about an entry; as an entry of its own where another tab has written to it since. */
export const hear = async (key: string, shelf: Pick<Shelf, 'read' | 'keep'>, newKey: () => string): Promise<void> => {
  try {
    const said = localStorage.getItem(nameOf(key));
    if (said === null) return;
    const { keptAt, title, text } = JSON.parse(said) as Words;
    const entry = await shelf.read(key);
    if (entry && entry.text !== text) {
      const parted = entry.keptAt !== keptAt;
      await shelf.keep({ ...entry, title, text, ...(parted ? { key: newKey(), version: 0 } : { pictures: [] }) });
    }
    forget(key);
  } catch (reason) {
    console.warn('What was changed last could not be kept:', reason); // the job opens as it was kept before
  }
};
