import type { Enclosure, OnWall } from '../job/schema';
import type { WallFace } from '../job/site';
import type { Places } from '../plan/map/clearPlaces';
import { toSixtyFourths } from '../units/length';
import type { In, Pt } from '../units/types';
import { alongOut, type Unrolled, wallAt } from './unroll';

/** Where a panel is held while it is dragged, and what it stopped against. */
export interface Held {
  readonly on: OnWall;
  /** Why it is held just there: the end of the wall, or what bars the place beyond. Null at a plain place. */
  readonly stop: string | null;
}

/** How near to the end of a clear stretch the panel is drawn to it. */
const SNAP_IN = 2.5;
/** A wall farther from the pointer than the present one by less than this does not take the panel over. */
const STAY_IN = 6;
/** Behind a face a point counts as so much farther: a partition is taken from the side one points at. */
const BEHIND = 4;

export const clampTo = (length: In, width: In, left: In): In => Math.max(0, Math.min(length - width, left));

/** The nearest place for a left edge: whole steps, or the end of a clear stretch when that is near. */
const settleAt = (
  left: In,
  step: In,
  length: In,
  width: In,
  { clear, barred }: Places,
  words: { readonly wallEnd: string; readonly against: (v: { why: string }) => string },
): { left: In; stop: string | null } => {
  const at = clampTo(length, width, left);
  const ends = clear
    .flat()
    .filter((end) => Math.abs(end - at) <= SNAP_IN)
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at));
  const end = ends[0];
  if (end !== undefined) {
    const beyond = barred.find((b) => Math.abs(b.to - end) < 1e-6 || Math.abs(b.from - end) < 1e-6);
    return { left: toSixtyFourths(end), stop: beyond ? words.against({ why: beyond.why }) : words.wallEnd };
  }
  const stepped = clampTo(length, width, Math.round(at / step) * step);
  const inside = barred.find((b) => stepped > b.from + 1e-6 && stepped < b.to - 1e-6);
  const atEnd = stepped === 0 || stepped === length - width;
  return {
    left: toSixtyFourths(stepped),
    stop: inside ? words.against({ why: inside.why }) : atEnd ? words.wallEnd : null,
  };
};

export interface Holding {
  readonly enclosure: Enclosure;
  /** From the panel's left edge to where it is held, along its wall. */
  readonly grip: In;
  readonly step: In;
  readonly places: (face: WallFace) => Places;
  readonly words: { readonly wallEnd: string; readonly against: (v: { why: string }) => string };
}

/** The place on the wall nearest to a point of the plan. */
export const holdInPlan = (faces: readonly WallFace[], holding: Holding, p: Pt): Held | null => {
  const { enclosure, grip, step, places, words } = holding;
  const far = (face: WallFace): number => {
    const [along, out] = alongOut(face, p);
    const past = Math.max(0, -along, along - face.length);
    const away = out >= 0 ? out : -out * BEHIND;
    const own = face.wall === enclosure.on.wall && face.face === enclosure.on.face;
    return Math.hypot(past, away) - (own ? STAY_IN : 0);
  };
  const fits = faces.filter((f) => f.length >= enclosure.size.width);
  if (fits.length === 0) return null;
  const face = fits.reduce((a, b) => (far(b) < far(a) ? b : a));
  const [along] = alongOut(face, p);
  const { left, stop } = settleAt(along - grip, step, face.length, enclosure.size.width, places(face), words);
  return { on: { ...enclosure.on, wall: face.wall, face: face.face, left }, stop };
};

/** The place at a point of the wall drawing: x along the unrolled walls, `bottom` of the panel above the floor. */
export const holdOnWall = (walls: readonly Unrolled[], holding: Holding, x: In, bottom: In): Held | null => {
  const { enclosure, grip, step, places, words } = holding;
  const wall = wallAt(
    walls.filter((w) => !w.goes && w.face.length >= enclosure.size.width),
    x,
  );
  if (!wall) return null;
  const { face, at } = wall;
  const { left, stop } = settleAt(x - at - grip, step, face.length, enclosure.size.width, places(face), words);
  const on = { ...enclosure.on, wall: face.wall, face: face.face, left, bottom: toSixtyFourths(Math.max(0, bottom)) };
  return { on, stop };
};
