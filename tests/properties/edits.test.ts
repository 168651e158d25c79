import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdit } from '../../src/job/applyEdit';
import { type Edit, editName } from '../../src/job/edit';
import { type History, push, redo, startHistory, undo } from '../../src/job/history';
import { checkJob, openJob } from '../../src/job/parse';
import { saveJob } from '../../src/job/save';
import type { Job } from '../../src/job/schema';
import { QUESTION_KEYS } from '../../src/standards/questions';
import { demoJob } from '../unit/job/demo';

/** One generator for every kind of edit: a kind without one does not compile. */
type Generators = { readonly [K in Edit['edit']]: (job: Job) => fc.Arbitrary<Extract<Edit, { edit: K }>> };

const idOf = (list: readonly { readonly id: string }[]) => fc.constantFrom(...list.map((r) => r.id), 'nobody');
const inches = (min: number, max: number) => fc.integer({ min: min * 64, max: max * 64 }).map((n) => n / 64);
const shift = fc.tuple(inches(-30, 30), inches(-30, 30));
const newId = fc.integer({ min: 0, max: 5 }).map((n) => `new-${n}`);
const title = fc.string({ maxLength: 12 });
/** Values of every sort, most of them wrong where they land. */
const anything = fc.oneof(
  inches(-20, 400),
  fc.constant('unknown'),
  fc.constant(null),
  fc.boolean(),
  fc.integer(),
  fc.double(),
  title,
  fc.jsonValue({ maxDepth: 2 }),
);

const pointers = (value: unknown, at = ''): string[] =>
  typeof value !== 'object' || value === null
    ? [at]
    : [at, ...Object.entries(value).flatMap(([key, v]) => pointers(v, `${at}/${key}`))];
/** Every list of records in the job, and one that is none. */
const lists = (job: Job): string[] => [
  '/circuits',
  '/homeRuns',
  '/cableGroups',
  '/enclosures',
  '/options',
  '/photos',
  '/answers',
  '/nowhere',
  '/code/amendments',
  ...Object.keys(job.site).map((key) => `/site/${key}`),
  ...job.options.map((_, i) => `/options/${i}/pins`),
];
const recordsAt = (job: Job, list: string): readonly { readonly id: string }[] => {
  const found = list
    .slice(1)
    .split('/')
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], job);
  return Array.isArray(found) ? (found as { readonly id: string }[]) : [];
};
/** Every field of every record that has an id, down to single values. */
const recordFields = (job: Job) =>
  lists(job).flatMap((list) =>
    recordsAt(job, list).flatMap((r) => pointers(r).map((field) => ({ list, id: r.id, field }))),
  );
const walls = (job: Job) => [...job.site.outline, ...job.site.partitions];
const on = (job: Job) =>
  fc.record({
    wall: idOf(walls(job)),
    face: fc.constantFrom('front', 'back'),
    left: inches(-5, 150),
    bottom: inches(0, 60),
  });

