import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { blankJob } from '../../../src/job/blankJob';
import { openJob } from '../../../src/job/parse';
import { saveJob } from '../../../src/job/save';
import type { Job } from '../../../src/job/schema';

const root = new URL('../../../', import.meta.url);
const files = [
  ...readdirSync(new URL('demo/', root))
    .filter((f) => f.endsWith('.job.json'))
    .map((f) => `demo/${f}`),
  'tests/jobs/v1.json',
];
const textOf = (file: string) => readFileSync(new URL(file, root), 'utf8');
const opened = (text: string): { job: Job; repairs: readonly string[] } => {
  const result = openJob(text);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

test('there are three demo jobs', () => {
  expect(files).toHaveLength(4);
});

test.each(files)('%s opens without repair and is saved again byte for byte', (file) => {
  const { job, repairs } = opened(textOf(file));
  expect(repairs).toEqual([]);
  expect(saveJob(job)).toBe(textOf(file));
  expect(opened(saveJob(job)).job).toEqual(job);
});

test('the saved file of schema 1 uses every kind of pin, a price book, photos, answers and frozen figures', () => {
  const { job } = opened(textOf('tests/jobs/v1.json'));
  expect(new Set(job.options.flatMap((o) => o.pins.map((p) => p.pin))).size).toBe(5);
  expect(job.priceBook).not.toBe('default');
  for (const list of [job.photos, job.answers, job.issued, job.alternates, job.site.bays, job.site.sleeves])
    expect(list.length).toBeGreaterThan(0);
});

test('key order in the file does not matter: the saved text has the order of the schema', () => {
  const turned = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map(turned)
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([k, v]) => [k, turned(v)]),
          )
        : value;
  const text = textOf('demo/small-house.job.json');
  expect(saveJob(opened(JSON.stringify(turned(JSON.parse(text)))).job)).toBe(text);
});

test('site lengths off the 1/64 in grid are rounded and listed; the contractor’s own settings are kept', () => {
  const raw = JSON.parse(textOf('demo/small-house.job.json'));
  raw.site.outline[1].at[1] = 144.0001;
  raw.enclosures[0].size.width = 14.51;
  raw.cableGroups[0].pivot = 21.63;
  raw.practice.slackMinimum = 6.01;
  const { job, repairs } = opened(JSON.stringify(raw));
  expect(repairs).toHaveLength(3);
  expect(repairs.map((r) => r.split(':')[0])).toEqual([
    '/site/outline/1/at/1',
    '/enclosures/0/size/width',
    '/cableGroups/0/pivot',
  ]);
  expect(job.site.outline[1]!.at[1]).toBe(144);
  expect(job.enclosures[0]!.size.width).toBe(14.515625); // 14 33/64: 14.51 × 64 = 928.64, rounded 929
  expect(job.cableGroups[0]!.pivot).toBe(21.625);
  expect(job.practice.slackMinimum).toBe(6.01);
});

test('an opened job cannot be changed by accident, at any depth', () => {
  const { job } = opened(textOf('demo/washer.job.json'));
  const deep = (value: unknown, path: string): string[] =>
    typeof value !== 'object' || value === null
      ? []
      : [
          ...(Object.isFrozen(value) ? [] : [path]),
          ...Object.entries(value).flatMap(([k, v]) => deep(v, `${path}/${k}`)),
        ];
  expect(deep(job, '')).toEqual([]);
});

test('a blank job is a valid job that assumes nothing about the house', () => {
  const job = blankJob({ id: 'new', on: '2026-01-05' });
  const { job: again, repairs } = opened(saveJob(job));
  expect(again).toEqual(job);
  expect(repairs).toEqual([]);
  expect(job.code.edition).toBe('unknown');
  expect(Object.values(job.house).filter((v) => v === 'unknown')).toHaveLength(8);
});

test('a byte order mark in front is allowed', () => {
  expect(openJob(`\ufeff${textOf('demo/small-house.job.json')}`).ok).toBe(true);
});
