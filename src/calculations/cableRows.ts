import { ampacity } from '../standards/ampacity';
import type { Cable } from '../standards/cable';
import { cableName } from '../standards/cableNames';
import {
  ARMORED_RELIEF,
  COUNT_FACTORS,
  countFactor,
  SEALED_CABLES,
  UNADJUSTED_LENGTH_IN,
  WIREWAY_UNADJUSTED,
} from '../standards/countAdjustment';
import { currentCarrying } from '../standards/currentCarrying';
import { nextStandardSize } from '../standards/overcurrent';
import { BEYOND } from '../standards/source';
import { columnLimit } from '../standards/wiringMethods';
import { type Edition, type In, isKnown, knownOr, type U } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import { EPS, tidy } from './refuse';

/** One cable of a row and the largest breaker of the circuits it carries, A. */
export interface RowCable {
  readonly cable: Cable;
  readonly amps: U<number>;
}
/** How the cables lie, and the house's settings. */
export interface RowPolicy {
  /** Length they run together, in; null = not known, counts as more than 24. */
  readonly togetherIn: In | null;
  /** A cable's width apart all along. */
  readonly spaced: boolean;
  /** Through one opening filled with foam, caulk or insulation. */
  readonly sealed: boolean;
  /** In contact with thermal insulation. */
  readonly insulated: boolean;
  /** 'strict': sealed openings and insulation count at any length. Inspectors differ. */
  readonly bundling: 'strict' | 'over 24 in only';
  /** Lets the adjusted ampacity round up to the next standard rating, 240.4(B). */
  readonly nextSizeInRows: boolean;
  readonly inside?: 'raceway' | 'wireway';
}
/** What one cable brings to any row, and what it bears: rows can be packed with these whole numbers alone. */
export interface RowNeed {
  /** Current-carrying conductors it adds. */
  readonly conductors: number;
  /** Most current-carrying conductors in a row with which its breaker holds; its own included. */
  readonly mostConductors: number;
  /** Armored cable that needs no adjustment among its like. */
  readonly armored: boolean;
  /** Least share of the ampacity with which its breaker holds. */
  readonly leastFactor: number;
  /** Fields of the cable, and 'amps', that were not known and were taken at their worst. */
  readonly unknown: readonly string[];
}
export interface RowLimit {
  /** Every breaker holds, with everything unknown at its worst. */
  readonly fits: boolean;
  /** 'cannot be told' where only unknown fields stand in the way. */
  readonly outcome: 'holds' | 'fails' | 'cannot be told';
  /** Current-carrying conductors. */
  readonly conductors: number;
  readonly factor: number;
  readonly limit: string;
  readonly unknown: readonly string[];
}

/** Unmarked insulation starts at 60 °C (334.112: the 90 °C rating is what the jacket says). */
const startColumn = (cable: Cable) => (isKnown(cable.insulation) ? cable.insulation : 60);

/** Ampacity to start from and the one the breaker was chosen by; metal unknown = the lower. */
const ampacities = (cable: Cable, insulated: boolean): { start: number; cap: number } | null => {
  if (!isKnown(cable.size)) return null;
  const size = cable.size;
  const column = columnLimit(cable.kind, size, insulated).column ?? 75;
  const metals = isKnown(cable.metal) ? ([cable.metal] as const) : (['Al', 'Cu'] as const);
  for (const metal of metals) {
    const start = ampacity(metal, size, startColumn(cable));
    const cap = ampacity(metal, size, column);
    if (start !== BEYOND && cap !== BEYOND) return { start, cap: Math.min(start, cap) };
  }
  return null;
};

/**
 * A row spoils a cable only where it takes the ampacity below both the breaker and what the cable had alone: then the
 * least share that does not is cap / start or breaker / start, whichever is smaller. A breaker not known needs the cap.
 */
const leastFactor = (row: RowCable, policy: Pick<RowPolicy, 'insulated' | 'nextSizeInRows'>, edition: Edition) => {
  const known = ampacities(row.cable, policy.insulated);
  if (!known) return 1;
  const { start, cap } = known;
  const amps = isKnown(row.amps) ? row.amps : Number.POSITIVE_INFINITY;
  const plain = Math.min(cap, amps) / start;
  if (!policy.nextSizeInRows || !isKnown(row.amps)) return plain;
  const rounded = COUNT_FACTORS.map(({ factor }) => factor).filter((factor) => {
    const next = nextStandardSize(start * factor, edition);
    return next !== BEYOND && next >= amps;
  });
  return Math.min(plain, ...rounded);
};

const unknownFields = (row: RowCable): string[] => {
  const fields = (['kind', 'size', 'metal', 'hots', 'neutral', 'insulation'] as const).filter(
    (key) => row.cable[key] === 'unknown',
  );
  return isKnown(row.amps) ? fields : [...fields, 'amps'];
};

