import type { Plan } from '../facts/result';
import type { Edit } from '../job/edit';
import type { History } from '../job/history';
import type { OnWall } from '../job/schema';
import type { Kept, Place, TroubleKind, VersionMark } from '../storage/shelf';
import type { Fault } from '../units/fault';
import type { Id } from '../units/types';
import type { Answer } from './answers';
import type { PanelMap, Refined } from './mapping';

/** The planner's work on the job as it is now. */
export type Planning =
  | { readonly phase: 'none' }
  | { readonly phase: 'working'; readonly done: number; readonly of: number }
  | { readonly phase: 'done' }
  | { readonly phase: 'failed'; readonly say: string };

/** Whether the browser holds the job as it is now. */
export type Keeping =
  | { readonly phase: 'none' }
  | { readonly phase: 'waiting' }
  | { readonly phase: 'kept'; readonly at: string }
  | { readonly phase: 'failed'; readonly why: TroubleKind; readonly say: string };

export interface Refusal {
  readonly fault: Fault;
  /** What was being done: the file's name, or the edit's. */
  readonly what: string;
  readonly doing: 'opening' | 'editing';
}

/** The new panel of an option while it is dragged. */
export interface Live {
  readonly option: Id;
  readonly on: OnWall;
  /** Of live grade, for the place it was asked about: the one held, or one just passed. */
  readonly plan: Plan | null;
  readonly planned: OnWall | null;
  /** Why there is no plan for the place held. */
  readonly say: string | null;
  /** The revision of the job in which it hangs there; null while it is held. */
  readonly droppedAt: number | null;
}

export interface JobState {
  readonly history: History | null;
  readonly revision: number;
  /** For the job as it is now, or still for an earlier state of it: compare revisions. */
  readonly answer: Answer | null;
  readonly planning: Planning;
  readonly keeping: Keeping;
  readonly kept: readonly Kept[];
  /** States of the open job that can be gone back to, the latest first. */
  readonly versions: readonly VersionMark[];
  /** Why the last version the program wanted to put by was not. */
  readonly noVersions: string | null;
  /** The entry of the shelf that is open here. */
  readonly openKey: string | null;
  readonly option: Id | null;
  /** The home run singled out in the drawing. */
  readonly homeRun: Id | null;
  /** The key note singled out. */
  readonly note: number | null;
  /** Null while nothing is dragged. */
  readonly live: Live | null;
  /** Null while nobody asked where the panel can go. */
  readonly map: PanelMap | null;
  /** Null while nobody asked. */
  readonly refined: Refined | null;
  readonly refusal: Refusal | null;
  /** What was changed to make the opened file readable. */
  readonly repairs: readonly string[];
  /** Another tab changed this job; this tab's state went on under a name of its own. */
  readonly parted: boolean;
  /** Another tab holds this job; this one looks on. */
  readonly elsewhere: boolean;
  /** The browser had cleared away what it kept; the open job was kept anew. */
  readonly cleared: boolean;
}

/** A file as a browser hands it over. */
export interface JobFile {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

export interface JobActions {
  /** Opens the text of a job file. The job that is open stays open when the text is refused. */
  openText(text: string, name: string): Promise<boolean>;
  /** Opens a job file; one that is far too long is refused unread. */
  openFile(file: JobFile): Promise<boolean>;
  /** Opens a job kept in the browser. */
  openKept(key: string): Promise<boolean>;
  removeKept(key: string): Promise<void>;
  placeKept(key: string, place: Place): Promise<void>;
  duplicateKept(key: string): Promise<void>;
  refreshVersions(): Promise<void>;
  nameVersion(name: string): Promise<void>;
  /** Goes back to a version, as one step that can be undone. */
  restoreVersion(at: string): Promise<void>;
  refreshKept(): Promise<void>;
  edit(edit: Edit): boolean;
  undo(): void;
  redo(): void;
  choose(option: Id): void;
  singleOut(what: { readonly homeRun?: Id | null; readonly note?: number | null }): void;
  /** Holds an option's new panel at a place without changing the job, and plans it there. */
  drag(option: Id, on: OnWall): void;
  /** Lets the panel hang where it is held: one edit. */
  drop(): void;
  /** Puts the panel back where it was before it was dragged. */
  letGo(): void;
  /** Shows where the option's new panel can go, and plans every place. */
  showMap(option: Id): void;
  stopMap(): void;
  /** Looks for small changes to an option in place that spare cables a joint. */
  refine(option: Id): Promise<void>;
  hideMap(): void;
  /** Singles out a place of the map, by its key. */
  lookAtPlace(at: string | null): void;
  dismiss(): void;
  /** Asks the planner again after it failed. */
  planAgain(): void;
  /** Writes to the shelf what waits to be written. */
  keepNow(): Promise<void>;
  /** The text of the job file with or without the pictures of its photos, null without a job. */
  fileText(photos?: boolean): string | null;
}

export const NOTHING: JobState = {
  history: null,
  revision: 0,
  answer: null,
  planning: { phase: 'none' },
  keeping: { phase: 'none' },
  kept: [],
  versions: [],
  noVersions: null,
  openKey: null,
  option: null,
  homeRun: null,
  note: null,
  live: null,
  map: null,
  refined: null,
  refusal: null,
  repairs: [],
  parted: false,
  elsewhere: false,
  cleared: false,
};
