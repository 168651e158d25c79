import { SAME_PLACE_IN } from '../../geometry/polygon';
import { NAIL_SETBACK } from '../../standards/boring';
import { cableDiameter } from '../../standards/cableDimensions';
import { formatFeetInches } from '../../units/length';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { laidCable } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { edgeOf, isAlong } from './alongJoist';
import { halfOf, homeRunIds, laid } from './cableReading';

/** Cable along the side of a joist keeps its distance from the edges that are nailed into. */
export const nmPar: Rule = {
  id: 'NM-PAR',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const found = laid(facts, subject);
    const legs = found?.legs.filter(isAlong) ?? [];
    if (!found || legs.length === 0) return doesNotApply();
    const edges = legs.map((leg) => edgeOf(facts, leg));
    const waits = edges.flatMap((edge) => (typeof edge === 'number' ? [] : edge));
    const middle = Math.min(...edges.flatMap((edge) => (typeof edge === 'number' ? [edge] : [])));
    // Flat against the joist its narrow side faces the nails; taken by its broad side where nobody knows how it lies.
    const cable = cableDiameter(laidCable(facts.job, found.run));
    const edge = middle - halfOf(cable?.majorIn ?? 0);
    const detail = { measured: edge, required: NAIL_SETBACK.edgeIn, unit: 'in' };
    const v = { edge: formatFeetInches(Math.max(0, edge)) };
    if (edge < NAIL_SETBACK.edgeIn - SAME_PLACE_IN)
      return stops(say.parFails(v), { ...detail, remedies: [{ say: say.parRemedy(), cents: null, work: [] }] });
    return waits.length > 0 || !cable
      ? cannotBeTold(say.parUnknown(), say.parLook(), waits)
      : holds(say.parHolds(v), detail);
  },
};
