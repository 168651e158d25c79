import { type DBSchema, type IDBPDatabase, openDB, type StoreNames } from 'idb';
import type { Kept, Picture, Version } from './shelf';

/** The browser's database of jobs: what is listed apart from the long texts, so that a thousand jobs list at once. */
export interface Schema extends DBSchema {
  jobs: { key: string; value: Kept };
  texts: { key: string; value: { readonly key: string; readonly text: string } };
  pictures: { key: [string, string]; value: Picture & { readonly entry: string } };
  versions: { key: [string, string]; value: Version & { readonly entry: string } };
}
export type Database = IDBPDatabase<Schema>;
export const STORES = ['jobs', 'texts', 'pictures', 'versions'] as const satisfies readonly StoreNames<Schema>[];

/** 1: one store, each job with its text. 2: texts, pictures and versions apart. */
export const DATABASE_NOW = 2;

/** What version 1 kept of a job. */
interface First {
  readonly key: string;
  readonly job: string;
  readonly title: string;
  readonly keptAt: string;
  readonly version: number;
  readonly text: string;
}

interface Told {
  /** This connection is of no use any more; `cleared`: with all that was kept. */
  readonly lost: (cleared: boolean) => void;
  /** A tab with an older version of the program holds it; it is waited for. */
  readonly blocked: () => void;
}

/** Opens it, bringing what an older program kept up to date. Jobs of every version ever shipped stay. */
export const openDatabase = (name: string, { lost, blocked }: Told): Promise<Database> =>
  openDB<Schema>(name, DATABASE_NOW, {
    async upgrade(db, from, _to, work) {
      if (from < 1) db.createObjectStore('jobs', { keyPath: 'key' });
      if (from < 2) {
        db.createObjectStore('texts', { keyPath: 'key' });
        db.createObjectStore('pictures', { keyPath: ['entry', 'id'] });
        db.createObjectStore('versions', { keyPath: ['entry', 'at'] });
      }
      if (from === 1)
        for (let at = await work.objectStore('jobs').openCursor(); at; at = await at.continue()) {
          const { text, ...entry } = at.value as unknown as First;
          await work.objectStore('texts').put({ key: entry.key, text });
          await at.update({ ...entry, find: entry.title.toLowerCase(), place: 'jobs' });
        }
    },
    blocked,
    blocking(_now, wanted, event) {
      // a newer version of the program waits in another tab, or all is being cleared
      (event.target as IDBDatabase).close();
      lost(wanted === null);
    },
    terminated: () => lost(true),
  });
