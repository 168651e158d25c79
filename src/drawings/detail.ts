import { bounds } from '../geometry/polygon';
import type { In, Pt } from '../units/types';
import { dimensionBoxes } from './dimensionBoxes';
import type { Drawing, Drawn, Line } from './items';
import { type Box, boxAt, inkBoxes, type Paper, shared } from './paper';
import type { Settled } from './settle';
import { blockSize } from './settle';
import type { Intrusion } from './spaces';

/** A conflict is drawn again this much larger where the drawing is too small to show it. */
export const DETAIL_TIMES = 6;
/** Points of the paper: what is smaller is not seen. */
const TOO_SMALL = 6;
/** Radius of the circle a detail is drawn in, points of the paper. */
export const DETAIL_RADIUS = 62;
const STEP = 26;
/** Lines under the circle count so much less than lettering. */
const INK = 0.12;

/** The first thing whose part in a space is drawn too small to be seen at this scale. */
export const tooSmall = (intrusions: readonly Intrusion[], scale: number): Intrusion | null =>
  intrusions.find((i) => i.by * scale < TOO_SMALL) ?? null;

const near = (item: Drawn, at: Pt, reach: In): boolean => {
  if (item.item === 'line') {
    const box = bounds(item.points);
    return box.minX < at[0] + reach && box.maxX > at[0] - reach && box.minY < at[1] + reach && box.maxY > at[1] - reach;
  }
  if (item.item === 'arc') return Math.hypot(item.center[0] - at[0], item.center[1] - at[1]) < reach + item.radius;
  return item.item === 'sign' && Math.hypot(item.at[0] - at[0], item.at[1] - at[1]) < reach;
};

/** What of a drawing lies in the circle around a place, to be drawn there larger. Dimensions and lettering are left out. */
export const detailOf = (drawing: Drawing, at: Pt, scale: number): Drawing => ({
  ...drawing,
  items: drawing.items.filter((i) => near(i, at, (DETAIL_RADIUS / scale / DETAIL_TIMES) * 1.5)),
});

/** Where on the paper the circle covers least; null where it would cover too much of the drawing. */
export const detailPlace = (drawing: Drawing, paper: Paper, settled: Settled, at: Pt): Pt | null => {
  const side = 2 * DETAIL_RADIUS;
  const [cx, cy] = paper.to(at);
  const ink: Box[] = drawing.items
    .filter((i): i is Line => i.item === 'line' && i.layer !== 'joists')
    .flatMap((line) => inkBoxes(line, paper.to));
  const written = [
    ...settled.labels.map((l) => boxAt(l.x, l.y, blockSize(l.of).w, blockSize(l.of).h)),
    ...settled.marks.map((m) => boxAt(m.x, m.y, 26, 26)),
    ...drawing.items.flatMap((i) => (i.item === 'dimension' ? dimensionBoxes(i, paper) : [])),
  ];
  let best: { cost: number; at: Pt } | null = null;
  for (let x = DETAIL_RADIUS + 6; x < paper.width - DETAIL_RADIUS - 6; x += STEP)
    for (let y = DETAIL_RADIUS + 6; y < paper.height - DETAIL_RADIUS - 44; y += STEP) {
      // the words stand under the circle
      const circle: Box = { x: x - DETAIL_RADIUS, y: y - DETAIL_RADIUS, w: side, h: side + 40 };
      const far = Math.hypot(x - cx, y - cy);
      if (far < DETAIL_RADIUS + 24) continue;
      const cost =
        ink.reduce((n, b) => n + shared(circle, b), 0) * INK +
        written.reduce((n, b) => n + shared(circle, b), 0) +
        far * 0.15;
      if (best === null || cost < best.cost) best = { cost, at: [x, y] };
    }
  return best?.at ?? null;
};
