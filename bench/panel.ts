import { splitPhases } from '../src/calculations/phaseSplit';
import { type Placing, placeUnits } from '../src/loads/slots';
import { random } from '../tests/support/random';
import { basement } from './basement';
import { oneSweep } from './replan';
import { interleaved, type Line } from './rounds';

const SPACES = 42;
const SINGLES = 26;
const PAIRS = 3;
const DOUBLES = 4;
const SEED = 20260312;

/** B12: 42 spaces full but for two: legs balanced to the last VA, then every slot by the shortest conductors. */
export const panelLines = (): Line[] => {
  const r = random(SEED);
  const va = () => r.int(120, 1920);
  const singles = Array.from({ length: SINGLES }, (_, i) => ({ id: `s${i}`, va: va() }));
  const pairs = Array.from({ length: PAIRS }, (_, i) => ({ id: `p${i}`, va: [va(), va()] as const }));
  const twos = PAIRS + DOUBLES;
  const task = { singles, pairs, placesA: SPACES / 2 - twos, placesB: SPACES / 2 - twos };
  const tail = () => {
    const tails = Array.from({ length: SPACES + 1 }, () => r.int(4, 40));
    return (space: number) => tails[space]!;
  };
  const places = singles.map((s): Placing => ({ ...s, tail: tail() }));
  const doubles = Array.from({ length: twos }, (_, i): Placing => ({ id: `d${i}`, va: 0, tail: tail() }));
  let exact = true;
  const legs = () => {
    const split = splitPhases(task)!;
    exact &&= split.exact;
    return split;
  };
  const whole = () => {
    const { onA, legA, legB } = legs();
    const wished = new Map(singles.map((s) => [s.id, onA.has(s.id) ? ('A' as const) : ('B' as const)]));
    return placeUnits(SPACES, doubles, places, wished, legA - legB);
  };
  const ms = interleaved({ sweep: oneSweep(basement()), legs, whole });
  const inSweeps = (time: number) => `${(time / ms.sweep).toFixed(2)} S`;
  const { legA, legB } = legs();
  return [
    {
      id: 'B12',
      what: `panel of ${SPACES} spaces arranged, legs ${exact ? 'exact' : 'rounded'} (${Math.abs(legA - legB)} VA apart; legs alone ${inSweeps(ms.legs)})`,
      goal: '≤ 25 S',
      measured: inSweeps(ms.whole),
      ok: exact && ms.whole <= 25 * ms.sweep,
    },
  ];
};
