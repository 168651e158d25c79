import { EDITIONS, type Edition } from '../units/types';
import type { QuestionKey } from './questions';
import type { RuleId } from './sections';

/** Where sources, or inspectors, differ on a rule: in which code years, and the question of the sheet that settles it. */
export interface Split {
  readonly years: readonly Edition[];
  /** Null: nothing on the sheet asks it; it is recorded at the finding. */
  readonly question: QuestionKey | null;
  /** What a finding does where the other side would say otherwise; with none of them it is told on the coverage page alone. */
  readonly shownOn: readonly Effect[];
  /** Only for a panel that is replaced where it hangs, or only for one in a new spot. */
  readonly only?: 'in place' | 'relocate';
}
type Effect = 'stops the job' | 'extra work' | 'verify in field' | 'note';

const ASKED: readonly Effect[] = ['verify in field'];
const REMINDED: readonly Effect[] = ['note'];
/** The other side would excuse what fails here. */
const EXCUSED: readonly Effect[] = ['stops the job', 'extra work', 'verify in field'];
/** It bears on the figures behind, not on what is found. */
const NOWHERE: readonly Effect[] = [];

const split = (shownOn: readonly Effect[], question: QuestionKey | null = null, more: Partial<Split> = {}): Split => ({
  years: EDITIONS,
  question,
  shownOn,
  ...more,
});

/**
 * Rules on which practice is split, as the sources read for this program show it (forums of inspectors, trade press,
 * state amendments). The sentence for each is in `words/en/splits.ts`.
 */
export const SPLITS = {
  'AFCI-EXT': split(ASKED, 'afciOnPanelReplacement'),
  'AFCI-EXT-17': split(ASKED, 'afciCountsTails', { years: [2017] }),
  'AFCI-AREA': split(ASKED),
  'SPD-FDR': split(EXCUSED, 'spdInsideHouse', { years: [2023, 2026] }),
  EMDISC: split(ASKED, 'emergencyDisconnect', { years: [2020] }),
  'WS-HEIGHT': split(ASKED, 'headroomInNewSpot', { only: 'relocate' }),
  DEDICATED: split(ASKED),
  HANDLE: split(NOWHERE, 'handleMaxIn'),
  DAMP: split(ASKED),
  CLOSET: split(EXCUSED, 'likeForLike', { only: 'in place' }),
  BATH: split(EXCUSED, 'likeForLike', { only: 'in place' }),
  STAIRS: split(EXCUSED, 'likeForLike', { only: 'in place' }),
  'OLD-CAN': split(ASKED, 'spliceCan'),
  'OLD-3WIRE': split(EXCUSED),
  'DRYER-RANGE': split(EXCUSED),
  'SVC-GROUND': split(REMINDED),
  'BREAKER-LIST': split(REMINDED),
  'FREE-WIRE': split(REMINDED),
  UNGROUNDED: split(ASKED),
  'NM-BUNDLE': split(EXCUSED, 'bundling'),
  'NM-SUP': split(NOWHERE, null, { years: [2020] }),
  'FDR-2AL': split(EXCUSED),
  LOAD: split(NOWHERE, null, { years: [2017, 2020, 2023] }),
} as const satisfies Partial<Record<RuleId, Split>>;

export type SplitRule = keyof typeof SPLITS;
const isSplit = (rule: string): rule is SplitRule => Object.hasOwn(SPLITS, rule);

/** The split on a rule, or null where practice is known to agree. */
export const splitOf = (rule: string): Split | null => (isSplit(rule) ? SPLITS[rule] : null);
