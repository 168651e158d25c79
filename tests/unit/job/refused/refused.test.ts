import { describe, expect, test } from 'vitest';
import { openJob } from '../../../../src/job/parse';
import { JSON_LIMITS } from '../../../../src/job/readJson';
import { KEYS } from './badKeys';
import { MEASURES } from './badMeasures';
import { RECORDS } from './badRecords';
import { TEXT } from './badText';
import { changed, GOOD, type Raw, type Row } from './spoil';

const TABLES: Readonly<Record<string, readonly Row[]>> = {
  text: TEXT,
  'keys and values': KEYS,
  records: RECORDS,
  measures: MEASURES,
};

for (const [name, rows] of Object.entries(TABLES))
  describe(`bad ${name}`, () => {
    const cases = rows.map(([what, text, type, path, say = /./]) => ({ what, text, type, path, say }));
    test.each(cases)('$what', ({ text, type, path, say }) => {
      const result = openJob(text);
      const expected = { type, path, say: expect.stringMatching(say) };
      expect(result.ok ? 'opened' : result.error.error).toMatchObject(expected);
    });
  });

test('every cut of a good file is refused as JSON, located on its last line', () => {
  for (let i = 1; i < GOOD.length - 2; i += 997) {
    const result = openJob(GOOD.slice(0, i));
    expect(result.ok ? 'opened' : result.error.error.type).toBe('not-json');
  }
});

test('every value of a good file replaced by nonsense is refused at or under that place, and nothing throws', () => {
  const places: (string | number)[][] = [];
  const walk = (value: unknown, path: (string | number)[]) => {
    if (path.length > 0) places.push(path);
    if (Array.isArray(value)) for (const [i, v] of value.slice(0, 2).entries()) walk(v, [...path, i]);
    else if (typeof value === 'object' && value !== null)
      for (const [k, v] of Object.entries(value)) walk(v, [...path, k]);
  };
  walk(JSON.parse(GOOD), []);
  const misplaced = places.filter((path) => {
    const text = changed((job) => {
      const parent = path.slice(0, -1).reduce((v, step) => v[step], job);
      parent[path.at(-1)!] = { nonsense: [] };
    });
    const result = openJob(text);
    const pointer = `/${path.join('/')}`;
    return result.ok ? true : !result.error.error.path.startsWith(pointer);
  });
  expect(misplaced).toEqual([]);
  expect(places.length).toBeGreaterThan(400);
});

test('nothing reached the prototype of objects', () => {
  openJob('{"a": {"__proto__": {"polluted": 1}}}');
  expect(({} as Raw).polluted).toBeUndefined();
});

test('a file at the size limit is read in bounded time', () => {
  const started = performance.now();
  openJob(`"${'x'.repeat(JSON_LIMITS.characters - 2)}"`);
  expect(performance.now() - started).toBeLessThan(10_000);
});

test('the table is as long as it must be', () => {
  expect(Object.values(TABLES).flat().length).toBeGreaterThan(90);
});
