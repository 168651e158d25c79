import type { Id } from '../units/types';

/** Where an entry stands in the list of jobs. What is in the bin is gone only when it is deleted there. */
export const PLACES = ['jobs', 'archive', 'bin'] as const;
export type Place = (typeof PLACES)[number];

/** A job kept in the browser, without its text. */
export interface Kept {
  /** One opening of a job is one entry: the same file opened twice is kept twice where the two differ. */
  readonly key: string;
  readonly job: Id;
  readonly title: string;
  /** What a search in the list looks at, in small letters. */
  readonly find: string;
  /** ISO time, made by the caller. */
  readonly keptAt: string;
  /** Counts up with every keeping; who holds an older one has been overtaken by another tab. */
  readonly version: number;
  readonly place: Place;
}
/** A photo's picture, kept apart from the job's text, which names it. */
export interface Picture {
  readonly id: Id;
  /** As in the job file: base64 of a JPEG. */
  readonly data: string;
}
export interface KeptJob extends Kept {
  /** The job file without pictures. */
  readonly text: string;
  readonly pictures: readonly Picture[];
}
/** What is written: `pictures` only those the entry does not have yet. Where the entry stands stays as it was. */
export type Keeping = Omit<KeptJob, 'place'>;

export type KeepAnswer =
  | { readonly kept: true; readonly version: number }
  /** Another tab kept the same entry meanwhile; nothing was overwritten. Version 0: the entry is not there any more. */
  | { readonly kept: false; readonly version: number };

/** A state of a job that can be gone back to. */
export interface VersionMark {
  /** ISO time; one a job. */
  readonly at: string;
  /** Given by a person; null for those the program makes by itself, of which only the latest are kept. */
  readonly name: string | null;
}
export interface Version extends VersionMark {
  readonly text: string;
}
/** Versions the program makes by itself are kept up to this many a job. */
export const MOST_OWN_VERSIONS = 10;

/** Where jobs are kept between visits. Every call fails, with a `ShelfTrouble`, where the browser allows none. */
export interface Shelf {
  /** Latest first, all places. */
  list(): Promise<readonly Kept[]>;
  read(key: string): Promise<KeptJob | undefined>;
  /** `entry.version` is the version last read or kept, 0 for a new entry. Answered when it is on the disk. */
  keep(entry: Keeping): Promise<KeepAnswer>;
  place(key: string, place: Place): Promise<void>;
  /** For good, with its versions and pictures. */
  remove(key: string): Promise<void>;
  /** Latest first. */
  versions(key: string): Promise<readonly VersionMark[]>;
  version(key: string, at: string): Promise<Version | undefined>;
  addVersion(key: string, version: Version): Promise<void>;
  /** Calls back when all that was kept has been cleared away, or the connection to it was cut. */
  onGone(tell: () => void): () => void;
}

/**
 * full: no room left · newer: a newer version of the program has taken over what is kept · blocked: a tab with an
 * older version of the program holds it · other: not allowed here, or broken.
 */
export type TroubleKind = 'full' | 'newer' | 'blocked' | 'other';

export class ShelfTrouble extends Error {
  constructor(
    readonly kind: TroubleKind,
    say: string,
  ) {
    super(say);
  }
}

const KINDS: Readonly<Record<string, TroubleKind>> = { QuotaExceededError: 'full', VersionError: 'newer' };
export const troubleOf = (reason: unknown): ShelfTrouble => {
  if (reason instanceof ShelfTrouble) return reason;
  const { name, message } = reason instanceof Error ? reason : { name: '', message: String(reason) };
  return new ShelfTrouble(KINDS[name] ?? 'other', message || name);
};
