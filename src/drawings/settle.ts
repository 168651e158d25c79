import type { Pt } from '../units/types';
import type { Drawing, Label, LabelPlace, Line, Mark } from './items';

/** A box on the paper, points, y down. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}
/** A label with its place found: the middle of its block of lines on the paper. */
export interface SetLabel {
  readonly label: Label;
  readonly x: number;
  readonly y: number;
}
export interface SetMark {
  readonly mark: Mark;
  readonly x: number;
  readonly y: number;
}
export interface Settled {
  readonly labels: readonly SetLabel[];
  readonly marks: readonly SetMark[];
}

/** Width of a letter of the template lettering as a share of its size, capitals with their spacing. Measured on the font. */
const LETTER = { capitals: 0.68, small: 0.53, figure: 0.56 } as const;
const LINE_HEIGHT = 1.3;
const MARK_HALF = 11;

export const blockSize = (label: Label): { readonly w: number; readonly h: number } => ({
  w: Math.max(...label.lines.map((l) => l.say.length * LETTER[l.lettering] * l.size)) + 4,
  h: label.lines.reduce((n, l) => n + l.size * LINE_HEIGHT, 0),
});

const meets = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y));

const boxAt = (x: number, y: number, w: number, h: number): Box => ({ x: x - w / 2, y: y - h / 2, w, h });

const center = (place: LabelPlace, to: (p: Pt) => Pt, w: number, h: number): Pt => {
  const [x, y] = to(place.at);
  const { gap } = place;
  switch (place.side) {
    case 'middle':
      return [x, y];
    case 'left':
      return [x - gap - w / 2, y];
    case 'right':
      return [x + gap + w / 2, y];
    case 'above':
      return [x, y - gap - h / 2];
    case 'below':
      return [x, y + gap + h / 2];
  }
};

/** Lines whose ink lettering had better not cross: walls, the panels, what is laid anew. Long ones as a string of small boxes. */
const STEP = 10;
const inkOf = (line: Line, to: (p: Pt) => Pt): Box[] => {
  const points = (line.closed ? [...line.points, line.points[0]!] : line.points).map(to);
  return points.slice(1).flatMap((b, i) => {
    const a = points[i]!;
    const count = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / STEP));
    return Array.from({ length: count }, (_, k) => {
      const t = (k + 0.5) / count;
      return boxAt(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, 4, 4);
    });
  });
};
/** How much worse lettering over such a line is than over plain paper, per layer. */
const CROSSING: Partial<Record<Line['layer'], number>> = {
  walls: 4,
  openings: 3,
  things: 1,
  'old work': 1,
  'new routes': 2,
  'new work': 6,
  overhead: 1,
  space: 0.3,
};

/** Rings of places around a point, nearest first: a mark that cannot stand on its spot stands beside it. */
const around = ([x, y]: Pt): Pt[] => {
  const spots: Pt[] = [[x, y]];
  for (let r = 1; r <= 6; r++)
    for (let k = 0; k < 8; k++) {
      const a = (k * Math.PI) / 4;
      spots.push([x + Math.cos(a) * r * 14, y + Math.sin(a) * r * 14]);
    }
  return spots;
};

/**
 * Places lettering and marks at a scale so that they do not overlap each other and cross as little ink as they can.
 * `to` takes plan inches to points of the paper, y down; `paper` is its size. The same drawing settles the same way.
 */
export const settle = (
  drawing: Drawing,
  to: (p: Pt) => Pt,
  paper: { readonly width: number; readonly height: number },
): Settled => {
  const ink = drawing.items.flatMap((item) => {
    const weight = CROSSING[item.layer];
    return item.item === 'line' && weight !== undefined ? inkOf(item, to).map((box) => ({ box, weight })) : [];
  });
  const taken: Box[] = [];
  const outside = (b: Box) =>
    b.x < 2 || b.y < 2 || b.x + b.w > paper.width - 2 || b.y + b.h > paper.height - 2 ? 1 : 0;
  const cost = (b: Box) =>
    taken.reduce((n, t) => n + meets(b, t), 0) * 20 +
    outside(b) * 4000 +
    ink.reduce((n, i) => n + meets(b, i.box) * i.weight, 0);
  const free = (b: Box) => outside(b) === 0 && taken.every((t) => meets(b, t) < 1);

  const marks = drawing.items
    .filter((item): item is Mark => item.item === 'mark')
    .map((mark) => {
      const spots = around(to(mark.at)).map(([x, y]) => boxAt(x, y, MARK_HALF * 2, MARK_HALF * 2));
      const box = spots.find(free) ?? spots[0]!;
      taken.push(box);
      return { mark, x: box.x + MARK_HALF, y: box.y + MARK_HALF };
    });
  const labels = drawing.items
    .filter((item): item is Label => item.item === 'label')
    .map((label, i) => ({ label, i }))
    .sort((a, b) => a.label.rank - b.label.rank || a.i - b.i)
    .flatMap(({ label }): SetLabel[] => {
      const { w, h } = blockSize(label);
      let best: { box: Box; cost: number } | null = null;
      for (const [k, place] of label.places.entries()) {
        const [x, y] = center(place, to, w, h);
        const box = boxAt(x, y, w, h);
        if (!label.must && !free(box)) continue;
        const c = cost(box) + k * 3;
        if (best === null || c < best.cost) best = { box, cost: c };
      }
      if (best === null) return [];
      taken.push(best.box);
      return [{ label, x: best.box.x + w / 2, y: best.box.y + h / 2 }];
    });
  return { labels, marks };
};
