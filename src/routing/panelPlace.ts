import { dot, subtract } from '../geometry/vector';
import type { Enclosure, Site } from '../job/schema';
import { enclosureOnFace, faceOf, type WallFace, wallFaces } from '../job/site';
import type { In, Pt3 } from '../units/types';
import { pointAlong } from './existingRuns';
import type { EntryPoint } from './reach';

/** A cable this near to a can's wall face lies at it. Common practice, no source. */
const AT_FACE_IN = 1;
const EDGE = 1e-6;
/** Steps of the search for where a run enters a can; the crossing itself is then halved down to float noise. */
const STEP_IN = 0.25;

export const faceFor = (site: Site, e: Pick<Enclosure, 'on'>): WallFace | undefined =>
  faceOf([...wallFaces(site, 'now'), ...wallFaces(site, 'after')], e.on);

/** A point in the coordinates of a wall face. */
export const onFaceOf = (face: WallFace, p: Pt3): EntryPoint & { readonly out: In } => {
  const from = subtract([p[0], p[1]], face.from);
  return { left: dot(from, face.along), z: p[2], out: dot(from, face.into) };
};

const insideCan = (face: WallFace, e: Enclosure, p: Pt3): boolean => {
  const at = onFaceOf(face, p);
  const box = enclosureOnFace(e);
  return (
    at.out >= -AT_FACE_IN &&
    at.out <= e.size.depth + AT_FACE_IN &&
    at.left >= box.left - EDGE &&
    at.left <= box.right + EDGE &&
    at.z >= box.bottom - EDGE &&
    at.z <= box.top + EDGE
  );
};

/** Where an existing run, coming from the house, first meets a can: inches from its old end. Null = it does not. */
export const meetsAt = (site: Site, e: Enclosure, path: readonly Pt3[], length: In): In | null => {
  const face = faceFor(site, e);
  if (!face) return null;
  const inside = (chain: In) => insideCan(face, e, pointAlong(path, chain));
  let last = -1;
  for (let i = 0; i * STEP_IN <= length; i++) if (inside(i * STEP_IN)) last = i * STEP_IN;
  if (last < 0) return null;
  let low = last;
  let high = Math.min(length, last + STEP_IN);
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (inside(middle)) low = middle;
    else high = middle;
  }
  return Math.round(low * 64 * 64) / (64 * 64);
};

/** Do two cans claim the same piece of wall? */
export const overlap = (a: Enclosure, b: Enclosure): boolean => {
  if (a.on.wall !== b.on.wall || a.on.face !== b.on.face) return false;
  const [p, q] = [enclosureOnFace(a), enclosureOnFace(b)];
  return p.left < q.right && q.left < p.right && p.bottom < q.top && q.bottom < p.top;
};
