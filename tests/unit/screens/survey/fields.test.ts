import { expect, test } from 'vitest';
import { applyEdit } from '../../../../src/job/applyEdit';
import { valueAt } from '../../../../src/job/pointer';
import { planJob } from '../../../../src/plan/planJob';
import { setField } from '../../../../src/screens/survey/drag';
import { specsOf } from '../../../../src/screens/survey/fields/all';
import { readTyped, writeValue } from '../../../../src/screens/survey/fields/read';
import { countOrNone, length, money } from '../../../../src/screens/survey/fields/spec';
import { fieldValue, LISTS, PARTS, part, type Ref, recordsOf } from '../../../../src/screens/survey/ref';
import { rankUnknowns, unknownFields } from '../../../../src/screens/survey/unknowns';
import { demoJob } from '../../job/demo';

const job = demoJob('l-shaped');
const refs: Ref[] = [
  ...LISTS.flatMap((list) => recordsOf(job, list).map(({ id }) => ({ list, id }))),
  ...PARTS.map(part),
];

const FREE_KINDS = ['/site/obstacles', '/house/loads'];

test('lengths are read in every usual way, to 1/64 in', () => {
  const spec = length('', 'Width', 'may be unknown');
  const read = (text: string) => {
    const r = readTyped(spec, text);
    return r.ok ? r.value : 'refused';
  };
  expect(read(`12' 4 1/2"`)).toBe(148.5);
  expect(read('148.5')).toBe(148.5);
  // 3.77 m ÷ 0.0254 m = 148.425 in (the international inch, 1959), to whole 1/64
  expect(read('3.77 m')).toBe(Math.round((3.77 / 0.0254) * 64) / 64);
  expect(read('?')).toBe('unknown');
  expect(read('not known')).toBe('unknown');
  expect(read('')).toBe('unknown');
  expect(read('about six feet')).toBe('refused');
  expect(readTyped(length('', 'Width'), '?').ok).toBe(false);
});

test('money, numbers and the word for none', () => {
  expect(readTyped(money('fixed')('', 'Moves for'), '$1,850')).toEqual({ ok: true, value: 185000 });
  expect(readTyped(money('fixed')('', 'Moves for'), 'Fixed')).toEqual({ ok: true, value: null });
  expect(readTyped(money('fixed')('', 'Moves for'), '18.505').ok).toBe(false);
  const main = countOrNone('lugs only')('', 'Main', 'may be unknown');
  expect(readTyped(main, 'lugs only')).toEqual({ ok: true, value: null });
  expect(readTyped(main, '100')).toEqual({ ok: true, value: 100 });
  expect(writeValue(main, null)).toBe('lugs only');
  expect(writeValue(main, 'unknown')).toBe('not known');
});

test('every field of the sheet is there in the job, and what it shows is read back as the same value', () => {
  let typed = 0;
  for (const ref of refs)
    for (const spec of specsOf(ref)) {
      const value = fieldValue(job, ref, spec.field);
      if (spec.field.startsWith('/tails/')) continue;
      expect([ref.list, ref.id, spec.field, value === undefined]).toEqual([ref.list, ref.id, spec.field, false]);
      if (spec.input.as === 'choice') continue;
      typed++;
      expect(readTyped(spec, writeValue(spec, value))).toEqual({ ok: true, value });
    }
  expect(typed).toBeGreaterThan(100);
});

test('unknown is offered where, and only where, the job takes it', () => {
  for (const ref of refs)
    for (const spec of specsOf(ref)) {
      // kinds of things and loads are free texts in the file, for which 'unknown' is a word like any other; tails are
      // known all three or not at all
      const free =
        spec.input.as === 'text' ||
        spec.field.startsWith('/tails/') ||
        (spec.field === '/kind' && FREE_KINDS.includes(ref.list));
      if (fieldValue(job, ref, spec.field) === undefined || free) continue;
      const result = applyEdit(job, setField(ref, spec.field, 'unknown'));
      expect([ref.id, spec.field, result.ok]).toEqual([ref.id, spec.field, spec.unknown]);
    }
});

test('every word of a choice is one the job takes', () => {
  for (const ref of refs)
    for (const spec of specsOf(ref))
      if (spec.input.as === 'choice')
        for (const { value } of spec.input.of) {
          const result = applyEdit(job, setField(ref, spec.field, value));
          expect([ref.id, spec.field, value, result.ok]).toEqual([ref.id, spec.field, value, true]);
        }
});

test('unknowns are ranked: what could stop the job, what the routes wait for, then the rest of the sheet', () => {
  const small = demoJob('small-house');
  const result = planJob(small);
  const ranked = rankUnknowns(small, result);
  expect(ranked.filter((u) => u.at !== null)).toHaveLength(result.unknown.length);
  const weights = ranked.map(
    (u) => Number(u.stops) * 1000 + Number(u.blocks.includes('routes')) * 100 + u.blocks.length,
  );
  expect(weights).toEqual([...weights].sort((a, b) => b - a));
  for (const u of ranked) expect(valueAt(small, u.pointer.slice(1).split('/'))).toBe('unknown');
  const onSheet = LISTS.flatMap((list) =>
    recordsOf(small, list).flatMap(({ id }) => unknownFields(small, { list, id })),
  );
  const shown = ranked.filter((u) => u.ref !== null && u.ref.list !== '').flatMap((u) => [u.pointer, ...u.also]);
  expect(shown.length).toBeGreaterThanOrEqual(onSheet.length);
});
