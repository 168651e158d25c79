import { EDITIONS } from '../../../src/units/types';
import { also, asker, calc, type Row } from './asking';

const extension = asker('afci', {
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
});
const required = (expect: string, change: Parameters<typeof extension>[0]): Row =>
  calc(expect, extension(change), (a) => (a.required === 'inspector decides' ? 'ahj' : a.required === 'yes'));

// The 6 ft exception is the same from 2014 on; 2014 itself is not offered, and 2017 is asked in its place.
export const afciExamples: Readonly<Record<string, readonly Row[]>> = {
  'AF-04': [
    required('2020.afci_required', { edition: 2020, outsideIn: 60, tailsIn: 30 }),
    required('2017.afci_required', { edition: 2017, outsideIn: 60, tailsIn: 30 }),
  ],
  'AF-05': [required('afci_required', { edition: 2017, outsideIn: 48 })],
  'AF-07': [required('2014.afci_required', { edition: 2017, outsideIn: 32 })],
  'AF-12': [required('afci_required', { outsideIn: 24 })],
  'AF-13': [
    required('afci_required', { edition: 2017, outsideIn: 73 }),
    ...EDITIONS.map((edition) =>
      also(`over 6 ft in ${edition}`, 'yes', extension({ edition, outsideIn: 73 }), 'required'),
    ),
  ],
};
export const afciSkipped: Readonly<Record<string, string>> = {
  'AF-06': 'code year 2011, before the exception for short extensions; offered are 2017 to 2026',
  'AF-08': 'code year 2011 as one state amended it; offered are 2017 to 2026',
  'AF-10':
    'receptacles replaced, 406.4(D)(4): no length of wiring, and the job file does not say which receptacles a crew replaces',
  'AF-11': 'code year 2008, before any rule on extensions; offered are 2017 to 2026',
};
