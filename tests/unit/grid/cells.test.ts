import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { cellText } from '../../../src/screens/survey/grid/apply';
import { cableText, readCable, UNKNOWN_CABLE } from '../../../src/screens/survey/grid/cableText';
import type { ColumnId } from '../../../src/screens/survey/grid/column';
import { COLUMNS } from '../../../src/screens/survey/grid/columns';
import { removeRow } from '../../../src/screens/survey/grid/columnsShared';
import { rowsOf } from '../../../src/screens/survey/grid/rows';
import { demoJob } from '../job/demo';
import { groupedJob, NO_BAD, taken, write } from './support';

const show = (job: Job, row: number, column: ColumnId) => cellText(job, NO_BAD, rowsOf(job)[row]!, column);
const rowOf = (job: Job, number: string) => rowsOf(job).findIndex((r) => r.its.circuit?.number === number);

test('a cable of two circuits has two rows, a circuit on two cables too', () => {
  const job = demoJob('washer');
  const rows = rowsOf(job);
  expect(rows.filter((r) => r.homeRun === 'h-01-02').map((r) => r.circuit)).toEqual(['c-01', 'c-02']);
  expect(rows.filter((r) => r.circuit === 'c-09').map((r) => r.homeRun)).toEqual(['h-09-a', 'h-09-b']);
  expect(rows.length).toBe(25);
});

test('every cell of the demos written with what it shows changes nothing', () => {
  for (const name of ['washer', 'l-shaped', 'small-house'] as const) {
    const job = demoJob(name);
    for (const [row, r] of rowsOf(job).entries())
      for (const c of COLUMNS) {
        const text = c.show(r.its, job);
        // read and put, not only found to be the same
        const written = text === '' ? null : c.write(job, r, text, () => undefined);
        if (written) expect([name, row, c.id, written.ok && written.value.job]).toEqual([name, row, c.id, job]);
      }
  }
});

test('a cable as it is printed on its jacket, in any order, is what is said of it', () => {
  const spoken = readCable('14/2 NM-B w/G', 1, UNKNOWN_CABLE);
  expect(spoken.ok && [spoken.value.ground, spoken.value.insulation]).toEqual([true, 90]);
  for (const print of ['AWG 14-2 TYPE NM-B WITH GROUND 600V', 'NM-B 14/2 G', '14/2 w/G NM-B'])
    expect(readCable(print, 1, UNKNOWN_CABLE), print).toEqual(spoken);
});
describe('a cable as people write it', () => {
  const read = (text: string, poles: 1 | 2 = 1) => {
    const cable = readCable(text, poles, UNKNOWN_CABLE);
    return cable.ok ? cable.value : cable.error;
  };
  test('the same cable in several hands', () => {
    const nm = { ...UNKNOWN_CABLE, kind: 'NM', size: '14', metal: 'Cu', hots: 1, neutral: 'insulated', ground: true };
    for (const text of ['14/2 w/G', '14-2 w/g', '14/2 with ground', '#14/2 W/G', '14 / 2 wG', '14/2 NM w/G'])
      expect([text, read(text)]).toEqual([text, nm]);
    expect(read('14/2 NM-B w/G')).toEqual({ ...nm, insulation: 90 });
  });
  test('an EGC that is not written is not known; one that is ruled out makes it NM without ground', () => {
    expect(read('12/2')).toMatchObject({ kind: 'NM', ground: 'unknown' });
    expect(read('12/2 without ground')).toMatchObject({ kind: 'NM without ground', ground: false });
    expect(read('12/2 MC')).toMatchObject({ kind: 'MC', ground: true });
  });
  test('two conductors of a two-pole circuit are two hots; three are two hots and a neutral', () => {
    expect(read('10/2 w/G', 2)).toMatchObject({ hots: 2, neutral: 'none' });
    expect(read('10/3 w/G', 2)).toMatchObject({ hots: 2, neutral: 'insulated' });
    expect(read('2-2-2-4 Al SER', 2)).toMatchObject({ kind: 'SE-R', size: '2', metal: 'Al', hots: 2 });
  });
  test('what is no cable is refused with what would be one', () => {
    for (const text of ['yellow', '14/9', '14', '14-2-2', '14/1', '99999/2'])
      expect(read(text)).toContain('is not read as a cable');
    expect(read('not known')).toEqual(UNKNOWN_CABLE);
    expect(cableText(UNKNOWN_CABLE)).toBe('not known');
  });
});

