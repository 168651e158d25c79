import type { Pt } from '../units/types';
import { dimensionBoxes, dimensionFigure } from './dimensionBoxes';
import { type Ground, groundsOf } from './grounds';
import type { Drawing, Label, LabelPlace, Line, Mark } from './items';
import { alongLine, type Box, boxAt, inkBoxes, type Paper, shared } from './paper';

/** Lettering or a mark with its place found: its middle on the paper, and the thin line to what it is about. */
export interface Placed<T> {
  readonly of: T;
  readonly x: number;
  readonly y: number;
  readonly leader: readonly [from: Pt, to: Pt] | null;
}
export interface Settled {
  readonly labels: readonly Placed<Label>[];
  readonly marks: readonly Placed<Mark>[];
}

/** Width of a letter of the template lettering as a share of its size, capitals with their spacing. Measured on the font. */
const LETTER = { capitals: 0.7, small: 0.55, figure: 0.6 } as const;
/** Height of a line of lettering as a share of its size. */
export const LINE_HEIGHT = 1.3;
/** Half of a mark with its air. */
const MARK_HALF = 13;
/** From this far on a thin line leads from the text to the thing. */
const LEADER_FROM = 22;

export const blockSize = (label: Label): { readonly w: number; readonly h: number } => ({
  w: Math.max(...label.lines.map((l) => l.say.length * LETTER[l.lettering] * l.size)) + 4,
  h: label.lines.reduce((n, l) => n + l.size * LINE_HEIGHT, 0),
});

/** How much worse lettering over such ink is than over plain paper, per layer. */
const CROSSING: Partial<Record<Line['layer'], number>> = {
  walls: 8,
  openings: 4,
  things: 2,
  'old work': 1.5,
  'new routes': 4,
  'new work': 12,
  overhead: 1.5,
  space: 1,
  dimensions: 5,
};
/** How much worse the name of a thing is where another thing lies over its own, and where it would seem another's. */
const ON_GROUND: Readonly<Record<Ground, number>> = { own: 0, outside: 12, 'own, shared': 60, another: 4000 };
/** Lettering that may be left out is, where it would stand over more ink than this. */
const TOO_MUCH_INK = 110;
/** Nor is it worth a thin line through what is read, more than at its very edge. */
const TOO_MUCH_CROSSED = 300;
/** The last of many places tried for a name is worse than the first by no more than this: a little ink. */
const FARTHEST = 96;
/** Fine lines inside a thing disturb lettering less than its edge. */
const FINE = 0.25;
/** Lettering over lettering is the worst. */
const OVER_TEXT = 60;
/** A thin line through lettering or a figure makes both unreadable; over another thin line it only confuses. */
const THROUGH_TEXT = 30;
const THROUGH_LEADER = 1.5;
/** Where the panel's corners are, its grips are. */
const GRIP_AIR = 14;
/** So many marks of one spot stand in a row, under one leader. */
const MARKS_IN_ROW = 4;

const center = ({ at, side, gap }: LabelPlace, to: Paper['to'], w: number, h: number): Pt => {
  const [x, y] = to(at);
  const dx = side.includes('right') ? 1 : side.includes('left') ? -1 : 0;
  const dy = side.includes('below') ? 1 : side.includes('above') ? -1 : 0;
  return [x + dx * (gap + w / 2), y + dy * (gap + h / 2)];
};

/** Places for a block around a spot, nearest first: the spot is left free for what is drawn there. */
const around = ([x, y]: Pt, w: number, h: number): Pt[] => {
  const spots: Pt[] = [];
  for (let r = 1; r <= 9; r++)
    for (let k = 0; k < 12; k++) {
      const a = (k * Math.PI) / 6 + Math.PI / 2;
      spots.push([x + Math.cos(a) * (w / 2 + r * 11), y + Math.sin(a) * (h / 2 + r * 11)]);
    }
  return spots;
};

