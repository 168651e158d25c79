import type { CableKind, Metal, TempColumn } from '../standards/cable';
import { DWELLING_RULE, dwellingAmpacity } from '../standards/dwellingService';
import {
  NEXT_SIZE_MOST,
  NEXT_SIZE_RULE,
  nextStandardSize,
  PROTECT_AT_AMPACITY,
  STANDARD_SIZES_RULE,
  standardSizeBelow,
  standardSizes,
} from '../standards/overcurrent';
import { SMALL_CONDUCTORS_RULE, smallConductorMost } from '../standards/smallConductors';
import { BEYOND, cited } from '../standards/source';
import { CONTINUOUS_SHARE, FEEDER_DEVICE_RULE, FEEDER_LOAD_RULE, terminalColumns } from '../standards/terminals';
import { columnLimit } from '../standards/wiringMethods';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import type { Edition, In, U } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import { type Carried, carrying, type Steps } from './carrying';
import { EPS, tidy } from './refuse';

export interface FeederCase {
  readonly metal: Metal;
  readonly awg: string;
  readonly kind: U<CableKind>;
  /** Column of the insulation; unmarked = 60. */
  readonly startColumn: TempColumn;
  /** Touching thermal insulation along its way. */
  readonly insulated: boolean;
  readonly breakerAmps: number;
  readonly terminals: U<60 | 75>;
  readonly wholeDwelling: U<boolean>;
  readonly continuousAmps: number;
  readonly otherAmps: number;
  readonly conductors: number;
  readonly ambientF: number;
  readonly togetherIn: In | null;
}
export interface FeederAnswer {
  readonly outcome: 'holds' | 'fails' | 'cannot be told';
  /** A, at the strictest reading of what is not known. */
  readonly ampacity: number;
  /** A, with the terminals at their best. */
  readonly ampacityAtBest: number;
  /** Column, °C, the ends and the wiring method hold the conductors to at that reading. */
  readonly column: 60 | 75;
  /** Load with its continuous part at 125 %, A, and the ampacity before factors that has to carry it. */
  readonly neededAmps: number;
  readonly beforeFactors: number;
  /** Largest device, A, at the same reading. */
  readonly breakerMax: number;
  /** Steps up to the ampacity alone. */
  readonly carried: Steps;
  readonly steps: Steps;
}

/** Largest device these conductors may have by 240.4: their ampacity, or the next standard rating where it is none. */
const deviceMost = (amps: number, f: FeederCase, edition: Edition) => {
  const isStandard = standardSizes(edition).some((size) => Math.abs(size - amps) <= EPS);
  const next = nextStandardSize(amps, edition);
  const mayRound = !isStandard && next !== BEYOND && next <= NEXT_SIZE_MOST;
  const below = standardSizeBelow(amps, edition);
  const most = mayRound ? next : below === BEYOND ? 0 : below;
  return { most: Math.min(most, smallConductorMost(f.metal, f.awg) ?? most), rounded: mayRound, isStandard };
};

/** Largest rating of which the ampacity is 83 %, 100 to 400 A; 0 = none. */
const dwellingMost = (amps: number, edition: Edition): number =>
  standardSizes(edition).reduce((most, rating) => {
    const least = dwellingAmpacity(rating);
    return least !== BEYOND && amps >= least - EPS ? rating : most;
  }, 0);

/** One reading: terminals at worst or best, whole dwelling or part of it. */
const reading = (f: FeederCase, usable: number, unadjusted: number, whole: boolean, edition: Edition) => {
  const load = f.continuousAmps + f.otherAmps;
  const needed = tidy(CONTINUOUS_SHARE * f.continuousAmps + f.otherAmps);
  const device = deviceMost(usable, f, edition);
  const dwelling = whole ? dwellingMost(usable, edition) : 0;
  const tests = { before: unadjusted >= needed - EPS, after: usable >= load - EPS };
  // 310.12 stands in the place of the load for a feeder with the whole dwelling on it.
  const byDwelling = f.breakerAmps <= dwelling && dwellingAmpacity(f.breakerAmps) !== BEYOND;
  const holds =
    f.breakerAmps >= needed - EPS && (byDwelling || (tests.before && tests.after && f.breakerAmps <= device.most));
  return { holds, needed, device, dwelling, tests, breakerMax: Math.max(device.most, dwelling) };
};

