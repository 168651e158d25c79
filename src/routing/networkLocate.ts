import type { Pt, Pt3 } from '../units/types';
import { BELOW_JOISTS_IN } from './clearance';
import { chainOf, onFace, outOf } from './faces';
import { snap, toFrame } from './networkFrame';
import { regionAt } from './networkFraming';
import type { Ground } from './networkGround';
import { LAYER } from './types';

/** A cable this near to a wall hangs on it: cables leave a panel and stand off pipes. Common practice, no source. */
const NEAR_WALL_IN = 6;
/** On the wall's own plane. */
const ON_PLANE = 2;

/** Where a point of the job lies: the surface it belongs to, and the place on that surface (1/64 in). */
export interface Spot {
  readonly point: Pt3;
  readonly at: readonly [x: number, y: number, z: number];
  readonly layer: (typeof LAYER)[keyof typeof LAYER];
  readonly face: number;
  readonly chain: number;
  /** The nearest place on the surface. */
  readonly surface: Pt;
}

const nearestFace = (ground: Ground, p: Pt, z: number, within: number) => {
  let best: { face: number; chain: number; out: number } | undefined;
  ground.faces.forEach((face, i) => {
    const chain = chainOf(face, p);
    if (chain < 0 || chain > face.end || (face.top !== null && z > face.top)) return;
    const out = Math.abs(outOf(face, p));
    if (out <= within && (!best || out < best.out)) best = { face: i, chain, out };
  });
  return best as { face: number; chain: number; out: number } | undefined;
};

/**
 * A point among the joists, just below them, on a wall, or loose in the room (a cable on a post or a pipe: it can only
 * be followed straight up, in a sleeve).
 */
export const locate = (ground: Ground, point: Pt3): Spot => {
  const exact = toFrame(ground.frame, [point[0], point[1]]);
  const [x, y] = snap(ground.frame, [point[0], point[1]]);
  const z = Math.round(point[2] * 64);
  const at = [x, y, z] as const;
  const region = ground.regions[regionAt(ground.regions, [x, y])]!;
  const plain = (layer: Spot['layer']): Spot => ({ point, at, layer, face: -1, chain: 0, surface: [x, y] });
  if (z > region.under) return plain(LAYER.joist);
  const below = z >= region.under - BELOW_JOISTS_IN * 64;
  const near = nearestFace(ground, exact, z, below ? ON_PLANE : NEAR_WALL_IN * 64);
  if (near) {
    const [sx, sy] = onFace(ground.faces[near.face]!, near.chain);
    return {
      point,
      at,
      layer: LAYER.wall,
      face: near.face,
      chain: near.chain,
      surface: [Math.round(sx), Math.round(sy)],
    };
  }
  return plain(below ? LAYER.below : LAYER.loose);
};
