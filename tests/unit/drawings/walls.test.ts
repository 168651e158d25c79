import { expect, test } from 'vitest';
import { drawJoists } from '../../../src/drawings/joists';
import { drawOpenings } from '../../../src/drawings/openings';
import { drawPartitions, wallQuads } from '../../../src/drawings/walls';
import type { Pt } from '../../../src/units/types';
import { demo } from './support';

const away = (p: Pt, a: Pt, b: Pt): number =>
  ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / Math.hypot(b[0] - a[0], b[1] - a[1]);

test('every outline wall is as thick as measured along its whole length, at any angle, and 8 in where it was not', () => {
  for (const name of ['washer', 'l-shaped', 'small-house'] as const) {
    const { site } = demo(name);
    wallQuads(site).forEach(({ quad, hatch }, i) => {
      const [from, to, outerTo, outerFrom] = quad as [Pt, Pt, Pt, Pt];
      const { thickness } = site.outline[i]!;
      const thick = thickness === 'unknown' ? 8 : thickness;
      expect(away(outerFrom, from, to)).toBeCloseTo(thick, 9); // left of from→to: outside
      expect(away(outerTo, from, to)).toBeCloseTo(thick, 9);
      expect(hatch === 'not measured').toBe(thickness === 'unknown' || site.outline[i]!.face.now.build === 'unknown');
    });
  }
});

test('a corner of 45 degrees is mitred: 8 in walls meet 8 × tan 22.5° beyond the corner', () => {
  const quads = wallQuads(demo('l-shaped').site);
  const slant = quads.find((q) => q.id === 'slant')!;
  const [from, , , outerFrom] = slant.quad as [Pt, Pt, Pt, Pt];
  const along = 8 * Math.tan((22.5 * Math.PI) / 180);
  expect(Math.hypot(outerFrom[0] - from[0], outerFrom[1] - from[1])).toBeCloseTo(Math.hypot(8, along), 9);
});

test('a wall that comes with the finishing is dashed and not hatched; one not measured is dotted', () => {
  const byId = new Map(drawPartitions(demo('l-shaped').site).map((l) => [l.id, l]));
  expect(byId.get('beam-wall')).toMatchObject({ stroke: { dash: 'future' }, fill: 'paper' });
  expect(byId.get('family-wall')).toMatchObject({ stroke: { dash: null }, fill: 'not measured' });
  const gone = demo('washer').site;
  const [wall] = drawPartitions({
    ...gone,
    partitions: gone.partitions.map((p) => ({ ...p, exists: { now: true, after: false } })),
  });
  expect(wall).toMatchObject({ stroke: { dash: 'away' } });
});

test('a door leaf stands square to its wall from the hinge, and its arc ends at the other jamb', () => {
  // washer: outside door in the east wall (x = 384, from y = 168 down), left 100, 36 wide, hinge right, swings into the room
  const door = drawOpenings(demo('washer').site).filter((i) => i.id === 'outside-door');
  const arc = door.find((i) => i.item === 'arc')!;
  expect(arc).toMatchObject({ center: [384, 168 - 136], radius: 36 });
  const end = (d: number): Pt => [384 + 36 * Math.cos((d * Math.PI) / 180), 32 + 36 * Math.sin((d * Math.PI) / 180)];
  expect(arc.item === 'arc' && arc.to - arc.from).toBe(90);
  const ends = arc.item === 'arc' ? [end(arc.from), end(arc.to)] : [];
  const near = (p: Pt) => ends.some((e) => Math.hypot(e[0] - p[0], e[1] - p[1]) < 1e-9);
  expect(near([384, 68])).toBe(true); // shut
  expect(near([348, 32])).toBe(true); // open, in the room
});

test('a door whose hinge nobody noted has no leaf', () => {
  const { site } = demo('washer');
  const drawn = drawOpenings({ ...site, openings: site.openings.map((o) => ({ ...o, hinge: 'unknown' as const })) });
  expect(drawn.some((i) => i.item === 'arc')).toBe(false);
});

test('joists: first at 12, every 16 in, from wall to wall', () => {
  // washer: joists along y counted in x from the origin; 12, 28 … 380 within 0…384: 24 of them, 168 long
  const joists = drawJoists(demo('washer').site);
  expect(joists).toHaveLength(24);
  expect(new Set(joists.map((j) => j.points[0]![0]))).toEqual(
    new Set(Array.from({ length: 24 }, (_, k) => 12 + 16 * k)),
  );
  for (const { points } of joists) expect(Math.abs(points[1]![1] - points[0]![1])).toBeCloseTo(168, 9);
});

test('a framing region of its own replaces what covers the whole room there', () => {
  const { site } = demo('washer');
  const [whole] = site.framing;
  const outline: Pt[] = [
    [0, 0],
    [384, 0],
    [384, 84],
    [0, 84],
  ];
  const joists = drawJoists({
    ...site,
    framing: [whole!, { ...whole!, id: 'half', direction: 0, firstJoist: 8, outline }],
  });
  for (const { id, points } of joists)
    for (const [, y] of points) expect(id === 'half' ? y <= 84 + 1e-6 : y >= 84 - 1e-6).toBe(true);
});

test('joists nobody measured are not drawn', () => {
  const { site } = demo('washer');
  for (const key of ['direction', 'spacing', 'firstJoist'] as const)
    expect(drawJoists({ ...site, framing: site.framing.map((f) => ({ ...f, [key]: 'unknown' as const })) })).toEqual(
      [],
    );
});
