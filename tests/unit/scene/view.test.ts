import { readFileSync } from 'node:fs';
import { Vector4 } from 'three';
import { expect, test } from 'vitest';
import { extentOf } from '../../../src/scene/pick';
import { rangeOf, writeSection } from '../../../src/scene/section';
import { readTones } from '../../../src/scene/tones';
import {
  bearingOf,
  directionOf,
  fitTo,
  frame,
  outsideCamera,
  project,
  standBefore,
  startBearing,
  toHouse,
  toScene,
} from '../../../src/scene/view';
import type { Pt3 } from '../../../src/units/types';
import { demo } from '../drawings/support';

test('house and scene coordinates are each other turned round; a foot is 0.3048 m', () => {
  const p: Pt3 = [12, 24, 36];
  expect(
    toScene(p)
      .toArray()
      .map((n) => Number(n.toFixed(6))),
  ).toEqual([0.3048, 0.9144, -0.6096]);
  toHouse(toScene(p)).forEach((n, k) => {
    expect(n).toBeCloseTo(p[k]!, 9);
  });
});

test('the view starts where the front of the panel is seen, from the south-west where two are as good', () => {
  expect(startBearing([0, -1])).toBe(225); // on the north wall
  expect(startBearing([1, 0])).toBe(135); // on the west wall, looking east
  expect(startBearing([0, 1])).toBe(315); // on the south wall
  expect(startBearing(null)).toBe(225);
  expect(bearingOf(directionOf(225, 30))).toBeCloseTo(225, 9);
});

test('everything fits inside the margins, and one side touches them', () => {
  const size = { width: 1000, height: 600 };
  const margin = { top: 60, right: 40, bottom: 20, left: 40 };
  const points = extentOf(demo('l-shaped').site);
  for (const bearing of [45, 130, 225, 300]) {
    const toward = directionOf(bearing, 35.264);
    const { target, scale } = fitTo(points, toward, size, margin);
    const camera = outsideCamera();
    frame(camera, size.width, size.height);
    camera.position.copy(toScene(target).add(toScene(toward).setLength(20)));
    camera.zoom = scale / 0.0254;
    camera.lookAt(toScene(target));
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    const seen = points.map((p) => project(p, camera, size)!);
    const [xs, ys] = [seen.map((p) => p[0]), seen.map((p) => p[1])];
    const gaps = [
      Math.min(...xs) - margin.left,
      size.width - margin.right - Math.max(...xs),
      Math.min(...ys) - margin.top,
      size.height - margin.bottom - Math.max(...ys),
    ];
    for (const gap of gaps) expect(gap).toBeGreaterThan(-0.01);
    expect(Math.min(gaps[0]! + gaps[1]!, gaps[2]! + gaps[3]!)).toBeLessThan(0.01);
  }
});

test('who stands in the room stands inside it, before the panel, at eye height', () => {
  const { eye } = standBefore([83, 164, 54], [0, -1], ([, y]) => y > 0 && y < 168);
  expect(eye[0]).toBe(83);
  expect(eye[2]).toBe(64);
  expect(eye[1]).toBeGreaterThan(0);
  expect(eye[1]).toBeLessThan(100);
});

test('a section cuts away what lies beyond it toward the eye', () => {
  const panel = { front: [83, 164, 54], into: [0, -1], along: [1, 0] } as const;
  const cut = (p: Pt3, plane: Vector4) => plane.x * p[0] + plane.y * p[1] + plane.z * p[2] > plane.w;
  const plane = new Vector4();
  writeSection({ axis: 'facing', at: 30 }, panel, [0, -1, 1], plane);
  expect(cut([83, 160, 10], plane)).toBe(false);
  expect(cut([83, 130, 10], plane)).toBe(true);
  writeSection({ axis: 'across', at: 0 }, panel, [-1, -1, 1], plane);
  expect(cut([80, 100, 10], plane)).toBe(true);
  expect(cut([90, 100, 10], plane)).toBe(false);
  writeSection({ axis: 'level', at: 48 }, panel, [1, 1, 1], plane);
  expect(cut([0, 0, 50], plane)).toBe(true);
  writeSection(null, panel, [1, 1, 1], plane);
  expect(cut([1e6, 1e6, 1e6], plane)).toBe(false);
  const [low, high] = rangeOf('facing', panel, [
    [0, 168, 0],
    [0, 0, 90],
  ]);
  expect(low).toBeLessThan(0);
  expect(high).toBe(164);
});

test('every token the tones ask for is a color in both themes', () => {
  const text = readFileSync(new URL('../../../src/app/tokens.css', import.meta.url), 'utf8');
  const [light, dark] = text.split(':root[data-theme="dark"]') as [string, string];
  const own = (part: string) =>
    new Map([...part.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map((m) => [m[1]!, m[2]!] as const).reverse());
  const [day, night] = [own(text), own(dark.split('}')[0]!)];
  const byDay = readTones((name) => own(light).get(name) ?? day.get(name) ?? '');
  const byNight = readTones((name) => night.get(name) ?? day.get(name) ?? '');
  for (const tones of [byDay, byNight]) {
    expect([...tones.faces, ...tones.inks].every((n) => n >= 0 && n <= 1)).toBe(true);
    expect([...tones.widths].every((n) => n > 0)).toBe(true);
  }
  expect([...byDay.inks]).not.toEqual([...byNight.inks]);
  expect(() => readTones(() => 'red')).toThrow('not written as hex');
});
