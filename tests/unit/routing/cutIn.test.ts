import { describe, expect, it } from 'vitest';
import { cutInFits, longestSpur, mayBend, mayBeReused, shortestTail } from '../../../src/routing/cutIn';
import { cutLengthOf } from '../../../src/routing/cutLength';
import { staplesOn, supportsOf } from '../../../src/routing/supports';

// Worked by hand from trade review (a)16: box wall 12 in back from the cut, 24 in freed to turn in.
const tick = 1 / 64;

describe('cut-in geometry', () => {
  it('needs 12 in of run on either side of the box', () => {
    expect(cutInFits({ leaves: 30, spur: 0, tail: 0 }, [[18, 42]])).toBe(true);
    expect(cutInFits({ leaves: 30, spur: 0, tail: 0 }, [[18 + tick, 42]])).toBe(false);
    expect(cutInFits({ leaves: 30, spur: 0, tail: 0 }, [[18, 42 - tick]])).toBe(false);
  });
  it('near the old can the tail supplies what the run lacks, the sheath it cannot', () => {
    expect(cutInFits({ leaves: 4, spur: 0, tail: 8 }, [[0, 60]])).toBe(true);
    expect(cutInFits({ leaves: 4, spur: 0, tail: 8 - tick }, [[0, 60]])).toBe(false);
    expect(cutInFits({ leaves: 0.125, spur: 0, tail: 40 }, [[0, 60]])).toBe(false);
  });
  it('off its run the old cable has chain + tail − 12 to give', () => {
    expect(longestSpur(50, 6, [[0, 90]])).toBe(44);
    expect(cutInFits({ leaves: 50, spur: 44, tail: 6 }, [[0, 90]])).toBe(true);
    expect(cutInFits({ leaves: 50, spur: 44 + tick, tail: 6 }, [[0, 90]])).toBe(false);
    expect(longestSpur(50, 40, [[0, 90]])).toBe(49.75); // sheath 1/4 in into the box
    expect(longestSpur(50, 6, [[20, 90]])).toBe(18); // what is not reachable cannot be freed
    expect(longestSpur(85, 6, [[0, 90]])).toBe(-1);
  });
  it('conditions', () => {
    expect(mayBend({ condition: ['cloth'] })).toBe(false);
    expect(mayBend({ condition: ['overheated'] })).toBe(true);
    expect(mayBeReused({ condition: ['overheated'] })).toBe(false);
    expect(shortestTail('unknown', {} as never)).toBe(0);
  });
});

describe('supports, 334.30: 4-1/2 ft apart, within 12 in of entries', () => {
  it('two entries', () => {
    expect(staplesOn(20, true, true)).toBe(1);
    expect(staplesOn(24, true, true)).toBe(1);
    expect(staplesOn(25, true, true)).toBe(2);
    expect(staplesOn(24 + 54, true, true)).toBe(2);
    expect(staplesOn(24 + 54 + tick, true, true)).toBe(3);
  });
  it('bored joists hold a cable, so only the stretches between them are stapled', () => {
    const leg = (by: 'joist side' | 'through joists' | 'sleeve', length: number, at: number) =>
      ({ from: [at, 0, 0], to: [at + length, 0, 0], cable: 'new', row: null, by }) as const;
    expect(
      supportsOf([leg('joist side', 30, 0), leg('through joists', 100, 30), leg('joist side', 70, 130)], true),
    ).toBe(1 + 2);
    expect(supportsOf([leg('through joists', 100, 0), leg('sleeve', 40, 100)], true)).toBe(1);
  });
});

describe('cut length', () => {
  const practice = {
    slackShare: 0.05,
    slackMinimum: 6,
    freeInBox: 12,
    tailInPanel: 42,
    cutStep: 6,
    shortestPiece: 36,
  } as never;
  it('path + slack + free conductor + tail, up to the crew step', () => {
    expect(cutLengthOf(96, 54, practice)).toBe(156); // 96 + 6 + 54 = 156 exactly, no step more
    expect(cutLengthOf(96 + tick, 54, practice)).toBe(162);
    expect(cutLengthOf(200, 54, practice)).toBe(264); // 200 + 10 + 54
    expect(cutLengthOf(0, 12, practice)).toBe(36);
  });
});
