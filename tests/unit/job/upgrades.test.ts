import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openJob } from '../../../src/job/parse';
import { FILLS, fillMissing, SCHEMA_NOW, UPGRADES, upgradeJob } from '../../../src/job/upgrades';

test('schema 1 is the first: there is nothing to upgrade', () => {
  expect(SCHEMA_NOW).toBe(1);
  expect(UPGRADES).toEqual([]);
});

test('a file from before keys were added opens with each of them filled and listed', () => {
  const now = JSON.parse(readFileSync(new URL('../../jobs/v1.json', import.meta.url), 'utf8'));
  const older = structuredClone(now);
  let gone = 0;
  for (const { at, key } of FILLS) {
    const holders = at.reduce((values, step) => values.flatMap((v) => (step === '*' ? v : [v[step]])), [older]);
    for (const holder of holders) {
      expect(key in holder).toBe(true);
      delete holder[key];
      gone++;
    }
  }
  expect(gone).toBeGreaterThanOrEqual(FILLS.length - 1); // nothing hangs on the new panels of this file
  const opened = openJob(JSON.stringify(older));
  expect(opened.ok && opened.value.repairs).toHaveLength(gone);
});

test('every schema number below the present one has exactly one step', () => {
  expect(UPGRADES.map((u) => u.from).sort((a, b) => a - b)).toEqual(
    Array.from({ length: SCHEMA_NOW - 1 }, (_, i) => i + 1),
  );
});

test('steps run in order from the file’s own number, and none below it', () => {
  const steps = [
    { from: 2, change: (job: Readonly<Record<string, unknown>>) => ({ ...job, trail: `${job.trail}2` }) },
    { from: 1, change: (job: Readonly<Record<string, unknown>>) => ({ ...job, trail: `${job.trail}1` }) },
  ];
  const from1 = upgradeJob({ schema: 1, trail: '' }, 1, steps);
  expect(from1.job).toEqual({ schema: 3, trail: '12' });
  expect(from1.repairs).toHaveLength(2);
  expect(upgradeJob({ schema: 2, trail: '' }, 2, steps).job).toEqual({ schema: 3, trail: '2' });
  expect(upgradeJob({ schema: 3, trail: '' }, 3, steps)).toEqual({ job: { schema: 3, trail: '' }, repairs: [] });
});

test('a key added later is filled where it is missing, in every record of a list, and listed', () => {
  const fills = [
    { at: ['practice'], key: 'wasteShare', value: 0.03 },
    { at: ['site', 'obstacles', '*'], key: 'wet', value: 'unknown' },
  ];
  const job = { practice: {}, site: { obstacles: [{ id: 'a' }, { id: 'b', wet: true }] } };
  const filled = fillMissing(job, fills);
  expect(filled.job).toEqual({
    practice: { wasteShare: 0.03 },
    site: {
      obstacles: [
        { id: 'a', wet: 'unknown' },
        { id: 'b', wet: true },
      ],
    },
  });
  expect(filled.repairs).toHaveLength(2);
  expect(filled.repairs[1]).toContain('/site/obstacles/0/wet');
  expect(job.practice).toEqual({});
});

test('filling leaves nonsense to the schema', () => {
  const fills = [{ at: ['site', 'obstacles', '*'], key: 'wet', value: 'unknown' }];
  for (const job of [{}, { site: null }, { site: [] }, { site: { obstacles: 5 } }, { site: { obstacles: [null, 3] } }])
    expect(fillMissing(job, fills)).toEqual({ job, repairs: [] });
});
