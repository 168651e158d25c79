import { boringLimits } from '../../calculations/boring';
import { formatFeetInches } from '../../units/length';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { cannotBeTold, doesNotApply, type FactsInYear, holds, type Rule, stops } from '../rule';
import { rowIds } from './cableReading';
import { framingPaths, type Hole, holesIn, woodBetween } from './holesReading';

/** Every other hole of the plan: rows share joists. */
const others = (facts: FactsInYear, hole: Hole): Hole[] =>
  facts.rows.flatMap((r) => r.holes).filter((other) => other !== hole);

/** What may be bored out of a joist: size, edges, distance between holes. */
export const joistHole: Rule = {
  id: 'JOIST-HOLE',
  subjects: rowIds,
  check: (facts, subject) => {
    const holes = holesIn(facts, facts.rows.find((r) => r.id === subject)!);
    if (holes.length === 0) return doesNotApply();
    const remedies = [{ say: say.joistRemedy(), cents: null, work: [] }];
    const waits = framingPaths(facts, holes, ['depth', 'underside', 'kind']);
    const engineered = holes.some(({ framing }) => framing && isKnown(framing.kind) && framing.kind !== 'sawn');
    for (const { hole, framing, edge } of holes) {
      if (!framing || !isKnown(framing.depth) || framing.kind !== 'sawn') continue;
      const limits = boringLimits('joist', framing.depth, framing.kind)!;
      const size = formatFeetInches(hole.diameter);
      if (hole.diameter > limits.maxHoleIn)
        return stops(say.joistTooBig({ hole: size }), {
          measured: hole.diameter,
          required: limits.maxHoleIn,
          unit: 'in',
          remedies,
        });
      if (edge !== null && edge < limits.minEdgeIn)
        return stops(say.joistEdge({ edge: formatFeetInches(edge) }), {
          measured: edge,
          required: limits.minEdgeIn,
          unit: 'in',
          remedies,
        });
      const nearest = Math.min(...others(facts, hole).map((other) => woodBetween(hole, other)));
      if (limits.betweenIn !== null && nearest < limits.betweenIn)
        return stops(say.joistNear(), { measured: nearest, required: limits.betweenIn, unit: 'in', remedies });
    }
    if (waits.length > 0) return cannotBeTold(say.joistUnknown(), say.joistLook(), waits);
    if (engineered) return cannotBeTold(say.joistMaker(), say.joistMakerLook(), []);
    const biggest = Math.max(...holes.map(({ hole }) => hole.diameter));
    return holds(say.joistHolds({ hole: formatFeetInches(biggest) }), { measured: biggest, unit: 'in' });
  },
};