/** What a cable brings and bears, for the search of rows. */
export const rowNeed = (
  row: RowCable,
  policy: Pick<RowPolicy, 'insulated' | 'nextSizeInRows'>,
  edition: Edition,
): RowNeed => {
  const { cable } = row;
  const conductors = currentCarrying(cable);
  const least = leastFactor(row, policy, edition);
  const most = COUNT_FACTORS.reduce((n, step) => (step.factor >= least - EPS ? step.to : n), COUNT_FACTORS[0]!.to);
  const armored =
    (cable.kind === 'AC' || cable.kind === 'MC') &&
    cable.size === ARMORED_RELIEF.size &&
    cable.metal === ARMORED_RELIEF.metal &&
    conductors <= ARMORED_RELIEF.perCable;
  return { conductors, mostConductors: most, armored, leastFactor: least, unknown: unknownFields(row) };
};

/** Cables of a kind that 334.80 and 338.10(B)(4) speak of: sealed openings and insulation count for them. */
const SHEATHED: ReadonlySet<Cable['kind']> = new Set(['NM', 'NM without ground', 'SE-R', 'SE-U', 'UF', 'unknown']);

/** Why nothing is adjusted, or null where the count applies. */
const free = (
  cables: readonly RowCable[],
  needs: readonly RowNeed[],
  policy: RowPolicy,
  conductors: number,
  edition: Edition,
) => {
  if (conductors <= COUNT_FACTORS[0]!.to) return say.rowFew({ conductors });
  if (policy.inside === 'wireway')
    return conductors <= WIREWAY_UNADJUSTED ? say.rowWireway({ conductors, most: WIREWAY_UNADJUSTED }) : null;
  if (policy.spaced) return say.rowSpaced({ conductors });
  const long = policy.togetherIn === null || policy.togetherIn > UNADJUSTED_LENGTH_IN;
  const touching =
    (policy.sealed || policy.insulated) &&
    policy.bundling === 'strict' &&
    cables.filter((row) => SHEATHED.has(row.cable.kind)).length > SEALED_CABLES[edition];
  if (!long && !touching) return say.rowShort({ conductors });
  const armored = policy.inside === undefined && needs.every((need) => need.armored);
  return armored && conductors <= ARMORED_RELIEF.most
    ? say.rowArmored({ conductors, most: ARMORED_RELIEF.most })
    : null;
};

/** The same cable with each unknown field at the best it could turn out: does the row fail whatever is found out? */
const atBest = ({ cable, amps }: RowCable): RowCable => ({
  cable: {
    kind: knownOr(cable.kind, 'MC'),
    size: knownOr(cable.size, '600'),
    metal: knownOr(cable.metal, 'Cu'),
    hots: knownOr(cable.hots, 1),
    neutral: knownOr(cable.neutral, 'none'),
    ground: cable.ground,
    insulation: knownOr(cable.insulation, 90),
  },
  amps: knownOr(amps, 0),
});

const judge = (cables: readonly RowCable[], policy: RowPolicy, edition: Edition) => {
  const needs = cables.map((row) => rowNeed(row, policy, edition));
  const conductors = needs.reduce((sum, need) => sum + need.conductors, 0);
  const without = free(cables, needs, policy, conductors, edition);
  if (without !== null) return { needs, conductors, factor: 1, spoiled: -1, limit: without };
  const relieved = needs.every((need) => need.armored) && policy.inside === undefined;
  const factor = relieved ? ARMORED_RELIEF.factorAbove : countFactor(conductors);
  const spoiled = needs.findIndex((need) => factor < need.leastFactor - EPS);
  const percent = Math.round(factor * 100);
  const bad = cables[spoiled];
  const limit = bad
    ? say.rowFails({
        conductors,
        percent,
        cable: cableName(bad.cable),
        amps: bad.amps,
        carries: carriedBy(bad, factor, policy),
      })
    : say.rowHolds({ conductors, percent });
  return { needs, conductors, factor, spoiled, limit };
};

const carriedBy = (row: RowCable, factor: number, policy: RowPolicy): number | string => {
  const known = ampacities(row.cable, policy.insulated);
  return known ? tidy(Math.min(known.start * factor, known.cap)) : 'unknown';
};

/**
 * Do these cables, run together, still hold their breakers? Counted by Table 310.15(C)(1) (2017 310.15(B)(3)(a)) when
 * they stay together for more than 24 in, and for more than two sheathed cables in one sealed opening or against
 * insulation (334.80) at any length. Each starts in the column of its insulation, unmarked in the 60 °C column.
 */
export const rowLimit = (cables: readonly RowCable[], policy: RowPolicy, edition: Edition): RowLimit => {
  if (cables.length === 0)
    return { fits: true, outcome: 'holds', conductors: 0, factor: 1, limit: say.rowAlone, unknown: [] };
  const { needs, conductors, factor, spoiled, limit } = judge(cables, policy, edition);
  const unknown = [...new Set(needs.flatMap((need) => need.unknown))].sort();
  const fits = spoiled < 0;
  const base = { fits, conductors, factor, limit, unknown };
  if (fits) return { ...base, outcome: 'holds' };
  const surelyFails = judge(cables.map(atBest), policy, edition).spoiled >= 0;
  return { ...base, outcome: surelyFails ? 'fails' : 'cannot be told' };
};
