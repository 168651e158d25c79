import { egcFor } from '../calculations/egc';
import { type FeederAnswer, feederConductors } from '../calculations/feederConductors';
import type { Worked } from '../calculations/types';
import type { FeederPlan, Outcome } from '../facts/result';
import type { LoadFacts } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import type { Cable } from '../standards/cable';
import { egcSize } from '../standards/grounding';
import { BEYOND } from '../standards/source';
import { type Edition, isKnown, type U } from '../units/types';

/** Aluminum SE cable with a full set of conductors, as the trade buys it, small to large. Common practice, no source. */
const FEEDER_SIZES = ['6', '4', '2', '1', '1/0', '2/0', '3/0', '4/0'] as const;
const newFeederCable = (size: string): Cable => ({
  kind: 'SE-R',
  size,
  metal: 'Al',
  hots: 2,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
});

const UNTOLD = 'cannot be told';

/** A room at or under 86 °F: no ambient correction. */
const ROOM_F = 86;
/** Current-carrying conductors of a 120/240 V feeder: the neutral carries only the unbalance. */
const FEEDER_CONDUCTORS = 2;

/** Both ends must be marked: one unknown end is an unknown marking. */
export const feederTerminals = (job: Job, option: Option): U<60 | 75> => {
  const ends = [job.feeder.from.lugs, option.enclosure.lugs];
  if (ends.includes(60)) return 60;
  return ends.every((e) => e === 75) ? 75 : 'unknown';
};

export const feederBreaker = (job: Job, option: Option): U<number> => {
  if (option.serviceDisconnect) return option.serviceDisconnect.amps;
  const amps = job.feeder.from.breakerAmps;
  return isKnown(amps) && amps !== null ? amps : 'unknown';
};

/** The feeder calculation for one cable at this job's ends, or null where a figure it needs is not known. Insulation not read counts as 60 °C. */
export const checkFeeder = (
  job: Job,
  option: Option,
  cable: Cable,
  edition: Edition,
  load: LoadFacts,
): FeederAnswer | null => {
  const breakerAmps = feederBreaker(job, option);
  if (!isKnown(breakerAmps) || !isKnown(cable.size) || !isKnown(cable.metal)) return null;
  const answer = feederConductors(
    {
      metal: cable.metal,
      awg: cable.size,
      kind: cable.kind,
      startColumn: isKnown(cable.insulation) ? cable.insulation : 60,
      insulated: false,
      breakerAmps,
      terminals: feederTerminals(job, option),
      wholeDwelling: job.feeder.wholeDwelling,
      continuousAmps: 0,
      otherAmps: isKnown(load.amps) ? load.amps : 0,
      conductors: FEEDER_CONDUCTORS,
      ambientF: ROOM_F,
      togetherIn: null,
    },
    edition,
  );
  return answer.ok ? answer.value : null;
};

/**
 * The cable a replaced feeder gets: the smallest aluminum SE-R cable that holds the breaker in front of it. With an
 * unknown terminal marking the size that holds at 60 °C is taken, since new money should not rest on a guess.
 */
export const replacementCable = (job: Job, option: Option, load: LoadFacts): Cable => {
  const edition = isKnown(job.code.edition) ? job.code.edition : 2023;
  const cautious: Job =
    feederTerminals(job, option) === 'unknown'
      ? { ...job, feeder: { ...job.feeder, from: { ...job.feeder.from, lugs: 60 } } }
      : job;
  const size = FEEDER_SIZES.find(
    (s) => checkFeeder(cautious, option, newFeederCable(s), edition, load)?.outcome === 'holds',
  );
  return size ? newFeederCable(size) : job.feeder.cable;
};

/**
 * Does a cable do as the feeder of the new panel: its conductors for the device, two hots with an insulated neutral and
 * an EGC (215.6, 250.118)? `raceway` = the one it lies in; a metal one is the EGC.
 */
export const feederOutcome = (
  job: Job,
  option: Option,
  cable: Cable,
  raceway: Job['feeder']['raceway'],
  load: LoadFacts,
): Outcome => {
  const { edition } = job.code;
  const sized = isKnown(edition) ? (checkFeeder(job, option, cable, edition, load)?.outcome ?? UNTOLD) : UNTOLD;
  const ground = raceway === 'metal' ? true : cable.ground;
  const parts: Outcome[] = [
    sized,
    !isKnown(cable.neutral) ? UNTOLD : cable.neutral === 'insulated' ? 'holds' : 'fails',
    !isKnown(ground) ? UNTOLD : ground ? 'holds' : raceway === 'unknown' ? UNTOLD : 'fails',
  ];
  return parts.includes('fails') ? 'fails' : parts.includes(UNTOLD) ? UNTOLD : 'holds';
};

/** Breaker, smallest EGC and the worked check of the cable the option ends up with. */
export const feederFigures = (
  job: Job,
  option: Option,
  cable: Cable,
  load: LoadFacts,
): Pick<FeederPlan, 'cable' | 'breakerAmps' | 'egc' | 'worked'> => {
  const breaker = feederBreaker(job, option);
  const metal = isKnown(cable.metal) ? cable.metal : 'Cu';
  const egc = isKnown(breaker) ? egcSize(metal, breaker) : null;
  const worked: Worked[] = [];
  if (isKnown(job.code.edition)) {
    const checked = checkFeeder(job, option, cable, job.code.edition, load);
    const ground =
      isKnown(breaker) && isKnown(cable.size) ? egcFor(metal, breaker, cable.size, null, job.code.edition).steps : [];
    if (checked)
      worked.push({ id: 'feeder', value: checked.ampacity, unit: 'A', steps: [...checked.steps, ...ground] });
  }
  return {
    cable,
    breakerAmps: isKnown(breaker) ? breaker : null,
    egc: egc === null || egc === BEYOND ? null : { size: egc, metal },
    worked,
  };
};
