import { expect, test } from 'vitest';
import { bookCsv, readBookCsv } from '../../src/documents/bookCsv';
import { MOST_LINES } from '../../src/documents/csv';
import { checkJob } from '../../src/job/parse';
import { priceBookSchema } from '../../src/job/schema';
import { defaultBook } from '../../src/pricing/defaultBook';
import { applyCells } from '../../src/screens/survey/grid/apply';
import { COLUMNS } from '../../src/screens/survey/grid/columns';
import { csvRows, gridCsv } from '../../src/screens/survey/grid/csvRows';
import { demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { outcome } from '../support/outcome';
import { type Random, random } from '../support/random';

/** Spoiled tables: read, or refused with their line; never an exception, a hang, or a formula handed on. */

const STRANGE = [
  '=HYPERLINK("http://example.invalid","x")',
  '+1+1',
  '-2+3',
  '@SUM(A1)',
  '\t=1',
  "'=1",
  '<img src=x onerror=alert(1)>',
  '__proto__',
  'constructor',
  '"',
  '""',
  '"never closed',
  '\u0000',
  '\ud800',
  '\u202egnp',
  '1e999',
  '-0',
  'NaN',
  '9'.repeat(400),
  'x'.repeat(5000),
  ',,,,,,,,',
  '\r',
  '\n\n',
] as const;

const spoiled = (text: string, r: Random): string => {
  const cells = text.split(/([,\r\n]+)/);
  switch (r.int(0, 4)) {
    case 0: // a cell or two replaced
      for (let k = r.int(1, 2); k > 0; k--) cells[r.int(0, cells.length - 1)] = r.pick(STRANGE);
      return cells.join('');
    case 1: // cut off
      return text.slice(0, r.int(0, text.length));
    case 2: // lines in another order, one twice
      return text
        .split('\r\n')
        .map((line) => ({ line, at: r.int(0, 1000) }))
        .sort((a, b) => a.at - b.at)
        .flatMap(({ line }, i) => (i === 0 ? [line, line] : [line]))
        .join('\r\n');
    case 3: // another separator
      return text.replaceAll(',', r.pick([';', '\t', '|', '']));
    default: {
      const bytes = new TextEncoder().encode(text);
      for (let k = r.int(1, 30); k > 0; k--) bytes[r.int(0, bytes.length - 1)] = r.int(0, 255);
      return new TextDecoder().decode(bytes);
    }
  }
};
const FORMULA = /^[=+\-@\t\r]/;
/** Cells as a spreadsheet reads them (RFC 4180): quotes undone, nothing else. */
const cellsOf = (csv: string): string[] =>
  [...csv.matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^,\r\n]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  );
const formulas = (csv: string): string[] =>
  cellsOf(csv).filter((cell) => FORMULA.test(cell) && !/^-\d+(\.\d+)?$/.test(cell));

test('the look-out for formulas sees one', () => {
  expect(formulas('a,=1+1\r\n')).toEqual(['=1+1']);
  expect(formulas('"@SUM(A1,""b"")",-3\r\n"text, =1"\r\n')).toEqual(['@SUM(A1,"b")']);
});

test('price books spoiled by cell, line and byte', () => {
  const r = random(21);
  const text = bookCsv(defaultBook);
  let [taken, refused] = [0, 0];
  for (let i = 0; i < cases(100, 5_000); i++) {
    const read = readBookCsv(spoiled(text, r), defaultBook);
    if (read.ok) {
      taken++;
      expect(priceBookSchema.safeParse(read.value).success).toBe(true);
      expect(formulas(bookCsv(read.value))).toEqual([]);
    } else {
      refused++;
      expect(read.error.length).toBeGreaterThan(0);
      for (const { line, say } of read.error) expect(line > 0 && say.length > 0).toBe(true);
    }
  }
  expect(Math.min(taken, refused)).toBeGreaterThan(0);
  outcome('price-books', { files: taken + refused, taken, refused });
});

test('circuits spoiled by cell, line and byte', () => {
  const r = random(22);
  const job = demoJob('small-house');
  const text = gridCsv(job);
  let [taken, refused] = [0, 0];
  for (let i = 0; i < cases(100, 5_000); i++) {
    const read = csvRows(job, spoiled(text, r));
    if (read.ok) {
      const applied = applyCells(job, new Map(), read.value.cells);
      const checked = checkJob(applied.job); // as the edit does that takes it over: all of it, or none with the place
      if (!checked.ok) {
        refused++;
        expect(checked.error.error.path).toMatch(/^\//);
        continue;
      }
      taken++;
      expect(formulas(gridCsv(applied.job))).toEqual([]);
      for (const { row, say } of applied.refused) expect(row >= 0 && say.length > 0).toBe(true);
    } else {
      refused++;
      expect(read.error.length).toBeGreaterThan(0);
    }
  }
  expect(taken).toBeGreaterThan(0);
  expect(csvRows(job, `${text}"never closed`).ok).toBe(false);
  outcome('circuits', { files: taken + refused, taken, refused });
});

test.each(['constructor', 'toString', '__proto__', 'valueOf'])('%s in every cell is text like any other', (word) => {
  const job = demoJob('small-house');
  for (const { id: column } of COLUMNS) {
    const applied = applyCells(job, new Map(), [{ row: 0, column, text: word }]);
    expect(checkJob(applied.job)).toMatchObject({ ok: true });
  }
});

test('what a person typed leaves as text, never as a formula', () => {
  const job = demoJob('small-house');
  for (const label of STRANGE.filter((s) => FORMULA.test(s))) {
    const circuits = job.circuits.map((c, i) => (i === 0 ? { ...c, label } : c));
    expect(formulas(gridCsv({ ...job, circuits }))).toEqual([]);
  }
});

test('a table far longer than any job is refused, not chewed on', () => {
  const long = `kind,id,unit,low,likely,high,source\r\n${'x\r\n'.repeat(MOST_LINES)}`;
  const started = performance.now();
  expect(readBookCsv(long, defaultBook).ok).toBe(false);
  expect(csvRows(demoJob('small-house'), long).ok).toBe(false);
  expect(performance.now() - started).toBeLessThan(5_000);
});

test('nothing reached the prototype of objects', () => {
  expect(Object.keys(Object.prototype)).toEqual([]);
});
