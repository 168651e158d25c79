import { expect } from 'vitest';
import { calcAmpacity } from '../../../src/calculations/ampacity';
import { type RowCable, type RowPolicy, rowLimit, rowNeed } from '../../../src/calculations/cableRows';
import { neutralAmps } from '../../../src/calculations/sharedNeutral';
import type { Cable } from '../../../src/standards/cable';
import { racewayArea } from '../../../src/standards/conduit';
import { answerOf, type Check } from './case';

/** Conductors together: Table 310.15(C)(1) of 2020 and 2023, 310.15(C)(1)(b) for 24 in, 376.22(B) for wireways. */

const wire = (size: string, amps: number, hots: 1 | 2 = 1, neutral: Cable['neutral'] = 'insulated'): RowCable => ({
  cable: { kind: 'NM', size, metal: 'Cu', hots, neutral, ground: true, insulation: 90 },
  amps,
});
const LYING: RowPolicy = {
  togetherIn: 60,
  spaced: false,
  sealed: false,
  insulated: false,
  bundling: 'strict',
  nextSizeInRows: false,
};
const times = (n: number, cable: RowCable) => Array.from({ length: n }, () => cable);
const row = (cables: readonly RowCable[], policy: Partial<RowPolicy> = {}) =>
  rowLimit(cables, { ...LYING, ...policy }, 2020);
const raceway = (cables: readonly RowCable[], togetherIn = 60) => row(cables, { inside: 'raceway', togetherIn });

/** A of one copper conductor of 90 °C insulation among `conductors`. */
const carries = (awg: string, conductors: number) =>
  answerOf(
    calcAmpacity({
      edition: 2020,
      metal: 'Cu',
      awg,
      startColumn: 90,
      terminals: 90,
      limitColumn: null,
      conductors,
      ambientF: 86,
      togetherIn: 60,
      inRaceway: true,
      breakerAmps: null,
    }),
  ).worked.value;
/** Does the conductor hold its breaker there, with terminals marked 60 °C? */
const holds20 = (awg: string, conductors: number) =>
  answerOf(
    calcAmpacity({
      edition: 2020,
      metal: 'Cu',
      awg,
      startColumn: 90,
      terminals: 60,
      limitColumn: null,
      conductors,
      ambientF: 86,
      togetherIn: 300,
      inRaceway: true,
      breakerAmps: 20,
    }),
  ).outcome === 'holds';
const smallest20 = (conductors: number) => ['14', '12', '10', '8'].find((awg) => holds20(awg, conductors));

/** Two-wire circuits that may share one raceway or row before a breaker fails. */
const mostTwoWire = (cable: RowCable) =>
  Math.floor(rowNeed(cable, { insulated: false, nextSizeInRows: false }, 2020).mostConductors / 2);
const TWELVE = wire('12', 20);
const FOURTEEN = wire('14', 15);

export const wireCases: Readonly<Record<string, Check>> = {
  'FC-02': (e) => {
    const nineteen = [...times(12, TWELVE), ...times(7, FOURTEEN)];
    const one = raceway(nineteen, 30);
    expect(one.conductors).toBe(e.ccc);
    expect(one.factor).toBe(e.factor_single_pipe);
    expect(one.outcome).toBe('fails');
    expect(carries('12', one.conductors)).toBe(e.a12_single_pipe_A);
    const fewest = Math.ceil(nineteen.length / Math.min(mostTwoWire(TWELVE), mostTwoWire(FOURTEEN)));
    expect(fewest).toBe(e.min_pipes_max9ccc_pairs);
    // back to back with a nipple of 24 in nothing is adjusted
    expect(raceway(nineteen, 24).factor).toBe(1);
  },
  'FC-03': (e) => {
    const twelve = times(12, TWELVE);
    const trough = row(twelve, { inside: 'wireway' });
    expect(trough.conductors).toBe(e.ccc);
    expect(trough.factor === 1).toBe(e.wireway_limit_30_ok);
    expect(raceway(twelve, 40).factor).toBe(e.single_pipe_over24in_factor);
  },
  'FC-14': (e) => {
    expect(raceway(times(18, FOURTEEN), 24).factor).toBe(e.nipple_factor);
  },
  'FC-18': (e) => {
    const sleeve = raceway(times(12, TWELVE), 36);
    expect(sleeve.factor).toBe(e.factor);
    expect(carries('12', sleeve.conductors)).toBe(e.a12_A);
    expect(sleeve.fits).toBe(e.pass);
    // Chapter 9 Table 4 prints 1.316 for over two conductors; the case rounds
    expect(Number(racewayArea('PVC 40', '2', 'more')).toFixed(2)).toBe(Number(e.fill_allowed).toFixed(2));
  },
  'FC-19': (e) => {
    const five = raceway(times(5, TWELVE), 72);
    expect(five.conductors).toBe(e.ccc);
    expect(five.factor).toBe(e.factor);
    expect(carries('12', 10)).toBe(e.a12);
    expect(carries('14', 10)).toBe(e.a14);
    expect(five.fits).toBe(false);
    expect(mostTwoWire(TWELVE)).toBe(e.max_2wire_circuits_per_pipe);
    expect(mostTwoWire(FOURTEEN)).toBe(e.max_2wire_circuits_per_pipe);
  },
  'FC-20': (e) => {
    const all = raceway([...times(5, TWELVE), wire('12', 20, 2, 'none')], 300);
    expect(all.conductors).toBe(e.ccc);
    expect(all.factor).toBe(e.factor);
    expect(Number(smallest20(12))).toBe(e.min_awg_one_pipe);
    expect(Number(smallest20(6))).toBe(e.min_awg_two_pipes);
  },
  'FC-21': (e) => {
    const nine = raceway(times(9, TWELVE), 200);
    expect(nine.conductors).toBe(e.ccc_9);
    expect(nine.factor).toBe(e.factor);
    expect(raceway(times(3, TWELVE), 200).factor).toBe(e.three_pipes_factor);
  },
  'FC-22': (e) => {
    expect(mostTwoWire(TWELVE)).toBe(e.strict_max_2wire_cables_per_hole);
    const bundle = row(times(15, TWELVE));
    expect(bundle.factor).toBe(e.factor_15_cables);
    expect(bundle.fits).toBe(false);
  },
  'FC-31': (e) => {
    expect(neutralAmps(20, 20, false)).toBe(e.neutral_max_A);
    // 14 copper at 60 °C terminals carries 15 A: no 20 A breaker
    expect(smallest20(2) !== '14').toBe(e.violation);
  },
  'FC-76': (e) => {
    const forty = row(times(40, TWELVE), { inside: 'wireway' });
    expect(forty.conductors).toBe(e.ccc);
    // over 30 in one section: 376.22(B) helps no more
    expect(forty.factor).toBeLessThan(1);
    expect(row(times(15, TWELVE), { inside: 'wireway' }).factor).toBe(1);
  },
};
