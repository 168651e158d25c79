import type { Worked } from '../calculations/types';
import type { OnWall, Tally, Way } from '../job/schema';
import type { Cable } from '../standards/cable';
import type { Fault } from '../units/fault';
import type { Cents, Edition, Id, In, Pt3, U } from '../units/types';

/** `plan --json`, schema 1: what the engine hands out. No clock, timing or random id; lists sorted by id, legs in order from the house to the new panel. */

export const LEG_WAYS = [
  'joist side',
  'through joists',
  'joist underside',
  'running board',
  'above lay-in',
  'opened drywall',
  'wall board',
  'stud bay',
  'sleeve',
  'raceway',
  'inside box',
  'inside panel',
] as const;
export type LegBy = (typeof LEG_WAYS)[number];

export interface Leg {
  readonly from: Pt3;
  readonly to: Pt3;
  readonly cable: 'old' | 'new';
  readonly row: Id | null;
  readonly by: LegBy;
}
/** Spare length of each; negative = short. */
export interface Reach {
  readonly jacket: In;
  readonly hot: In;
  readonly neutral: In;
  readonly ground: In;
}
/** How one home run gets to the new panel. The three lengths: new cable only. */
export interface Run {
  readonly homeRun: Id;
  readonly way: Way;
  readonly why: string;
  readonly reach: Reach | null;
  readonly cutIn: Pt3 | null;
  readonly box: Id | null;
  readonly newCable: Cable | null;
  readonly legs: readonly Leg[];
  readonly codeLength: In;
  readonly codeLengthWithTails: In;
  readonly cutLength: In;
  readonly holes: number;
  readonly supports: number;
  readonly plates: number;
  readonly conductorsSpliced: number;
  /** Ids of what stands in the way; not empty = the home run could not be routed. */
  readonly blockedBy: readonly Id[];
}
export interface Box {
  readonly id: Id;
  readonly at: Pt3;
  readonly on: 'joist' | 'wall' | 'splice can' | 'new panel' | 'wireway';
  readonly size: string;
  readonly material: 'metal' | 'nonmetallic';
  readonly volumeIn3: number;
  readonly fillIn3: number;
  readonly homeRuns: readonly Id[];
  readonly conductorsSpliced: number;
}
/** Cables that run together; `conductors` are current-carrying. */
export interface Row {
  readonly id: Id;
  readonly by: 'bored' | 'board' | 'raceway' | 'wireway' | 'sealed hole' | 'loose';
  readonly length: In;
  readonly path: readonly Pt3[];
  readonly homeRuns: readonly Id[];
  readonly conductors: number;
  readonly factor: number;
  readonly limit: string;
  readonly holes: readonly { readonly at: Pt3; readonly diameter: In; readonly homeRuns: readonly Id[] }[];
}
export type Outcome = 'holds' | 'fails' | 'cannot be told';
export type Effect = 'stops the job' | 'extra work' | 'verify in field' | 'note';
export type Standing = 'confirmed' | 'one source' | 'memory' | 'unverified';
export interface Finding {
  readonly rule: string;
  readonly subject: Id;
  readonly outcome: Outcome;
  readonly effect: Effect | null;
  readonly measured: number | null;
  readonly required: number | null;
  readonly unit: string;
  readonly section: string;
  readonly standing: Standing;
  readonly amendment: string | null;
  /** What the two sides say where practice is split and nobody has answered. */
  readonly split: string | null;
  readonly say: string;
  readonly look: string | null;
  readonly remedies: readonly { readonly say: string; readonly cents: Cents | null }[];
  readonly shape: readonly Pt3[] | null;
}
export interface Line {
  readonly id: Id;
  readonly kind: 'material' | 'labor' | 'allowance' | 'fee' | 'overhead' | 'profit' | 'tax';
  readonly item: Id;
  /** `item` in plain words. */
  readonly say: string;
  readonly quantity: number;
  readonly unit: string;
  readonly dollarsEach: number;
  readonly lowCents: Cents;
  readonly likelyCents: Cents;
  readonly highCents: Cents;
  readonly homeRuns: readonly Id[];
  readonly rule: string | null;
  readonly alternate: Id | null;
}
/** `atMostAbove` = share above the proven bound: 0.012 is 1.2 %. */
export type Proof = { readonly best: true } | { readonly best: false; readonly atMostAbove: number };
export interface FeederPlan {
  readonly way: 'kept' | 'extended' | 'replaced';
  readonly legs: readonly Leg[];
  /** New cable, as the crew cuts it; 0 where the feeder is kept or has no way. */
  readonly cutLength: In;
  /** Joists bored for it alone; diameter null = its outside is not known. */
  readonly holes: readonly { readonly at: Pt3; readonly diameter: In | null }[];
  readonly supports: number;
  readonly plates: number;
  readonly cable: Cable;
  readonly breakerAmps: number | null;
  readonly egc: { readonly size: string; readonly metal: 'Cu' | 'Al' } | null;
  readonly worked: readonly Worked[];
}
export interface AfciEntry {
  readonly circuit: Id;
  readonly required: 'yes' | 'no' | 'inspector decides' | 'cannot be told';
  readonly codeLength: In;
  readonly tapeIt: boolean;
  readonly section: string;
  readonly remedy: string | null;
}
export interface DirectoryEntry {
  readonly space: number;
  readonly leg: 'A' | 'B';
  readonly circuit: Id | null;
  readonly text: string;
  readonly protection: string;
}
export interface Price {
  readonly complete: boolean;
  /** Price book ids and JSON pointers into the job. */
  readonly missing: readonly string[];
  /** The same in plain words, one sentence an entry of `missing`, in its order. */
  readonly missingSay: readonly string[];
  readonly unverifiedShare: number;
  readonly lines: readonly Line[];
  readonly alternates: readonly {
    readonly id: Id;
    readonly say: string;
    readonly required: boolean;
    readonly taken: boolean;
    readonly cents: Cents;
    readonly rule: string | null;
  }[];
  readonly drivers: readonly { readonly id: Id; readonly say: string; readonly cents: Cents }[];
}
export interface TimePlan {
  readonly days: number;
  readonly byTask: readonly {
    readonly id: Id;
    readonly say: string;
    readonly hours: number;
    readonly when: 'before outage' | 'outage' | 'after';
  }[];
  readonly outage: readonly { readonly circuit: Id; readonly hours: number }[];
}
export interface Cut {
  readonly cable: string;
  readonly coils: readonly {
    readonly length: In;
    readonly bought: boolean;
    readonly pieces: readonly { readonly homeRun: Id; readonly length: In }[];
    readonly left: In;
  }[];
  readonly cents: Cents;
  readonly proof: Proof;
}
export interface OrderLine {
  readonly item: Id;
  readonly say: string;
  readonly quantity: number;
  readonly unit: string;
}
export type Grade = 'live' | 'final' | 'proven';
export interface Plan {
  readonly option: Id;
  readonly grade: Grade;
  readonly tally: Tally;
  readonly electrode: { readonly size: string; readonly length: In } | null;
  readonly spds: number;
  readonly connectors: readonly { readonly size: string; readonly count: number }[];
  readonly knockoutsUsed: number;
  readonly loadMethod: string;
  readonly runs: readonly Run[];
  readonly boxes: readonly Box[];
  readonly rows: readonly Row[];
  readonly feeder: FeederPlan;
  readonly afci: readonly AfciEntry[];
  readonly findings: readonly Finding[];
  readonly doesNotApply: Readonly<Record<string, number>>;
  readonly load: readonly Worked[];
  readonly directory: readonly DirectoryEntry[];
  readonly price: Price;
  readonly time: TimePlan;
  readonly cuts: readonly Cut[];
  readonly order: readonly OrderLine[];
  readonly proof: { readonly splices: Proof; readonly rows: Proof };
}
export interface Advice {
  readonly option: Id | null;
  readonly say: string;
  readonly reasons: readonly { readonly say: string; readonly figure: string; readonly value: number }[];
  readonly flips: readonly {
    readonly say: string;
    readonly change: { readonly path: string; readonly value: unknown };
    readonly option: Id | null;
    readonly cents: Cents;
  }[];
}
export interface Place {
  readonly on: OnWall;
  readonly clear: boolean;
  readonly rules: readonly string[];
  readonly cents: Cents | null;
  readonly afciAdded: number | null;
  readonly conductorsSpliced: number | null;
}
export interface Result {
  readonly format: 'backboard-plan';
  readonly schema: 1;
  readonly engine: string;
  readonly job: Id;
  readonly edition: U<Edition>;
  readonly plans: readonly Plan[];
  readonly advice: Advice;
  readonly unknown: readonly { readonly path: string; readonly say: string; readonly blocks: readonly string[] }[];
  readonly notCovered: readonly { readonly rule: string; readonly why: string }[];
  readonly places: readonly Place[] | null;
}
export type Output =
  | Result
  | Fault
  | { readonly files: readonly { readonly file: string; readonly output: Result | Fault }[] };
