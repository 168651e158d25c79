import { calcLoad } from '../calculations/load';
import type { CalcInput } from '../calculations/types';
import type { LoadFacts } from '../facts/ruling';
import type { Job } from '../job/schema';
import { isKnown, type U } from '../units/types';

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
type Pile =
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

const METERED_RULE = 'LOAD';

/** A recorded demand entered as an answer to the LOAD rule: peak VA over the year or the 30 days the code asks for. */
const meteredPeak = (job: Job): number | null => {
  const answer = job.answers.find((a) => a.rule === METERED_RULE && typeof a.answer === 'number' && a.answer > 0);
  return typeof answer?.answer === 'number' ? answer.answer : null;
};

/**
 * Load on the panel. Whole-dwelling methods are used only where the feeder carries the whole dwelling; a panel that
 * carries part of the house gets the standard method. Missing data is named, never guessed.
 */
export const panelLoad = (job: Job): LoadFacts => {
  const missing: string[] = [];
  const need = <T>(value: U<T>, path: string): T | undefined => {
    if (isKnown(value)) return value;
    missing.push(path);
    return undefined;
  };
  const edition = need(job.code.edition, '/code/edition');
  const whole = job.feeder.from.panel === 'utility' ? true : need(job.feeder.wholeDwelling, '/feeder/wholeDwelling');
  const area = whole
    ? need(job.house.floorAreaFt2, '/house/floorAreaFt2')
    : need(job.house.panelAreaFt2, '/house/panelAreaFt2');
  const smallAppliance = need(job.house.smallApplianceCircuits, '/house/smallApplianceCircuits');
  const laundry = need(job.house.laundryCircuits, '/house/laundryCircuits');
  const piles: Record<Pile, number[]> = {
    fixedVA: [],
    dryerVA: [],
    rangeVA: [],
    ovenVA: [],
    cooktopVA: [],
    heatVA: [],
    coolVA: [],
    evVA: [],
    otherVA: [],
    motor: [],
  };
  job.house.loads.forEach((load, i) => {
    const onPanel = need(load.onPanel, `/house/loads/${i}/onPanel`);
    if (onPanel === false) return;
    const va = need(load.va, `/house/loads/${i}/va`);
    if (va !== undefined) for (const pile of PILES[load.kind] ?? ['otherVA']) piles[pile].push(va);
  });
  if (
    edition === undefined ||
    area === undefined ||
    smallAppliance === undefined ||
    laundry === undefined ||
    missing.length > 0
  )
    return { method: 'cannot be told', amps: 'unknown', missing: missing.sort(), worked: [] };

  const sum = (list: readonly number[]) => list.reduce((n, va) => n + va, 0);
  const peakVA = meteredPeak(job);
  const input: CalcInput['load'] = {
    edition,
    method: peakVA !== null ? 'measured' : whole ? 'existing' : 'standard',
    areaFt2: area,
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
  const answer = calcLoad(input);
  if (!answer.ok) return { method: 'cannot be told', amps: 'unknown', missing: [answer.error.error.path], worked: [] };
  return { method: input.method, amps: Number(answer.value.figures.amps), missing: [], worked: [answer.value.worked] };
};