interface Inked {
  readonly box: Box;
  readonly weight: number;
}
/** Side of a cell in which ink is looked up, points of the paper. */
const CELL = 24;

/** How much ink lies under a box: looked up by the cells around it. */
const inkIndex = (inked: readonly Inked[]): ((b: Box) => number) => {
  const cells = new Map<number, Inked[]>();
  const key = (i: number, j: number): number => i * 4096 + j;
  const span = (from: number, size: number): readonly [number, number] => [
    Math.floor(from / CELL),
    Math.floor((from + size) / CELL),
  ];
  for (const one of inked) {
    // strokes come as boxes smaller than a cell: their middle says which
    const at = key(Math.floor((one.box.x + one.box.w / 2) / CELL), Math.floor((one.box.y + one.box.h / 2) / CELL));
    const cell = cells.get(at);
    if (cell) cell.push(one);
    else cells.set(at, [one]);
  }
  return (b) => {
    let sum = 0;
    const [i0, i1] = span(b.x - CELL / 2, b.w + CELL);
    const [j0, j1] = span(b.y - CELL / 2, b.h + CELL);
    for (let i = i0; i <= i1; i++)
      for (let j = j0; j <= j1; j++)
        for (const one of cells.get(key(i, j)) ?? []) sum += shared(b, one.box) * one.weight;
    return sum;
  };
};

/** Marks that are about the same place stand together. */
const bySpot = (drawing: Drawing): Mark[][] => {
  const groups = new Map<string, Mark[]>();
  for (const item of drawing.items)
    if (item.item === 'mark') groups.set(item.at.join(), [...(groups.get(item.at.join()) ?? []), item]);
  return [...groups.values()];
};

type Leader = readonly [from: Pt, to: Pt];
/** A place tried for lettering or marks, with the thin line it would need. */
interface Try {
  readonly box: Box;
  readonly ground: Ground;
  readonly leader: Leader | null;
  readonly worse: number;
}

const leaderTo = (box: Box, target: Pt | null): Leader | null => {
  if (target === null) return null;
  const near: Pt = [
    Math.min(Math.max(target[0], box.x + 3), box.x + box.w - 3),
    Math.min(Math.max(target[1], box.y + 3), box.y + box.h - 3),
  ];
  return Math.hypot(near[0] - target[0], near[1] - target[1]) < LEADER_FROM ? null : [near, target];
};

/**
 * Places lettering and marks at a scale so that they do not overlap each other and cross as little ink as they can.
 * The same drawing on the same paper settles the same way.
 */
