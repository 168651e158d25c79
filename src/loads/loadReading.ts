import type { Job } from '../job/schema';
import { EDITIONS, type Edition, isKnown, type U } from '../units/types';

/** Which pile of the load calculation a kind of load belongs to. Several piles for one that heats and cools. */
const PILES: Readonly<Record<string, readonly Pile[]>> = {
  dishwasher: ['fixedVA'],
  disposal: ['fixedVA', 'motor'],
  microwave: ['fixedVA'],
  'water heater': ['fixedVA'],
  pump: ['fixedVA', 'motor'],
  dryer: ['dryerVA'],
  range: ['rangeVA'],
  oven: ['ovenVA'],
  cooktop: ['cooktopVA'],
  'air conditioner': ['coolVA', 'motor'],
  'heat pump': ['heatVA', 'coolVA', 'motor'],
  'electric heat': ['heatVA'],
  'EV charger': ['evVA'],
  other: ['otherVA'],
};
export type Pile =
  | 'fixedVA'
  | 'dryerVA'
  | 'rangeVA'
  | 'ovenVA'
  | 'cooktopVA'
  | 'heatVA'
  | 'coolVA'
  | 'evVA'
  | 'otherVA'
  | 'motor';

const EV = 'EV charger';
const METERED_RULE = 'LOAD';

/** A recorded demand entered as an answer to the LOAD rule: peak VA over the year or the 30 days the code asks for. */
const meteredPeak = (job: Job): number | null => {
  const answer = job.answers.find((a) => a.rule === METERED_RULE && typeof a.answer === 'number' && a.answer > 0);
  return typeof answer?.answer === 'number' ? answer.answer : null;
};

/** What the survey says of the load on the panel; undefined where nobody knows. */
export interface LoadReading {
  readonly edition: Edition | undefined;
  /** Does the panel carry the whole dwelling? */
  readonly whole: boolean | undefined;
  readonly areaFt2: number | undefined;
  readonly smallAppliance: number | undefined;
  readonly laundry: number | undefined;
  /** VA of the loads known to be on the panel, by pile. */
  readonly piles: Readonly<Record<Pile, number[]>>;
  /** How many loads of each pile may add to it: their VA, or whether they are on the panel, is not known. */
  readonly open: Readonly<Record<Pile, number>>;
  /** Of these, electric vehicle supplies known to be on the panel. */
  readonly evOnPanel: number;
  /** Recorded demand, VA, or null. */
  readonly peakVA: number | null;
  /** Fields that are not known, by JSON pointer. */
  readonly missing: readonly string[];
}

const byPile = <T>(make: () => T): Record<Pile, T> => ({
  fixedVA: make(),
  dryerVA: make(),
  rangeVA: make(),
  ovenVA: make(),
  cooktopVA: make(),
  heatVA: make(),
  coolVA: make(),
  evVA: make(),
  otherVA: make(),
  motor: make(),
});

/** The code years in question: one, or all where nobody knows it. */
export const editionsOf = ({ edition }: LoadReading): readonly Edition[] =>
  edition === undefined ? EDITIONS : [edition];

/** The survey read once, what is missing named. */
export const readLoads = (job: Job): LoadReading => {
  const missing: string[] = [];
  const need = <T>(value: U<T>, path: string): T | undefined => {
    if (isKnown(value)) return value;
    missing.push(path);
    return undefined;
  };
  const edition = need(job.code.edition, '/code/edition');
  const whole = job.feeder.from.panel === 'utility' ? true : need(job.feeder.wholeDwelling, '/feeder/wholeDwelling');
  const areaFt2 = whole
    ? need(job.house.floorAreaFt2, '/house/floorAreaFt2')
    : need(job.house.panelAreaFt2, '/house/panelAreaFt2');
  const smallAppliance = need(job.house.smallApplianceCircuits, '/house/smallApplianceCircuits');
  const laundry = need(job.house.laundryCircuits, '/house/laundryCircuits');
  const piles = byPile<number[]>(() => []);
  const open = byPile(() => 0);
  let evOnPanel = 0;
  job.house.loads.forEach((load, i) => {
    const onPanel = need(load.onPanel, `/house/loads/${i}/onPanel`);
    if (onPanel === false) return;
    const va = need(load.va, `/house/loads/${i}/va`);
    const known = va !== undefined && onPanel === true;
    for (const pile of PILES[load.kind] ?? ['otherVA'])
      if (known) piles[pile].push(va);
      else open[pile] += 1;
    if (!known && onPanel === true && load.kind === EV) evOnPanel += 1;
  });
  const peakVA = meteredPeak(job);
  return {
    edition,
    whole,
    areaFt2,
    smallAppliance,
    laundry,
    piles,
    open,
    evOnPanel,
    peakVA,
    missing: missing.sort(),
  };
};
