import type { StoreApi } from 'zustand/vanilla';
import { type Pictures, picturesOf, withoutPictures } from '../job/pictures';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import { type Kept, troubleOf } from '../storage/shelf';
import type { JobState } from './jobState';
import type { Ports } from './ports';
import { makeVersionKeeping } from './versionKeeping';

/** From one writing to the next. The first edit after a rest is written at once, those that follow together. */
const APART_MS = 200;

/** The entry of the shelf that is written to; version 0 is a new one. */
export interface Entry {
  readonly key: string;
  readonly version: number;
  /** Pictures the entry has already. */
  readonly pictures: Pictures;
}

/** What a search in the list of jobs looks at. */
const findOf = (job: Job): string =>
  [job.title, job.code.place, ...Object.values(job.people.customer)].join(' ').toLowerCase().slice(0, 400);

/** Keeps the open job in the browser a moment after each change. Never overwrites what another tab kept meanwhile. */
export const makeAutosave = (store: StoreApi<JobState>, ports: Ports) => {
  let entry: Entry | null = null;
  let callOff: (() => void) | null = null;
  let waiting: Job | null = null;
  let writing: Promise<void> = Promise.resolve();
  let lastWritten = Number.NEGATIVE_INFINITY;
  const versions = makeVersionKeeping(store, ports);

  const keep = async (job: Job, text: string, at: string, to: Entry) => {
    const pictures = picturesOf(job);
    const fresh = [...pictures]
      .filter(([id, data]) => to.pictures.get(id) !== data)
      .map(([id, data]) => ({ id, data }));
    const say: Omit<Kept, 'place'> = { ...{ key: to.key, version: to.version, keptAt: at }, ...aboutOf(job) };
    const answer = await ports.shelf.keep({ ...say, text, pictures: fresh });
    return { ...answer, pictures: new Map([...to.pictures, ...pictures]) };
  };
  const aboutOf = (job: Job) => ({ job: job.id, title: job.title, find: findOf(job) });

  const write = async (job: Job, to: Entry): Promise<void> => {
    const at = ports.clock();
    const text = saveJob(withoutPictures(job));
    let key = to.key;
    let answer = await keep(job, text, at, to);
    if (!answer.kept && answer.version === 0) {
      // cleared away under it: all of it anew
      answer = await keep(job, text, at, { key, version: 0, pictures: new Map() });
      if (answer.kept) store.setState({ cleared: true });
    }
    if (!answer.kept) {
      key = ports.newKey();
      answer = await keep(job, text, at, { key, version: 0, pictures: new Map() });
      hold(key);
      store.setState({ parted: true });
    }
    if (entry?.key === to.key) entry = { key, version: answer.version, pictures: answer.pictures };
    if (waiting === null) store.setState({ keeping: { phase: 'kept', at } });
    ports.tabs.tell(key);
    await versions.after(key, { at, text });
  };

  /** This tab's entry from now on. */
  const hold = (key: string): void => {
    ports.remember(key);
    store.setState({ openKey: key });
  };

  /** Writes what waits, after whatever is being written. */
  const keepNow = (): Promise<void> => {
    callOff?.();
    callOff = null;
    writing = writing.then(async () => {
      const job = waiting;
      if (!job || !entry) return;
      waiting = null;
      lastWritten = Date.parse(ports.clock());
      try {
        await write(job, entry);
      } catch (reason) {
        waiting ??= job;
        const { kind, message } = troubleOf(reason);
        store.setState({ keeping: { phase: 'failed', why: kind, say: message } });
      }
    });
    return writing;
  };

  ports.shelf.onGone(() => {
    const job = store.getState().history?.now;
    if (!job || !entry) return;
    waiting ??= job;
    void keepNow();
  });

  return {
    keepNow,
    /** Nothing waits to be written. */
    isQuiet: (): boolean => waiting === null,
    /** From now on this entry is the one written to. `before` is the state it has now. */
    openAs(next: Entry, before: { readonly at: string; readonly text: string } | null): void {
      entry = next;
      waiting = null;
      versions.start(before);
      hold(next.key);
    },
    changed(job: Job): void {
      waiting = job;
      store.setState({ keeping: { phase: 'waiting' } });
      // not put off by further changes: a hand that never rests is kept all the same
      const rested = Date.parse(ports.clock()) - lastWritten;
      callOff ??= ports.later(() => void keepNow(), Math.min(APART_MS, Math.max(0, APART_MS - rested)));
    },
  };
};
