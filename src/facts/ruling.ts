import type { Worked } from '../calculations/types';
import type { Circuit, Job, Option } from '../job/schema';
import type { Cents, Id, In, Pt3, U } from '../units/types';
import type { Box, DirectoryEntry, Effect, FeederPlan, Outcome, Row, Run } from './result';
import type { Work } from './work';

/** Everything rules look at for one option: the job and what the earlier stages answered. */
export interface RuleFacts {
  readonly job: Job;
  readonly option: Option;
  readonly runs: readonly Run[];
  readonly boxes: readonly Box[];
  readonly rows: readonly Row[];
  readonly feeder: FeederPlan;
  readonly arrangement: ArrangementFacts;
  readonly load: LoadFacts;
  /** Cable entries the new panel needs, feeder included. */
  readonly knockoutsUsed: number;
  readonly spds: number;
}
export interface ArrangementFacts {
  readonly directory: readonly DirectoryEntry[];
  /** Spaces taken by breakers, SPD and reserves, before spares. */
  readonly spacesNeeded: number;
  readonly sparesLeft: U<number>;
  readonly neutralsToLand: number;
  readonly groundsToLand: number;
  readonly legA: number;
  readonly legB: number;
}
export interface LoadFacts {
  /** 'cannot be told' where data is missing; `missing` names the fields by JSON pointer. */
  readonly method: 'standard' | 'optional' | 'existing' | 'measured' | 'cannot be told';
  readonly amps: U<number>;
  /** What it comes to at the least, whatever the unknown turns out to be, A; the load itself where that is told. */
  readonly least: number;
  readonly missing: readonly string[];
  readonly worked: readonly Worked[];
}
/** A way to satisfy a rule; the plan prices `work` or takes `cents` as entered. */
export interface Remedy {
  readonly say: string;
  readonly cents: Cents | null;
  readonly work: readonly Work[];
}
/** What one rule says about one subject. Plans turn it into a Finding with section, standing and prices. */
export interface Verdict {
  readonly rule: string;
  readonly subject: Id;
  readonly outcome: Outcome | 'does not apply';
  readonly effect: Effect | null;
  readonly measured: number | null;
  readonly required: number | null;
  readonly unit: string;
  readonly say: string;
  /** What to look at on site. */
  readonly look: string | null;
  readonly remedies: readonly Remedy[];
  /** Work the plan must include because of this verdict ('extra work'). */
  readonly cure: readonly Work[];
  readonly shape: readonly Pt3[] | null;
  /** The amendment or inspector's answer that changed the verdict: 'key = value'. */
  readonly amendment: string | null;
  /** The section that decided, where it is not the rule's own: an exception of it; else null. */
  readonly section: string | null;
  /** JSON pointers of the unknown fields that a 'cannot be told' waits for. */
  readonly unknown: readonly string[];
}
/** Which circuits the AFCI rule looks at before any route is known. Circuits under one breaker are one demand. */
export interface AfciDemand {
  readonly id: Id;
  readonly circuits: readonly Circuit[];
  readonly homeRuns: readonly Id[];
  readonly inScope: 'yes' | 'no' | 'cannot be told';
  readonly limitIn: In;
  readonly atAnyLengthIfNewHomeRun: boolean;
}
