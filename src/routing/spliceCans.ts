import { strictlyInside } from '../geometry/polygon';
import type { Build, Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, solids, wallFaces } from '../job/site';
import { compareText } from '../units/order';
import type { Id, U } from '../units/types';
import { overlap } from './panelPlace';
import { panelEntries } from './terminals';
import { type Network, pathKey } from './types';
import type { SpliceCan } from './waysNew';

const CLOSED: ReadonlySet<U<Build>> = new Set<U<Build>>(['furred', 'finished studs', 'unknown']);
/** A hand and a screwdriver in front of a cover. Common practice, no source. */
const ROOM_IN = 12;

/** Will the can's cover still be at hand when the room is finished (314.29)? */
const staysReachable = (job: Job, option: Option, can: Enclosure): boolean => {
  const now = faceOf(wallFaces(job.site, 'now'), can.on);
  const after = faceOf(wallFaces(job.site, 'after'), can.on);
  if (!after) return false;
  if (CLOSED.has(after.build) && now?.build !== after.build) return false;
  const box = enclosureOnFace(can);
  const front = [box.left + 1, (box.left + box.right) / 2, box.right - 1].map((u) =>
    pointOnFace(after, u, can.size.depth + ROOM_IN / 2),
  );
  return !solids(job.site, 'after', option.moves).some(
    (s) =>
      s.blocksSpace &&
      !s.stored &&
      s.moveCents === null &&
      s.fromZ < box.top &&
      s.toZ > box.bottom &&
      front.some((p) => strictlyInside(p, s.outline)),
  );
};

const refused = (job: Job): boolean => {
  const answer = job.code.amendments.spliceCan;
  return answer === 'no' || answer === false;
};

export interface Cans {
  readonly offered: ReadonlyMap<Id, SpliceCan>;
  /** Cans the option keeps for splices whether or not a home run is joined there. */
  readonly kept: readonly Id[];
}

/** Old panels that may be kept for splices, sorted: where the option says so or leaves it open, and the place and the inspector allow it. */
export const cansLeft = (job: Job, option: Option): Option['replaces'][number][] =>
  [...option.replaces]
    .sort((a, b) => compareText(a.enclosure, b.enclosure))
    .filter(({ enclosure, becomes }) => {
      const can = job.enclosures.find((e) => e.id === enclosure);
      if (!can || (becomes !== 'splice can' && becomes !== 'program chooses')) return false;
      return !refused(job) && !overlap(can, option.enclosure) && staysReachable(job, option, can);
    });

/** The cans that are left, with the nodes at which cables come to them. */
export const spliceCansOf = (job: Job, option: Option, network: Network): Cans => {
  const offered = new Map<Id, SpliceCan>();
  const kept: Id[] = [];
  for (const { enclosure: id, becomes } of cansLeft(job, option)) {
    const can = job.enclosures.find((e) => e.id === id)!;
    if (becomes === 'splice can') kept.push(id);
    const own = job.cableGroups.filter((g) => g.enclosure === id).map((g) => g.path);
    const paths = [
      ...own,
      ...job.homeRuns.flatMap((h) =>
        h.ownPath && own.length > 0 && job.cableGroups.some((g) => g.id === h.group && g.enclosure === id)
          ? [h.ownPath]
          : [],
      ),
    ];
    const nodes = new Set<number>(panelEntries(network, can).map((e) => e.node));
    for (const path of paths) {
      const first = network.paths.get(pathKey(path))?.[0];
      if (first) nodes.add(first.node);
    }
    offered.set(id, { id, nodes: [...nodes].sort((a, b) => a - b) });
  }
  return { offered, kept };
};
