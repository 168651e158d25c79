import type { Work } from '../../facts/work';
import { NAIL_SETBACK } from '../../standards/boring';
import { formatFeetInches } from '../../units/length';
import { cableWords as say } from '../../words/en/rulesCables';
import { runOf } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, holds, type Rule } from '../rule';
import { boredFor, FEEDER, framingPaths, holesIn, holesOf } from './holesReading';

/** Holes keep their distance from the nail edge of the wood, or steel plates cover them. */
export const nmBore: Rule = {
  id: 'NM-BORE',
  subjects: boredFor,
  check: (facts, subject) => {
    const holes = holesIn(facts, holesOf(facts, subject));
    if (holes.length === 0) return doesNotApply();
    const edges = holes.flatMap(({ edge }) => (edge === null ? [] : [edge]));
    if (edges.length < holes.length)
      return cannotBeTold(say.joistUnknown(), say.joistLook(), framingPaths(facts, holes, ['depth', 'underside']));
    const edge = Math.min(...edges);
    const detail = { measured: edge, required: NAIL_SETBACK.edgeIn, unit: 'in' };
    const v = { edge: formatFeetInches(edge) };
    if (edge >= NAIL_SETBACK.edgeIn) return holds(say.holeHolds(v), detail);
    // Plates that routing counted are in the plan already.
    const bare = holes.filter(
      (h) =>
        h.edge !== null &&
        h.edge < NAIL_SETBACK.edgeIn &&
        !(subject === FEEDER && facts.feeder.plates > 0) &&
        !h.hole.homeRuns.some((id) => (runOf(facts, id)?.plates ?? 0) > 0),
    );
    const cure: Work[] = bare.map(({ hole }) => ({
      item: 'plate',
      quantity: 1,
      homeRuns: hole.homeRuns,
      rule: 'NM-BORE',
      alternate: null,
    }));
    return extraWork(say.holePlates(v), { ...detail, cure });
  },
};
