import type { Worked } from '../calculations/types';
import { calcVoltageDrop } from '../calculations/voltageDrop';
import type { FeederPlan } from '../facts/result';
import type { LoadFacts } from '../facts/ruling';
import { isFeederDrawn } from '../job/feeder';
import type { Job } from '../job/schema';
import type { RacewayMetal } from '../standards/impedance';
import { SYSTEM_VOLTS } from '../standards/loadDemand';
import { type In, isKnown, type Pt3 } from '../units/types';

/** Power factor of a dwelling's load taken together. Common practice, no source. */
const POWER_FACTOR = 0.9;

const distance = (a: Pt3, b: Pt3): In => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
const along = (path: readonly Pt3[]): In => path.slice(1).reduce((sum, p, i) => sum + distance(path[i]!, p), 0);

type Laid = Pick<FeederPlan, 'way' | 'legs' | 'outside' | 'cable'>;

/** The feeder's whole length one way, inches; null where a part of it is not measured. */
const lengthOf = (job: Job, { way, legs, outside }: Laid): In | null => {
  if (way === 'kept')
    return isFeederDrawn(job) && isKnown(job.feeder.outside) ? along(job.feeder.path) + job.feeder.outside : null;
  return legs.length > 0 && isKnown(outside)
    ? legs.reduce((sum, leg) => sum + distance(leg.from, leg.to), 0) + outside
    : null;
};

/** Voltage drop of the feeder at the calculated load, as far as length, load and conductors are known. */
export const feederDrop = (job: Job, feeder: Laid, load: LoadFacts): readonly Worked[] => {
  const inches = lengthOf(job, feeder);
  const { metal, size } = feeder.cable;
  if (inches === null || !isKnown(load.amps) || !isKnown(metal) || !isKnown(size)) return [];
  const raceway: RacewayMetal = feeder.way === 'kept' && job.feeder.raceway === 'metal' ? 'steel' : 'PVC';
  const answer = calcVoltageDrop({
    volts: SYSTEM_VOLTS,
    amps: load.amps,
    feetOneWay: Math.round(inches) / 12,
    metal,
    awg: size,
    ohmPerKft: null,
    raceway,
    powerFactor: POWER_FACTOR,
  });
  return answer.ok ? [answer.value.worked] : [];
};
