import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guard, readCsv, separatorOf, unguard, writeCsv } from '../../../src/documents/csv';

const cells = (text: string, separator: ',' | ';' | '\t' = ',') => {
  const read = readCsv(text, separator);
  return read.ok ? read.value : read.error;
};

describe('reading, RFC 4180 section 2', () => {
  test('lines end with CRLF, LF or CR; the last one may be open', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(cells('a,b\nc,d')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(cells('a\rb\r')).toEqual([['a'], ['b']]);
    expect(cells('')).toEqual([]);
  });
  test('quotes hold commas, line breaks and doubled quotes', () => {
    expect(cells('"aaa","b \r\nbb","c,c"\r\nzzz,"y""y",xxx')).toEqual([
      ['aaa', 'b \r\nbb', 'c,c'],
      ['zzz', 'y"y', 'xxx'],
    ]);
    expect(cells('"aaa","b""bb"')).toEqual([['aaa', 'b"bb']]);
  });
  test('inches in the middle of a cell are no quotes', () => {
    expect(cells(`10'-6",14/2`)).toEqual([[`10'-6"`, '14/2']]);
  });
  test('empty cells stay, at the end too', () => {
    expect(cells(',a,\n,,\n')).toEqual([
      ['', 'a', ''],
      ['', '', ''],
    ]);
    expect(cells('a,')).toEqual([['a', '']]);
  });
  test('a quote that is never closed is told with its place', () => {
    expect(cells('a,b\nc,"d')).toEqual({ row: 2, column: 2 });
  });
  test('a byte order mark is no part of the first cell', () => {
    expect(cells('\uFEFFNo.,Serves')).toEqual([['No.', 'Serves']]);
  });
});

test('the separator is the one the first line has most of', () => {
  expect(separatorOf('a;b;c,d\n1,2,3,4')).toBe(';');
  expect(separatorOf('a\tb,c\n')).toBe('\t');
  expect(separatorOf('one cell')).toBe('\t');
});

test('no cell starts as a formula in a file that is handed out', () => {
  for (const evil of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', "'=1", '\r=1'])
    expect([guard(evil), unguard(guard(evil))]).toEqual([`'${evil}`, evil]);
  expect(guard("it's 5'-0")).toBe("it's 5'-0");
  expect(writeCsv([['=HYPERLINK("x")', 'plain']])).toBe('"\'=HYPERLINK(""x"")",plain\r\n');
});

test('what is written is read back, whatever it says', () => {
  const cell = fc.oneof(
    fc.string(),
    fc.string({ unit: fc.constantFrom('"', ',', ';', '\t', '\n', '\r', "'", '=', '-', 'a') }),
  );
  fc.assert(
    fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 4 }), (rows) => {
      for (const separator of [',', ';', '\t'] as const) {
        const text = writeCsv(rows, separator);
        if (!text.startsWith('\uFEFF')) expect(cells(text, separator)).toEqual(rows);
        for (const row of cells(text, separator) as string[][])
          for (const c of row) expect(guard(c).startsWith('=')).toBe(false);
      }
    }),
    { numRuns: 300, seed: 4180 },
  );
});