describe('one cell', () => {
  const job = demoJob('washer');
  const set = (column: ColumnId, text: string, row = 3) => {
    const { after, refused } = write(job, [{ row, column, text }]);
    return refused[0]?.say ?? show(after, row, column);
  };
  test.each([
    ['amps', '20 A', '20'],
    ['amps', '?', 'not known'],
    ['amps', '', 'not known'],
    ['va', '1,500 VA', '1500'],
    ['va', '1.5 kVA', '1500'],
    ['serves', 'Bedrooms and hall', 'bedroom, hall'],
    ['serves', 'none', 'none'],
    ['protection', 'dual function', 'AFCI and GFCI'],
    ['hardWired', 'Y', 'yes'],
    ['wholeLength', "35'", `35'-0"`],
    ['wholeLength', '10.5 m', `34'-5 25/64"`],
    ['pivot', 'as its group', 'as its group'],
    ['pivot', 'not known', 'not known'],
    ['tails', '20/22/18', '20 / 22 / 18'],
    ['tails', '20 1/2 / 22 / 18', '20.5 / 22 / 18'],
    ['condition', 'Brittle; cloth', 'Brittle, cloth'],
    ['neutral', 'BARE', 'bare'],
    ['insulation', '90', '90'],
    ['group', 'G-WEST', 'g-west'],
  ] as const)('%s: %s', (column, typed, shown) => expect(set(column, typed)).toBe(shown));

  test.each([
    ['amps', '0', 'no number above zero'],
    ['amps', '-20', 'no number'],
    ['amps', 'twenty', 'no number'],
    ['amps', '1e99', 'no number'],
    ['va', '99999999', 'more than'],
    ['poles', '3', 'none of'],
    ['poles', '', 'Poles are 1 or 2'],
    ['serves', 'bedroom, dungeon', '“dungeon” is none of'],
    ['wholeLength', '-3', 'not read as a length'],
    ['tails', '20/22', 'not read as tails'],
    ['group', 'g-moon', 'There are: g-east'],
    ['group', '', 'stays in a group'],
    ['tag', 'x-1', 'an id once given stays'],
    ['partner', '77', 'No other circuit'],
    ['breaker', 'h-99', 'No other row'],
    ['label', 'x'.repeat(401), 'More than 400'],
  ] as const)('%s does not take %s', (column, typed, reason) => expect(set(column, typed)).toContain(reason));

  test('poles carry the volts', () => {
    const { after } = write(job, [{ row: 3, column: 'poles', text: '2-pole' }]);
    expect(after.circuits.find((c) => c.id === 'c-04')).toMatchObject({ poles: 2, volts: 240 });
  });
});

