import type { CalcInput } from '../../../src/calculations/types';
import { STANDARD_BOXES } from '../../../src/standards/boxes';
import { EDITIONS } from '../../../src/units/types';
import { also, asker, calc, type Figures, holds, lastHolding, type Row } from './asking';

const fill = asker('box-fill', {
  edition: 2023,
  conductors: [],
  grounds: [],
  deviceYokes: [],
  clamps: false,
  fittings: 0,
  boxIn3: null,
});
type Change = Partial<CalcInput['box-fill']>;
const of = (awg: string, count: number) => ({ awg, count });

/** Up to four grounds the code years count alike: all four are asked and must say the same. */
const need = (expect: string, change: Change): Row =>
  calc(
    expect,
    EDITIONS.map((edition) => fill({ ...change, edition })),
    (...answers) =>
      new Set(answers.map((a) => a.fillIn3)).size === 1 ? Number(answers[0]!.fillIn3) : 'differs by year',
  );
const fits = (expect: string, change: Change): Row => calc(expect, fill(change), holds);
const margin = (expect: string, change: Change): Row =>
  calc(expect, fill(change), (a) => Number(a.boxIn3) - Number(a.fillIn3), 1e-9);
const OCTAGONS = STANDARD_BOXES.filter((b) => b.shape === 'octagon-round');
const octagon = (change: Change): Row =>
  calc(
    'smallest_listed_choice',
    OCTAGONS.map((b) => fill({ ...change, boxIn3: b.volumeIn3 })),
    (...answers: Figures[]) => {
      const box = OCTAGONS[answers.findIndex(holds)];
      return box ? `${box.tradeSize} in. octagon (${box.volumeIn3} in3)` : 'none';
    },
  );
const COUNTS = Array.from({ length: 20 }, (_, i) => i + 1);
const mostMore = (expect: string, change: Change, awg: string): Row =>
  calc(
    expect,
    COUNTS.map((count) => fill({ ...change, conductors: [...(change.conductors ?? []), of(awg, count)] })),
    lastHolding(COUNTS),
  );

const bf03: Change = {
  // a second, isolated set of grounds is one allowance more of its own size: entered as one conductor more
  conductors: [of('12', 4), of('10', 2), of('12', 3), of('12', 1)],
  grounds: [of('10', 1)],
  deviceYokes: [of('12', 1)],
  boxIn3: 30.3,
};
const bf04: Change = { conductors: [of('14', 6)], grounds: [of('14', 3)], deviceYokes: [of('14', 1)], boxIn3: 18 };
const bf04three: Change = { ...bf04, conductors: [of('14', 7)] };
const two12: Change = { conductors: [of('12', 4)], grounds: [of('12', 2)], deviceYokes: [of('12', 2)] };
const bf11: Change = { conductors: [of('12', 8)], grounds: [of('12', 2)], deviceYokes: [of('12', 2)], boxIn3: 30.3 };
const bf14: Change = { conductors: [of('12', 6)], boxIn3: 27 };
const bf19: Change = {
  conductors: [of('12', 4)],
  grounds: [of('12', 2)],
  deviceYokes: [of('12', 1)],
  clamps: true,
  boxIn3: 18,
};
const bf20 = (count: number, edition: 2017 | 2020 | 2023) => fill({ edition, grounds: [of('10', count)] });

export const boxFillExamples: Readonly<Record<string, readonly Row[]>> = {
  'BF-01': [
    need('fill_in3', { conductors: [of('14', 6)], grounds: [of('14', 2)], fittings: 2 }),
    calc(
      'allowances',
      fill({ conductors: [of('14', 6)], grounds: [of('14', 2)], fittings: 2 }),
      (a) => Number(a.fillIn3) / 2,
    ),
    octagon({ conductors: [of('14', 6)], grounds: [of('14', 2)], fittings: 2 }),
  ],
  'BF-02': [
    need('fill_in3', { conductors: [of('12', 4), of('18', 2)], grounds: [of('12', 2)], clamps: true, fittings: 1 }),
    octagon({ conductors: [of('12', 4), of('18', 2)], grounds: [of('12', 2)], clamps: true, fittings: 1 }),
  ],
  'BF-03': [need('fill_in3', bf03), fits('fits', bf03), margin('margin_in3', bf03)],
  'BF-04': [
    need('fill_in3', bf04),
    fits('fits', bf04),
    margin('margin_in3', bf04),
    need('if_one_cable_is_14/3.fill_in3', bf04three),
    fits('if_one_cable_is_14/3.fits', bf04three),
  ],
  'BF-10': [need('fill_in3', two12), fits('fits', { ...two12, boxIn3: 30.3 })],
  'BF-11': [
    need('fill_in3', bf11),
    fits('fits', bf11),
    need('with_internal_clamps.fill_in3', { ...bf11, clamps: true }),
    fits('with_internal_clamps.fits', { ...bf11, clamps: true }),
    need('as_multiwire_shared_neutral.fill_in3', { ...bf11, conductors: [of('12', 6)] }),
    fits('as_multiwire_shared_neutral.fits', { ...bf11, conductors: [of('12', 6)] }),
  ],
  'BF-14': [margin('remaining_in3', bf14), mostMore('max_additional', bf14, '10')],
  // a loop of twice the free length counts twice
  'BF-15': [need('allowance_in3', { conductors: [of('12', 2)] })],
  'BF-16': [
    need('fill_in3', { ...two12, clamps: true }),
    mostMore('max_additional_12awg', { ...two12, clamps: true, boxIn3: 42 }, '12'),
  ],
  'BF-17': [need('fill_in3', { conductors: [of('12', 6)] })],
  'BF-18': [need('fill_in3', { ...bf04, boxIn3: 22 }), fits('fits', { ...bf04, boxIn3: 22 })],
  // equal is enough
  'BF-19': [need('fill_in3', bf19), fits('fits', bf19)],
  'BF-20': [
    calc('increment_in3_each', [bf20(5, 2020), bf20(4, 2020)], (a, b) => Number(a.fillIn3) - Number(b!.fillIn3)),
    calc('total_egc_in3_for_6', bf20(6, 2023), 'fillIn3'),
    also('total for 6 in 2017, one allowance whatever their number', 2.5, bf20(6, 2017), 'fillIn3'),
  ],
  // a device follows its own conductor
  'BF-21': [
    need('fill_in3', {
      conductors: [of('12', 4), of('14', 4)],
      grounds: [of('12', 4)],
      deviceYokes: [of('12', 1), of('14', 1)],
      clamps: true,
    }),
  ],
};
