import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { compareText } from '../units/order';
import type { KeepAnswer, Kept, KeptJob, Shelf } from './shelf';

interface Schema extends DBSchema {
  jobs: { key: string; value: KeptJob };
}
const NAME = 'backboard';
const VERSION = 1;

const open = (name: string): Promise<IDBPDatabase<Schema>> =>
  openDB<Schema>(name, VERSION, {
    upgrade(db) {
      db.createObjectStore('jobs', { keyPath: 'key' });
    },
    blocking(_now, _wanted, event) {
      // a newer version of the app waits in another tab
      (event.target as IDBDatabase).close();
    },
  });

const withoutText = ({ key, job, title, keptAt, version }: KeptJob): Kept => ({ key, job, title, keptAt, version });

/** Jobs in the browser's own database. Every call fails, with the browser's reason, where it allows none. */
export const idbShelf = (name: string = NAME): Shelf => {
  let db: Promise<IDBPDatabase<Schema>> | null = null;
  const get = (): Promise<IDBPDatabase<Schema>> => {
    db ??= open(name).catch((reason: unknown) => {
      db = null; // a later try may be allowed
      throw reason;
    });
    return db;
  };
  return {
    async list() {
      const all = await (await get()).getAll('jobs');
      return all.map(withoutText).sort((a, b) => compareText(b.keptAt, a.keptAt) || compareText(a.key, b.key));
    },
    async read(key) {
      return (await get()).get('jobs', key);
    },
    async keep(entry): Promise<KeepAnswer> {
      const work = (await get()).transaction('jobs', 'readwrite');
      const there = (await work.store.get(entry.key))?.version ?? 0;
      if (there !== entry.version) {
        await work.done;
        return { kept: false, version: there };
      }
      const version = there + 1;
      await work.store.put({ ...entry, version });
      await work.done;
      return { kept: true, version };
    },
    async remove(key) {
      await (await get()).delete('jobs', key);
    },
  };
};
