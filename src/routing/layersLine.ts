import { coveredAt, spansAt } from '../geometry/spans';
import type { Rings } from '../geometry/unite';
import type { Pt } from '../units/types';
import type { Access } from './closed';
import { NO_COVER } from './closed';
import { joistHalves } from './networkFraming';
import type { Ground } from './networkGround';
import { EDGE, type EdgeClass } from './types';

/** A step of the way beside a line: the joists and the level below are read on both sides of it. */
const BESIDE = 0.25;
const TOUCH = 0.5;

/** What lies on one side of a line, by stretch between two stops. */
interface Side {
  readonly room: Uint8Array;
  readonly region: Int16Array;
  readonly cover: Int16Array;
  /** 1 panned: crossing only; 2 blocked. */
  readonly bay: Uint8Array;
  readonly joistsBarred: Uint8Array;
  readonly belowBarred: Uint8Array;
}

/** Every stretch whose middle lies in one of the spans. */
const paint = (spans: readonly number[], stops: readonly number[], set: (stretch: number) => void): void => {
  let e = 0;
  for (let i = 0; i + 1 < spans.length; i += 2) {
    while (e + 1 < stops.length && stops[e]! + stops[e + 1]! <= 2 * spans[i]!) e++;
    while (e + 1 < stops.length && stops[e]! + stops[e + 1]! < 2 * spans[i + 1]!) set(e++);
  }
};
/** Every stretch that one of the spans overlaps by more than a touch. */
const paintOverlap = (spans: readonly number[], stops: readonly number[], set: (stretch: number) => void): void => {
  for (let i = 0; i + 1 < spans.length; i += 2)
    for (let e = 0; e + 1 < stops.length; e++)
      if (stops[e]! < spans[i + 1]! - TOUCH && stops[e + 1]! > spans[i]! + TOUCH) set(e);
};

const readSide = (ground: Ground, axis: 0 | 1, at: number, stops: readonly number[]): Side => {
  const n = stops.length - 1;
  const side: Side = {
    room: new Uint8Array(n),
    region: new Int16Array(n).fill(ground.regions.length - 1),
    cover: new Int16Array(n).fill(-1),
    bay: new Uint8Array(n),
    joistsBarred: new Uint8Array(n),
    belowBarred: new Uint8Array(n),
  };
  const inside = (ring: readonly Pt[], set: (e: number) => void) => paint(spansAt([ring], axis, at), stops, set);
  inside(ground.room, (e) => {
    side.room[e] = 1;
  });
  for (let r = ground.regions.length - 1; r >= 0; r--) {
    const ring = ground.regions[r]!.ring;
    if (ring)
      inside(ring, (e) => {
        side.region[e] = r;
      });
  }
  for (let c = ground.covers.length - 1; c >= 0; c--)
    inside(ground.covers[c]!.ring, (e) => {
      side.cover[e] = c;
    });
  for (const bay of ground.bays)
    inside(bay.ring, (e) => {
      side.bay[e] = Math.max(side.bay[e]!, bay.crossing ? 1 : 2);
    });
  ground.regions.forEach((_, r) => {
    const bar = (areas: readonly Rings[], to: Uint8Array) => {
      if (areas.length > 0)
        paintOverlap(coveredAt(areas, axis, at), stops, (e) => {
          if (side.region[e] === r) to[e] = 1;
        });
    };
    bar(ground.bars.joists[r]!, side.joistsBarred);
    bar(ground.bars.below[r]!, side.belowBarred);
  });
  return side;
};

const ALONG: Readonly<Record<Access, EdgeClass>> = {
  open: EDGE.joistSide,
  tile: EDGE.joistSideOverTile,
  closed: EDGE.closedAlong,
};
const ACROSS: Readonly<Record<Access, EdgeClass>> = {
  open: EDGE.throughJoists,
  tile: EDGE.throughJoistsOverTile,
  closed: EDGE.closedAcross,
};
/** From the cheapest to the dearest way of passing where a line borders on two. */
const RANK: Readonly<Record<Access, number>> = { open: 0, tile: 1, closed: 2 };

export interface Stretch {
  readonly cls: EdgeClass;
  readonly halves: number;
  readonly region: number;
}
export interface Stretches {
  readonly joists: readonly (Stretch | undefined)[];
  readonly below: readonly (Stretch | undefined)[];
}

/**
 * What each stretch between neighboring stops of a grid line lets a cable do. A line that borders on two zones belongs
 * to the cheaper one: a cable may always lie a hair to that side.
 */
export const readLine = (ground: Ground, axis: 0 | 1, at: number, stops: readonly number[]): Stretches => {
  const both = [readSide(ground, axis, at - BESIDE, stops), readSide(ground, axis, at + BESIDE, stops)];
  const n = stops.length - 1;
  const inRoom = (e: number) => e >= 0 && e < n && both.some((side) => side.room[e] === 1);
  /** A joist on a wall's own plane lies along that wall and is not crossed on the way to it. */
  const atWall = (s: number, beyond: number) => ground.square[axis === 0 ? 1 : 0].has(s) && !inRoom(beyond);
  const point = (s: number): Pt => (axis === 0 ? [at, s] : [s, at]);
  const joists: (Stretch | undefined)[] = [];
  const below: (Stretch | undefined)[] = [];
  for (let e = 0; e < n; e++) {
    let bestJoist: (Stretch & { rank: number }) | undefined;
    let bestBelow: (Stretch & { rank: number }) | undefined;
    for (const side of both) {
      if (side.room[e] !== 1) continue;
      const region = side.region[e]!;
      const framing = ground.regions[region]!;
      const cover = side.cover[e]! < 0 ? NO_COVER : ground.covers[side.cover[e]!]!;
      if (side.joistsBarred[e] === 0 && side.bay[e] !== 2) {
        const along = framing.across === axis;
        const crossed = along
          ? 0
          : joistHalves(
              framing,
              point(stops[e]!),
              point(stops[e + 1]!),
              atWall(stops[e]!, e - 1),
              atWall(stops[e + 1]!, e + 1),
            );
        const barred = (along && side.bay[e] === 1) || (crossed > 0 && framing.boring === 'never');
        if (!barred) {
          const halves = framing.boring === 'free' ? 0 : crossed;
          const rank = RANK[cover.joists] * 1e6 + (along ? 0 : 1) * 1e5 + halves;
          if (!bestJoist || rank < bestJoist.rank)
            bestJoist = { cls: (along ? ALONG : ACROSS)[cover.joists], halves, region, rank };
        }
      }
      if (side.belowBarred[e] === 0 && cover.below !== 'closed') {
        const rank = RANK[cover.below];
        if (!bestBelow || rank < bestBelow.rank)
          bestBelow = { cls: cover.below === 'open' ? EDGE.under : EDGE.overTile, halves: 0, region, rank };
      }
    }
    joists.push(bestJoist);
    below.push(bestBelow);
  }
  return { joists, below };
};
