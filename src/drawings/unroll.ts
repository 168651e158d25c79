import { bounds } from '../geometry/polygon';
import { dot, subtract } from '../geometry/vector';
import type { Job, Site } from '../job/schema';
import { faceOf, type WallFace, wallFaces } from '../job/site';
import { byId } from '../units/order';
import type { In, Pt } from '../units/types';

/** One wall face in the wall drawing: `at` = where its left end stands along the drawing, inches. */
export interface Unrolled {
  readonly face: WallFace;
  readonly at: In;
  /** Taken down by the finishing. */
  readonly goes: boolean;
}

/** Between the room's own walls and each side of a partition, which are drawn apart. */
const APART_IN = 48;

/** A point of the plan in a wall's own coordinates: along the face from its left end, and out from it into the room. */
export const alongOut = (face: WallFace, p: Pt): readonly [along: In, out: In] => {
  const from = subtract(p, face.from);
  return [dot(from, face.along), dot(from, face.into)];
};

/** Where the first old panel hangs along the room's walls, else their beginning: the seam lies opposite to it. */
const heart = (job: Job, faces: readonly WallFace[]): In => {
  let at = 0;
  const [old] = byId(job.enclosures);
  for (const face of faces) {
    if (face.wall === old?.on.wall) return at + old.on.left + old.size.width / 2;
    at += face.length;
  }
  return at / 2;
};

/** The room's faces, in the order a person standing inside and turning right sees them, seam opposite to the old panel. */
const roomFaces = (job: Job): WallFace[] => {
  const all = wallFaces(job.site, 'after');
  const faces = job.site.outline.flatMap((c) => faceOf(all, { wall: c.id, face: 'front' }) ?? []);
  const whole = faces.reduce((n, f) => n + f.length, 0);
  const seam = (heart(job, faces) + whole / 2) % whole;
  let at = 0;
  let first = { far: Number.POSITIVE_INFINITY, i: 0 };
  faces.forEach((face, i) => {
    const gap = Math.abs(at - seam);
    const far = Math.min(gap, whole - gap);
    if (far < first.far - 1e-6) first = { far, i };
    at += face.length;
  });
  return [...faces.slice(first.i), ...faces.slice(0, first.i)];
};

/** Both sides of every partition that stands now or after the finishing. */
const partitionFaces = (site: Site): { readonly face: WallFace; readonly goes: boolean }[] => {
  const [now, after] = [wallFaces(site, 'now'), wallFaces(site, 'after')];
  return site.partitions.flatMap((p) =>
    (['front', 'back'] as const).flatMap((side) => {
      const stays = faceOf(after, { wall: p.id, face: side });
      const face = stays ?? faceOf(now, { wall: p.id, face: side });
      return face ? [{ face, goes: stays === undefined }] : [];
    }),
  );
};

/** Inside walls one after the other as seen when turning right, then each side of each partition by itself. */
export const unroll = (job: Job): Unrolled[] => {
  const walls: Unrolled[] = [];
  let at = 0;
  for (const face of roomFaces(job)) {
    walls.push({ face, at, goes: false });
    at += face.length;
  }
  for (const { face, goes } of partitionFaces(job.site)) {
    at += APART_IN;
    walls.push({ face, at, goes });
    at += face.length;
  }
  return walls;
};

export const wallOf = (
  walls: readonly Unrolled[],
  on: { readonly wall: string; readonly face: string },
): Unrolled | undefined => walls.find(({ face }) => face.wall === on.wall && face.face === on.face);

/** The wall drawn at a place along the drawing; between two, the nearer. */
export const wallAt = (walls: readonly Unrolled[], x: In): Unrolled | undefined => {
  const far = ({ at, face }: Unrolled): In => Math.max(0, at - x, x - at - face.length);
  return walls.reduce<Unrolled | undefined>(
    (best, w) => (best === undefined || far(w) < far(best) ? w : best),
    undefined,
  );
};

/** Left and right end of a plan outline along a wall, and how near and far from it. */
export const spread = (face: WallFace, outline: readonly Pt[]) => {
  const { minX: left, maxX: right, minY: near, maxY: far } = bounds(outline.map((p) => alongOut(face, p)));
  return { left, right, near, far };
};
