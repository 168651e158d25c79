import { METHOD_SECTIONS } from '../../standards/loadDemand';
import { isKnown } from '../../units/types';
import { loadWords } from '../../words/en/rulesLoad';
import { panelWords as say } from '../../words/en/rulesPanel';
import { theNewPanel } from '../panel/serviceReading';
import { newPanel } from '../reading';
import { cannotBeTold, type FactsInYear, holds, type Rule, stops } from '../rule';
import { checkCable, feederApplies, feederCables, feederWaits } from './feederReading';
import { loadLimits, missingLoads } from './loadReading';

const waitsOf = (facts: FactsInYear): string[] => {
  const { panel, path } = newPanel(facts);
  const fed = feederApplies(facts);
  return [
    ...facts.load.missing,
    ...(isKnown(panel.busAmps) ? [] : [path('busAmps')]),
    ...(fed === true ? feederWaits(facts) : []),
    ...(isKnown(panel.mainAmps) ? [] : [path('mainAmps')]),
    ...(isKnown(fed) ? [] : [path('role')]),
  ];
};

/**
 * The calculated load is not over the device, the bus or what the feeder carries. What is not known of the load can
 * only add to it: where the least it can come to is over, it fails before the rest is read.
 */
export const load: Rule = {
  id: 'LOAD',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel } = newPanel(facts);
    const { amps, least, method } = facts.load;
    const section = method === 'cannot be told' ? null : METHOD_SECTIONS[method][facts.edition].section;
    const fed = feederApplies(facts);
    const told = isKnown(amps);
    const known = told ? amps : least;
    const without = missingLoads(facts);
    const limits = loadLimits(facts);
    const carried = fed === true ? feederCables(facts).map((cable) => checkCable(facts, cable, known, known)) : [];
    const tooSmall = carried.flatMap((c) => (c?.outcome === 'fails' ? [c.ampacity] : []));
    const over = limits.some((limit) => known > limit);
    const most = Math.min(...limits, ...(over ? [] : tooSmall));
    if (isKnown(fed) && known > most) {
      const figures = { amps: told ? Math.round(known) : known, most };
      return stops(told ? say.loadFails(figures) : loadWords.failsAtLeast({ ...figures, without }), {
        measured: known,
        required: most,
        unit: 'A',
        section,
        remedies: [{ say: say.loadRemedy(), cents: null, work: [] }],
      });
    }
    if (!told) {
      const soFar = { amps: known, without };
      const text = limits.length > 0 ? loadWords.soFar({ ...soFar, most }) : loadWords.soFarAlone(soFar);
      return cannotBeTold(text, `${loadWords.missing(without)} ${say.loadLook()}`, waitsOf(facts));
    }
    const device = fed === true ? facts.feeder.breakerAmps : panel.mainAmps;
    if (
      !isKnown(fed) ||
      device === null ||
      !isKnown(panel.mainAmps) ||
      !isKnown(panel.busAmps) ||
      carried.some((c) => c?.outcome !== 'holds')
    )
      return cannotBeTold(say.loadUnknown(), say.loadLook(), waitsOf(facts), { section });
    return holds(say.loadHolds({ amps: Math.round(amps), most }), {
      measured: amps,
      required: most,
      unit: 'A',
      section,
    });
  },
};
