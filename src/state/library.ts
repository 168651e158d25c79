import type { StoreApi } from 'zustand/vanilla';
import { openJob } from '../job/parse';
import { picturesOf, withoutPictures, withPictures } from '../job/pictures';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import { type KeptJob, type Place, type Shelf, troubleOf } from '../storage/shelf';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { stateWords as say } from '../words/en/state';
import type { JobState } from './jobState';
import type { Ports } from './ports';

/** A job as it was kept, with its pictures; `repairs` is what an older file needed. */
export const openEntry = (
  entry: Pick<KeptJob, 'text' | 'pictures'>,
): Result<{ readonly job: Job; readonly repairs: readonly string[] }, Fault> => {
  const opened = openJob(entry.text);
  if (!opened.ok) return opened;
  const pictures = new Map(entry.pictures.map(({ id, data }) => [id, data]));
  return ok({ job: withPictures(opened.value.job, pictures), repairs: opened.value.repairs });
};

const notKept = (): Result<never, Fault> => err({ error: { type: 'not-kept', path: '', say: say.notKept } });

/** The kept jobs as a list, and the versions of the open one. */
export const makeLibrary = (store: StoreApi<JobState>, ports: Ports, keepNow: () => Promise<void>) => {
  const { shelf } = ports;
  /** What the shelf refuses is said where the jobs are. */
  const attempt = async (work: () => Promise<void>): Promise<void> => {
    try {
      await work();
    } catch (reason) {
      const { message } = troubleOf(reason);
      const fault: Fault = { error: { type: 'not-kept', path: '', say: message } };
      store.setState({ refusal: { fault, what: say.keptJobs, doing: 'editing' } });
    }
  };
  const refreshKept = async (): Promise<void> => {
    try {
      store.setState({ kept: await shelf.list() });
    } catch (reason) {
      const { kind, message } = troubleOf(reason);
      store.setState({ keeping: { phase: 'failed', why: kind, say: message } });
    }
  };
  const refreshVersions = (): Promise<void> =>
    attempt(async () => {
      const { openKey } = store.getState();
      store.setState({ versions: openKey === null ? [] : await shelf.versions(openKey) });
    });

  const change = async (work: (on: Shelf) => Promise<unknown>): Promise<void> => {
    await attempt(async () => void (await work(shelf)));
    await refreshKept();
  };

  const copy = async (key: string): Promise<Result<null, Fault>> => {
    const entry = await shelf.read(key);
    if (!entry) return notKept();
    const opened = openEntry(entry);
    if (!opened.ok) return opened;
    const id = ports.newKey();
    const job: Job = { ...opened.value.job, id, title: say.copyOf({ title: entry.title }).slice(0, 4000) };
    const pictures = [...picturesOf(job)].map(([photo, data]) => ({ id: photo, data }));
    const about = { job: id, title: job.title, find: `${say.copyOf({ title: entry.find })}`.toLowerCase() };
    const text = saveJob(withoutPictures(job));
    await shelf.keep({ key: ports.newKey(), version: 0, keptAt: ports.clock(), ...about, text, pictures });
    return ok(null);
  };

  return {
    refreshKept,
    refreshVersions,
    /** Into the archive, the bin, or back. The job that is open here is left where it is. */
    placeKept: (key: string, place: Place): Promise<void> =>
      store.getState().openKey === key ? Promise.resolve() : change((on) => on.place(key, place)),
    /** For good. */
    removeKept: (key: string): Promise<void> =>
      store.getState().openKey === key ? Promise.resolve() : change((on) => on.remove(key)),
    async duplicateKept(key: string): Promise<void> {
      await keepNow();
      await attempt(async () => {
        const done = await copy(key);
        if (!done.ok) store.setState({ refusal: { fault: done.error, what: say.keptJob, doing: 'opening' } });
      });
      await refreshKept();
    },
    /** Puts the open job by as it is now, under a name. */
    async nameVersion(name: string): Promise<void> {
      await keepNow();
      const { openKey, history } = store.getState();
      if (openKey === null || !history) return;
      const text = saveJob(withoutPictures(history.now));
      await attempt(() => shelf.addVersion(openKey, { at: ports.clock(), name, text }));
      await refreshVersions();
    },
    /** A version of the open job with the pictures it names; null where there is none any more. */
    async versionOf(at: string): Promise<Result<Job, Fault>> {
      const { openKey } = store.getState();
      if (openKey === null) return notKept();
      const [version, entry] = await Promise.all([shelf.version(openKey, at), shelf.read(openKey)]);
      if (!version) return notKept();
      const opened = openEntry({ text: version.text, pictures: entry?.pictures ?? [] });
      return opened.ok ? ok(opened.value.job) : opened;
    },
  };
};
