import { isFeederDrawn } from '../job/feeder';
import type { Job, Option } from '../job/schema';
import { byId } from '../units/order';
import type { Pt3 } from '../units/types';
import { addEdge, compress, emptyBuild } from './csr';
import { crossings, existingPaths, planSegments, terminalsOf } from './existingRuns';
import { layCeiling, linkBays, newLayers } from './layers';
import { drawLines } from './lines';
import { snap } from './networkFrame';
import { type Ground, readGround } from './networkGround';
import { locate, type Spot } from './networkLocate';
import { attach, entryPoints } from './terminals';
import { EDGE, type Extra, LAYER, type Network, pointKey, type RunPoint } from './types';
import { drawWall, layWall } from './walls';
import { joinCeiling, joinWalls, meetings } from './wallsJoin';

/** Every point of the job a cable may start, end or be told to pass, once, in a fixed order. */
const terminalPoints = (job: Job, option: Option, extra: Extra): Pt3[] => {
  const points = [
    ...[...job.enclosures, option.enclosure].flatMap((e) => entryPoints(job.site, e).map((entry) => entry.point)),
    ...existingPaths(job).flatMap(terminalsOf),
    ...job.site.sleeves.flatMap((s) => [s.from, s.to]),
    ...(isFeederDrawn(job) ? [job.feeder.entersAt, ...job.feeder.path] : []),
    ...option.pins.flatMap((pin) => (pin.pin === 'through' ? pin.points : pin.pin === 'splice at' ? [pin.at] : [])),
    ...extra.points,
  ];
  const once = new Map(points.map((p) => [pointKey(p), p] as const));
  return [...once].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, p]) => p);
};

/** Chainages of spots on walls, by face. */
const chainsByFace = (ground: Ground, spots: readonly Spot[]): number[][] => {
  const lists: number[][] = ground.faces.map(() => []);
  for (const spot of spots) if (spot.layer === LAYER.wall) lists[spot.face]!.push(spot.chain);
  return lists;
};

/**
 * The cable network of a house for one option. Modelled as a careful electrician would lay cable:
 * - along joists on their sides, across them through holes in their middle; not along a panned return, not bored in LVL;
 * - just below the joists on a running board (or on their undersides, where the cable may), unless drywall is there or
 *   will be; over a lay-in ceiling; through drywall only where it is opened and patched;
 * - between the joists and the level below only in the middle of a bay, and at walls;
 * - on walls by how they are built today: on plywood, in open stud bays, in a sleeve on bare masonry, behind opened
 *   drywall; into the joists through the top plate; around corners; never through an opening or a panel;
 * - over partitions among the joists (the plate is bored), but not below the joists where they reach them;
 * - clear of everything that blocks cable, today or after the finishing, by its clearance and half a cable.
 */
export const buildNetwork = (job: Job, option: Option, extra: Extra): Network => {
  const ground = readGround(job, option, extra.without ?? []);
  const { frame } = ground;
  const paths = existingPaths(job);
  const terminals = terminalPoints(job, option, extra).map((p) => locate(ground, p));
  const segments = paths.flatMap((run) => planSegments(frame, run));
  const more = (extra.lines ?? []).map((p) => snap(frame, p));
  const lines = drawLines(ground, terminals, segments, more);
  const met = paths.map((run) => ({ run, points: crossings(frame, lines, run) }));
  const crossed = new Map(
    met.flatMap(({ points }) => points.map((c) => [pointKey(c.point), locate(ground, c.point)] as const)),
  );
  for (const spot of terminals) crossed.delete(pointKey(spot.point));

  const g = emptyBuild();
  const layers = newLayers();
  layCeiling(g, ground, lines, layers);
  const own = chainsByFace(ground, terminals);
  const passing = chainsByFace(ground, [...crossed.values()]);
  const corners = meetings(ground);
  const walls = ground.faces.map((_, i) =>
    drawWall(ground, i, lines, [...own[i]!, ...passing[i]!, ...(corners.get(i) ?? [])]),
  );
  for (const wall of walls) layWall(g, ground, wall);
  joinWalls(g, ground, walls);
  for (const wall of walls) joinCeiling(g, ground, wall, layers, own[wall.index]!);
  linkBays(g, ground, layers);

  const at = new Map<string, number>();
  for (const spot of terminals) at.set(pointKey(spot.point), attach(g, ground, walls, layers, spot, true));
  for (const [key, spot] of crossed) at.set(key, attach(g, ground, walls, layers, spot, false));
  for (const sleeve of byId(job.site.sleeves)) {
    const [a, b] = [at.get(pointKey(sleeve.from))!, at.get(pointKey(sleeve.to))!];
    const long = Math.hypot(...sleeve.from.map((c, k) => c - sleeve.to[k]!));
    addEdge(g, a, b, Math.round(long * 64), EDGE.oldSleeve);
  }
  return {
    ...compress(g),
    faces: ground.faces.map((f) => ({ id: f.id, wall: f.face.wall, studs64: f.studs64 })),
    frame,
    framing: ground.regions,
    assumed: ground.assumed,
    made: { job, option, extra },
    at,
    paths: new Map(
      met.map(({ run, points }) => [
        run.key,
        points.map(({ chain, point }): RunPoint => ({ node: at.get(pointKey(point))!, chain, point })),
      ]),
    ),
  };
};

/** The node of a point that was a terminal, a point of an existing run or a panel entry. */
export const nodeAt = (network: Network, point: Pt3): number | undefined => network.at.get(pointKey(point));

/** Exact place of a node in the job, inches. */
export const pointOf = (network: Network, node: number): Pt3 => [
  network.px[node]!,
  network.py[node]!,
  network.pz[node]!,
];
