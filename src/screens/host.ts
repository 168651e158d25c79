import type { ComponentType } from 'react';
import type { MapModel } from '../drawings/mapModel';
import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import type { Id } from '../units/types';

/** What the screens ask of the browser around them; `app` gives it. */
export interface Demo {
  readonly name: string;
  readonly title: string;
  readonly about: string;
}
export type Theme = 'light' | 'dark';
/** desk: a pointer and small controls · field: one hand, large ones. */
export type Hand = 'desk' | 'field';

export interface Look {
  readonly theme: Theme;
  readonly hand: Hand;
  /** Single keys do something: 1 to 5, and the letters of tools. */
  readonly keys: boolean;
}

/** What the 3-D view is given: it stands on the same floor as the screens, so `app` hands it to them. */
export interface SceneProps {
  readonly job: Job;
  readonly option: Option;
  readonly plan: Plan | null;
  readonly homeRun: Id | null;
  /** Where the panel can go, where that is shown. */
  readonly map: MapModel | null;
}

/** What the browser says of the jobs it keeps; null where it does not say. */
export interface KeptHow {
  readonly promised: boolean | null;
  readonly usedBytes: number | null;
  readonly ofBytes: number | null;
}

/** Dated price books; lengths of cable in the truck. */
export type OwnName = 'books' | 'truck';

export interface Host {
  readonly demos: readonly Demo[];
  /** The text of a demo job file. */
  readonly demoText: (name: string) => Promise<string>;
  /** Hands a file to the person. */
  readonly download: (fileName: string, text: string) => void;
  readonly look: () => Look;
  readonly setLook: (look: Partial<Look>) => void;
  /** What is the contractor's and no job's: kept on this machine under a name; null where there is none. */
  readonly ownText: (name: OwnName) => string | null;
  /** False where the machine has no room for it. */
  readonly keepOwnText: (name: OwnName, text: string) => boolean;
  /** The text of a new, empty job file. */
  readonly newJobText: () => string;
  readonly keptHow: () => Promise<KeptHow>;
  /** Calls back when a new version of the app has been fetched and waits; `load` changes over to it. */
  readonly onUpdate: (ready: (load: () => void) => void) => () => void;
  /** The 3-D view, loaded when it is first shown; null where there is none. */
  readonly Scene: ComponentType<SceneProps> | null;
  /** Local time of day of an ISO time. */
  readonly timeOfDay: (iso: string) => string;
}