const GENERATORS: Generators = {
  'set value': (job) => {
    const all = pointers(job);
    const numbers = all.filter((p) =>
      /\/(left|bottom|at\/[01]|corner\/[01]|\d+\/[012]|width|height|amps|pivot)$/.test(p),
    );
    return fc.record({
      edit: fc.constant('set value'),
      path: fc.oneof(fc.constantFrom(...numbers), fc.constantFrom(...all), fc.constant('/code/amendments/spliceCan')),
      value: anything,
    });
  },
  'set values': (job) => {
    const value = GENERATORS['set value'](job).map(({ path, value }) => ({ path, value }));
    // mostly what is there already, so that some of these lists hold together
    const same = fc.constantFrom(...['/circuits', '/homeRuns', '/title']).map((path) => ({
      path,
      value: path === '/title' ? 'another' : recordsAt(job, path).length > 0 ? recordsAt(job, path) : '',
    }));
    return fc.record({
      edit: fc.constant('set values'),
      name: title,
      values: fc.array(fc.oneof({ arbitrary: same, weight: 3 }, { arbitrary: value, weight: 1 }), { maxLength: 3 }),
    });
  },
  'set field': (job) =>
    fc.constantFrom(...recordFields(job)).chain(({ list, id, field }) =>
      fc.record({
        edit: fc.constant('set field'),
        list: fc.constant(list),
        id: fc.oneof(fc.constant(id), fc.constant('nobody')),
        field: fc.constant(field),
        value: anything,
      }),
    ),
  'rename record': (job) =>
    fc.constantFrom(...lists(job)).chain((list) =>
      fc.record({
        edit: fc.constant('rename record'),
        list: fc.constant(list),
        id: idOf(recordsAt(job, list)),
        to: fc.oneof(newId, idOf(recordsAt(job, list))),
      }),
    ),
  'remove together': (job) =>
    fc
      .constantFrom(...lists(job))
      .chain((list) =>
        fc.record({ edit: fc.constant('remove together'), list: fc.constant(list), id: idOf(recordsAt(job, list)) }),
      ),
  'draw room': (job) =>
    fc
      .tuple(shift, inches(60, 500), inches(60, 500), fc.boolean())
      .map(([[x, y], width, depth, around]): Extract<Edit, { edit: 'draw room' }> => {
        const corners = [
          [x, y] as const,
          [x, y + depth] as const,
          [x + width, y + depth] as const,
          [x + width, y] as const,
        ];
        const ids = job.site.outline.map((c) => c.id);
        const walls = corners.map((at, i) => ({ id: ids[i] ?? `wall-${i}`, at }));
        return { edit: 'draw room', walls: around ? walls : walls.reverse() };
      }),
  'wall length': (job) =>
    fc.record({ edit: fc.constant('wall length'), wall: idOf(walls(job)), length: inches(-10, 400) }),
  'split wall': (job) =>
    fc.record({ edit: fc.constant('split wall'), wall: idOf(walls(job)), at: inches(-10, 200), id: newId }),
  'join walls': (job) => fc.record({ edit: fc.constant('join walls'), wall: idOf(job.site.outline) }),
  'move partition': (job) =>
    fc
      .tuple(idOf(job.site.partitions), shift, shift)
      .map(([wall, from, to]): Extract<Edit, { edit: 'move partition' }> => {
        const p = job.site.partitions.find((w) => w.id === wall);
        const by = (at: readonly [number, number] | undefined, [dx, dy]: readonly [number, number]) =>
          [(at?.[0] ?? 0) + dx, (at?.[1] ?? 0) + dy] as const;
        return { edit: 'move partition', wall, from: by(p?.from, from), to: by(p?.to, to) };
      }),
  'add record': (job) =>
    fc.constantFrom(...lists(job)).chain((list) => {
      const known = recordsAt(job, list);
      const like = known.length > 0 ? fc.constantFrom(...known) : anything;
      const record = fc.oneof(
        fc.tuple(like, newId).map(([r, id]) => (typeof r === 'object' && r !== null ? { ...r, id } : r)),
        anything,
      );
      return fc.record({
        edit: fc.constant('add record'),
        list: fc.constant(list),
        record,
        before: fc.option(idOf(known)),
      });
    }),
  'remove record': (job) =>
    fc
      .constantFrom(...lists(job))
      .chain((list) =>
        fc.record({ edit: fc.constant('remove record'), list: fc.constant(list), id: idOf(recordsAt(job, list)) }),
      ),
  'move panel': (job) => fc.record({ edit: fc.constant('move panel'), option: idOf(job.options), on: on(job) }),
  'move corner': (job) =>
    fc.tuple(idOf(job.site.outline), shift).map(([wall, [dx, dy]]) => {
      const at = job.site.outline.find((c) => c.id === wall)?.at ?? [0, 0];
      return { edit: 'move corner', wall, to: [at[0] + dx, at[1] + dy] };
    }),
  'move wall': (job) => fc.record({ edit: fc.constant('move wall'), wall: idOf(walls(job)), by: shift }),
  'add option': (job) => {
    const options = job.options.length > 0 ? job.options : [demoJob('small-house').options[0]!];
    return fc
      .tuple(fc.constantFrom(...options), newId, title)
      .map(([option, id, t]) => ({ edit: 'add option', option: { ...option, id, title: t } }));
  },
  'copy option': (job) =>
    fc.record({ edit: fc.constant('copy option'), option: idOf(job.options), id: newId, panel: newId, title }),
  'answer question': () =>
    fc.record({
      edit: fc.constant('answer question'),
      question: fc.constantFrom(...QUESTION_KEYS, 'nothing'),
      answer: fc.oneof(
        fc.constantFrom('yes', 'no', 'ask', 'none', 'as NEC', 'strict', 'over 24 in only', 2017, 2020, 2023, 2026),
        inches(-1, 90),
        fc.constant(null),
      ),
      by: fc.constantFrom('An inspector', ' '),
      on: fc.constantFrom('2026-03-02', 'someday'),
      note: title,
    }),
  rename: (job) => fc.record({ edit: fc.constant('rename'), option: fc.option(idOf(job.options)), title }),
};