/** Do these conductors carry the load and may this device protect them? NEC 215.2, 215.3, 240.4, 310.12, 110.14(C). */
export const feederConductors = (f: FeederCase, edition: Edition): Result<FeederAnswer, Fault> => {
  const limit = columnLimit(f.kind, f.awg, f.insulated);
  const found = carrying({ ...f, limitColumn: limit.column, limitRule: limit.rule }, edition);
  if (!found.ok) return found;
  const c = found.value;
  const wholes = f.wholeDwelling === 'unknown' ? [false, true] : [f.wholeDwelling];
  const ends = [
    [c.usable, c.unadjusted],
    [c.usableAtBest, c.unadjustedAtBest],
  ] as const;
  const readings = ends.flatMap(([usable, unadjusted]) =>
    wholes.map((whole) => reading(f, usable, unadjusted, whole, edition)),
  );
  const strict = readings[0]!;
  const outcome = readings.every((r) => r.holds) ? 'holds' : readings.some((r) => r.holds) ? 'cannot be told' : 'fails';
  return ok({
    outcome,
    ampacity: c.usable,
    ampacityAtBest: c.usableAtBest,
    column: limit.column === 60 || terminalColumns(f.terminals)[0] === 60 || f.startColumn === 60 ? 60 : 75,
    neededAmps: strict.needed,
    beforeFactors: c.unadjusted,
    breakerMax: strict.breakerMax,
    carried: c.steps,
    steps: [...c.steps, ...feederSteps(f, c, strict, outcome, edition)],
  });
};

const dwellingSteps = (f: FeederCase, amps: number, section: string): Steps => {
  const least = dwellingAmpacity(f.breakerAmps);
  if (f.wholeDwelling !== true)
    return [
      {
        say: f.wholeDwelling === false ? say.dwellingNot : say.dwellingUnknown,
        value: say.dwellingWord(f.wholeDwelling),
        unit: '',
        section,
      },
    ];
  return least === BEYOND
    ? [{ say: say.dwellingOutside({ breaker: f.breakerAmps }), value: BEYOND, unit: '', section }]
    : [
        {
          say: say.dwellingShare({ breaker: f.breakerAmps, least: tidy(least), amps }),
          value: tidy(least),
          unit: 'A',
          section,
        },
      ];
};

const feederSteps = (
  f: FeederCase,
  c: Carried,
  r: ReturnType<typeof reading>,
  outcome: FeederAnswer['outcome'],
  edition: Edition,
): Steps => {
  const section = cited(FEEDER_LOAD_RULE[edition]);
  const small = smallConductorMost(f.metal, f.awg);
  const { continuousAmps: continuous, otherAmps: other } = f;
  const load = tidy(continuous + other);
  const sized = r.device.rounded
    ? { say: say.nextSize({ amps: c.usable }), section: cited(NEXT_SIZE_RULE[edition]) }
    : {
        say: say.standardSize({ amps: c.usable, standard: r.device.isStandard }),
        section: cited(STANDARD_SIZES_RULE[edition]),
      };
  return [
    ...(load > 0
      ? [
          { say: say.needed({ continuous, other }), value: r.needed, unit: 'A', section },
          { say: say.beforeFactors({ holds: r.tests.before }), value: c.unadjusted, unit: 'A', section },
          { say: say.loadItself({ continuous, other, holds: r.tests.after }), value: load, unit: 'A', section },
        ]
      : []),
    { ...sized, value: r.device.most, unit: 'A' },
    ...(small === null
      ? []
      : [{ say: say.smallConductor, value: small, unit: 'A', section: cited(SMALL_CONDUCTORS_RULE[edition]) }]),
    ...dwellingSteps(f, c.usable, cited(DWELLING_RULE[edition])),
    { say: say.breakerMax, value: r.breakerMax, unit: 'A', section: cited(PROTECT_AT_AMPACITY[edition]) },
    {
      say: say.device({ holds: outcome === 'holds', open: outcome === 'cannot be told' }),
      value: f.breakerAmps,
      unit: 'A',
      section: cited(FEEDER_DEVICE_RULE[edition]),
    },
  ];
};
