import { rowLimit } from '../../../src/calculations/cableRows';
import type { CalcInput } from '../../../src/calculations/types';
import type { Cable } from '../../../src/standards/cable';
import { nextStandardSize } from '../../../src/standards/overcurrent';
import { also, asker, calc, code, holds, lastHolding, type Row } from './asking';

/** 12 AWG copper with 90 °C insulation alone in a room, unless changed. */
const amps = asker('ampacity', {
  edition: 2020,
  metal: 'Cu',
  awg: '12',
  startColumn: 90,
  terminals: 75,
  limitColumn: null,
  conductors: 3,
  ambientF: 86,
  togetherIn: null,
  inRaceway: false,
  breakerAmps: null,
});
const BREAKERS = [15, 20, 25, 30];
const largest = (expect: Row['expect'], change: Partial<CalcInput['ampacity']>): Row =>
  calc(
    expect,
    BREAKERS.map((breakerAmps) => amps({ ...change, breakerAmps })),
    lastHolding(BREAKERS),
  );

const nm = (hots: 1 | 2 = 1): Cable => ({
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
});
const bundle = (cables: readonly Cable[]) =>
  rowLimit(
    cables.map((cable) => ({ cable, amps: 20 })),
    { togetherIn: 60, spaced: false, sealed: true, insulated: false, bundling: 'strict', nextSizeInRows: false },
    2020,
  );
const times = (count: number, cable: Cable): Cable[] => Array<Cable>(count).fill(cable);
const conductorsIn = (expect: Row['expect'], ...cables: Cable[][]): Row =>
  code(expect, 'rows of cables', () => {
    const counts = cables.map((list) => bundle(list).conductors);
    return counts.length > 1 ? counts : counts[0]!;
  });

const COUNTS = Array.from({ length: 20 }, (_, i) => i + 1);
const NM = { limitColumn: 60 } as const;

// Where the code year of an example is none of ours, the nearest one with the same text is asked.
export const ampacityExamples: Readonly<Record<string, readonly Row[]>> = {
  'AM-02': [
    calc('ambient_only_a', amps({ awg: '10', ambientF: 120 }), 'corrected'),
    calc('with_4_ccc_a', amps({ awg: '10', ambientF: 120, conductors: 4 }), 'corrected'),
  ],
  'AM-03': [
    conductorsIn({ what: 'ccc of five 12/2 cables', is: 10 }, times(5, nm())),
    calc('adjusted_a', amps({ ...NM, conductors: 10 }), 'usable'),
    largest('max_ocpd_a', { ...NM, conductors: 10 }),
  ],
  'AM-05': [
    calc('adjusted_a', amps({ ...NM, conductors: 8 }), 'corrected'),
    calc('final_a', amps({ ...NM, conductors: 8 }), 'usable'),
    largest('max_ocpd_a', { ...NM, conductors: 8 }),
  ],
  'AM-06': [
    // a true shared neutral is not counted: eight, with the same factor
    conductorsIn({ what: 'ccc, the shared neutral not counted', is: 8 }, [...times(3, nm()), nm(2)]),
    calc('adjusted_a', amps({ ...NM, conductors: 9 }), 'corrected'),
    calc('final_a', amps({ ...NM, conductors: 9 }), 'usable'),
    largest('max_ocpd_a', { ...NM, conductors: 9 }),
  ],
  'AM-07': [
    conductorsIn('ccc', times(4, nm(2))),
    calc('adjusted_a', amps({ ...NM, conductors: 8 }), 'corrected'),
    largest('max_ocpd_a', { ...NM, conductors: 8 }),
  ],
  'AM-09': [
    calc('adjusted_a', amps({ ...NM, conductors: 14, ambientF: 135 }), 'corrected'),
    calc('both_factors', amps({ ...NM, conductors: 14, ambientF: 135 }), (a) => a.factor === 0.355),
  ],
  'AM-10': [
    // the rooftop adder of older codes is left to the one who enters the ambient; 100 A = 2 AWG Al at 90 °C
    calc('factor', amps({ metal: 'Al', awg: '2', ambientF: 105, terminals: 90 }), 'factor'),
    calc('corrected_a', amps({ metal: 'Al', awg: '2', ambientF: 105, terminals: 90 }), 'corrected'),
  ],
  'AM-11': [
    calc('corrected_a', amps({ metal: 'Al', awg: '1/0', ambientF: 110, ...NM }), 'corrected'),
    calc('final_a', amps({ metal: 'Al', awg: '1/0', ambientF: 110, ...NM }), 'usable'),
    also('final_a, no 60 °C limit of this size', 117.45, amps({ metal: 'Al', awg: '1/0', ambientF: 110 }), 'usable'),
  ],
  'AM-13': [
    calc('factor', amps({ ambientF: 131 }), 'factor'),
    calc('corrected_a', amps({ ambientF: 131 }), 'corrected'),
  ],
  'AM-14': [
    conductorsIn('ccc', times(4, nm()), times(5, nm())),
    calc('adjusted_a', [amps({ conductors: 8 }), amps({ conductors: 10 })], (a, b) => [
      Number(a.corrected),
      Number(b!.corrected),
    ]),
    calc(
      'max_ocpd_a',
      [8, 10].flatMap((conductors) => BREAKERS.map((breakerAmps) => amps({ ...NM, conductors, breakerAmps }))),
      (...answers) => [
        Number(lastHolding(BREAKERS)(...answers.slice(0, 4))),
        Number(lastHolding(BREAKERS)(...answers.slice(4))),
      ],
    ),
  ],
  'AM-15': [
    calc('required_table_a', amps({ awg: '2/0', ambientF: 95, conductors: 9 }), (a) => 119 / Number(a.factor), 0.05),
    calc('adjusted_a', amps({ awg: '2/0', ambientF: 95, conductors: 9 }), 'corrected'),
    calc(
      'conductor',
      ['1/0', '2/0', '3/0'].map((awg) => amps({ awg, ambientF: 95, conductors: 9, breakerAmps: 119 })),
      (...a) => `${['1/0', '2/0', '3/0'][a.findIndex(holds)]} AWG Cu`,
    ),
    calc('ocpd_a', amps({ awg: '2/0', ambientF: 95, conductors: 9 }), (a) => {
      const next = nextStandardSize(Number(a.corrected), 2017);
      return next;
    }),
  ],
  'AM-18': [
    ...(['14', '12'] as const).flatMap((awg) => [
      calc(`at_9.${awg}`, amps({ awg, conductors: 9 }), 'corrected'),
      calc(`at_10.${awg}`, amps({ awg, conductors: 10 }), 'corrected'),
    ]),
    calc(
      'last_ccc_with_normal_breaker',
      COUNTS.map((conductors) => amps({ ...NM, conductors, breakerAmps: 20 })),
      lastHolding(COUNTS),
    ),
  ],
};
