import { expect, test } from 'vitest';
import { planOption } from '../../../src/plan/planOption';
import { sceneList } from '../../../src/scene/sceneList';
import { demo, optionOf } from '../drawings/support';

test('the list says what the picture shows: panels, boxes, things, what is in the way; every thing once', () => {
  const job = demo('small-house');
  const option = optionOf(job, 'relocate-a');
  const { plan } = planOption(job, option);
  const list = sceneList(job, option, plan);
  expect(new Set(list.map((l) => l.id)).size).toBe(list.length);
  const of = (id: string) => list.find((l) => l.id === id)?.say;
  expect(of('new-a')).toBe('New panel new-a: on wall east, 5\'-2" from its left end, 3\'-7" over the floor.');
  expect(of('old')).toContain('kept as a can for splices');
  for (const box of plan.boxes.filter((b) => b.on !== 'splice can')) expect(of(box.id)).toContain(box.size);
  for (const thing of job.site.obstacles) expect(of(thing.id)).toContain(thing.kind);
  expect(of('in the way: trunk')).toContain('must be kept clear');
  expect(of('joists')).toContain('as measured');
});

test('without a plan nothing new is said, and joists that were not measured are said not to be drawn', () => {
  const job = demo('washer');
  const site = { ...job.site, framing: job.site.framing.map((f) => ({ ...f, firstJoist: 'unknown' as const })) };
  const list = sceneList({ ...job, site }, optionOf(job, 'in-place'), null);
  expect(list.find((l) => l.id === 'joists')?.say).toContain('not drawn');
  expect(list.some((l) => l.say.startsWith('Splice box'))).toBe(false);
});
