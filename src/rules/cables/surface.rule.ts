import { isKnown } from '../../units/types';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { sitePath } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { homeRunIds, laid } from './cableReading';
import { dropsOf } from './downWall';

/** Below the joists a cable comes down a wall in a sleeve, on a board or inside the wall, never bare. */
export const surface: Rule = {
  id: 'SURFACE',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const drops = dropsOf(facts, laid(facts, subject)?.legs ?? []);
    if (drops.length === 0) return doesNotApply();
    if (drops.some((drop) => drop.bare === true))
      return stops(say.dropBare(), { remedies: [{ say: say.dropRemedy(), cents: null, work: [] }] });
    const waits = drops.flatMap(({ bare, framing }) =>
      isKnown(bare) ? [] : [framing ? sitePath(facts.job, 'framing', framing.id, 'underside') : '/site/framing'],
    );
    return waits.length > 0 ? cannotBeTold(say.dropUnknown(), say.parLook(), waits) : holds(say.dropHolds());
  },
};
