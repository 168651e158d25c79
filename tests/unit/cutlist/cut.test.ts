import { describe, expect, test } from 'vitest';
import type { CalcInput } from '../../../src/calculations/types';
import { calcCut } from '../../../src/cutlist/cut';

const ask = (more: Partial<CalcInput['cut']> = {}): CalcInput['cut'] => ({
  coils: [
    { length: 600, dollars: 30, have: null },
    { length: 1200, dollars: 50, have: null },
    { length: 200, dollars: 0, have: 1 },
  ],
  pieces: [
    { length: 190, count: 1 },
    { length: 300, count: 3 },
  ],
  keepFrom: 180,
  remnantShare: 0.5,
  ...more,
});
const figures = (input: CalcInput['cut']) => {
  const answer = calcCut(input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

describe('calc cut', () => {
  test('worked by hand: 190 from the truck, 3 × 300 from one long coil, 300 kept', () => {
    // $50 coil: 900 cut, 300 left, worth 0.5 × 50 × 300/1200 = $6.25 → $43.75. Two $30 coils: $60 less 0.5 × 30 × 300/600 = $7.50 → $52.50.
    expect(figures(ask()).figures).toEqual({
      outlayCents: 5000,
      netCents: 4375,
      wasteIn: 10,
      proven: true,
      boundCents: 4375,
    });
  });

  test('without worth of remnants all that is left is waste', () => {
    // All four pieces fit the long coil: 1200 - 1090.
    expect(figures(ask({ keepFrom: null })).figures).toMatchObject({
      outlayCents: 5000,
      netCents: 5000,
      wasteIn: 110,
      proven: true,
    });
    // 300 in of the coil stay: kept but worth nothing is not waste; with nothing kept it is.
    const three = { coils: [{ length: 1200, dollars: 50, have: null }], pieces: [{ length: 300, count: 3 }] };
    expect(figures(ask({ ...three, remnantShare: 0 })).figures).toMatchObject({ netCents: 5000, wasteIn: 0 });
    expect(figures(ask({ ...three, keepFrom: null })).figures).toMatchObject({ netCents: 5000, wasteIn: 300 });
  });

  test('nothing to cut costs nothing', () => {
    expect(figures(ask({ pieces: [] })).figures).toMatchObject({
      outlayCents: 0,
      netCents: 0,
      wasteIn: 0,
      proven: true,
    });
  });

  test('pieces that do not go: fails and says why', () => {
    expect(figures(ask({ pieces: [{ length: 1201, count: 1 }] }))).toMatchObject({
      outcome: 'fails',
      figures: { why: 'too long' },
    });
    const little = ask({ coils: [{ length: 600, dollars: 30, have: 2 }], pieces: [{ length: 400, count: 3 }] });
    expect(figures(little)).toMatchObject({ outcome: 'fails', figures: { why: 'too little' } });
  });

  test.each([
    [{ coils: [{ length: 0, dollars: 1, have: null }] }, '/coils/0/length'],
    [{ coils: [{ length: Number.NaN, dollars: 1, have: null }] }, '/coils/0/length'],
    [{ coils: [{ length: 10, dollars: -1, have: null }] }, '/coils/0/dollars'],
    [{ coils: [{ length: 10, dollars: Number.POSITIVE_INFINITY, have: null }] }, '/coils/0/dollars'],
    [{ coils: [{ length: 10, dollars: 1, have: 1.5 }] }, '/coils/0/have'],
    [{ coils: [null] }, '/coils/0/length'],
    [{ coils: 'all' }, '/coils'],
    [{ pieces: [{ length: 5, count: -1 }] }, '/pieces/0/count'],
    [{ pieces: [{ length: '5', count: 1 }] }, '/pieces/0/length'],
    [{ pieces: [{ length: 5, count: 5001 }] }, '/pieces'],
    [{ pieces: undefined }, '/pieces'],
    [{ keepFrom: 0 }, '/keepFrom'],
    [{ remnantShare: 1.01 }, '/remnantShare'],
    [{ remnantShare: undefined }, '/remnantShare'],
  ])('bad input %j is refused at %s', (more, path) => {
    const answer = calcCut({ ...ask(), ...more } as unknown as CalcInput['cut']);
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.error.error.path).toBe(path);
  });

  test('big counts and crooked lengths come to an end', () => {
    const answer = figures(
      ask({
        coils: [{ length: 1200, dollars: 50, have: null }],
        pieces: [
          { length: 7.015625, count: 2400 },
          { length: 333.3, count: 100 },
        ],
      }),
    );
    expect(answer.outcome).toBe('value');
    expect(answer.figures.netCents as number).toBeGreaterThan(0);
  });
});
