import { boringLimits } from '../../calculations/boring';
import { formatFeetInches } from '../../units/length';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { cannotBeTold, doesNotApply, holds, holdsNearly, type Rule, stops } from '../rule';
import { boredFor, crowdAt, FEEDER, framingPaths, holesIn, holesOf, stretchFor } from './holesReading';

/** What may be bored out of a joist: size, edges, distance between holes. */
export const joistHole: Rule = {
  id: 'JOIST-HOLE',
  subjects: boredFor,
  check: (facts, subject) => {
    const holes = holesIn(facts, holesOf(facts, subject));
    if (holes.length === 0)
      return subject === FEEDER && facts.feeder.holes.length > 0
        ? cannotBeTold(say.joistFeeder(), say.joistFeederLook(), [])
        : doesNotApply();
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
    }
    if (waits.length > 0) return cannotBeTold(say.joistUnknown(), say.joistLook(), waits);
    if (engineered) return cannotBeTold(say.joistMaker(), say.joistMakerLook(), []);
    const crowd = Math.max(...holes.map(({ hole }) => stretchFor(crowdAt(facts, hole))));
    const biggest = Math.max(...holes.map(({ hole }) => hole.diameter));
    const v = { hole: formatFeetInches(biggest) };
    // Routes of several rows cross a joist at one point: the crew spreads their holes along it.
    return crowd > biggest
      ? holdsNearly(say.joistSpread(v), say.joistSpreadLook({ stretch: formatFeetInches(crowd) }), {
          measured: biggest,
          unit: 'in',
        })
      : holds(say.joistHolds(v), { measured: biggest, unit: 'in' });
  },
};
