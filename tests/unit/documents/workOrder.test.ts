import { describe, expect, test } from 'vitest';
import { tasksWhen } from '../../../src/documents/schedule';
import { compareWork, WORK_ORDER } from '../../../src/documents/workOrder';
import { planOption } from '../../../src/plan/planOption';
import { bookTasks } from '../../../src/pricing/bookHours';
import { demoJob } from '../job/demo';

// The order of the work of a panel change. Common practice, no source.
describe('the order of work', () => {
  test('every task of the default price book has its place, once', () => {
    expect([...WORK_ORDER].sort()).toEqual(bookTasks.map((t) => t.id).sort());
  });
  test('a task the list does not know comes last, by name', () => {
    expect(['zinc', 'directory', 'argon', 'shutdown'].sort(compareWork)).toEqual([
      'shutdown',
      'directory',
      'argon',
      'zinc',
    ]);
  });
  test.each([
    ['shutdown', 'strip cable', 'strip old panel', 'remove old panel', 'mount panel', 'reuse', 'splice', 'lug'],
    ['lug', 'feeder breaker', 'land 2p', 'test circuit', 'test'],
    ['load in', 'trace', 'pre-test', 'hang box', 'hole', 'running board', 'pull ft'],
    ['directory', 'test', 'inspection', 'splice can', 'patch'],
  ])('%s before %s and so on', (...tasks) => {
    expect([...tasks].reverse().sort(compareWork)).toEqual(tasks);
  });
  test('a plan’s outage begins with shutting down; nothing is landed before it is spliced', () => {
    const job = demoJob('washer');
    const { plan } = planOption(job, job.options[0]!);
    const ids = tasksWhen(plan, 'outage').map(({ task }) => task.id);
    expect(ids[0]).toBe('shutdown');
    expect(ids.indexOf('splice')).toBeGreaterThan(ids.indexOf('strip old panel'));
    expect(ids.indexOf('splice')).toBeLessThan(ids.indexOf('land 1p'));
  });
});
