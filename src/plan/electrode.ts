import type { Plan } from '../facts/result';
import { isFeederDrawn } from '../job/feeder';
import type { Job, OnWall, Option } from '../job/schema';
import { enclosureCenter, faceOf, pointOnFace, wallFaces } from '../job/site';
import { gecSize } from '../standards/electrodeConductor';
import { BEYOND } from '../standards/source';
import { isKnown, type Pt3 } from '../units/types';

const pointOf = (job: Job, on: OnWall): Pt3 | undefined => {
  const face = faceOf(wallFaces(job.site, 'after'), on);
  if (!face) return undefined;
  const [x, y] = pointOnFace(face, on.left);
  return [x, y, on.bottom];
};

/** Along walls and ceilings: the sum of the three distances. */
const around = (a: Pt3, b: Pt3): number => Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]);

/**
 * The grounding electrode conductor an option moves or adds: only where the old panel is service equipment, holds the
 * electrode and a new service disconnect takes over. It must land at or ahead of that disconnect (250.24(A)(1)). Size
 * by Table 250.66 in copper; length from the old panel around to the disconnect, or to where the feeder enters.
 */
export const electrodeMove = (job: Job, option: Option): Plan['electrode'] => {
  if (option.kind !== 'relocate' || option.serviceDisconnect === null) return null;
  const old = job.enclosures.find(
    (e) => e.role === 'service' && e.electrodeLandsHere === true && option.replaces.some((r) => r.enclosure === e.id),
  );
  const from = old && enclosureCenter(job.site, 'now', old);
  const { size, metal } = job.feeder.cable;
  if (!from || !isKnown(size) || !isKnown(metal)) return null;
  const gec = gecSize(metal, size);
  const { on } = option.serviceDisconnect;
  const to = on !== 'outdoors' ? pointOf(job, on) : isFeederDrawn(job) ? job.feeder.entersAt : undefined;
  return gec === BEYOND || !to ? null : { size: gec, length: Math.round(around(from, to) * 64) / 64 };
};