const KINDS = Object.keys(GENERATORS) as Edit['edit'][];
const anyEdit = (job: Job): fc.Arbitrary<Edit> => fc.oneof(...KINDS.map((kind) => GENERATORS[kind](job)));

const START = { washer: demoJob('washer'), 'l-shaped': demoJob('l-shaped'), 'small-house': demoJob('small-house') };
const applied = new Map<Edit['edit'], number>();
const refused = new Map<Edit['edit'], number>();
const count = (in_: Map<Edit['edit'], number>, kind: Edit['edit']) => in_.set(kind, (in_.get(kind) ?? 0) + 1);

test('undo restores the exact job, redo the exact edit of it, and a refused edit loses nothing', () => {
  fc.assert(
    fc.property(fc.constantFrom(...Object.values(START)), fc.gen(), (start, gen) => {
      const text = saveJob(start);
      const seen: Job[] = [start];
      let history: History = startHistory(start);
      for (let i = 0; i < 6; i++) {
        const edit = gen(anyEdit, history.now);
        const result = applyEdit(history.now, edit);
        count(result.ok ? applied : refused, edit.edit);
        if (!result.ok) {
          expect(result.error.error.type).not.toBe('');
          continue;
        }
        const next = push(history, editName(edit), result.value);
        if (next !== history) seen.push(next.now);
        history = next;
      }
      const last = history.now;
      for (const job of [...seen].reverse().slice(1)) {
        history = undo(history);
        expect(history.now).toBe(job);
      }
      expect(undo(history)).toBe(history);
      expect(saveJob(history.now)).toBe(text); // not only the same object: nothing changed inside it
      expect(history.now).toEqual(start);
      for (const job of seen.slice(1)) {
        history = redo(history);
        expect(history.now).toBe(job);
      }
      expect(history.now).toBe(last);
      expect(redo(history)).toBe(history);
    }),
    { numRuns: 150, seed: 20260302 },
  );
});

test('the random edits above did apply, of every kind, and were refused too', () => {
  for (const kind of KINDS) expect([kind, (applied.get(kind) ?? 0) > 0]).toEqual([kind, true]);
  expect([...refused.values()].reduce((a, b) => a + b, 0)).toBeGreaterThan(50);
});

test('an applied edit gives a job that opens from its own file unchanged, and keeps all it did not touch', () => {
  fc.assert(
    fc.property(fc.constantFrom(...Object.values(START)), fc.gen(), (start, gen) => {
      const edit = gen(anyEdit, start);
      const result = applyEdit(start, edit);
      if (!result.ok) return;
      const opened = openJob(saveJob(result.value));
      expect(opened).toEqual({ ok: true, value: { job: result.value, repairs: [] } });
      expect(checkJob(result.value).ok).toBe(true);
      if (edit.edit === 'move panel') expect(result.value.site).toBe(start.site);
      if (edit.edit === 'move wall' || edit.edit === 'move corner') expect(result.value.circuits).toBe(start.circuits);
    }),
    { numRuns: 150, seed: 20260420 },
  );
});

test('a wall moved there and back is where it was', () => {
  fc.assert(
    fc.property(fc.constantFrom(...Object.values(START)), fc.gen(), (start, gen) => {
      const edit = gen(GENERATORS['move wall'], start);
      const there = applyEdit(start, edit);
      if (!there.ok) return;
      const back = applyEdit(there.value, { ...edit, by: [-edit.by[0], -edit.by[1]] });
      expect(back.ok && back.value.site.outline).toEqual(start.site.outline);
    }),
    { numRuns: 60, seed: 20260511 },
  );
});
