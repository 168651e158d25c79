import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editName } from '../../../src/job/edit';
import { push, startHistory, undo } from '../../../src/job/history';
import { applyCells, type CellText } from '../../../src/screens/survey/grid/apply';
import { blockOf, cellsAt, cellsUnder, clipboardText, headsOf } from '../../../src/screens/survey/grid/block';
import { COLUMNS } from '../../../src/screens/survey/grid/columns';
import { csvRows, gridCsv } from '../../../src/screens/survey/grid/csvRows';
import { gridEdit } from '../../../src/screens/survey/grid/gridEdit';
import { keyDeed } from '../../../src/screens/survey/grid/keys';
import { rowsOf } from '../../../src/screens/survey/grid/rows';
import { areaOf, blockIn, emptied, filledDown, spread } from '../../../src/screens/survey/grid/selection';
import { gridWords as words } from '../../../src/words/en/grid';
import { demoJob } from '../job/demo';
import { groupedJob, NO_BAD, taken, write } from './support';

const SIX = [
  ['1', 'Kitchen counter', '20', '1', '12/2 w/G'],
  ['2', 'Bedrooms', '15', '1', '14/2 w/G'],
  ['3-5', 'Range', '50', '2', '6/3 w/G'],
  ['4', 'Bath', '20', '1', '12/2 w/G'],
  ['6', 'Living room', '15', '1', '14/2 w/G'],
  ['7', 'Furnace', '15', '1', '14/2'],
];

describe('a text from the clipboard', () => {
  test('tabs, even commas with heads, even commas in three columns, one column with commas', () => {
    expect(blockOf('a\tb\r\nc\td\r\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(blockOf('No.,Serves\n1,Bath')).toEqual([
      ['No.', 'Serves'],
      ['1', 'Bath'],
    ]);
    expect(blockOf('1;Bath;20\n2;Hall;15')[1]).toEqual(['2', 'Hall', '15']);
    expect(blockOf('bath, hall\nden, attic')).toEqual([['bath, hall'], ['den, attic']]);
    expect(blockOf('Dishwasher, disposal')).toEqual([['Dishwasher, disposal']]);
    expect(blockOf('"5\tx')).toEqual([['"5', 'x']]);
  });
  test('what is copied is pasted as it was', () => {
    const block = [
      ['=1', `10'-6"`],
      ['a\tb', 'c\nd'],
    ];
    expect(blockOf(clipboardText(block))).toEqual(block);
  });
  test('heads are known by their own and by usual names', () => {
    expect(headsOf(['Ckt', 'Description', 'Amps', 'Color'])).toEqual({
      columns: ['number', 'label', 'amps', null],
      unknown: ['Color'],
    });
    expect(headsOf(['1', 'Kitchen', '20'])).toBeNull();
    expect(headsOf(COLUMNS.map((c) => words.heads[c.id]))?.columns).toEqual(COLUMNS.map((c) => c.id));
  });
});

test('six rows pasted into an empty job are one step by name, taken back as one', () => {
  const job = groupedJob();
  const { job: after, refused } = applyCells(job, NO_BAD, cellsAt(SIX, 0, 0));
  expect(refused).toEqual([]);
  const edit = gridEdit(job, after, 'Paste 6 rows')!;
  expect(editName(edit)).toBe('Paste 6 rows');
  const result = taken(job, after);
  expect(result.circuits.map((c) => [c.number, c.label, c.amps, c.poles])).toEqual(
    SIX.map(([number, label, amps, poles]) => [number, label, Number(amps), Number(poles)]),
  );
  expect(result.homeRuns.map((h) => [h.group, h.cable.size, h.circuits.length])).toEqual(
    ['12', '14', '6', '12', '14', '14'].map((size) => ['g-north', size, 1]),
  );
  const history = push(startHistory(job), editName(edit), result);
  expect(history.past).toHaveLength(1);
  expect(undo(history).now).toBe(job);
});

