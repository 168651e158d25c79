import type { Worked } from '../calculations/types';
import type { OnWall, Tally, Terms, Way } from '../job/schema';
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
/** One thing that may become of the feeder. */
export interface FeederChoice {
  readonly way: 'kept' | 'extended' | 'replaced';
  /** It reaches, and its way is drawn. */
  readonly possible: boolean;
  /** Its conductors for the device in front of them, with a neutral and an EGC. */
  readonly outcome: Outcome;
  /** With overhead, profit and tax; null where it is not possible, or part of it has no price. */
  readonly cents: Cents | null;
  readonly say: string;
}
export interface FeederPlan {
  readonly way: 'kept' | 'extended' | 'replaced';
  readonly why: string;
  readonly legs: readonly Leg[];
  /** New cable, as the crew cuts it; 0 where the feeder is kept or has no way. */
  readonly cutLength: In;
  /** The part of its way outside the room; 'unknown' = in no length, work or price. 0 where it is kept. */
  readonly outside: U<In>;
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
  /** In the price though nobody told it: a field by JSON pointer, and how it was taken. */
  readonly assumed: readonly { readonly id: string; readonly say: string }[];
  readonly unverifiedShare: number;
  readonly lines: readonly Line[];
  readonly alternates: readonly {
    readonly id: Id;
    readonly say: string;
    readonly required: boolean;
    readonly taken: boolean;
    readonly cents: Cents;
    readonly rule: string | null;
    /** Spaces of the panel it takes, and spare ones it brings as less than nothing. */
    readonly spaces: number;
    /** Likely labor-hours it adds. */
    readonly hours: number;
  }[];
  /** The same job with the alternates of a package and no others of the owner's choice. Empty in a live plan. */
  readonly packages: readonly {
    readonly id: 'good' | 'better' | 'best';
    readonly say: string;
    readonly alternates: readonly Id[];
    readonly lowCents: Cents;
    readonly likelyCents: Cents;
    readonly highCents: Cents;
    readonly hours: number;
    readonly taken: boolean;
  }[];
  readonly drivers: readonly { readonly id: Id; readonly say: string; readonly cents: Cents }[];
  /** What one more of a thing costs that nobody can see yet, overhead, profit and tax in it. Empty in a live plan. */
  readonly unitChanges: readonly {
    readonly id: Id;
    readonly say: string;
    readonly unit: string;
    readonly cents: Cents;
  }[];
  /** AFCI that this price counts and a price that forgets it does not: breakers, landing, trouble allowance. */
  readonly forgettingAfci: { readonly circuits: number; readonly cents: Cents };
  readonly quote: Quote;
}
/** How the price is offered. A walk-through survey, and a price with something missing, carry no fixed sum. */
export interface Quote {
  readonly asked: Terms['quote'];
  readonly as: Terms['quote'];
  /** The fixed sum; null where none is offered. */
  readonly fixedCents: Cents | null;
  /** A labor-hour as it is charged, overhead, profit and tax in it. */
  readonly hourCents: Cents;
  /** What material is charged at, over its cost, as a share: overhead and profit. */
  readonly materialShare: number;
  readonly say: string;
}
/** Work waits here until somebody has seen it. */
export interface HoldPoint {
  readonly id: Id;
  readonly when: 'before outage' | 'outage' | 'after';
  readonly say: string;
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
  readonly people: Terms['people'];
  /** What is done: rolled over only where it was asked for and can be. */
  readonly cutOver: Terms['cutOver'];
  /** The same job with other crews; rolled over only where that can be. Outage: of the whole house. */
  readonly crews: readonly {
    readonly people: Terms['people'];
    readonly cutOver: Terms['cutOver'];
    readonly days: number;
    readonly outageHours: number;
  }[];
  /** Nine of ten outages are not longer. */
  readonly longOutageHours: number;
  /** The last hour of the clock to shut off and still end by the end of the day; null = none, or no outage. */
  readonly goNoGo: number | null;
  readonly holds: readonly HoldPoint[];
  readonly remarks: readonly { readonly id: Id; readonly say: string }[];
}
export interface Cut {
  readonly cable: string;
  readonly coils: readonly {
    readonly length: In;
    readonly bought: boolean;
    readonly pieces: readonly { readonly homeRun: Id; readonly length: In }[];
    readonly left: In;
    /** What is left is long enough to be used again: it goes to the truck. */
    readonly kept: boolean;
  }[];
  readonly cents: Cents;
  readonly proof: Proof;
}
export interface OrderLine {
  readonly item: Id;
  readonly say: string;
  readonly quantity: number;
  readonly unit: string;
  /** Working days until the counter has it; null = on the shelf. */
  readonly leadDays: number | null;
}
/** What a pin of the option costs against the program's own answer; null where it cannot hold. */
export interface PinCost {
  readonly pin: Id;
  readonly cents: Cents | null;
  readonly say: string;
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
  /** `choices`: keep, extend, replace, compared; empty in a live plan and where there is no feeder. */
  readonly feeder: FeederPlan & { readonly choices: readonly FeederChoice[] };
  readonly afci: readonly AfciEntry[];
  /** Circuits beyond `tally.afciAdded` that may gain it: the inspector decides, or it cannot be told. */
  readonly afciOpen: number;
  readonly findings: readonly Finding[];
  readonly doesNotApply: Readonly<Record<string, number>>;
  readonly load: readonly Worked[];
  readonly directory: readonly DirectoryEntry[];
  readonly price: Price;
  readonly time: TimePlan;
  readonly cuts: readonly Cut[];
  readonly order: readonly OrderLine[];
  readonly proof: { readonly splices: Proof; readonly rows: Proof };
  /** In order of their ids; empty while something is dragged. */
  readonly pins: readonly PinCost[];
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
  /** One entry an option, in the order of `plans`. */
  readonly visible: readonly Visible[];
  /** Null for a full survey. */
  readonly confidence: Confidence | null;
}
/** What of an option stays in sight when all is finished. */
export interface Visible {
  readonly option: Id;
  readonly things: readonly { readonly id: 'panel' | 'boxes' | 'cans' | 'cable'; readonly say: string }[];
}
/** How sure advice on a walk-through survey is: unknowns settled one at a time, what turns the advice first. */
export interface Confidence {
  readonly say: string;
  readonly unknowns: readonly {
    readonly path: string;
    readonly value: unknown;
    readonly say: string;
    readonly turns: boolean;
    readonly option: Id | null;
    /** How far the likely price moves. */
    readonly cents: Cents;
  }[];
}
/** One option beside the one it is measured by: the advised one, or the next best beside that. */
export interface Comparison {
  readonly option: Id;
  readonly against: Id;
  /** Likely cents of lines that differ, by what they are for; `cents` less `againstCents` is `differsCents`. */
  readonly rows: readonly {
    readonly id: Id;
    readonly kind: Line['kind'];
    readonly say: string;
    readonly cents: Cents;
    readonly againstCents: Cents;
    readonly differsCents: Cents;
  }[];
  readonly differsCents: Cents;
  /** Prices at which the two would cost the same, everything else as it is: now, and then, in dollars. */
  readonly breakEvens: readonly {
    readonly id: Id;
    readonly say: string;
    readonly unit: string;
    readonly now: number;
    readonly at: number;
  }[];
}
/** One place of the map of where the new panel can go. */
export interface Place {
  readonly on: OnWall;
  readonly upright: boolean;
  /** Nothing stops the job there, and every cable gets there. */
  readonly clear: boolean;
  /** Rules that stop it, by id; empty also where an opening or an old cabinet is in the way. */
  readonly rules: readonly string[];
  /** What bars it, in words; empty where nothing does. */
  readonly why: string;
  /** Likely price of the option there; null where it is barred. */
  readonly cents: Cents | null;
  readonly afciAdded: number | null;
  /** Circuits that need AFCI there. */
  readonly past: readonly Id[];
  readonly conductorsSpliced: number | null;
  /** Every cable spliced where it lies, or planned there; null where it is barred. */
  readonly grade: 'splices only' | 'live' | 'final' | null;
}
/** A small change to an option in place: where the panel hangs then, cables spared a joint, and what the price does. */
export interface Refinement {
  readonly id: 'flush tops' | 'shift' | 'upside down' | 'other face' | 'next bay';
  readonly say: string;
  readonly on: OnWall;
  readonly upright: boolean;
  readonly saves: number;
  readonly cents: Cents;
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
  readonly comparisons: readonly Comparison[];
}
export type Output =
  | Result
  | Fault
  | { readonly files: readonly { readonly file: string; readonly output: Result | Fault }[] };
