import type { Effect } from '../facts/result';
import type { Remedy, RuleFacts, Verdict } from '../facts/ruling';
import type { RuleId } from '../standards/sections';
import type { Edition, Id } from '../units/types';
import { rulesWords } from '../words/en/rules';

/** What a rule is asked with: the code year is always one of the four, `run.ts` sees to a year nobody knows. */
export interface FactsInYear extends RuleFacts {
  readonly edition: Edition;
}

/** One requirement: which things it looks at, and what it says of each. Pure; holds no figures and compares no years. */
export interface Rule {
  readonly id: RuleId;
  readonly subjects: (facts: FactsInYear) => readonly Id[];
  readonly check: (facts: FactsInYear, subject: Id) => Says;
}

/** A verdict before rule and subject are written on it. */
export type Says = Omit<Verdict, 'rule' | 'subject'>;

type Detail = Partial<Omit<Says, 'outcome' | 'effect' | 'unknown' | 'say'>>;

/** Said of a failure that the plan cures: that it does, at the price of the work. */
export const inThePlan = (work: Says['cure'] = []): Remedy => ({ say: rulesWords.inThePlan(), cents: null, work });

const says = (outcome: Says['outcome'], effect: Effect | null, say: string, detail: Detail): Says => ({
  outcome,
  effect,
  say,
  measured: null,
  required: null,
  unit: '',
  look: null,
  remedies: [],
  cure: [],
  shape: null,
  amendment: null,
  section: null,
  unknown: [],
  ...detail,
});

export const holds = (say: string, detail: Detail = {}): Says => says('holds', null, say, detail);

/** Holds, but so near its limit that a tape or a label decides. */
export const holdsNearly = (say: string, look: string, detail: Detail = {}): Says =>
  says('holds', 'verify in field', say, { look, ...detail });

/** Fails, and nothing priced inside the option cures it. */
export const stops = (say: string, detail: Detail = {}): Says => says('fails', 'stops the job', say, detail);

/** Fails, and the plan includes and prices what cures it. */
export const extraWork = (say: string, detail: Detail = {}): Says =>
  says('fails', 'extra work', say, { remedies: [inThePlan(detail.cure)], ...detail });

/** Fails in a way anyone can put right on the day. */
export const failsNote = (say: string, detail: Detail = {}): Says => says('fails', 'note', say, detail);

/** Waits for what is not known: the fields by JSON pointer, and what to look at on site. */
export const cannotBeTold = (say: string, look: string, unknown: readonly string[], detail: Detail = {}): Says => ({
  ...says('cannot be told', 'verify in field', say, { look, ...detail }),
  unknown: [...new Set(unknown)].sort(),
});

/** A duty of the day that no survey can check beforehand. */
export const reminder = (say: string, look: string, detail: Detail = {}): Says =>
  says('cannot be told', 'note', say, { look, ...detail });

export const doesNotApply = (): Says => says('does not apply', null, '', {});
