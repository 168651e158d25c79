import { expect, test } from 'vitest';
import type { Plan } from '../../src/facts/result';
import type { Job } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import type { Pt3 } from '../../src/units/types';
import { demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { randomJob } from '../support/randomJob';

/**
 * The panel moved along its wall an inch at a time: where a cable is cut follows, and does not jump, while its way and
 * its box stay what they are. A box that goes to another place altogether is another box.
 */
const STEPS = 12;
const FARTHEST_IN = 2;

const jobs: (readonly [string, Job])[] = [
  ['washer', demoJob('washer')],
  ...Array.from({ length: cases(5, 60) }, (_, i) => [`random room ${900 + i}`, randomJob(900 + i)] as const),
];
const apart = (a: Pt3, b: Pt3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const cutsOf = (plan: Plan) =>
  new Map(
    plan.runs.flatMap((r) => {
      const box = plan.boxes.find((b) => b.homeRuns.includes(r.homeRun));
      return r.cutIn && box
        ? [[r.homeRun, { way: r.way, cut: r.cutIn, box: box.at, with: `${box.size} ${box.homeRuns}` }] as const]
        : [];
    }),
  );

let followed = 0;
test.each(jobs)('%s', (_name, job) => {
  const at = job.options.findIndex((o) => o.kind === 'relocate');
  const option = job.options[at]!;
  let before: ReturnType<typeof cutsOf> | null = null;
  for (let step = 0; step < STEPS; step++) {
    const on = { ...option.enclosure.on, left: option.enclosure.on.left + step };
    const moved = { ...option, enclosure: { ...option.enclosure, on } };
    const now = cutsOf(planOption({ ...job, options: job.options.map((o, i) => (i === at ? moved : o)) }, moved).plan);
    for (const [id, cut] of now) {
      const was = before?.get(id);
      if (!was || was.way !== cut.way || was.with !== cut.with || apart(was.box, cut.box) > FARTHEST_IN) continue;
      followed++;
      expect(apart(was.cut, cut.cut), `${id} at ${on.left}`).toBeLessThanOrEqual(FARTHEST_IN);
    }
    before = now;
  }
});
test('and many cuts were followed', () => {
  expect(followed).toBeGreaterThan(300);
});
