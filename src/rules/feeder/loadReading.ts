import { isKnown } from '../../units/types';
import { loadWords as say } from '../../words/en/rulesLoad';
import { newPanel } from '../reading';
import type { FactsInYear } from '../rule';
import { checkCable, feederApplies, feederCables } from './feederReading';

const LOAD_FIELD = /^\/house\/loads\/(\d+)\//;

/** What the load waits for, in words: an appliance by its kind, once whatever is missing of it. */
export const missingLoads = ({ job, load }: FactsInYear): string[] => [
  ...new Set(
    load.missing.map((path) => {
      const kind = job.house.loads[Number(LOAD_FIELD.exec(path)?.[1])]?.kind;
      return kind === undefined ? (say.field[path] ?? path) : say.appliance({ kind });
    }),
  ),
];

/**
 * Breaker at the source when the work is done, A: the one there, or the smaller one FDR-SIZE and FDR-2AL put in for
 * conductors that do not hold it; null where it is not known.
 */
export const plannedBreaker = (facts: FactsInYear): number | null => {
  const there = facts.feeder.breakerAmps;
  if (there === null) return null;
  const failing = feederCables(facts).map((cable) => checkCable(facts, cable, there, 0));
  if (!failing.some((answer) => answer?.outcome === 'fails')) return there;
  const most = failing.flatMap((answer) => (answer && answer.breakerMax > 0 ? [answer.breakerMax] : []));
  return Math.min(there, ...most);
};

/** Ratings the load must not exceed, A, as far as they are known: the feeder's breaker, the panel's main and bus. */
export const loadLimits = (facts: FactsInYear): number[] => {
  const { panel } = newPanel(facts);
  const breaker = feederApplies(facts) === true ? plannedBreaker(facts) : null;
  return [breaker, panel.mainAmps, panel.busAmps].flatMap((n) => (n !== null && isKnown(n) ? [n] : []));
};
