import type { Job, Option } from '../job/schema';
import { enclosureOnFace } from '../job/site';

/** Does the new cabinet cover part of the wall that an old one covers which goes away? Then one must be down before the other is up. */
export const takesOldPlace = (job: Job, option: Option): boolean => {
  const next = option.enclosure;
  const a = enclosureOnFace(next);
  return job.enclosures
    .filter((e) => option.replaces.some((r) => r.enclosure === e.id))
    .filter((e) => e.on.wall === next.on.wall && e.on.face === next.on.face)
    .map(enclosureOnFace)
    .some((b) => a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top);
};
