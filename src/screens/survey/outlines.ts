import { canOutline } from '../../drawings/oldWork';
import { OUTLINE_WALL_IN, partitionQuad, wallQuads } from '../../drawings/walls';
import type { Job, Opening, Site } from '../../job/schema';
import { boxOutline, faceOf, pointOnFace, roomOutline, STUD_WALL_IN, type WallFace, wallFaces } from '../../job/site';
import { knownOr, type Pt } from '../../units/types';
import { fieldValue, type Ref } from './ref';

/** The face a thing hangs on, in whichever state of the house it stands. */
export const faceFor = (site: Site, on: { readonly wall: string; readonly face: string }): WallFace | undefined =>
  faceOf(wallFaces(site, 'now'), on) ?? faceOf(wallFaces(site, 'after'), on);

/** An opening through the thickness of its wall. */
export const openingQuad = (site: Site, { on, width }: Pick<Opening, 'on' | 'width'>): Pt[] | null => {
  const face = faceFor(site, on);
  if (!face) return null;
  const back = -knownOr(face.thickness, face.partition ? STUD_WALL_IN : OUTLINE_WALL_IN);
  const at = (s: number, out: number) => pointOnFace(face, s, out);
  return [at(on.left, 0), at(on.left + width, 0), at(on.left + width, back), at(on.left, back)];
};

const flat = (points: unknown): Pt[] =>
  Array.isArray(points) ? points.map((p: readonly number[]): Pt => [p[0]!, p[1]!]) : [];

/** A thing in plan: its outline, or the course it takes. Null for what has no place. */
export const shapeOf = (job: Job, ref: Ref): { readonly points: readonly Pt[]; readonly closed: boolean } | null => {
  const { site } = job;
  const closed = (points: readonly Pt[] | null | undefined) => (points ? { points, closed: true } : null);
  const record = <T extends { readonly id: string }>(list: readonly T[]): T | undefined =>
    list.find((r) => r.id === ref.id);
  switch (ref.list) {
    case '/site/outline':
      return closed(wallQuads(site).find((w) => w.id === ref.id)?.quad);
    case '/site/partitions': {
      const p = record(site.partitions);
      return closed(p && partitionQuad(p));
    }
    case '/site/openings': {
      const o = record(site.openings);
      return closed(o && openingQuad(site, o));
    }
    case '/site/obstacles': {
      const o = record(site.obstacles);
      return closed(o && boxOutline(o.corner, o.size.width, o.size.depth, o.turn));
    }
    case '/enclosures': {
      const e = record(job.enclosures);
      return closed(e && canOutline(job, e));
    }
    case '/site/framing': {
      const f = record(site.framing);
      return closed(f && (f.outline ?? roomOutline(site)));
    }
    case '/site/areas':
    case '/site/bays':
      return closed(flat(fieldValue(job, ref, '/outline')));
    case '/cableGroups':
      return { points: flat(fieldValue(job, ref, '/path')), closed: false };
    case '/site/sleeves':
      return { points: flat([fieldValue(job, ref, '/from'), fieldValue(job, ref, '/to')]), closed: false };
    default:
      return ref.id === '/feeder' && job.feeder.path.length > 0
        ? { points: flat(job.feeder.path), closed: false }
        : null;
  }
};
