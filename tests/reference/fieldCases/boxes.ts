import { expect } from 'vitest';
import { calcBoxFill } from '../../../src/calculations/boxFill';
import { rowLimit } from '../../../src/calculations/cableRows';
import { boxCatalogue } from '../../../src/standards/boxCatalogue';
import type { Edition } from '../../../src/units/types';
import { answerOf, type Check } from './case';

/** Boxes by volume: 314.16(B), with the grounding conductors counted as before and since 2020. */

const fill = (edition: Edition, twelves: number, grounds: number, boxIn3: number | null) =>
  answerOf(
    calcBoxFill({
      edition,
      conductors: [{ awg: '12', count: twelves }],
      grounds: [{ awg: '12', count: grounds }],
      deviceYokes: [],
      clamps: false,
      fittings: 0,
      boxIn3,
    }),
  );
const volumeOf = (size: string) => boxCatalogue.find((box) => box.size === size)!.volumeIn3;
const mostTwelves = (boxIn3: number) => {
  let count = 0;
  while (fill(2020, count + 1, 0, boxIn3).outcome === 'holds') count++;
  return count;
};
const passes = (edition: Edition, twelves: number, grounds: number) =>
  fill(edition, twelves, grounds, volumeOf('4 x 2-1/8')).outcome === 'holds' ? 'pass' : 'fail';

export const boxCases: Readonly<Record<string, Check>> = {
  'FC-01': (e) => {
    // three 12/2 spliced: six cables come in
    expect(passes(2017, 12, 6)).toBe(e.fill_3x12_2_in_30_3_2017);
    expect(passes(2020, 12, 6)).toBe(e.fill_3x12_2_in_30_3_2020);
    expect(fill(2020, 12, 6, null).figures.fillIn3).toBe(30.375);
    expect(passes(2020, 8, 4)).toBe('pass');
    const cable = { kind: 'NM', size: '12', metal: 'Cu', hots: 1, neutral: 'insulated', ground: true } as const;
    const nipple = rowLimit(
      Array.from({ length: 10 }, () => ({ cable: { ...cable, insulation: 90 as const }, amps: 20 })),
      {
        togetherIn: 12,
        spaced: false,
        sealed: false,
        insulated: false,
        bundling: 'strict',
        nextSizeInRows: false,
        inside: 'raceway',
      },
      2020,
    );
    expect(nipple.factor).toBe(e.nipple_derate_factor);
  },
  'FC-04': (e) => {
    expect(volumeOf('12x12x4')).toBe(e.volume_12x12x4);
    expect(mostTwelves(volumeOf('12x12x4'))).toBe(e.max_12awg_by_volume_12x12x4);
    expect(mostTwelves(volumeOf('12x12x6'))).toBe(e.max_12awg_by_volume_12x12x6);
  },
};
