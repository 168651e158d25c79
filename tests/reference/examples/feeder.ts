import type { CalcInput } from '../../../src/calculations/types';
import { circularMils } from '../../../src/standards/resistance';
import { SIZES } from '../../../src/standards/sizes';
import { also, asker, calc, code, firstHolding, holds, lastHolding, type Row } from './asking';

const feeder = asker('feeder', {
  edition: 2020,
  metal: 'Cu',
  awg: '6',
  cable: 'NM',
  breakerAmps: 60,
  terminals: 75,
  wholeDwelling: false,
  continuousAmps: 0,
  otherAmps: 0,
  conductors: 2,
  ambientF: 86,
  upsizedFrom: null,
});
type Change = Partial<CalcInput['feeder']>;

/** Sizes a feeder may have, up to 600 kcmil. */
const BUILT = SIZES.slice(SIZES.indexOf('8'), SIZES.indexOf('600') + 1);
const smallest = (expect: Row['expect'], change: Change, said: (size: string) => string = (s) => s): Row =>
  calc(
    expect,
    BUILT.map((awg) => feeder({ ...change, awg })),
    (...answers) => said(String(firstHolding(BUILT)(...answers))),
  );
const RATINGS = [50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300];
const largestDevice = (expect: Row['expect'], change: Change): Row =>
  calc(
    expect,
    RATINGS.map((breakerAmps) => feeder({ ...change, breakerAmps })),
    lastHolding(RATINGS),
  );

const whole = (metal: 'Cu' | 'Al', breakerAmps: number): Change => ({
  metal,
  cable: metal === 'Cu' ? 'XHHW-2' : 'SER',
  breakerAmps,
  wholeDwelling: true,
});
const withAmps = (amps: number) => (size: string) => `${size} AWG (${amps} A)`;
const dwelling = (rating: number, cu: number, al: number): Row[] => [
  calc('min_ampacity_a', feeder({ ...whole('Cu', rating), awg: '4/0' }), () => 0.83 * rating, 1e-9),
  smallest('cu', whole('Cu', rating), withAmps(cu)),
  smallest('al', whole('Al', rating), withAmps(al)),
];
const DWELLING = [100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400];
const THHN: Change = { cable: 'THHN', continuousAmps: 200, conductors: 3 };
const THW: Change = { cable: 'THW', continuousAmps: 60, conductors: 3, ambientF: 125 };
const OLD_SER = { metal: 'Al', cable: 'SE-R' } as const;

