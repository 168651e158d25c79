import { expect, test } from 'vitest';
import { boxPlace } from '../../../src/drawings/boxPlace';
import { coursesOf, solidCables } from '../../../src/drawings/solidCables';
import { solidHouse } from '../../../src/drawings/solidHouse';
import { solidJoists } from '../../../src/drawings/solidJoists';
import { canPlace, solidOldPanels } from '../../../src/drawings/solidPanels';
import { pointIn } from '../../../src/drawings/solidShapes';
import { intrusions } from '../../../src/drawings/solidSpaces';
import type { Place, Solid } from '../../../src/drawings/solids';
import { placeOf } from '../../../src/drawings/solidThings';
import { CUT_LOW_IN, solidPartitions, solidWalls } from '../../../src/drawings/solidWalls';
import type { Box, Leg } from '../../../src/facts/result';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { boxSize } from '../../../src/standards/boxSize';
import { demo, optionOf } from './support';

/** The demo jobs' own measures, worked by hand; see demo/FACTS.md for how they are measured. */
const SAME_IN = 1 / 64;

/** Lowest and highest x, y, z of a place. */
const extent = (place: Place): number[][] => {
  const corners = [0, 1].flatMap((x) => [0, 1].flatMap((y) => [0, 1].map((z) => pointIn(place, x, y, z))));
  return [0, 1, 2].map((k) => [Math.min(...corners.map((c) => c[k]!)), Math.max(...corners.map((c) => c[k]!))]);
};
const expectExtent = (place: Place | null, want: number[][]): void => {
  expect(place).not.toBeNull();
  extent(place!).forEach((pair, axis) => {
    pair.forEach((value, side) => {
      expect(Math.abs(value - want[axis]![side]!)).toBeLessThan(SAME_IN);
    });
  });
};
const pointsOf = (solid: Solid) => solid.faces.flatMap((f) => f.points);

test('washer: the old cans and the new one on the north wall, y = 168, by their left ends, bottoms and sizes', () => {
  const job = demo('washer');
  expectExtent(canPlace(job, job.enclosures.find((e) => e.id === 'old-1')!), [
    [30, 44.5],
    [164.125, 168],
    [48, 72],
  ]);
  expectExtent(canPlace(job, job.enclosures.find((e) => e.id === 'old-2')!), [
    [48, 62.5],
    [164.125, 168],
    [52, 70],
  ]);
  expectExtent(canPlace(job, optionOf(job, 'relocate-a').enclosure), [
    [76, 90.5],
    [164.125, 168],
    [36, 72],
  ]);
});

test('washer: the flush panel in the new wall: its front in the room face at 180 + 4-1/2 / 2, its back 3-7/8 behind', () => {
  const job = demo('washer');
  expectExtent(canPlace(job, optionOf(job, 'relocate-b').enclosure), [
    [178.375, 182.25],
    [120, 134.5],
    [36, 72],
  ]);
});

test('l-shaped: on the slanted wall a can keeps its size and stands square to the wall', () => {
  const job = demo('l-shaped');
  const place = canPlace(job, optionOf(job, 'relocate-b').enclosure)!;
  // the wall runs from (384, 204) to (432, 156), 45 degrees; the can starts 26 along it
  const along = 26 * Math.SQRT1_2;
  expect(place.corner[0]).toBeCloseTo(384 + along, 9);
  expect(place.corner[1]).toBeCloseTo(204 - along, 9);
  const back = pointIn(place, 0, 1, 0);
  expect(back[0] - place.corner[0]).toBeCloseTo(3.875 * Math.SQRT1_2, 9);
  expect(back[1] - place.corner[1]).toBeCloseTo(3.875 * Math.SQRT1_2, 9);
});

const box = (at: Box['at'], on: Box['on'], size: string): Box => ({
  id: 'b',
  at,
  on,
  size,
  material: 'metal',
  volumeIn3: 1,
  fillIn3: 0,
  homeRuns: [],
  conductorsSpliced: 0,
});

