import { expect, test } from 'vitest';
import { badLines } from '../../../src/screens/survey/grid/badLines';
import { blockOf, cellsAt } from '../../../src/screens/survey/grid/block';
import { readCable, UNKNOWN_CABLE } from '../../../src/screens/survey/grid/cableText';
import { groupedJob, write } from './support';

const PASTED = blockOf('1\tKitchen\t20\t1\t12/2 G\n2\tBath\t20\t1\t12-2 w/G\n3\tHall\t15\t1\t14/2 NM\n');

test('pasted cables go into the only group there is', () => {
  const { after, refused } = write(groupedJob(['East group']), cellsAt(PASTED, 0, 0));
  expect(refused).toEqual([]);
  expect(after.homeRuns.map((h) => [h.group, h.cable.size])).toEqual([
    ['East group', '12'],
    ['East group', '12'],
    ['East group', '14'],
  ]);
});

test('where there are several they wait as typed, told once for the block, and go in with their group', () => {
  const first = write(groupedJob(['East group', 'West group']), cellsAt(PASTED, 0, 0));
  expect(first.after.circuits.map((c) => [c.number, c.label, c.amps])).toEqual([
    ['1', 'Kitchen', 20],
    ['2', 'Bath', 20],
    ['3', 'Hall', 15],
  ]);
  expect([...first.bad.values()].map((b) => b.text)).toEqual(['12/2 G', '12-2 w/G', '14/2 NM']);
  expect(badLines(first.refused.map((r) => ({ ...r, row: r.row + 1 }))).map((b) => b.line)).toEqual([
    'Rows 1–3, Cable: Say which cable group, in the column Cable group: East group, West group.',
  ]);
  const groups = [0, 1, 2].map((row) => ({ row, column: 'group' as const, text: row === 1 ? 'west' : 'East' }));
  const then = write(first.after, groups, first.bad);
  expect([...then.bad]).toEqual([]);
  expect(then.after.homeRuns.map((h) => [h.group, h.cable.size])).toEqual([
    ['East group', '12'],
    ['West group', '12'],
    ['East group', '14'],
  ]);
});

test('the beginning of a group’s name says it where no other begins so; a whole name always does', () => {
  const job = groupedJob(['East', 'East wall', 'West wall']);
  const group = (text: string) => {
    const { after, refused } = write(job, [{ row: 0, column: 'group', text }]);
    return refused[0]?.say ?? after.homeRuns[0]!.group;
  };
  expect(group('w')).toBe('West wall');
  expect(group('east')).toBe('East');
  expect(group('eas')).toBe('“eas” begins the names of several cable groups: East, East wall.');
  expect(group('wall')).toContain('There is no cable group “wall”');
});

test('different reasons are lines of their own; rows apart are named apart', () => {
  const cells = [1, 2, 4].map((row) => ({ row, column: 'cable' as const, say: 'which?' }));
  expect(badLines([...cells, { row: 2, column: 'amps' as const, say: 'no.' }]).map((b) => b.line)).toEqual([
    'Rows 1–2, 4, Cable: which?',
    'Row 2, Amps: no.',
  ]);
});

test('12/2 G has its EGC, no G has none, a bare name leaves it open', () => {
  const ground = (text: string) => {
    const read = readCable(text, 1, UNKNOWN_CABLE);
    return read.ok ? [read.value.kind, read.value.ground] : read.error;
  };
  for (const text of ['12/2 G', '12/2G', '12-2 w/G', '12-2 wg', '12/2 + ground', '12/2 NM gnd'])
    expect([text, ground(text)]).toEqual([text, ['NM', true]]);
  expect(ground('12/2 no G')).toEqual(['NM without ground', false]);
  expect(ground('14/2 NM')).toEqual(['NM', 'unknown']);
});
