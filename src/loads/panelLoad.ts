import { calcLoad } from '../calculations/load';
import type { CalcInput } from '../calculations/types';
import type { LoadFacts } from '../facts/ruling';
import type { Job } from '../job/schema';
import { leastLoad } from './leastLoad';
import { type LoadReading, readLoads } from './loadReading';

const sum = (list: readonly number[]) => list.reduce((n, va) => n + va, 0);

/** What the calculation is asked once everything is known; null before. */
const inputOf = (read: LoadReading): CalcInput['load'] | null => {
  const { edition, whole, areaFt2, smallAppliance, laundry, piles, peakVA, missing } = read;
  if (
    edition === undefined ||
    areaFt2 === undefined ||
    smallAppliance === undefined ||
    laundry === undefined ||
    missing.length > 0
  )
    return null;
  return {
    edition,
    method: peakVA !== null ? 'measured' : whole ? 'existing' : 'standard',
    areaFt2,
    smallAppliance,
    laundry,
    fixedVA: piles.fixedVA,
    rangeVA: piles.rangeVA,
    dryerVA: piles.dryerVA,
    ovenVA: piles.ovenVA,
    cooktopVA: piles.cooktopVA,
    wholeDwelling: whole === true,
    newHvac: false,
    heatVA: sum(piles.heatVA),
    coolVA: sum(piles.coolVA),
    largestMotorVA: Math.max(0, ...piles.motor),
    // a recorded peak has the present loads in it already
    evVA: peakVA === null ? sum(piles.evVA) : 0,
    otherVA: peakVA === null ? sum(piles.otherVA) : 0,
    peakVA,
  };
};

/**
 * Load on the panel. Whole-dwelling methods are used only where the feeder carries the whole dwelling; a panel that
 * carries part of the house gets the standard method. Missing data is named, never guessed; what the load comes to at
 * the least is told without it.
 */
export const panelLoad = (job: Job): LoadFacts => {
  const read = readLoads(job);
  const untold = (missing: readonly string[]): LoadFacts => ({
    method: 'cannot be told',
    amps: 'unknown',
    least: leastLoad(read),
    missing,
    worked: [],
  });
  const input = inputOf(read);
  if (input === null) return untold(read.missing);
  const answer = calcLoad(input);
  if (!answer.ok) return untold([answer.error.error.path]);
  const amps = Number(answer.value.figures.amps);
  return { method: input.method, amps, least: amps, missing: [], worked: [answer.value.worked] };
};
