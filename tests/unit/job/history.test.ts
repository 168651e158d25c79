import { expect, test } from 'vitest';
import { push, redo, startHistory, undo } from '../../../src/job/history';
import { demoJob } from './demo';

const job = demoJob('small-house');
const other = { ...job, title: 'b' };
const third = { ...job, title: 'c' };

test('undo and redo walk the same jobs, by name', () => {
  const two = push(push(startHistory(job), 'first', other), 'second', third);
  expect(two.past.map((s) => s.name)).toEqual(['first', 'second']);
  const one = undo(two);
  expect(one.now).toBe(other);
  expect(one.future.map((s) => s.name)).toEqual(['second']);
  const none = undo(one);
  expect(none.now).toBe(job);
  expect(undo(none)).toBe(none);
  expect(redo(redo(none)).now).toBe(third);
  expect(redo(two)).toBe(two);
});

test('a new edit drops what was undone; one that changed nothing does not', () => {
  const undone = undo(push(startHistory(job), 'first', other));
  expect(push(undone, 'again', third).future).toEqual([]);
  expect(push(undone, 'nothing', job)).toBe(undone);
});
