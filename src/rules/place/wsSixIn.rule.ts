import { overlap } from '../../geometry/freeIntervals';
import type { Enclosure } from '../../job/schema';
import { enclosureOnFace } from '../../job/site';
import { ASSOCIATED_PROJECTION_IN } from '../../standards/workingSpace';
import { formatFeetInches } from '../../units/length';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels, keptPanels, oldPanels, spliceCans } from '../reading';
import { doesNotApply, type FactsInYear, holds, type Rule, stops } from '../rule';
import { atPlace } from './placeReading';

/** Cabinets that stay on the same wall: not replaced, or left as a splice can or subpanel. */
const staying = (facts: FactsInYear, own: Enclosure): Enclosure[] => {
  const kept = new Set([...spliceCans(facts), ...keptPanels(facts)].map((e) => e.id));
  const gone = new Set(oldPanels(facts).map((e) => e.id));
  return facts.job.enclosures.filter(
    (e) =>
      e.id !== own.id && e.on.wall === own.on.wall && e.on.face === own.on.face && (kept.has(e.id) || !gone.has(e.id)),
  );
};

/** Electrical equipment over or under the panel may stand out a little past its front. */
export const wsSixIn: Rule = {
  id: 'WS-6IN',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, ({ panel }) => {
      const own = enclosureOnFace(panel);
      const past = staying(facts, panel)
        .map(enclosureOnFace)
        .filter((e) => overlap([e.left, e.right], [own.left, own.right]))
        .map((e) => e.out - own.out);
      if (past.length === 0) return doesNotApply();
      const most = Math.max(0, ...past);
      const detail = { measured: most, required: ASSOCIATED_PROJECTION_IN, unit: 'in' };
      const v = { out: formatFeetInches(most) };
      return most <= ASSOCIATED_PROJECTION_IN
        ? holds(say.sixHolds(v), detail)
        : stops(say.sixFails(v), { ...detail, remedies: [{ say: say.sixRemedy(), cents: null, work: [] }] });
    }),
};
