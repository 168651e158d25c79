import { boxFillIn3 } from '../../calculations/boxFill';
import type { Count } from '../../calculations/types';
import type { Box } from '../../facts/result';
import { boxCatalogue } from '../../standards/boxCatalogue';
import type { Cable } from '../../standards/cable';
import { byId } from '../../units/order';
import { type Id, isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { cablePaths, homeRunById, runOf } from '../reading';
import { cannotBeTold, type FactsInYear, holds, type Rule, stops } from '../rule';

const CABINETS: readonly Box['on'][] = ['splice can', 'new panel'];

/** Both cables of every home run spliced in the box: the old one and the one that goes on. */
const cablesIn = (facts: FactsInYear, box: Box): { homeRun: Id; cable: Cable }[] =>
  box.homeRuns.flatMap((homeRun) => {
    const next = runOf(facts, homeRun)?.newCable;
    const { cable } = homeRunById(facts.job, homeRun);
    return [cable, ...(next ? [next] : [])].map((one) => ({ homeRun, cable: one }));
  });

const KEYS = ['size', 'hots', 'neutral', 'ground'] as const;

const conductorsOf = ({ size, hots, neutral }: Cable): Count[] =>
  isKnown(size) && isKnown(hots) ? [{ awg: size, count: hots + (neutral === 'none' ? 0 : 1) }] : [];
const groundsOf = ({ size, ground }: Cable): Count[] =>
  isKnown(size) && ground === true ? [{ awg: size, count: 1 }] : [];

/** The box is large enough for what is joined in it, counted here again from the cables. Equal is enough. */
export const boxFill: Rule = {
  id: 'BOX-FILL',
  subjects: ({ boxes }) => byId(boxes.filter((b) => !CABINETS.includes(b.on))).map((b) => b.id),
  check: (facts, subject) => {
    const box = facts.boxes.find((b) => b.id === subject)!;
    const inside = cablesIn(facts, box);
    const waits = inside.flatMap(({ homeRun, cable }) => cablePaths(facts.job, homeRun, cable, KEYS));
    const fill = boxFillIn3(facts.edition, {
      conductors: inside.flatMap(({ cable }) => conductorsOf(cable)),
      grounds: inside.flatMap(({ cable }) => groundsOf(cable)),
      clamps: boxCatalogue.find((b) => b.size === box.size)?.clamps ?? false,
      yokes: [],
      fittings: 0,
    });
    if (waits.length > 0 || fill === null) return cannotBeTold(say.boxUnknown(), say.boxLook(), waits);
    const v = { fill, volume: box.volumeIn3 };
    const detail = { measured: fill, required: box.volumeIn3, unit: 'cu in.' };
    return fill <= box.volumeIn3
      ? holds(say.boxHolds(v), detail)
      : stops(say.boxFails(v), { ...detail, remedies: [{ say: say.boxRemedy(), cents: null, work: [] }] });
  },
};
