import { boringLimits } from '../../../src/calculations/boring';
import { calcBoxFill } from '../../../src/calculations/boxFill';
import { type BoxShape, standardBox } from '../../../src/standards/boxes';
import { conductorVolume, groundAllowances } from '../../../src/standards/boxVolumes';
import type { Cable } from '../../../src/standards/cable';
import { cableDiameter, NM_JACKET_COLOR } from '../../../src/standards/cableDimensions';
import { LUMBER } from '../../../src/standards/framing';
import { PULL_BOX } from '../../../src/standards/pullBox';
import { supportRule } from '../../../src/standards/supports';
import { SOCKET_LB_IN, torqueFor } from '../../../src/standards/torque';
import { ELECTRICIAN_WAGE } from '../../../src/standards/wages';
import { wireBendingSpace } from '../../../src/standards/wireBending';
import { depthRow } from '../../../src/standards/workingSpace';

import type { Value } from './asking';

const cable = (over: Partial<Cable>): Cable => ({
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
  ...over,
});
const ft = (inches: number) => inches / 12;
const thousandths = (x: number) => Math.round(x * 1000) / 1000;
const volume = (shape: BoxShape, size: string) => standardBox(shape, size)?.volumeIn3;
/** Most conductors of one size that the pocket calculation lets into a box. */
const mostByVolume = (awg: string, boxIn3: number): number => {
  const holds = (count: number) => {
    const answer = calcBoxFill({
      edition: 2023,
      conductors: [{ awg, count }],
      grounds: [],
      deviceYokes: [],
      clamps: false,
      fittings: 0,
      boxIn3,
    });
    return answer.ok && answer.value.outcome === 'holds';
  };
  let count = 0;
  while (holds(count + 1)) count++;
  return count;
};

/** What the product answers to each assertion of the mechanical tables. */
export const mechanicalSpots: Readonly<Record<string, () => Value | undefined>> = {
  'Cu 12 AWG box volume = 2.25 in3': () => conductorVolume('12'),
  '6 AWG box volume = 5.00 in3': () => conductorVolume('6'),
  '4-11/16 x 2-1/8 square = 42.0 in3': () => volume('square', '4-11/16 x 2-1/8'),
  '4 x 2-1/8 square = 30.3 in3': () => volume('square', '4 x 2-1/8'),
  '4 x 1-1/2 square holds 9 x 12 AWG': () => mostByVolume('12', volume('square', '4 x 1-1/2')!),
  '4-11/16 x 1-1/4 square = 25.5 in3': () => volume('square', '4-11/16 x 1-1/4'),
  '3 x 2 x 3-1/2 device = 18.0 in3': () => volume('device', '3 x 2 x 3-1/2'),
  '4 x 1-1/4 octagon, 8 AWG by volume = 4 (printed 5)': () => mostByVolume('8', volume('octagon-round', '4 x 1-1/4')!),
  'Straight pull multiplier = 8': () => PULL_BOX.straightTimes,
  'Fifth and later EGCs count 0.25 each': () => groundAllowances(2023, 5) - groundAllowances(2023, 4),
  '4/0 side wire-bending space = 4 in.': () => wireBendingSpace('4/0', 1, 'side'),
  '4/0 opposite-wall bending space = 7 in.': () => wireBendingSpace('4/0', 1, 'opposite'),
  'Working space depth 0-150 V = 3 ft, condition 3': () => ft(depthRow(120)!.depthIn[2]),
  'Working space depth 151-600 V condition 2 = 3.5 ft': () => ft(depthRow(277)!.depthIn[1]),
  '2x10 actual depth = 9.25 in.': () => LUMBER['2x10']?.depthIn,
  '2x8 max hole = 2.417 in.': () => thousandths(boringLimits('joist', LUMBER['2x8']!.depthIn)!.maxHoleIn),
  'Joist hole edge distance = 2 in.': () => boringLimits('joist', 9.25)?.minEdgeIn,
  'NM 12/2 major diameter about 0.422 in.': () => cableDiameter(cable({}))?.majorIn,
  'NM 10 AWG jacket orange (convention)': () => NM_JACKET_COLOR['10'],
  'SER 2-2-2-4 about 0.895 in.': () => cableDiameter(cable({ kind: 'SE-R', size: '2', metal: 'Al', hots: 2 }))?.majorIn,
  'Staple interval 4.5 ft': () => ft(supportRule('NM').apartIn),
  'Electricians median wage May 2023 = 29.61 USD/h': () =>
    ELECTRICIAN_WAGE.find((w) => w.period === 'May 2023')?.medianPerHour,
  'Hex split-bolt 2 AWG = 275 lbf-in': () => torqueFor({ awg: '2', screw: 'hex split-bolt' })?.lbIn,
  'Hex other connector 3/0-4/0 = 250 lbf-in': () => torqueFor({ awg: '4/0', screw: 'hex, other' })?.lbIn,
  'Socket 1/4 in. = 200 lbf-in': () => SOCKET_LB_IN['1/4'],
};
