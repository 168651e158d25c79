import { describe, expect, it } from 'vitest';
import { inflateConvex } from '../../../src/geometry/inflate';
import { coveredAt, overlapsSpans, spansAt } from '../../../src/geometry/spans';
import { unite } from '../../../src/geometry/unite';
import type { Pt } from '../../../src/units/types';
import { random } from '../../support/random';

const box = (x: number, y: number, w: number, h: number): Pt[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

describe('spans of a line', () => {
  it('inside a ring with a hole', () => {
    const rings = [box(0, 0, 10, 10), box(3, 3, 4, 4)];
    expect(spansAt(rings, 0, 5)).toEqual([0, 3, 7, 10]);
    expect(spansAt(rings, 1, 1)).toEqual([0, 10]);
    expect(spansAt(rings, 0, 11)).toEqual([]);
  });
  it('over several areas are merged, touching ones too', () => {
    expect(coveredAt([[box(0, 0, 4, 4)], [box(0, 4, 4, 4)], [box(0, 9, 4, 1)]], 0, 2)).toEqual([0, 8, 9, 10]);
  });
  it('a touch is no overlap', () => {
    expect(overlapsSpans([0, 10], 10, 20)).toBe(false);
    expect(overlapsSpans([0, 10], 9, 20)).toBe(true);
  });
});

describe('a union', () => {
  it('of boxes that share an edge is one ring', () => {
    expect(unite([box(0, 0, 4, 4), box(4, 0, 2, 4)])).toEqual([[expect.arrayContaining(box(0, 0, 6, 4))]]);
  });
  it('covers the same ground whether the clipper unites the boxes or there are too many for it', () => {
    const r = random(4);
    const boxes = Array.from({ length: 150 }, () => box(r.int(0, 80), r.int(0, 80), r.int(1, 20), r.int(1, 20)));
    const few = unite(boxes);
    const many = unite([...boxes, ...boxes]);
    expect(few).toHaveLength(1);
    expect(many).toHaveLength(300);
    for (const axis of [0, 1] as const)
      for (let at = 0.5; at < 100; at++) expect(coveredAt(many, axis, at)).toEqual(coveredAt(few, axis, at));
  });
  it('drops what has no area', () => {
    expect(unite([box(0, 0, 4, 0)])).toEqual([]);
  });
});

describe('a box made larger all around', () => {
  it('stays a box, whichever way its corners run', () => {
    expect(inflateConvex(box(1, 2, 3, 4), 0.5)).toEqual(box(0.5, 1.5, 4, 5));
    const back = [...box(1, 2, 3, 4)].reverse();
    expect(inflateConvex(back, 0.5)).toEqual([...box(0.5, 1.5, 4, 5)].reverse());
  });
});
