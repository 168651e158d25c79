import type { RuleFacts } from '../facts/ruling';
import { PLACE_RULES } from '../rules/placeRules';
import { judge } from '../rules/run';

/**
 * Is the place of the new panel itself barred, whatever way the cables take? Asked with nothing laid and no old cabinet
 * kept for splices, so that what is laid can only add to it.
 */
export const isBarredByPlace = (facts: RuleFacts): boolean => {
  const bare: RuleFacts = { ...facts, runs: [], boxes: [], rows: [] };
  return PLACE_RULES.some((rule) =>
    judge(rule, bare).some((v) => v.subject === facts.option.enclosure.id && v.effect === 'stops the job'),
  );
};
