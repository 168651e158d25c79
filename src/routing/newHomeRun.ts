import type { Circuit, HomeRun, Job } from '../job/schema';
import type { Cable } from '../standards/cable';
import { isKnown } from '../units/types';

/** Smallest copper size for a breaker, 240.4(D) up to 30 A and the 60 °C column of the ampacity table above (334.80). */
const SIZE_FOR_AMPS: readonly (readonly [amps: number, size: string])[] = [
  [15, '14'],
  [20, '12'],
  [30, '10'],
  [40, '8'],
  [55, '6'],
  [70, '4'],
  [85, '3'],
  [95, '2'],
];
/** Where not even the breaker is known: the size that serves both ordinary ratings. */
const SIZE_WHEN_NOTHING_KNOWN = '12';

export interface NewCable {
  readonly cable: Cable;
  /** What had to be taken because the survey is silent: field of the old cable, and the value taken. */
  readonly assumed: readonly { readonly field: string; readonly value: string | number }[];
}

const nmBarred = (job: Job): boolean => {
  const allowed = job.code.amendments.nmAllowed;
  return allowed === false || allowed === 'no';
};

const sizeByBreaker = (circuits: readonly Circuit[]): string => {
  const amps = Math.max(0, ...circuits.map((c) => (isKnown(c.amps) ? c.amps : 0)));
  if (amps === 0) return SIZE_WHEN_NOTHING_KNOWN;
  return (SIZE_FOR_AMPS.find(([limit]) => amps <= limit) ?? SIZE_FOR_AMPS.at(-1)!)[1];
};

/**
 * The new cable that continues or replaces an old one: same size and conductors, copper, always with a ground; an old
 * three-wire range or dryer cable (bare neutral, or two hots and a neutral without ground) continues as four-wire.
 */
export const newCableFor = (job: Job, homeRun: HomeRun): NewCable => {
  const old = homeRun.cable;
  const circuits = job.circuits.filter((c) => homeRun.circuits.includes(c.id));
  const assumed: { field: string; value: string | number }[] = [];
  const take = <T extends string | number>(field: string, value: T): T => {
    assumed.push({ field, value });
    return value;
  };
  const size = isKnown(old.size) ? old.size : take('size', sizeByBreaker(circuits));
  const guess = circuits.length > 1 || circuits.some((c) => c.poles === 2 || c.volts === 240) ? 2 : 1;
  const hots = isKnown(old.hots) ? old.hots : take('hots', guess);
  const neutral = isKnown(old.neutral) ? old.neutral : take('neutral', 'insulated' as const);
  return {
    cable: {
      kind: nmBarred(job) ? 'MC' : 'NM',
      size,
      metal: 'Cu',
      hots,
      neutral: neutral === 'none' ? 'none' : 'insulated',
      ground: true,
      insulation: 90,
    },
    assumed,
  };
};

/** Insulated or bare circuit conductors of a cable that a splice joins, the ground not counted. */
export const conductorsOf = (cable: Cable): number =>
  (isKnown(cable.hots) ? cable.hots : 2) + (cable.neutral === 'none' ? 0 : 1);
