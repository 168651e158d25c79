import { expect } from 'vitest';
import { calcAfci } from '../../src/calculations/afci';
import { loadOhms, neutralAmps, openNeutralVolts } from '../../src/calculations/sharedNeutral';
import type { CalcInput } from '../../src/calculations/types';
import { figuresOf, num, runExamples } from '../support/worked';

const afci = (change: Partial<CalcInput['afci']>) =>
  figuresOf(
    calcAfci({
      edition: 2020,
      volts: 120,
      amps: 15,
      serves: ['bedroom'],
      outsideIn: 0,
      tailsIn: 0,
      addsOutlet: false,
      shortenedOnly: false,
      newHomeRun: false,
      amendments: {},
      ...change,
    }),
  ).required;

// `e` is what the example should give: where the print is wrong, not the print. Where its code year is none of ours,
// the nearest one with the same text is asked.
runExamples(
  ['AF', 'PB'],
  {
    'AF-04': () => {
      expect(afci({ edition: 2020, outsideIn: 60, tailsIn: 30 })).toBe('no');
      expect(afci({ edition: 2017, outsideIn: 60, tailsIn: 30 })).toBe('inspector decides');
    },
    // The 6 ft exception is the same from 2014 on; 2014 itself is not offered.

    // The 6 ft exception is the same from 2014 on; 2014 itself is not offered.
    'AF-05': (e) => {
      expect(afci({ edition: 2017, outsideIn: 48 }) === 'yes').toBe(e.afci_required);
    },
    'AF-07': (e) => {
      const from2014 = (e as unknown as Record<string, { afci_required: boolean }>)['2014']!;
      expect(afci({ edition: 2017, outsideIn: 32 }) === 'yes').toBe(from2014.afci_required);
    },
    'AF-12': (e) => {
      expect(afci({ outsideIn: 24 }) === 'yes').toBe(e.afci_required);
    },
    // Over 6 ft no code year excuses it.

    // Over 6 ft no code year excuses it.
    'AF-13': (e) => {
      for (const edition of [2017, 2020, 2023, 2026] as const)
        expect(afci({ edition, outsideIn: 73 }) === 'yes').toBe(e.afci_required);
    },

    'PB-01': (e) => {
      const neutral = [neutralAmps(15, 5, true), neutralAmps(15, 15, true), neutralAmps(15, 15, false)];
      expect(neutral).toEqual(e.neutral_a);
    },
    'PB-03': (e) => {
      const ohms = [loadOhms(100, 120), loadOhms(200, 120)] as const;
      expect(ohms).toEqual(e.r_ohm);
      expect(neutralAmps(100 / 120, 200 / 120, true)).toBeCloseTo(num(e.neutral_a), 4);
      expect(openNeutralVolts(...ohms, 240)).toEqual(e.open_neutral_v);
    },
  },
  {
    'AF-06': 'code year 2011, before the exception: not offered',
    'AF-08': 'code year 2011 as amended: not offered',
    'AF-10': 'replaced receptacles, 406.4(D)(4): a rule of its own (AFCI-RECP), not a length of wiring',
    'AF-11': 'code year 2008, before any rule on extensions: not offered',
  },
);
