import { EDITIONS, type Edition } from '../units/types';
import type { QuestionKey } from './questions';
import type { RuleId } from './sections';

/** Where sources, or inspectors, differ on a rule: in which code years, and the question of the sheet that settles it. */
export interface Split {
  readonly years: readonly Edition[];
  /** Null: nothing on the sheet asks it; it is recorded at the finding. */
  readonly question: QuestionKey | null;
  /** Only for a panel that is replaced where it hangs, or only for one in a new spot. */
  readonly only?: 'in place' | 'relocate';
}

const split = (question: QuestionKey | null, years: readonly Edition[] = EDITIONS, only?: Split['only']): Split =>
  only ? { years, question, only } : { years, question };

/**
 * Rules on which practice is split, as the sources read for this program show it (forums of inspectors, trade press,
 * state amendments). The sentence for each is in `words/en/splits.ts`.
 */
export const SPLITS = {
  'AFCI-EXT': split('afciOnPanelReplacement'),
  'AFCI-EXT-17': split('afciCountsTails', [2017]),
  'AFCI-AREA': split(null),
  'SPD-FDR': split('spdInsideHouse', [2023, 2026]),
  EMDISC: split('emergencyDisconnect', [2020]),
  'WS-HEIGHT': split('headroomInNewSpot', EDITIONS, 'relocate'),
  DEDICATED: split(null),
  HANDLE: split('handleMaxIn'),
  DAMP: split(null),
  CLOSET: split('likeForLike', EDITIONS, 'in place'),
  BATH: split('likeForLike', EDITIONS, 'in place'),
  STAIRS: split('likeForLike', EDITIONS, 'in place'),
  'OLD-CAN': split('spliceCan'),
  'OLD-3WIRE': split(null),
  'DRYER-RANGE': split(null),
  'SVC-GROUND': split(null),
  'BREAKER-LIST': split(null),
  'FREE-WIRE': split(null),
  UNGROUNDED: split(null),
  'NM-BUNDLE': split('bundling'),
  'NM-SUP': split(null, [2020]),
  'FDR-2AL': split(null),
  LOAD: split(null, [2017, 2020, 2023]),
} as const satisfies Partial<Record<RuleId, Split>>;

export type SplitRule = keyof typeof SPLITS;
const isSplit = (rule: string): rule is SplitRule => Object.hasOwn(SPLITS, rule);

/** The split on a rule, or null where practice is known to agree. */
export const splitOf = (rule: string): Split | null => (isSplit(rule) ? SPLITS[rule] : null);
