import { compareText } from '../units/order';
import { type Database, openDatabase, STORES } from './database';
import { type KeepAnswer, type Keeping, MOST_OWN_VERSIONS, type Shelf, ShelfTrouble, troubleOf } from './shelf';

const NAME = 'backboard';
/** On the disk before it is answered: what a person was told is kept outlives a crash. */
const DURABLE = { durability: 'strict' } as const;
/** All keys of one entry in a store keyed by entry and something. */
const allOf = (key: string): IDBKeyRange => IDBKeyRange.bound([key], [key, []]);

interface Connection {
  readonly opened: Promise<Database>;
  /** Fails as soon as another tab is in the way. */
  readonly held: Promise<never>;
}

/** Jobs in the browser's own database. */
export const idbShelf = (name: string = NAME): Shelf => {
  let db: Connection | null = null;
  const gone = new Set<() => void>();
  const lost = (cleared: boolean): void => {
    db = null;
    if (cleared) for (const tell of gone) tell();
  };
  const connect = (): Connection => {
    let blocked = (): void => undefined;
    const held = new Promise<never>((_, reject) => {
      blocked = () => reject(new ShelfTrouble('blocked', 'blocked'));
    });
    const opened = openDatabase(name, { lost, blocked }).catch((reason: unknown) => {
      db = null; // a later try may be allowed
      throw reason;
    });
    for (const one of [opened, held]) one.catch(() => undefined); // told to whoever asks for it
    return { opened, held };
  };
  /** While an older tab holds it every call fails at once, and none once it has let go. */
  const get = (): Promise<Database> => {
    db ??= connect();
    return Promise.race([db.opened, db.held]);
  };
  const run = async <T>(work: (db: Database) => Promise<T>, again = true): Promise<T> => {
    try {
      return await work(await get());
    } catch (reason) {
      // the connection was cut under it: once more with a new one
      if (again && db === null && reason instanceof Error && /^(InvalidState|Abort)Error$/.test(reason.name))
        return run(work, false);
      throw troubleOf(reason);
    }
  };

  const write = async (on: Database, { text, pictures, ...entry }: Keeping): Promise<KeepAnswer> => {
    const work = on.transaction(['jobs', 'texts', 'pictures'], 'readwrite', DURABLE);
    const [jobs, texts, photos] = [work.objectStore('jobs'), work.objectStore('texts'), work.objectStore('pictures')];
    const there = await jobs.get(entry.key);
    if ((there?.version ?? 0) !== entry.version) {
      await work.done;
      return { kept: false, version: there?.version ?? 0 };
    }
    const version = entry.version + 1;
    const done = [
      jobs.put({ ...entry, version, place: there?.place ?? 'jobs' }),
      texts.put({ key: entry.key, text }),
      ...pictures.map((picture) => photos.put({ ...picture, entry: entry.key })),
      work.done,
    ];
    await Promise.all(done);
    return { kept: true, version };
  };

  return {
    list: () =>
      run(async (on) => {
        const all = await on.getAll('jobs');
        return all.sort((a, b) => compareText(b.keptAt, a.keptAt) || compareText(a.key, b.key));
      }),
    read: (key) =>
      run(async (on) => {
        const work = on.transaction(['jobs', 'texts', 'pictures']);
        const [entry, text, pictures] = await Promise.all([
          work.objectStore('jobs').get(key),
          work.objectStore('texts').get(key),
          work.objectStore('pictures').getAll(allOf(key)),
        ]);
        if (!entry || !text) return undefined;
        return { ...entry, text: text.text, pictures: pictures.map(({ id, data }) => ({ id, data })) };
      }),
    keep: (entry) => run((on) => write(on, entry)),
    place: (key, place) =>
      run(async (on) => {
        const work = on.transaction('jobs', 'readwrite', DURABLE);
        const entry = await work.store.get(key);
        if (entry) await work.store.put({ ...entry, place });
        await work.done;
      }),
    remove: (key) =>
      run(async (on) => {
        const work = on.transaction(STORES, 'readwrite', DURABLE);
        await Promise.all([
          work.objectStore('jobs').delete(key),
          work.objectStore('texts').delete(key),
          work.objectStore('pictures').delete(allOf(key)),
          work.objectStore('versions').delete(allOf(key)),
          work.done,
        ]);
      }),
    versions: (key) =>
      run(async (on) => {
        const all = await on.getAll('versions', allOf(key));
        return all.map(({ at, name: given }) => ({ at, name: given })).reverse();
      }),
    version: (key, at) =>
      run(async (on) => {
        const found = await on.get('versions', [key, at]);
        return found && { at: found.at, name: found.name, text: found.text };
      }),
    addVersion: (key, version) =>
      run(async (on) => {
        const work = on.transaction('versions', 'readwrite', DURABLE);
        await work.store.put({ ...version, entry: key });
        const own = (await work.store.getAll(allOf(key))).filter((v) => v.name === null);
        for (const old of own.slice(0, -MOST_OWN_VERSIONS)) await work.store.delete([key, old.at]);
        await work.done;
      }),
    onGone(tell) {
      gone.add(tell);
      return () => gone.delete(tell);
    },
  };
};
