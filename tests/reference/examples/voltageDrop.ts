import { circularMils, resistance, resistanceAt } from '../../../src/standards/resistance';
import { asker, calc, code, type Figures, firstHolding, type Row } from './asking';

const drop = asker('voltage-drop', {
  volts: 120,
  amps: 20,
  feetOneWay: 100,
  metal: 'Cu',
  awg: '12',
  ohmPerKft: null,
  raceway: 'PVC',
  powerFactor: 1,
});
/** Ohms of 1000 ft from Table 8, stranded, or by a stated constant K. */
const dc = (awg: string): number => Number(resistance('Cu', awg, 'stranded'));
const ofK = (k: number, awg: string): number => (k / Number(circularMils(awg))) * 1000;
const both = (ask: ReturnType<typeof drop>, within = 0.005): Row[] => [
  calc('vd_v', ask, 'volts', within),
  calc('vd_pct', ask, 'percent', within),
];
const SIZES = ['12', '10', '8', '6', '4', '3'];
const series = (celsius: number) =>
  [
    { awg: '10', feetOneWay: 100 },
    { awg: '12', feetOneWay: 60 },
  ].map(({ awg, feetOneWay }) => drop({ awg, feetOneWay, ohmPerKft: resistanceAt('Cu', dc(awg), celsius) }));
const sum = (...answers: Figures[]): number => answers.reduce((n, a) => n + Number(a.volts), 0);

export const voltageDropExamples: Readonly<Record<string, readonly Row[]>> = {
  'VD-01': both(drop({ volts: 24, amps: 4, awg: '16', ohmPerKft: dc('16') })),
  'VD-02': both(drop({ volts: 115, amps: 16, feetOneWay: 50, awg: '10' })),
  'VD-03': both(drop({ amps: 8 })),
  'VD-06': [
    code('required_cmil', 'arithmetic of the example', () => (12.9 * 2 * 180 * 30) / (0.03 * 120), 0.5),
    calc(
      'min_awg',
      SIZES.map((awg) => drop({ amps: 30, feetOneWay: 180, awg, ohmPerKft: ofK(12.9, awg) })),
      (...answers) =>
        Number(firstHolding(SIZES)(...answers.map((a) => ({ outcome: Number(a.percent) <= 3 ? 'holds' : 'fails' })))),
    ),
  ],
  'VD-08': [
    calc('vd_v', drop({ amps: 12, feetOneWay: 10, awg: '14', ohmPerKft: 2.57 }), 'volts', 1e-9),
    calc('v_load', drop({ amps: 12, feetOneWay: 10, awg: '14', ohmPerKft: 2.57 }), (a) => 120 - Number(a.volts), 1e-9),
    calc('r_ohm', drop({ amps: 12, feetOneWay: 10, awg: '14', ohmPerKft: 2.57 }), (a) => Number(a.volts) / 12, 1e-9),
  ],
  'VD-09': both(drop({ ohmPerKft: ofK(12, '12') }), 0.0005),
  'VD-10': [
    ...both(drop({ volts: 208, amps: 28, feetOneWay: 160, awg: '8', ohmPerKft: dc('8') })),
    calc(
      'within_3pct',
      drop({ volts: 208, amps: 28, feetOneWay: 160, awg: '8', ohmPerKft: dc('8') }),
      (a) => Number(a.percent) <= 3,
    ),
  ],
  'VD-12': [
    calc('at_75C_table8.vd_v', series(75), sum, 0.005),
    calc('at_75C_table8.v_load', series(75), (...a) => 120 - sum(...a), 0.005),
    calc('at_75C_table8.vd_pct', series(75), (...a) => (100 * sum(...a)) / 120, 0.05),
    // stranded wire by the table's own temperature law; the print took constants of solid wire, 2 % less
    calc('at_20C.vd_v', series(20), sum, 0.2),
  ],
  'VD-13': both(drop({ volts: 240, ohmPerKft: dc('12') }), 1e-9),
};
