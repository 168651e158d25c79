import { type FeederAnswer, feederConductors } from '../../calculations/feederConductors';
import type { Cable } from '../../standards/cable';
import {
  COMMONEST_FEEDER_ERROR,
  FEEDER_CARRYING,
  HIGHER_MARKING,
  LOWER_MARKING,
  STRICT_AND_FREE_COLUMNS,
  STRICT_AND_FREE_KINDS,
  TABLE_AMBIENT_F,
  UNMARKED_COLUMN,
} from '../../standards/editionsService';
import { isKnown, type U } from '../../units/types';
import { hasFeeder, isFeederFed } from '../panel/serviceReading';
import { newPanel } from '../reading';
import type { FactsInYear } from '../rule';

export const FEEDER = 'feeder';
/** Rules about the feeder have one subject. */
export const theFeeder = (): readonly string[] => [FEEDER];

/** Does a feeder stand in front of the new panel? 'unknown' while the panel's role is. */
export const feederApplies = (facts: FactsInYear): U<boolean> => (hasFeeder(facts) ? isFeederFed(facts) : false);

/** The cables the feeder is made of when the work is done: an extended one is old and new. */
export const feederCables = ({ job, feeder }: FactsInYear): Cable[] => {
  switch (feeder.way) {
    case 'kept':
      return [job.feeder.cable];
    case 'extended':
      return [job.feeder.cable, feeder.cable];
    case 'replaced':
      return [feeder.cable];
  }
};

/** The lower marking at either end decides; the higher only where both ends have it. */
export const bothEnds = ({ job, option }: FactsInYear): U<60 | 75> => {
  const ends = [job.feeder.from.lugs, option.enclosure.lugs];
  return ends.find((end) => end === LOWER_MARKING) ?? ends.find((end) => !isKnown(end)) ?? ends[0]!;
};

/** Fields the check of the feeder waits for. */
export const feederWaits = (facts: FactsInYear): string[] => {
  const { job, feeder } = facts;
  const { panel, path } = newPanel(facts);
  const keys = ['kind', 'size', 'metal', 'insulation'] as const;
  return [
    ...(feeder.way === 'replaced'
      ? []
      : keys.filter((key) => !isKnown(job.feeder.cable[key])).map((key) => `/feeder/cable/${key}`)),
    ...(feeder.breakerAmps === null ? ['/feeder/from/breakerAmps'] : []),
    ...(isKnown(job.feeder.from.lugs) ? [] : ['/feeder/from/lugs']),
    ...(isKnown(panel.lugs) ? [] : [path('lugs')]),
    ...(isKnown(job.feeder.wholeDwelling) ? [] : ['/feeder/wholeDwelling']),
    ...(isKnown(panel.role) ? [] : [path('role')]),
  ];
};

/** What a cable may turn out to be where its jacket was not read: the strictest reading first. */
const readings = (cable: Cable): Cable[] =>
  (isKnown(cable.kind) ? [cable.kind] : STRICT_AND_FREE_KINDS).flatMap((kind) =>
    (isKnown(cable.insulation) ? [cable.insulation] : STRICT_AND_FREE_COLUMNS).map((insulation) => ({
      ...cable,
      kind,
      insulation,
    })),
  );

/** What hangs on the feeder and how its ends are marked: as surveyed, or as it may turn out. */
export interface Ends {
  readonly terminals: U<60 | 75>;
  readonly wholeDwelling: U<boolean>;
}
const endsOf = (facts: FactsInYear): Ends => ({
  terminals: bothEnds(facts),
  wholeDwelling: facts.job.feeder.wholeDwelling,
});

/** May `device` protect this cable, with `load` on it? Undefined where its size or metal is not known. */
export const checkCable = (
  facts: FactsInYear,
  cable: Cable,
  device: number,
  load: number,
  ends: Ends = endsOf(facts),
): FeederAnswer | undefined => {
  const { metal, size } = cable;
  if (!isKnown(size) || !isKnown(metal)) return undefined;
  const answers = readings(cable).flatMap(({ kind, insulation }) => {
    const answer = feederConductors(
      {
        metal,
        awg: size,
        kind,
        startColumn: isKnown(insulation) ? insulation : UNMARKED_COLUMN,
        insulated: false,
        breakerAmps: device,
        ...ends,
        continuousAmps: 0,
        otherAmps: load,
        conductors: FEEDER_CARRYING,
        ambientF: TABLE_AMBIENT_F,
        togetherIn: null,
      },
      facts.edition,
    );
    return answer.ok ? [answer.value] : [];
  });
  const [strict] = answers;
  if (!strict) return undefined;
  return answers.every((a) => a.outcome === strict.outcome) ? strict : { ...strict, outcome: 'cannot be told' };
};

/** What a cable carries at one marking of both its ends, and the largest device in front of it, A. */
export interface Carries {
  readonly column: 60 | 75;
  readonly amps: number;
  readonly most: number;
  /** With the whole dwelling on it, where that is not known; else null. */
  readonly wholeMost: number | null;
}

/** The same at every marking the ends may turn out to have, the higher first; nothing where the cable is not known. */
export const carriesOf = (facts: FactsInYear, cable: Cable, ends: Ends = endsOf(facts)): Carries[] => {
  const { terminals, wholeDwelling } = ends;
  const columns = isKnown(terminals) ? [terminals] : ([HIGHER_MARKING, LOWER_MARKING] as const);
  return columns.flatMap((column) => {
    const at = (whole: boolean) =>
      checkCable(facts, cable, facts.feeder.breakerAmps ?? 1, 0, { terminals: column, wholeDwelling: whole });
    const [told, whole] = [at(wholeDwelling === true), at(true)];
    if (!told || !whole) return [];
    const wholeMost = isKnown(wholeDwelling) ? null : whole.breakerMax;
    return [{ column, amps: told.ampacity, most: told.breakerMax, wholeMost }];
  });
};

/** Is it the conductor of the commonest error? */
export const isCommonestError = (cable: Cable): U<boolean> => {
  const { metal, size } = COMMONEST_FEEDER_ERROR;
  if ((isKnown(cable.metal) && cable.metal !== metal) || (isKnown(cable.size) && cable.size !== size)) return false;
  return isKnown(cable.metal) && isKnown(cable.size) ? true : 'unknown';
};
