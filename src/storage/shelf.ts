import type { Id } from '../units/types';

/** A job kept in the browser, without its text. */
export interface Kept {
  /** One opening of a job is one entry: the same file opened twice is kept twice where the two differ. */
  readonly key: string;
  readonly job: Id;
  readonly title: string;
  /** ISO time, made by the caller. */
  readonly keptAt: string;
  /** Counts up with every keeping; who holds an older one has been overtaken by another tab. */
  readonly version: number;
}
export interface KeptJob extends Kept {
  /** The job file, as it would be saved to disk. */
  readonly text: string;
}
export type KeepAnswer =
  | { readonly kept: true; readonly version: number }
  /** Another tab kept the same entry meanwhile; nothing was overwritten. */
  | { readonly kept: false; readonly version: number };

/** Where jobs are kept between visits. */
export interface Shelf {
  /** Latest first. */
  list(): Promise<readonly Kept[]>;
  read(key: string): Promise<KeptJob | undefined>;
  /** `entry.version` is the version last read or kept, 0 for a new entry. */
  keep(entry: KeptJob): Promise<KeepAnswer>;
  remove(key: string): Promise<void>;
}
