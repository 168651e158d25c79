import { expect, test } from 'vitest';
import type { Cable } from '../../../src/standards/cable';
import { cableItem, cableName } from '../../../src/standards/cableNames';
import { AMBIENT_TABLE } from '../../../src/standards/correction';
import { currentCarrying } from '../../../src/standards/currentCarrying';
import { standardSizes } from '../../../src/standards/overcurrent';
import { EDITIONS } from '../../../src/units/types';

const cable = (change: Partial<Cable>): Cable => ({
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
  ...change,
});

// Trade names: common practice; service-entrance builds by building-wire data sheets.
test.each<[Partial<Cable>, string, string]>([
  [{}, '12/2 w/G', 'cable:12/2 NM'],
  [{ size: '14', hots: 2 }, '14/3 w/G', 'cable:14/3 NM'],
  [{ size: '10', hots: 2, neutral: 'none' }, '10/2 w/G', 'cable:10/2 NM'],
  [{ kind: 'NM without ground', ground: false }, '12/2 without ground', 'cable:12/2 NM without ground'],
  [{ metal: 'Al' }, '12/2 Al w/G', 'cable:12/2 Al NM'],
  [{ kind: 'MC' }, '12/2 MC', 'cable:12/2 MC'],
  [{ kind: 'SE-R', size: '2', metal: 'Al', hots: 2 }, '2-2-2-4 Al SER', 'cable:2-2-2-4 Al SER'],
  [{ kind: 'SE-R', size: '4/0', metal: 'Al', hots: 2 }, '4/0-4/0-4/0-2/0 Al SER', 'cable:4/0-4/0-4/0-2/0 Al SER'],
  [
    { kind: 'SE-U', size: '2', metal: 'Al', hots: 2, neutral: 'bare', ground: false },
    '2-2-4 Al SEU',
    'cable:2-2-4 Al SEU',
  ],
])('%o is %s', (change, name, item) => {
  expect([cableName(cable(change)), cableItem(cable(change))]).toEqual([name, item]);
});

test('an unknown part is in no price book', () => {
  for (const key of ['kind', 'size', 'metal', 'hots', 'neutral'] as const)
    expect(cableItem(cable({ [key]: 'unknown' }))).toContain('?');
  expect(cableName(cable({ ground: 'unknown' }))).toContain('not known');
});

test('two conductors of a cable carry current, whatever is unknown', () => {
  expect(currentCarrying(cable({}))).toBe(2);
  expect(currentCarrying(cable({ hots: 2 }))).toBe(2);
  expect(currentCarrying(cable({ hots: 'unknown', neutral: 'unknown' }))).toBe(2);
});

test('what an edition does is data: sources for every edition, 2026 unverified, 10 A from 2023', () => {
  for (const edition of EDITIONS) expect(AMBIENT_TABLE[edition].section).not.toBe('');
  expect(AMBIENT_TABLE[2026].standing).toBe('unverified');
  expect(EDITIONS.map((edition) => standardSizes(edition)[0])).toEqual([15, 15, 10, 10]);
});
