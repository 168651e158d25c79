import { expect, test } from 'vitest';
import { holdInPlan, holdOnWall } from '../../../src/drawings/hold';
import { unroll } from '../../../src/drawings/unroll';
import { faceOf, wallFaces } from '../../../src/job/site';
import { placesOn } from '../../../src/plan/map/clearPlaces';
import { demo, optionOf } from './support';

/*
 * Hand figures, washer demo, panel 14 1/2 wide 36 above the floor on the north wall of the laundry (180 in): the washer
 * stands at 31…58 with its back 1 in off the wall, so the panel is clear from its edge at 58 on, up to the new wall's
 * face at 177 3/4: 177.75 − 14.5 = 163.25. 30 in of working space fit between, sliding (110.26(A)(2)).
 */
const job = demo('washer');
const option = optionOf(job, 'relocate-a');
const faces = wallFaces(job.site, 'after');
const north = faceOf(faces, { wall: 'north-laundry', face: 'front' })!;
const words = { wallEnd: 'end', against: ({ why }: { why: string }) => `against ${why}` };
const holding = (grip: number) => ({
  enclosure: option.enclosure,
  grip,
  step: 1,
  places: (f: (typeof faces)[number]) => placesOn(job, option, f),
  words,
});

test('clear between the washer and the new wall, barred before it, with what bars it', () => {
  const { clear, barred } = placesOn(job, option, north);
  expect(clear).toEqual([[58, 163.25]]);
  expect(barred.map((b) => [b.from, b.to, b.why])).toEqual([
    [0, 58, 'washer'],
    [163.25, 165.5, 'wall or ceiling'],
  ]);
});

test('a window at the panel’s height bars its wall; one above it does not', () => {
  const room = faceOf(faces, { wall: 'north-room', face: 'front' })!;
  // the window: 96…132 along, from 62 in up; the panel reaches to 72
  expect(placesOn(job, option, room).barred.map((b) => b.why)).toContain('window');
  const low = { ...option, enclosure: { ...option.enclosure, on: { ...option.enclosure.on, bottom: 20 } } };
  expect(placesOn(job, low, room).barred.map((b) => b.why)).not.toContain('window');
});

test('held near the washer the panel stops against it; farther along it goes by whole inches', () => {
  const at = (x: number) => holdInPlan(faces, holding(0), [x, 160])!;
  expect(at(59.6)).toMatchObject({ on: { wall: 'north-laundry', left: 58 }, stop: 'against washer' });
  expect(at(100.4)).toMatchObject({ on: { left: 100 }, stop: null });
  expect(at(40.2)).toMatchObject({ on: { left: 40 }, stop: 'against washer' });
  // taken hold of 5 in from its left edge
  expect(holdInPlan(faces, holding(5), [105.4, 160])!.on.left).toBe(100);
});

test('the nearest wall takes the panel over, a partition from the side that is pointed at', () => {
  expect(holdInPlan(faces, holding(0), [375, 80])!.on).toMatchObject({ wall: 'east', face: 'front' });
  expect(holdInPlan(faces, holding(0), [186, 80])!.on).toMatchObject({ wall: 'new-wall', face: 'back' });
  expect(holdInPlan(faces, holding(0), [174, 80])!.on).toMatchObject({ wall: 'new-wall', face: 'front' });
});

test('in the wall drawing the place along the walls is the wall and the offset', () => {
  const walls = unroll(job);
  // north-laundry begins at 552 (wallDrawing.test.ts), the new wall's room side at 1368
  expect(holdOnWall(walls, holding(0), 552 + 100, 40)!.on).toMatchObject({
    wall: 'north-laundry',
    left: 100,
    bottom: 40,
  });
  expect(holdOnWall(walls, holding(0), 1368 + 100, 36)!.on).toMatchObject({
    wall: 'new-wall',
    face: 'back',
    left: 100,
  });
  expect(holdOnWall(walls, holding(0), 552 + 100, -5)!.on.bottom).toBe(0);
});