test('trade sizes of boxes are read; what is none is told', () => {
  expect(boxSize('4-11/16 x 2-1/8')).toEqual({ width: 4.6875, height: 4.6875, depth: 2.125 });
  expect(boxSize('4 x 1-1/2')).toEqual({ width: 4, height: 4, depth: 1.5 });
  expect(boxSize('12x12x6')).toEqual({ width: 12, height: 12, depth: 6 });
  expect(boxSize('two gang')).toBeNull();
});

test('a box on a wall has its back there, one at a joist its middle', () => {
  const job = demo('washer');
  expectExtent(boxPlace(job, box([29.75, 168, 50], 'wall', '4 x 2-1/8')), [
    [27.75, 31.75],
    [165.875, 168],
    [48, 52],
  ]);
  expectExtent(boxPlace(job, box([145.875, 127.25, 94.625], 'joist', '4-11/16 x 2-1/8')), [
    [144.8125, 146.9375],
    [124.90625, 129.59375],
    [92.28125, 96.96875],
  ]);
});

const leg = (from: Leg['from'], to: Leg['to'], cable: Leg['cable']): Leg => ({
  from,
  to,
  cable,
  row: null,
  by: 'sleeve',
});

test('legs become courses: a new one where old cable ends and where a leg does not go on', () => {
  const courses = coursesOf([
    leg([0, 0, 0], [10, 0, 0], 'old'),
    leg([10, 0, 0], [10, 5, 0], 'new'),
    leg([10, 5, 0], [10, 5, 9], 'new'),
    leg([0, 0, 20], [5, 0, 20], 'new'),
  ]);
  expect(courses).toEqual([
    {
      cable: 'old',
      course: [
        [0, 0, 0],
        [10, 0, 0],
      ],
    },
    {
      cable: 'new',
      course: [
        [10, 0, 0],
        [10, 5, 0],
        [10, 5, 9],
      ],
    },
    {
      cable: 'new',
      course: [
        [0, 0, 20],
        [5, 0, 20],
      ],
    },
  ]);
});

test('washer, same wall: h-05 is drawn back to its last staple at (150, 160) and ends in the new can at z = 72', () => {
  const job = demo('washer');
  const option = optionOf(job, 'relocate-a');
  const { plan } = planOption(job, option);
  const own = solidCables(job, plan).filter((c) => c.id === 'h-05');
  // 22-5/8 up, 8 off the wall, 112-3/4 east: the pivot of 143-3/8
  const away = own.find((c) => c.laid === 'away')!;
  expect(away.course[0]).toEqual([37.25, 168, 72]);
  away.course.at(-1)!.forEach((n, k) => {
    expect(Math.abs(n - [150, 160, 94.625][k]!)).toBeLessThan(SAME_IN);
  });
  const back = own.find((c) => c.laid === 'drawn back')!;
  expect(back.course[0]).toEqual([150, 160, 94.625]);
  const end = back.course.at(-1)!;
  expect(end[1]).toBe(168);
  expect(end[2]).toBe(72);
  expect(end[0]).toBeGreaterThan(76);
  expect(end[0]).toBeLessThan(90.5);
});

test('every new course begins and ends where the legs of its run do, in every option of every demo', () => {
  let ends = 0;
  for (const name of ['washer', 'small-house', 'l-shaped'] as const) {
    const job = demo(name);
    for (const option of job.options) {
      const { plan } = planOption(job, option);
      const cables = solidHouse(job, option, plan).cables;
      for (const run of plan.runs.filter((r) => r.legs.length > 0)) {
        const laid = cables.filter((c) => c.id === run.homeRun && (c.laid === 'new' || c.laid === 'drawn back'));
        expect(laid[0]!.course[0]).toEqual(run.legs[0]!.from);
        expect(laid.at(-1)!.course.at(-1)).toEqual(run.legs.at(-1)!.to);
        ends += 2;
      }
    }
  }
  expect(ends).toBeGreaterThan(100);
});

test('washer: joists every 16 in from x = 12 to 380, and none where they were not measured', () => {
  const { site } = demo('washer');
  const lines = solidJoists(site)[0]!.edges.filter((e) => e.stroke.tone === 'hair');
  expect(lines).toHaveLength(24);
  expect(Math.min(...lines.map((e) => e.from[0]))).toBe(12);
  expect(Math.max(...lines.map((e) => e.from[0]))).toBe(380);
  expect(lines.every((e) => e.from[2] === 90)).toBe(true);
  const unmeasured = { ...site, framing: site.framing.map((f) => ({ ...f, spacing: 'unknown' as const })) };
  expect(solidJoists(unmeasured)).toEqual([]);
});

