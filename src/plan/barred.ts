import type { RuleFacts, Verdict } from '../facts/ruling';
import { PLACE_RULES } from '../rules/placeRules';
import { judgeAll } from '../rules/run';

/**
 * What bars the place of the new panel itself, whatever way the cables take. Asked with nothing laid and no old cabinet
 * kept for splices, so that what is laid can only add to it.
 */
export const barsThePlace = (facts: RuleFacts): Verdict[] =>
  judgeAll(PLACE_RULES, { ...facts, runs: [], boxes: [], rows: [] }).filter(
    (v) => v.subject === facts.option.enclosure.id && v.effect === 'stops the job',
  );

export const isBarredByPlace = (facts: RuleFacts): boolean => barsThePlace(facts).length > 0;