test('a block hangs over the last row into new ones, and over the right edge into nothing', () => {
  const job = demoJob('small-house');
  const rows = rowsOf(job).length;
  const { after } = write(job, cellsAt([['8'], ['9']], rows - 1, 0));
  expect(rowsOf(after)).toHaveLength(rows + 1);
  expect(cellsAt([['60', 'x', 'y']], 0, COLUMNS.length - 1)).toHaveLength(1);
});

test('empty cells of a block clear; empty lines make no row', () => {
  const job = demoJob('washer');
  const { after } = write(job, cellsAt([['', '']], 3, 1));
  expect(after.circuits.find((c) => c.id === 'c-04')).toMatchObject({ label: '', amps: 'unknown' });
  expect(write(job, cellsAt([['', '']], 99, 0)).after).toBe(job);
});

describe('CSV', () => {
  test.each(['washer', 'l-shaped', 'small-house'] as const)('%s goes out, and in again changes nothing', (name) => {
    const job = demoJob(name);
    const read = csvRows(job, gridCsv(job));
    expect(read.ok && write(job, read.value.cells).after).toBe(job);
  });
  test.each(['washer', 'l-shaped', 'small-house'] as const)('%s into an empty job is the same grid', (name) => {
    const demo = demoJob(name);
    const empty = { ...demo, circuits: [], homeRuns: [], options: demo.options.map((o) => ({ ...o, pins: [] })) };
    const read = csvRows(empty, gridCsv(demo));
    if (!read.ok) throw new Error(read.error);
    const { after, refused } = write(empty, read.value.cells);
    expect(refused).toEqual([]);
    expect(gridCsv(after)).toBe(gridCsv(demo));
  });
  test('what is not understood is told by the file’s line and column, and everything else goes in', () => {
    const file = 'Ckt;Description;Amps;Color\n1;Bath;20;red\n\n2;Hall;much;blue\n';
    const read = csvRows(groupedJob(), file);
    if (!read.ok) throw new Error(read.error);
    expect([read.value.rows, read.value.unknown]).toEqual([2, ['Color']]);
    const { after, refused } = write(groupedJob(), read.value.cells);
    expect(after.circuits.map((c) => c.label)).toEqual(['Bath', 'Hall']);
    expect(refused.map((r) => [read.value.lineOf(r.row), r.column])).toEqual([[4, 'amps']]);
  });
  test('without heads the columns are those of the grid; a broken quote is told', () => {
    const read = csvRows(groupedJob(), '1,Bath,20,1,12/2 w/G\n');
    expect(read.ok && write(groupedJob(), read.value.cells).after.circuits[0]).toMatchObject({
      label: 'Bath',
      amps: 20,
    });
    expect(csvRows(groupedJob(), 'a,"b')).toEqual({
      ok: false,
      error: 'Row 1, column 2: a quote is opened and never closed, or the table never ends. Nothing was read.',
    });
    expect(csvRows(groupedJob(), '').ok).toBe(false);
  });
});

test('whatever is typed anywhere, the job stays one that opens', () => {
  const texts = fc.oneof(
    fc.string(),
    fc.string({ maxLength: 500 }),
    fc.constantFrom(
      ...COLUMNS.flatMap((c) => c.choices ?? []),
      '',
      '?',
      '5',
      'h-03',
      'h-04',
      '3',
      'g-east',
      '2p',
      '20/22/18',
    ),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(demoJob('washer'), groupedJob(), groupedJob([])),
      fc.array(
        fc.record({
          row: fc.integer({ min: 0, max: 28 }),
          column: fc.constantFrom(...COLUMNS.map((c) => c.id)),
          text: texts,
        }),
        { maxLength: 12 },
      ),
      (job, cells: CellText[]) => {
        const { after, bad } = write(job, cells); // throws when the job's own check refuses it
        const again = write(after, [], bad);
        expect(again.after).toBe(after);
      },
    ),
    { numRuns: 300, seed: 20261125 },
  );
});

test('cells under heads leave unnamed columns out', () => {
  const heads = headsOf(['No.', 'Color', 'Amps'])!;
  expect(
    cellsUnder(
      heads,
      [
        ['1', 'red', '20'],
        ['', '', ''],
      ],
      4,
    ),
  ).toEqual([
    { row: 4, column: 'number', text: '1' },
    { row: 4, column: 'amps', text: '20' },
  ]);
});