test('joists have the section of their kind', () => {
  const { site } = demo('washer');
  const facesOf = (kind: Job['site']['framing'][number]['kind']) =>
    solidJoists({ ...site, framing: site.framing.map((f) => ({ ...f, kind })) })[0]!.faces.length;
  expect(facesOf('I-joist')).toBe(facesOf('sawn') * 3);
  expect(facesOf('open-web truss')).toBe(facesOf('sawn') * 2);
  expect(facesOf('LVL')).toBe(facesOf('sawn'));
});

test('walls reach the underside of the joists and are cut round their openings', () => {
  const walls = solidWalls(demo('washer').site);
  const north = walls.find((w) => w.id === 'north-room')!;
  expect(Math.max(...pointsOf(north).map((p) => p[2]))).toBe(90);
  // the window: 96 from the left end at x = 180, 36 wide, from 62 to 82
  const inWindow = north.faces.filter(
    (f) =>
      f.surface === 'wall' &&
      f.points.every((p) => p[1] === 168) &&
      Math.min(...f.points.map((p) => p[0])) < 290 &&
      Math.max(...f.points.map((p) => p[0])) > 280 &&
      Math.min(...f.points.map((p) => p[2])) < 75 &&
      Math.max(...f.points.map((p) => p[2])) > 70,
  );
  expect(inWindow).toEqual([]);
});

test('a partition is cut low but for the piece the new panel hangs in', () => {
  const job = demo('washer');
  const tops = (id: string) => {
    const [wall] = solidPartitions(job.site, optionOf(job, id).enclosure);
    return pointsOf(wall!).filter((p) => p[2] > CUT_LOW_IN);
  };
  expect(tops('relocate-a')).toEqual([]);
  const high = tops('relocate-b');
  expect(Math.max(...high.map((p) => p[2]))).toBe(90);
  // 9 in of wall left standing on both sides of the can, y = 120 to 134-1/2
  expect(Math.min(...high.map((p) => p[1]))).toBeCloseTo(111, 9);
  expect(Math.max(...high.map((p) => p[1]))).toBeCloseTo(143.5, 9);
});

test('old cans: taken out they are seen through, kept they are solid', () => {
  const job = demo('small-house');
  const option = optionOf(job, 'relocate-a');
  const { plan } = planOption(job, option);
  const [kept] = solidOldPanels(job, option, plan);
  expect(kept?.body?.faint).toBe(false);
  const [out] = solidOldPanels(job, { ...option, replaces: [{ enclosure: 'old', becomes: 'removed' }] }, plan);
  expect(out?.body?.faint).toBe(true);
  expect(out?.body?.outline.dash).toBe('away');
});

test('small house: the duct at 74 reaches into the headroom of 78 over the working space, where their plans meet', () => {
  const job = demo('small-house');
  const option = optionOf(job, 'relocate-a');
  const [duct, ...more] = intrusions(job, option, planOption(job, option).plan).filter((i) => i.thing === 'trunk');
  expect(more).toEqual([]);
  const xs = duct!.outline.map((p) => p[0]);
  const ys = duct!.outline.map((p) => p[1]);
  // duct x 44 to 194, y 60 to 78; space 36 deep from 216 - 3-7/8, 30 wide
  expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([176.125, 194, 60, 78]);
  expect([duct!.fromZ, duct!.toZ]).toEqual([74, 78]);
});

test('the back of a thing is the end of its depth nearer to a wall', () => {
  const { site } = demo('l-shaped');
  const shelf = site.obstacles.find((o) => o.id === 'shelf')!;
  const outline = [
    [150, 0],
    [210, 0],
    [210, 16],
    [150, 16],
  ] as const;
  // it stands against y = 0, so it is seen from the north: its right is west
  expect(placeOf(site, shelf, outline)).toMatchObject({ corner: [210, 16, 0], right: [-1, 0] });
});