describe('rows tied to each other', () => {
  test('a shared neutral pairs both, and lets go of whoever was paired before', () => {
    const job = demoJob('washer');
    const row = rowOf(job, '5');
    const { after } = write(job, [{ row, column: 'partner', text: '3' }]);
    const partner = (id: string) => after.circuits.find((c) => c.id === id)!.partner;
    expect([partner('c-03'), partner('c-02'), partner('c-01')]).toEqual(['c-02', 'c-03', null]);
    const free = write(after, [{ row, column: 'partner', text: '' }]).after;
    expect(free.circuits.filter((c) => c.partner !== null)).toEqual([]);
  });
  test('two circuits of one number cannot be told apart', () => {
    const job = demoJob('washer');
    const twice = write(job, [{ row: rowOf(job, '23'), column: 'number', text: '25' }]).after;
    const { refused } = write(twice, [{ row: 0, column: 'partner', text: '25' }]);
    expect(refused[0]?.say).toContain('2 circuits have the number “25”');
  });
  test('a cable goes under the breaker of another, and gets one of its own again', () => {
    const job = demoJob('washer');
    const row = rowOf(job, '5'); // h-03 of c-03
    const joined = write(job, [{ row, column: 'breaker', text: 'h-04' }]).after;
    expect(joined.circuits.some((c) => c.id === 'c-03')).toBe(false);
    expect(joined.homeRuns.find((h) => h.id === 'h-03')?.circuits).toEqual(['c-04']);
    const at = rowsOf(joined).findIndex((r) => r.homeRun === 'h-03');
    expect(show(joined, at, 'breaker')).toBe('h-04');
    const apart = write(joined, [{ row: at, column: 'breaker', text: '' }]).after;
    const own = apart.homeRuns.find((h) => h.id === 'h-03')!.circuits[0]!;
    expect(apart.circuits.find((c) => c.id === own)).toMatchObject({ number: '', label: 'Refrigerator' });
  });
  test('the tag of another row puts two circuits on one cable', () => {
    const job = demoJob('washer');
    const { after } = write(job, [{ row: rowOf(job, '5'), column: 'tag', text: 'h-04' }]);
    expect(after.homeRuns.some((h) => h.id === 'h-03')).toBe(false);
    expect(after.homeRuns.find((h) => h.id === 'h-04')?.circuits).toEqual(['c-04', 'c-03']);
  });
  test('a removed row takes its circuit and cable with it, unless another row has them; pins forget it', () => {
    const job = demoJob('washer');
    const rows = rowsOf(job);
    const pinned: Job = {
      ...job,
      options: job.options.map((o) => ({ ...o, pins: [{ id: 'p', pin: 'way', homeRun: 'h-03', way: 'reuse' }] })),
    };
    const gone = taken(pinned, removeRow(pinned, rows[2]!));
    expect(gone.circuits.some((c) => c.id === 'c-03') || gone.homeRuns.some((h) => h.id === 'h-03')).toBe(false);
    expect(gone.options.every((o) => o.pins.length === 0)).toBe(true);
    const half = taken(job, removeRow(job, rows.find((r) => r.homeRun === 'h-09-a')!));
    expect(half.circuits.some((c) => c.id === 'c-09')).toBe(true);
    const pair = taken(job, removeRow(job, rows[0]!));
    expect(pair.homeRuns.find((h) => h.id === 'h-01-02')?.circuits).toEqual(['c-02']);
    expect(pair.circuits.find((c) => c.id === 'c-02')?.partner).toBeNull();
  });
});

describe('what cannot be taken', () => {
  test('stays as typed, stops no other cell, and is tried again when the row changes', () => {
    const job = groupedJob(['g-a', 'g-b']);
    const first = write(job, [
      { row: 0, column: 'number', text: '5' },
      { row: 0, column: 'amps', text: 'twenty' },
      { row: 0, column: 'cable', text: '12/2 w/G' },
    ]);
    expect(first.after.circuits).toHaveLength(1);
    expect(first.after.homeRuns).toHaveLength(0);
    expect([...first.bad.values()].map((b) => [b.column, b.text])).toEqual([
      ['amps', 'twenty'],
      ['cable', '12/2 w/G'],
    ]);
    const then = write(first.after, [{ row: 0, column: 'group', text: 'g-b' }], first.bad);
    expect(show(then.after, 0, 'cable')).toBe('12/2 w/G');
    expect([...then.bad.values()].map((b) => b.column)).toEqual(['amps']);
    const last = write(then.after, [{ row: 0, column: 'amps', text: '20' }], then.bad);
    expect([...last.bad]).toEqual([]);
  });
  test('a new row of nothing but bad cells is kept, to be mended', () => {
    const { after, bad } = write(groupedJob(), [{ row: 0, column: 'amps', text: 'many' }]);
    expect(rowsOf(after)).toHaveLength(1);
    expect([...bad.values()][0]).toMatchObject({ text: 'many', row: { circuit: 'c-01', homeRun: null } });
  });
  test('without a cable group circuits go in and cables wait', () => {
    const { after, refused } = write(groupedJob([]), [
      { row: 0, column: 'number', text: '1' },
      { row: 0, column: 'cable', text: '14/2 w/G' },
    ]);
    expect(after.circuits).toHaveLength(1);
    expect(refused[0]?.say).toContain('Draw one in the room first');
  });
});
