import { describe, expect, test } from 'vitest';
import { bookCsv, readBookCsv, readNumber } from '../../../src/documents/bookCsv';
import { defaultBook } from '../../../src/pricing/defaultBook';

const HEAD = 'kind,id,unit,low,likely,high,source\r\n';
const faults = (text: string) => {
  const read = readBookCsv(text, defaultBook);
  return read.ok ? [] : read.error.map(({ line, column }) => [line, column]);
};

describe('a price book as CSV', () => {
  test('goes out and comes back the same, over an empty book too', () => {
    expect(readBookCsv(bookCsv(defaultBook), defaultBook)).toEqual({ ok: true, value: defaultBook });
    const empty = { ...defaultBook, materials: [], tasks: [], allowances: [], lead: [], wage: null };
    expect(readBookCsv(bookCsv(defaultBook), empty)).toEqual({ ok: true, value: defaultBook });
    const markup = {
      ...defaultBook,
      profit: { as: 'markup', rate: 0.25 },
      tax: { rate: 0.07, on: ['material', 'permit'] },
    } as const;
    expect(readBookCsv(bookCsv(markup), defaultBook)).toEqual({ ok: true, value: markup });
  });

  test('a file of one line changes that line', () => {
    const read = readBookCsv(`${HEAD}material,spd,each,,"$1,096.50",,counter list\r\n`, defaultBook);
    const spd = read.ok && read.value.materials.find((m) => m.id === 'spd');
    expect(spd).toEqual({ id: 'spd', unit: 'each', dollars: 1096.5, source: 'counter list' });
    expect(read.ok && read.value.materials.length).toBe(defaultBook.materials.length);
  });

  test('an entered labor-hour drops the wage it does not come from', () => {
    const read = readBookCsv(`${HEAD}rate,labor-hour,$,,60,,\r\n`, defaultBook);
    expect(read.ok && [read.value.dollarsPerCrewHour, read.value.wage]).toEqual([60, null]);
  });

  test.each([
    ['negative', 'material,spd,each,,-3,,', [[2, 'likely']]],
    ['zero', 'material,spd,each,,0,,', [[2, 'likely']]],
    ['missing', 'material,spd,each,,,,', [[2, 'likely']]],
    ['text', 'material,spd,each,,lots,,', [[2, 'likely']]],
    ['absurd', 'material,spd,each,,1000000,,', [[2, 'likely']]],
    ['no hours', 'task,spd,each,0,0,1,', [[2, 'likely']]],
    ['backward', 'task,spd,each,2,1,3,', [[2, 'likely']]],
    ['margin of 100 %', 'rate,margin,share,,1,,', [[2, 'likely']]],
    ['unknown rate', 'rate,tips,share,,1,,', [[2, 'id']]],
    ['unknown kind', 'sand,x,share,,1,,', [[2, 'kind']]],
    ['twice', 'lead,hub,,,3,,\r\nlead,hub,,,4,,', [[3, 'id']]],
    [
      'two places',
      'allowance,permit,$,x,2,3,\r\nmaterial,,each,,5,,',
      [
        [2, 'low'],
        [3, 'id'],
      ],
    ],
  ])('%s: refused with its line and column', (_, lines, expected) => {
    expect(faults(`${HEAD}${lines}\r\n`)).toEqual(expected);
  });
  test('a missing column and an open quote are named', () => {
    expect(faults('kind,id,unit,low,likely,source\r\n')).toEqual([[1, 'high']]);
    expect(faults(`${HEAD}material,"spd,each\r\n`)).toEqual([[2, '2']]);
  });
  test('numbers as people write them', () => {
    expect(['$1,234.50', ' 12 ', '.5', '-$3', '1e-3'].map(readNumber)).toEqual([1234.5, 12, 0.5, -3, 0.001]);
    expect(['', '1.2.3', '12 ft', 'NaN', '1,23'].map(readNumber)).toEqual([null, null, null, null, null]);
  });
});
