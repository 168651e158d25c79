import { expect, test } from 'vitest';
import type { LoadFacts } from '../../../src/facts/ruling';
import type { Job } from '../../../src/job/schema';
import { feederDrop } from '../../../src/loads/feederDrop';
import { demoJob } from '../../support/demos';

const told: LoadFacts = { method: 'standard', amps: 60, least: 60, missing: [], worked: [] };
const washer = demoJob('washer');
const drawn: Job = {
  ...washer,
  feeder: {
    ...washer.feeder,
    outside: 360,
    raceway: 'none',
    path: [
      [0, 0, 90],
      [120, 0, 90],
      [120, 240, 90],
    ],
  },
};
const kept = { way: 'kept', legs: [], outside: 0, cable: washer.feeder.cable } as const;

// Chapter 9 Table 9, PVC column: 2 AWG aluminum R 0.32, X 0.045; 0.32 × 0.9 + 0.045 × 0.4359 = 0.3076 Ω/1000 ft;
// 360 + 120 + 240 in = 60 ft: 2 × 60 / 1000 × 0.3076 × 60 = 2.215 V
test('a kept feeder drops over its whole way, outside and in', () => {
  const [drop] = feederDrop(drawn, kept, told);
  expect(drop?.value).toBeCloseTo(2.215, 3);
});
test('nothing is worked out of a way or a load that nobody knows', () => {
  expect(feederDrop({ ...drawn, feeder: { ...drawn.feeder, outside: 'unknown' } }, kept, told)).toEqual([]);
  expect(feederDrop(drawn, kept, { ...told, amps: 'unknown' })).toEqual([]);
  expect(feederDrop(drawn, { ...kept, way: 'replaced' }, told)).toEqual([]);
});
