import type { Box } from '../facts/result';
import { dot, subtract, turnAbout } from '../geometry/vector';
import type { Job } from '../job/schema';
import { framingAt, type WallFace, wallFaces } from '../job/site';
import { boxSize } from '../standards/boxSize';
import { isKnown, type Pt, type Size } from '../units/types';
import type { Place } from './solids';

/** A box whose size cannot be read is drawn this large. Common practice, no source. */
const SOME_BOX: Size = { width: 4, height: 4, depth: 2.125 };
const ON_FACE_IN = 1 / 32;

/** The face a point lies on, if it lies on one. */
const faceUnder = (faces: readonly WallFace[], p: Pt): WallFace | undefined =>
  faces.find((f) => {
    const along = dot(subtract(p, f.from), f.along);
    return (
      Math.abs(dot(subtract(p, f.from), f.into)) < ON_FACE_IN && along > -ON_FACE_IN && along < f.length + ON_FACE_IN
    );
  });

/** Along the joists over a point; along x where nobody knows. */
const alongJoists = (job: Job, p: Pt): Pt => {
  const direction = framingAt(job.site, p)?.direction;
  return direction === undefined || !isKnown(direction) ? [1, 0] : turnAbout([1, 0], [0, 0], direction);
};

/** A box on a wall has its back there, in the middle of it the plan's point; elsewhere the point is its middle, and it lies along a joist. */
export const boxPlace = (job: Job, box: Box): Place => {
  const size = boxSize(box.size) ?? SOME_BOX;
  const [x, y, z] = box.at;
  const face = faceUnder(wallFaces(job.site, 'after'), [x, y]);
  const right: Pt = face?.along ?? alongJoists(job, [x, y]);
  const into: Pt = face?.into ?? [right[1], -right[0]];
  const out = face ? size.depth : size.depth / 2;
  return {
    corner: [
      x - (right[0] * size.width) / 2 + into[0] * out,
      y - (right[1] * size.width) / 2 + into[1] * out,
      z - size.height / 2,
    ],
    right,
    size,
  };
};
