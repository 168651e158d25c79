import { overlap } from '../../geometry/freeIntervals';
import { enclosureOnFace } from '../../job/site';
import { ASSOCIATED_PROJECTION_IN } from '../../standards/workingSpace';
import { formatFeetInches } from '../../units/length';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { doesNotApply, holds, type Rule, stops } from '../rule';
import { cabinetsBeside } from './cabinets';
import { atPlace } from './placeReading';

/** Electrical equipment over or under the panel may stand out a little past its front. */
export const wsSixIn: Rule = {
  id: 'WS-6IN',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, ({ panel }) => {
      const own = enclosureOnFace(panel);
      const past = cabinetsBeside(facts, panel)
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
