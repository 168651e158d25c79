import { cableName } from '../../standards/cableNames';
import { PULL_BOX } from '../../standards/pullBox';
import { compareSizes, isSize } from '../../standards/sizes';
import { byId, compareText } from '../../units/order';
import { isKnown } from '../../units/types';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { cablePaths, homeRunById, runOf } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';

const CABINETS: readonly string[] = ['splice can', 'new panel'];

/** A box with large conductors is sized by its entries, not by volume: the plan buys none, so the crew sizes it. */
export const bigBox: Rule = {
  id: 'BIG-BOX',
  subjects: ({ boxes }) => byId(boxes.filter((b) => !CABINETS.includes(b.on))).map((b) => b.id),
  check: (facts, subject) => {
    const box = facts.boxes.find((b) => b.id === subject)!;
    const inside = box.homeRuns.flatMap((homeRun) => {
      const next = runOf(facts, homeRun)?.newCable;
      return [homeRunById(facts.job, homeRun).cable, ...(next ? [next] : [])].map((cable) => ({ homeRun, cable }));
    });
    const big = inside.filter(
      ({ cable: { size } }) => isKnown(size) && isSize(size) && compareSizes(size, PULL_BOX.appliesFromAwg) >= 0,
    );
    const waits = inside.flatMap(({ homeRun, cable }) => cablePaths(facts.job, homeRun, cable, ['size']));
    if (big.length > 0)
      return cannotBeTold(
        say.bigAsk({
          cables: [...new Set(big.map(({ cable }) => cableName(cable)))].sort(compareText).join(', '),
          times: PULL_BOX.angleOrSpliceTimes,
          straight: PULL_BOX.straightTimes,
        }),
        say.bigLook(),
        waits,
      );
    return waits.length > 0 ? cannotBeTold(say.bigUnknown(), say.bigLook(), waits) : doesNotApply();
  },
};
