import { calcLoad } from '../calculations/load';
import type { CalcInput } from '../calculations/types';
import { EV_LEAST_VA } from '../standards/loadDemand';
import type { Edition } from '../units/types';
import { editionsOf, type LoadReading, type Pile } from './loadReading';

/**
 * Up to so many dryers, or cooking appliances, one more never lowers the demand of all. Beyond, the shares of Tables
 * 220.54 and 220.55 can fall faster than the appliance adds: 4 × 8750 VA at 50 % = 17,500, with 3500 more at 45 % 17,325.
 */
const NEVER_LOWERED_TO = 4;
const COOKING: readonly Pile[] = ['rangeVA', 'ovenVA', 'cooktopVA'];
type Method = Exclude<CalcInput['load']['method'], 'optional'>;

const sum = (list: readonly number[]) => list.reduce((n, va) => n + va, 0);
const nothings = (count: number): number[] => Array.from({ length: count }, () => 0);

/** Appliances of these piles that are known; none where an unknown one may lower what all of them come to. */
const surely = (read: LoadReading, piles: readonly Pile[]) => {
  const open = sum(piles.map((pile) => read.open[pile]));
  const count = open + sum(piles.map((pile) => read.piles[pile].length));
  const counts = open === 0 || count <= NEVER_LOWERED_TO;
  return (pile: Pile): number[] => (counts ? read.piles[pile] : []);
};

const leastBy = (read: LoadReading, edition: Edition, method: Method): number => {
  const { piles, open, peakVA } = read;
  const cooking = surely(read, COOKING);
  const [heat, cool] = [sum(piles.heatVA), sum(piles.coolVA)];
  // cooling next below the heat counts more than either alone (220.60 of 2023): with one of them open, the larger
  const larger = open.heatVA + open.coolVA > 0 ? Math.max(heat, cool) : null;
  const answer = calcLoad({
    edition,
    method,
    // part of the house or all of it: which area is not told either
    areaFt2: read.whole === undefined ? 0 : (read.areaFt2 ?? 0),
    smallAppliance: read.smallAppliance ?? 0,
    laundry: read.laundry ?? 0,
    // an appliance of 0 VA: it may be the fourth, from which all count at 75 % (220.53)
    fixedVA: [...piles.fixedVA, ...nothings(open.fixedVA)],
    rangeVA: cooking('rangeVA'),
    ovenVA: cooking('ovenVA'),
    cooktopVA: cooking('cooktopVA'),
    dryerVA: surely(read, ['dryerVA'])('dryerVA'),
    wholeDwelling: method === 'existing',
    newHvac: false,
    heatVA: larger ?? heat,
    coolVA: larger ?? cool,
    largestMotorVA: Math.max(0, ...piles.motor),
    evVA: peakVA === null ? sum(piles.evVA) + (read.evOnPanel > 0 ? EV_LEAST_VA[edition] : 0) : 0,
    otherVA: peakVA === null ? sum(piles.otherVA) : 0,
    peakVA,
  });
  return answer.ok ? Number(answer.value.figures.amps) : 0;
};

/**
 * The least the load can come to, A at 240 V, whatever the unknown turns out to be: unknown VA, floor area and circuits
 * count nothing, and of the code years and methods in question the one that gives least is taken. Articles 220.40 to
 * 220.61, 220.83 and 220.87 (120 in 2026).
 */
export const leastLoad = (read: LoadReading): number => {
  const methods: readonly Method[] =
    read.peakVA !== null
      ? ['measured']
      : read.whole === undefined
        ? ['standard', 'existing']
        : [read.whole ? 'existing' : 'standard'];
  return Math.min(...editionsOf(read).flatMap((edition) => methods.map((method) => leastBy(read, edition, method))));
};
