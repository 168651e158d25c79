import { expect } from 'vitest';
import { calcAfci } from '../../../src/calculations/afci';
import type { CalcInput } from '../../../src/calculations/types';
import type { Edition } from '../../../src/units/types';
import { answerOf, type Check } from './case';

/** Extensions and 6 ft: 210.12(D) of 2017 and 2020, 210.12(E) of 2023. A 15 A bedroom circuit stands for the listed ones. */

type Input = CalcInput['afci'];
const bedroom = (edition: Edition, more: Partial<Input>) =>
  answerOf(
    calcAfci({
      edition,
      volts: 120,
      amps: 15,
      serves: ['bedroom'],
      outsideIn: 0,
      tailsIn: 54,
      addsOutlet: false,
      shortenedOnly: false,
      newHomeRun: false,
      amendments: {},
      ...more,
    }),
  ).figures.required;

/** The answer in 2020 and 2023, which must agree. */
const since2020 = (more: Partial<Input>) => {
  const answers = ([2020, 2023] as const).map((edition) => bedroom(edition, more));
  expect(answers[0]).toBe(answers[1]);
  return answers[0];
};
/** A case with nothing but an extension of some length. */
const extended = (outsideIn: number, key: string): Check => {
  return (e) => expect(since2020({ outsideIn }) === 'yes').toBe(e[key]);
};
/**
 * Conflict: the cases say no AFCI where a circuit is only cut shorter. The rules page (trade review (a)13) follows the
 * word "modified" and asks; only an inspector's answer makes it no.
 */
const onlyShorter = (key: string): Check => {
  return (e) => {
    expect(since2020({ shortenedOnly: true })).toBe('inspector decides');
    expect(since2020({ shortenedOnly: true, amendments: { afciShortened: 'no' } }) === 'yes').toBe(e[key]);
  };
};

export const afciCases: Readonly<Record<string, Check>> = {
  'FC-01': extended(24, 'afci_triggered_2020plus'),
  'FC-11': extended(15 * 12, 'afci_triggered'),
  'FC-14': extended(24, 'afci_triggered_2020plus'),
  'FC-16': extended(10 * 12, 'afci_triggered'),
  'FC-26': extended(12 * 12, 'afci_by_text'),
  'FC-27': (e) => {
    onlyShorter('afci')(e);
    expect(since2020({ outsideIn: Number(e.extension_ft) })).toBe('no');
  },
  'FC-43': (e) => {
    extended(5 * 12, 'afci_2020plus')(e);
    // 2017 does not say whether the wire inside the cabinets counts
    expect(bedroom(2017, { outsideIn: 60 })).toBe('inspector decides');
  },
  'FC-57': extended(30 * 12, 'afci'),
  'FC-62': onlyShorter('afci_required'),
};