export const feederExamples: Readonly<Record<string, readonly Row[]>> = {
  'FD-01': [
    smallest('min_conductor', { ...THHN, breakerAmps: 250 }, (size) => `${size} kcmil Cu`),
    also('225 A is too small a device', false, feeder({ ...THHN, awg: '250', breakerAmps: 225 }), holds),
    calc(
      'min_ocpd_a',
      RATINGS.map((breakerAmps) => feeder({ ...THHN, awg: '250', breakerAmps })),
      firstHolding(RATINGS),
    ),
  ],
  'FD-03': [
    calc(
      'conductor_by_215.2',
      BUILT.map((awg) => feeder({ ...THW, awg, breakerAmps: 80 })),
      (...answers) =>
        `${BUILT[answers.findIndex((a) => Number(a.beforeFactors) >= Number(a.neededAmps) && Number(a.ampacity) >= 60)]} AWG Cu`,
    ),
    // the source stops at 3 AWG, which carries the load and which 80 A does not protect
    also('3 AWG carries', 67, feeder({ ...THW, awg: '3', breakerAmps: 80 }), 'ampacity', 1e-9),
    also('3 AWG takes a device of at most', 70, feeder({ ...THW, awg: '3', breakerAmps: 80 }), 'breakerMax'),
    smallest('conductor_with_ocpd_check', { ...THW, breakerAmps: 80 }, (size) => `${size} AWG Cu`),
    calc(
      'ocpd_a',
      [70, 80, 90].map((breakerAmps) => feeder({ ...THW, awg: '2', breakerAmps })),
      firstHolding([70, 80, 90]),
    ),
  ],
  'FD-04': dwelling(200, 175, 180),
  'FD-05': [...dwelling(150, 130, 135), calc('installed_ok', feeder({ ...whole('Al', 150), awg: '1/0' }), holds)],
  'FD-06': dwelling(100, 85, 90),
  'FD-07': DWELLING.flatMap((rating) => [
    smallest(`cu.${rating}`, whole('Cu', rating)),
    smallest(`al.${rating}`, whole('Al', rating)),
  ]),
  'FD-08': [
    calc('ok', feeder({ ...OLD_SER, awg: '2', breakerAmps: 100 }), holds),
    calc('ampacity_a', feeder({ ...OLD_SER, awg: '2', breakerAmps: 100 }), 'ampacity'),
    also('its largest device', 90, feeder({ ...OLD_SER, awg: '2', breakerAmps: 100 }), 'breakerMax'),
    smallest({ what: 'the conductor that holds 100 A', is: '1' }, { ...OLD_SER, breakerAmps: 100 }),
    also(
      'with the whole dwelling on it',
      'holds',
      feeder({ ...OLD_SER, awg: '2', breakerAmps: 100, wholeDwelling: true }),
      'outcome',
    ),
    also(
      'where nobody knows',
      'cannot be told',
      feeder({ ...OLD_SER, awg: '2', breakerAmps: 100, wholeDwelling: 'unknown' }),
      'outcome',
    ),
  ],
  'FD-10': [
    calc('ampacity_a', feeder({ otherAmps: 30 }), 'ampacity'),
    calc('ok', feeder({ otherAmps: 30 }), holds),
    calc(
      'max_load_a',
      [54, 55, 55.1, 56].map((otherAmps) => feeder({ otherAmps })),
      lastHolding([54, 55, 55.1, 56]),
    ),
  ],
  'FD-11': [
    calc('min_ampacity_a', feeder({ continuousAmps: 48 }), 'neededAmps'),
    calc(
      'ocpd_a',
      [50, 60, 70].map((breakerAmps) => feeder({ cable: 'THHN', breakerAmps, continuousAmps: 48 })),
      firstHolding([50, 60, 70]),
    ),
    calc(
      'ok',
      (['NM', 'THHN', 'NM'] as const).map((cable, i) =>
        feeder({ awg: ['6', '6', '4'][i]!, cable, continuousAmps: 48 }),
      ),
      (...answers) => answers.map(holds),
    ),
  ],
  'FD-14': [
    code('ratio', 'conductor table', () => Number(circularMils('350')) / Number(circularMils('250'))),
    code('required_cmil', 'conductor table', () => Number(circularMils('4')) * 1.4, 1e-6),
    calc(
      'egc',
      feeder({ awg: '350', cable: 'THHN', breakerAmps: 300, upsizedFrom: '250' }),
      (a) => `${a.egcCu} AWG Cu`,
    ),
  ],
  'FD-16': [
    // the source starts from 8 AWG, the row of 100 A
    calc('base_egc', feeder({ awg: '2', cable: 'THHN', breakerAmps: 125 }), (a) => `${a.egcCu} AWG Cu`),
    code(
      'required_cmil',
      'conductor table',
      () => (Number(circularMils('6')) * Number(circularMils('1/0'))) / Number(circularMils('2')),
      0.5,
    ),
    calc('egc', feeder({ awg: '1/0', cable: 'THHN', breakerAmps: 125, upsizedFrom: '2' }), (a) => `${a.egcCu} AWG Cu`),
    calc(
      'if_upsized_only_for_ambient_or_bundling_2014_on',
      feeder({ awg: '1/0', cable: 'THHN', breakerAmps: 125 }),
      (a) => `${a.egcCu} AWG Cu`,
    ),
  ],
  'FD-19': [largestDevice('max_ocpd_a', { metal: 'Al', awg: '300', cable: 'THHN', terminals: 60 })],
  'FD-20': [
    calc(
      '2011_on.ampacity_a',
      ['4', '1/0'].map((awg) => feeder({ ...OLD_SER, awg })),
      (...a) => a.map((x) => Number(x.ampacity)),
    ),
    calc(
      '2011_on.ocpd_a',
      ['4', '1/0'].map((awg) => feeder({ ...OLD_SER, awg })),
      (...a) => a.map((x) => Number(x.breakerMax)),
    ),
    also(
      'the small one in thermal insulation: 10 AWG and smaller only',
      65,
      feeder({ ...OLD_SER, awg: '4', insulated: true }),
      'ampacity',
    ),
  ],
  'FD-21': [
    calc('min_ampacity_a', feeder({ continuousAmps: 44 }), 'neededAmps'),
    calc('ok', feeder({ continuousAmps: 44 }), holds),
    also('a little more load', false, feeder({ continuousAmps: 44.1 }), holds),
    calc('ocpd_a', feeder({ continuousAmps: 44 }), 'breakerMax'),
  ],
};