describe('an area of cells', () => {
  const job = demoJob('washer');
  const column = (id: string) => COLUMNS.findIndex((c) => c.id === id);
  test('fill down takes the first row to those below, as one step', () => {
    const area = areaOf({ row: 8, column: column('amps') }, { row: 4, column: column('poles') });
    const cells = filledDown(job, NO_BAD, area);
    expect(cells).toHaveLength(8);
    const { after } = write(job, cells);
    const [first, ...rest] = rowsOf(after).slice(4, 9);
    for (const row of rest) expect(row.its.circuit?.amps).toBe(first!.its.circuit!.amps);
    expect(gridEdit(job, after, 'Fill down 4 rows')?.edit).toBe('set values');
  });
  test('fill down in one row takes what stands over it; the first has nothing over it', () => {
    const at = { row: 5, column: column('label') };
    expect(filledDown(job, NO_BAD, areaOf(at, at))).toEqual([
      { row: 5, column: 'label', text: rowsOf(job)[4]!.its.circuit!.label },
    ]);
    expect(filledDown(job, NO_BAD, areaOf({ ...at, row: 0 }, { ...at, row: 0 }))).toEqual([]);
  });
  test('one cell pasted into an area fills it', () => {
    const area = areaOf({ row: 1, column: 2 }, { row: 2, column: 3 });
    expect(spread([['x']], area)).toEqual([
      ['x', 'x'],
      ['x', 'x'],
    ]);
    expect(spread([['x', 'y']], area)).toEqual([['x', 'y']]);
  });
  test('a copied area pasted where it was changes nothing', () => {
    const area = areaOf({ row: 0, column: 0 }, { row: 24, column: COLUMNS.length - 1 });
    const block = blockOf(clipboardText(blockIn(job, NO_BAD, area)));
    expect(write(job, cellsAt(block, 0, 0)).after).toBe(job);
  });
  test('emptied cells are not known; what must stand is refused', () => {
    const area = areaOf({ row: 3, column: column('label') }, { row: 3, column: column('poles') });
    const { after, refused } = write(job, emptied(area));
    expect(after.circuits.find((c) => c.id === 'c-04')).toMatchObject({ label: '', amps: 'unknown', poles: 1 });
    expect(refused.map((r) => r.column)).toEqual(['poles']);
  });
});

describe('keys', () => {
  const size = { rows: 10, columns: 5, page: 4 };
  const press = (key: string, mods = {}, at = { row: 3, column: 2 }) =>
    keyDeed({ key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false, ...mods }, at, size);
  test('arrows stop at the edges; shift extends; control goes to the end', () => {
    expect(press('ArrowUp', {}, { row: 0, column: 0 })).toMatchObject({ to: { row: 0, column: 0 } });
    expect(press('ArrowDown', { shiftKey: true })).toEqual({ deed: 'go', to: { row: 4, column: 2 }, extend: true });
    expect(press('ArrowRight', { ctrlKey: true })).toMatchObject({ to: { row: 3, column: 4 } });
    expect(press('PageDown', {}, { row: 8, column: 0 })).toMatchObject({ to: { row: 9, column: 0 } });
  });
  test('Tab moves in its row and leaves the grid past either end', () => {
    expect(press('Tab')).toMatchObject({ to: { row: 3, column: 3 }, extend: false });
    expect(press('Tab', {}, { row: 3, column: 4 })).toBeNull();
    expect(press('Tab', { shiftKey: true }, { row: 3, column: 0 })).toBeNull();
  });
  test('a letter types, a letter with control does not, except d and a', () => {
    expect(press('x')).toEqual({ deed: 'type', text: 'x' });
    expect(press('x', { ctrlKey: true })).toBeNull();
    expect(press('d', { ctrlKey: true })).toEqual({ deed: 'fill' });
    expect(press('A', { metaKey: true })).toEqual({ deed: 'select all' });
    expect(press('Shift')).toBeNull();
  });
});
