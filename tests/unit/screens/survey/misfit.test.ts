import { expect, test } from 'vitest';
import { applyEdit } from '../../../../src/job/applyEdit';
import { blankJob, isRoomToBegin } from '../../../../src/job/blankJob';
import type { Job, Site } from '../../../../src/job/schema';
import { cannotMatter } from '../../../../src/screens/survey/cannotMatter';
import { misfitOf } from '../../../../src/screens/survey/misfit';
import { unknownFields } from '../../../../src/screens/survey/unknowns';
import { surveyWords as say } from '../../../../src/words/en/survey';
import { DEMOS, demoJob } from '../../../support/demos';

const blank = blankJob({ id: 'j', on: '2026-01-01' }); // 240 by 144 in
const thing = (x: number, y: number, width: number, turn = 0) => ({
  ...demoJob('washer').site.obstacles[0]!,
  corner: [x, y] as const,
  size: { width, depth: 27, height: 40 },
  turn,
});

test.each([
  ['in the room', 20, 20, 27, null],
  ['at the wall, a half inch into it', -0.5, 20, 27, null],
  ['half through a wall', -14, 20, 27, say.reachesOut],
  ['wider than the room, through both walls', -30, 60, 300, say.reachesOut],
  ['beyond the walls', 400, 20, 27, say.outsideRoom],
])('a thing %s', (_, x, y, width, says) => {
  expect(misfitOf(blank.site, thing(x, y, width))).toBe(says);
});

test('a thing over a corner that juts into the room reaches out', () => {
  const outline = blank.site.outline[0]!;
  const corners = [
    [0, 0],
    [0, 200],
    [100, 200],
    [100, 100],
    [200, 100],
    [200, 0],
  ] as const;
  const site: Site = { ...blank.site, outline: corners.map((at, i) => ({ ...outline, id: `w${i}`, at })) };
  expect(misfitOf(site, thing(80, 80, 60))).toBe(say.reachesOut);
  expect(misfitOf(site, thing(20, 20, 60))).toBeNull();
});

test.each(DEMOS)('nothing in %s is out of place', (demo) => {
  const { site } = demoJob(demo);
  for (const o of site.obstacles) expect([o.id, misfitOf(site, o)]).toEqual([o.id, null]);
});

const wall = { list: '/site/outline', id: 'west' };
const built = (now: 'poured' | 'furred', after: 'block' | 'finished studs'): Job => ({
  ...blank,
  site: {
    ...blank.site,
    outline: blank.site.outline.map((c) => ({
      ...c,
      face: { now: { build: now, insulated: 'unknown' }, after: { build: after, insulated: 'unknown' } },
    })),
  },
});
test('stud spacing of a wall that is solid today and after is not asked, of any other it is', () => {
  expect(unknownFields(built('poured', 'block'), wall)).not.toContain('/studSpacing');
  expect(unknownFields(built('poured', 'finished studs'), wall)).toContain('/studSpacing');
  expect(unknownFields(built('furred', 'block'), wall)).toContain('/studSpacing');
  expect(unknownFields(blank, wall)).toContain('/studSpacing');
});

test('a partition that only comes later is not asked how it is built today', () => {
  const face = { build: 'unknown', insulated: 'unknown' } as const;
  const partition = {
    id: 'p',
    from: [60, 0],
    to: [60, 144],
    thickness: 4.5,
    height: 96,
    studSpacing: 16,
    front: { now: face, after: face },
    back: { now: face, after: face },
    exists: { now: false, after: true },
  } as const;
  const job: Job = { ...blank, site: { ...blank.site, partitions: [partition] } };
  const of = { list: '/site/partitions', id: 'p' };
  expect(unknownFields(job, of).sort()).toEqual([
    '/back/after/build',
    '/back/after/insulated',
    '/front/after/build',
    '/front/after/insulated',
  ]);
  expect(cannotMatter(job, of, '/front/now/build')).toBe(true);
});

test('the room to begin with is known from one that was drawn', () => {
  expect(isRoomToBegin(blank)).toBe(true);
  const walls = blank.site.outline.map(({ id, at }) => ({ id, at: [at[0] / 2, at[1]] as const }));
  const drawn = applyEdit(blank, { edit: 'draw room', walls });
  expect(drawn.ok && isRoomToBegin(drawn.value)).toBe(false);
});
