import type { Job, Option } from '../job/schema';
import type { Cable } from '../standards/cable';
import type { Mills } from '../units/money';
import type { Id, In } from '../units/types';
import type { Box, FeederPlan, Grade, Proof, Row, Run } from './result';
import type { UnitMills, Work } from './work';

/** What passing the AFCI length costs: circuits that share one breaker share one entry. */
export interface AfciPenalty {
  readonly id: Id;
  readonly circuits: readonly Id[];
  readonly homeRuns: readonly Id[];
  /** Code length at or under this escapes; tolerance included. */
  readonly limitIn: In;
  /** Direct cost of the dearer breaker with its landing, whole mills. */
  readonly mills: Mills;
  /** A new home run is charged whatever its length. */
  readonly atAnyLengthIfNewHomeRun: boolean;
}
export interface BoxKind {
  /** As in the price book: 'box:' + size. */
  readonly size: string;
  readonly material: 'metal' | 'nonmetallic';
  readonly volumeIn3: number;
  readonly clamps: boolean;
}
export interface RoutingAsk {
  readonly job: Job;
  readonly option: Option;
  readonly unit: UnitMills;
  readonly boxes: readonly BoxKind[];
  readonly penalties: readonly AfciPenalty[];
  /** The cable a replaced feeder gets; sized by loads/. A feeder that is kept stays what it is. */
  readonly feederCable: Cable;
  readonly grade: Grade;
}
/** A way a feeder could go, with what it takes along it besides its cable and its ends. */
export interface FeederLaid {
  readonly legs: FeederPlan['legs'];
  readonly cutLength: In;
  readonly blockedBy: readonly Id[];
  readonly work: readonly Work[];
}
export interface RoutingAnswer {
  readonly runs: readonly Run[];
  readonly boxes: readonly Box[];
  readonly rows: readonly Row[];
  readonly feeder: Pick<
    FeederPlan,
    'way' | 'why' | 'legs' | 'cutLength' | 'outside' | 'holes' | 'supports' | 'plates'
  > & {
    readonly blockedBy: readonly Id[];
    /** What a new feeder takes along its way, besides its cable and its ends. */
    readonly work: readonly Work[];
    /** To compare with: the old one spliced where the old panel hangs, and a new one; null = not drawn. Null in a live answer. */
    readonly others: { readonly extended: FeederLaid | null; readonly replaced: FeederLaid | null } | null;
  };
  readonly work: readonly Work[];
  /** Price of `work` at the unit prices asked with; a test holds it against pricing's own figure. */
  readonly workMills: Mills;
  /** What the search minimized: work with holes, boards and opened strips at an even share of each + penalties. */
  readonly objectiveMills: Mills;
  /** Old panels that become splice cans. */
  readonly spliceCans: readonly Id[];
  readonly proof: { readonly splices: Proof; readonly rows: Proof };
  /** Assumptions made where the survey is silent: JSON pointer of the field, and what was taken. */
  readonly assumed: readonly { readonly path: string; readonly value: string | number }[];
}
/** A mixed-integer model in HiGHS' LP text form, and what came back. The solver is handed in: workers/ and bin/ have it. */
export interface SolverModel {
  readonly lp: string;
  readonly nodeLimit: number;
}
export type SolverAnswer =
  | { readonly status: 'optimal'; readonly objective: number; readonly values: Readonly<Record<string, number>> }
  | { readonly status: 'stopped'; readonly bound: number }
  | { readonly status: 'failed'; readonly say: string };
export type Solve = (model: SolverModel) => Promise<SolverAnswer>;