export const settle = (drawing: Drawing, paper: Paper): Settled => {
  const { to } = paper;
  const ink = inkIndex(
    drawing.items.flatMap((item) => {
      const weight = CROSSING[item.layer];
      if (item.item !== 'line' || weight === undefined) return [];
      const fine = item.stroke?.weight === 'thin' || item.stroke?.weight === 'hair' ? FINE : 1;
      const grips = item.layer === 'new work' && item.closed ? item.points.map(to) : [];
      return [...inkBoxes(item, to), ...grips.map(([x, y]) => boxAt(x, y, GRIP_AIR, GRIP_AIR))].map((box) => ({
        box,
        weight: weight * fine,
      }));
    }),
  );
  const dimensions = drawing.items.filter((item) => item.item === 'dimension');
  const taken: Box[] = dimensions.flatMap((item) => dimensionBoxes(item, paper));
  /** What is read: no thin line may run through it. */
  const read: Box[] = dimensions.map((item) => dimensionFigure(item, paper));
  const leaders: Box[] = [];
  const through = (b: Box) => leaders.reduce((n, t) => n + shared(b, t), 0);
  const crossed = (leader: Leader | null): number =>
    leader === null
      ? 0
      : alongLine(...leader).reduce(
          (n, step) =>
            n + read.reduce((m, t) => m + shared(step, t), 0) * THROUGH_TEXT + through(step) * THROUGH_LEADER,
          0,
        );
  const keep = (box: Box, leader: Leader | null): void => {
    taken.push(box);
    read.push(box);
    if (leader) leaders.push(...alongLine(...leader));
  };
  const lost = (b: Box) =>
    Math.max(0, 2 - b.x) +
    Math.max(0, 2 - b.y) +
    Math.max(0, b.x + b.w - paper.width + 2) +
    Math.max(0, b.y + b.h - paper.height + 2);
  const overlap = (b: Box) => taken.reduce((n, t) => n + shared(b, t), 0);
  const groundOf = groundsOf(drawing, paper);
  /** The best of the places tried, the first of equals. What a thin line crosses is reckoned only where it can matter. */
  const best = (tries: readonly Try[]): Try => {
    let found: Try | null = null;
    let least = Infinity;
    for (const one of tries) {
      const { box, leader, worse } = one;
      const plain = overlap(box) * OVER_TEXT + lost(box) * 400 + ink(box) + worse;
      if (plain >= least) continue;
      const cost = plain + crossed(leader) + through(box) * THROUGH_TEXT;
      if (cost >= least) continue;
      least = cost;
      found = one;
    }
    return found ?? tries[0]!;
  };

  const fits = ({ box, ground, leader }: Try): boolean =>
    ground !== 'another' &&
    overlap(box) <= 1 &&
    lost(box) === 0 &&
    ink(box) <= TOO_MUCH_INK &&
    crossed(leader) <= TOO_MUCH_CROSSED;

  const place = (which: (label: Label) => boolean) =>
    drawing.items
      .filter((item): item is Label => item.item === 'label' && which(item))
      .map((label, i) => ({ label, i }))
      .sort((a, b) => a.label.rank - b.label.rank || a.i - b.i)
      .flatMap(({ label }): Placed<Label>[] => {
        const { w, h } = blockSize(label);
        if (label.within !== undefined && w > label.within * paper.scale) return [];
        const tries = label.places.map((place, k): Try => {
          const [x, y] = center(place, to, w, h);
          const box = boxAt(x, y, w, h);
          const ground = label.ofThing ? groundOf(label.id, label.lead, box) : 'outside';
          const lead = (ground === 'outside' || ground === 'another') && label.lead ? to(label.lead) : null;
          const worse = k * Math.min(2, FARTHEST / label.places.length) + (label.ofThing ? ON_GROUND[ground] : 0);
          return { box, ground, leader: leaderTo(box, lead), worse };
        });
        const fit = label.must ? tries : tries.filter(fits);
        if (fit.length === 0) return [];
        const { box, leader } = best(fit);
        keep(box, leader);
        return [{ of: label, x: box.x + w / 2, y: box.y + h / 2, leader }];
      });
  // names of walls have one place only and those of rooms only their room: they are lettered before anything else
  const names = place((label) => label.rank === 0);
  const marks = bySpot(drawing).flatMap((group): Placed<Mark>[] => {
    const spot = to(group[0]!.at);
    const columns = Math.min(group.length, MARKS_IN_ROW);
    const w = columns * MARK_HALF * 2;
    const h = Math.ceil(group.length / MARKS_IN_ROW) * MARK_HALF * 2;
    const { box, leader } = best(
      around(spot, w, h).map((p) => {
        const at = boxAt(p[0], p[1], w, h);
        const worse = Math.hypot(p[0] - spot[0], p[1] - spot[1]) * 1.5;
        return { box: at, ground: 'outside', leader: leaderTo(at, spot), worse };
      }),
    );
    keep(box, leader);
    return group.map((mark, k) => ({
      of: mark,
      x: box.x + ((k % MARKS_IN_ROW) * 2 + 1) * MARK_HALF,
      y: box.y + (Math.floor(k / MARKS_IN_ROW) * 2 + 1) * MARK_HALF,
      leader: k === 0 ? leader : null,
    }));
  });

  return { labels: [...names, ...place((label) => label.rank > 0)], marks };
};
