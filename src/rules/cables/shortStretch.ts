import type { Row } from '../../facts/result';
import { SHORT_STRETCH } from '../../standards/countAdjustment';
import { isKnown, type U } from '../../units/types';
import { homeRunById, pathTo } from '../reading';
import type { FactsInYear } from '../rule';

/**
 * Is a row so short against each of its circuits that its lower ampacity may be left out: not over 10 ft and not over a
 * tenth of the circuit? Never in a sealed hole. False where the contractor does not use the exception.
 */
export const isShortStretch = ({ job }: FactsInYear, row: Row): U<boolean> => {
  if (!job.practice.tenPercentException || row.by === 'sealed hole' || row.length > SHORT_STRETCH.mostIn) return false;
  const lengths = row.homeRuns.map((id) => homeRunById(job, id).wholeLength);
  if (lengths.some((length) => isKnown(length) && row.length > SHORT_STRETCH.share * length)) return false;
  return lengths.every(isKnown) ? true : 'unknown';
};

export const wholeLengthPaths = ({ job }: FactsInYear, row: Row): string[] =>
  row.homeRuns
    .filter((id) => !isKnown(homeRunById(job, id).wholeLength))
    .map((id) => pathTo(job, 'homeRuns', id, 'wholeLength'));
