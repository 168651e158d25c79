import { expect, test } from 'vitest';
import { turned } from '../../../src/job/turned';
import { neededInside } from '../../../src/routing/reach';
import { demoJob } from './demo';

const can = demoJob('washer').options[0]!.enclosure;

test('a can turned over has its main at the other end, and turned back it is the same', () => {
  const over = turned(can, false);
  expect([over.upright, over.mainAt]).toEqual([false, can.mainAt === 'top' ? 'bottom' : 'top']);
  expect(turned(over, true)).toEqual(can);
  expect(turned(can, can.upright)).toBe(can);
});

test('entered from above at the same point, another length is needed inside a can turned over, mirrored from below', () => {
  const { left, bottom } = can.on;
  const { width, height } = can.size;
  const above = { left: left + width / 4, z: bottom + height };
  const below = { left: left + width / 4, z: bottom };
  const over = turned(can, false);
  const mirrored = neededInside(can, below);
  for (const [conductor, length] of Object.entries(neededInside(over, above))) {
    expect(length).toBeCloseTo(mirrored[conductor as keyof typeof mirrored], 9);
    expect(Math.abs(length - neededInside(can, above)[conductor as keyof typeof mirrored])).toBeGreaterThan(1);
  }
});
