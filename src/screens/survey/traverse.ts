import { type Polygon, signedArea } from '../../geometry/polygon';
import { add, distance, scale, subtract } from '../../geometry/vector';
import { toSixtyFourths } from '../../units/length';
import type { Id, In, Pt } from '../../units/types';

/**
 * A room measured wall by wall, going round it to the right: each wall from its left end as one faces it. Surveyors call
 * it a closed traverse; what is missing when one is round is the closing error.
 */
export interface Leg {
  readonly length: In;
  /** Degrees turned to the right at the far end, before the next wall; to the left below nothing. */
  readonly turn: number;
}

export interface Walked {
  /** Where each wall starts. */
  readonly corners: readonly Pt[];
  /** Where the last one ends. */
  readonly end: Pt;
  /** Degrees counter-clockwise from x in which the next wall would run. */
  readonly heading: number;
}

const START: Pt = [0, 0];
/** The first wall runs up the sheet. */
const FIRST_HEADING = 90;

const direction = (degrees: number): Pt => {
  const quarters = (((degrees % 360) + 360) % 360) / 90;
  if (Number.isInteger(quarters))
    return (
      [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ] as const
    )[quarters]!;
  const a = (degrees * Math.PI) / 180;
  return [Math.cos(a), Math.sin(a)];
};

export const walk = (legs: readonly Leg[]): Walked => {
  const corners: Pt[] = [];
  let end = START;
  let heading = FIRST_HEADING;
  for (const { length, turn } of legs) {
    corners.push(end);
    end = add(end, scale(direction(heading), length));
    heading -= turn;
  }
  return { corners, end, heading };
};

/** Two ends this near are one corner: half the precision of a stored length, twice. */
const CLOSED_IN = 1 / 32;
/** A tape round a room misses by up to half a percent, and by an inch in a small one. Common practice, no source. */
const SPREAD_SHARE = 0.005;
const SPREAD_LEAST_IN = 1;

export interface Closing {
  /** open: too few walls · closed · small: a measuring error, can be spread · large: a wall is missing or measured wrong. */
  readonly state: 'open' | 'closed' | 'small' | 'large';
  /** From where the last wall ends to where the first one starts. */
  readonly gap: Pt;
  readonly miss: In;
  /** The largest miss that is taken for a measuring error. */
  readonly limit: In;
}

export const closing = (legs: readonly Leg[]): Closing => {
  const gap = subtract(START, walk(legs).end);
  const miss = distance(gap, [0, 0]);
  const limit = Math.max(SPREAD_LEAST_IN, SPREAD_SHARE * legs.reduce((n, l) => n + l.length, 0));
  const state = legs.length < 3 ? 'open' : miss <= CLOSED_IN ? 'closed' : miss <= limit ? 'small' : 'large';
  return { state, gap, miss, limit };
};

const rounded = (p: Pt): Pt => [toSixtyFourths(p[0]) + 0, toSixtyFourths(p[1]) + 0];

/**
 * The closing error taken up by all walls, each in proportion to how far it runs in the direction of the error: the
 * transit rule of surveying. Walls square to the sheet stay so. Where no wall runs that way, none can take it up.
 */
export const spread = (legs: readonly Leg[]): Pt[] => {
  const { corners, end } = walk(legs);
  const { gap } = closing(legs);
  const runs = corners.map((c, i) => subtract(corners[i + 1] ?? end, c));
  const whole = [0, 1].map((k) => runs.reduce((n, r) => n + Math.abs(r[k]!), 0));
  const share = (r: Pt, k: 0 | 1) => (whole[k] === 0 ? 0 : (gap[k] * Math.abs(r[k])) / whole[k]!);
  let at: Pt = START;
  return runs.map((r) => {
    const corner = rounded(at);
    at = add(at, [r[0] + share(r, 0), r[1] + share(r, 1)]);
    return corner;
  });
};

/** The corners with one more wall straight from the end of the last one to the start. */
export const closedStraight = (legs: readonly Leg[]): Pt[] => {
  const { corners, end } = walk(legs);
  return [...corners, end].map(rounded);
};

/** What the walls come to once the corners stand. */
export const lengthsOf = (corners: readonly Pt[]): In[] =>
  corners.map((c, i) => distance(c, corners[(i + 1) % corners.length]!));

export const rectangle = (width: In, depth: In): Pt[] => [
  [0, 0],
  [0, depth],
  [width, depth],
  [width, 0],
];

/** Did one go round to the left? Then every turn is meant the other way. */
export const wentLeft = (corners: Polygon): boolean => signedArea(corners) > 0;

const POINTS = ['east', 'north-east', 'north', 'north-west', 'west', 'south-west', 'south', 'south-east'] as const;

/** Walls named by the way they face from inside, up the sheet being north; several of one name are numbered. */
export const namedWalls = (corners: readonly Pt[]): { readonly id: Id; readonly at: Pt }[] => {
  const seen = new Map<string, number>();
  return corners.map((at, i) => {
    const along = subtract(corners[(i + 1) % corners.length]!, at);
    const outward = (Math.atan2(along[0], -along[1]) * 180) / Math.PI; // left of the way the wall runs
    const name = POINTS[(Math.round(outward / 45) + 8) % 8]!;
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return { id: count === 1 ? name : `${name}-${count}`, at };
  });
};
