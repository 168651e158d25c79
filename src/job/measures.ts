import { edges, type Polygon, pointToSegment, SAME_PLACE_IN, segmentsCross, signedArea } from '../geometry/polygon';
import { cross, distance, dot, subtract } from '../geometry/vector';
import type { Id, In, Pt, Pt3 } from '../units/types';
import { jobWords } from '../words/en/job';
import type { Problem } from './faults';
import type { Path } from './pointer';
import type { Job, OnWall, Site } from './schema';

/** Half the precision of a stored length: what two rounded measures of the same thing may differ by. */
const TOLERANCE_IN = 1 / 64;

const zeroEdge = (outline: Polygon): number => edges(outline).findIndex(([a, b]) => distance(a, b) <= SAME_PLACE_IN);

/** Two edges that share no corner may not meet at all; two that do may not run back over each other. */
const crossesItself = (outline: Polygon): boolean => {
  const all = edges(outline);
  return all.some(([a, b], i) => {
    const [, c] = all[(i + 1) % all.length]!;
    const foldsBack =
      Math.abs(cross(subtract(b, a), subtract(c, b))) <= SAME_PLACE_IN && dot(subtract(b, a), subtract(c, b)) < 0;
    return (
      foldsBack ||
      all.some(([p, q], k) => {
        const apart = Math.abs(i - k);
        if (k < i || apart <= 1 || apart === all.length - 1) return false;
        return segmentsCross(a, b, p, q) || meets(a, p, q) || meets(b, p, q) || meets(p, a, b) || meets(q, a, b);
      })
    );
  });
};
const meets = (p: Pt, a: Pt, b: Pt): boolean => pointToSegment(p, a, b) <= SAME_PLACE_IN;

const outlineProblem = (outline: Polygon, path: Path): Problem[] => {
  const zero = zeroEdge(outline);
  if (zero >= 0) return [{ type: 'zero-length', path: [...path, zero], say: jobWords.zeroEdge }];
  if (crossesItself(outline)) return [{ type: 'crosses-itself', path, say: jobWords.crossesItself }];
  if (Math.abs(signedArea(outline)) <= SAME_PLACE_IN) return [{ type: 'no-area', path, say: jobWords.noArea }];
  return [];
};

const roomProblems = (site: Site): Problem[] => {
  const corners = site.outline.map((c) => c.at);
  const path = ['site', 'outline'];
  const zero = zeroEdge(corners);
  if (zero >= 0) return [{ type: 'zero-length', path: [...path, zero, 'at'], say: jobWords.zeroWall }];
  const wrong = outlineProblem(corners, path);
  if (wrong.length > 0) return wrong;
  return signedArea(corners) > 0 ? [{ type: 'not-clockwise', path, say: jobWords.notClockwise }] : [];
};

/** Length of a wall's faces, undefined where there is no such wall. */
const wallLength = (site: Site, wall: Id): In | undefined => {
  const i = site.outline.findIndex((c) => c.id === wall);
  if (i >= 0) return distance(site.outline[i]!.at, site.outline[(i + 1) % site.outline.length]!.at);
  const partition = site.partitions.find((p) => p.id === wall);
  return partition && distance(partition.from, partition.to);
};

const onItsWall = (site: Site, on: OnWall, width: In, path: Path): Problem[] => {
  const length = wallLength(site, on.wall);
  const right = on.left + width;
  if (length === undefined || (on.left >= -TOLERANCE_IN && right <= length + TOLERANCE_IN)) return [];
  const v = { left: on.left, right, length: Math.round(length * 64) / 64 };
  return [{ type: 'beyond-wall', path: [...path, 'left'], say: jobWords.beyondWall(v) }];
};

/** At least two points that are not the same place. */
const isRun = (points: readonly Pt3[]): boolean =>
  points.some((p) => p.some((v, i) => Math.abs(v - points[0]![i]!) > SAME_PLACE_IN));
const runProblem = (points: readonly Pt3[], path: Path): Problem[] =>
  isRun(points) ? [] : [{ type: 'zero-length', path, say: jobWords.shortRun }];

/** Low, likely and high in their order: a range that runs backward would be printed as one. */
const rangeProblems = (job: Job): Problem[] => {
  if (job.priceBook === 'default') return [];
  const { tasks, allowances, wage, dollarsPerCrewHour } = job.priceBook;
  const lists = { tasks, allowances };
  const ranges = Object.entries(lists).flatMap(([key, list]) =>
    list.flatMap((r, i) =>
      r.low <= r.likely && r.likely <= r.high
        ? []
        : [{ type: 'backward-range', path: ['priceBook', key, i], say: jobWords.backwardRange(r) }],
    ),
  );
  const paid = wage && wage.dollarsPerHour * (1 + wage.burden);
  if (paid === null || Math.abs(paid - dollarsPerCrewHour) <= HALF_A_CENT) return ranges;
  const v = { paid: paid.toFixed(2), rate: dollarsPerCrewHour.toFixed(2) };
  return [...ranges, { type: 'wage-differs', path: ['priceBook', 'wage'], say: jobWords.wageDiffers(v) }];
};
/** What rounding a labor-hour to whole cents may take away, in dollars, and the dust of binary fractions. */
const HALF_A_CENT = 0.005 + 1e-9;

/** The hour work ends lies after the one it starts at. */
const dayProblems = ({ terms }: Job): Problem[] =>
  terms.startsAt < terms.endsAt
    ? []
    : [{ type: 'backward-interval', path: ['terms', 'endsAt'], say: jobWords.backwardDay(terms) }];

/** What the schema cannot see: whether the measured things are geometrically possible. */
export const measureProblems = (job: Job): Problem[] => {
  const { site } = job;
  return [
    ...roomProblems(site),
    ...rangeProblems(job),
    ...dayProblems(job),
    ...site.partitions.flatMap((p, i) =>
      distance(p.from, p.to) <= SAME_PLACE_IN
        ? [{ type: 'zero-length', path: ['site', 'partitions', i, 'to'], say: jobWords.zeroWall }]
        : [],
    ),
    ...site.openings.flatMap((o, i) => onItsWall(site, o.on, o.width, ['site', 'openings', i, 'on'])),
    ...site.areas.flatMap((a, i) => outlineProblem(a.outline, ['site', 'areas', i, 'outline'])),
    ...site.framing.flatMap((f, i) => (f.outline ? outlineProblem(f.outline, ['site', 'framing', i, 'outline']) : [])),
    ...site.bays.flatMap((b, i) => outlineProblem(b.outline, ['site', 'bays', i, 'outline'])),
    ...site.sleeves.flatMap((s, i) => runProblem([s.from, s.to], ['site', 'sleeves', i, 'to'])),
    ...job.enclosures.flatMap((e, i) => onItsWall(site, e.on, e.size.width, ['enclosures', i, 'on'])),
    ...job.cableGroups.flatMap((g, i) => [
      ...runProblem(g.path, ['cableGroups', i, 'path']),
      ...g.reachable.flatMap(([from, to], k) =>
        from > to
          ? [
              {
                type: 'backward-interval',
                path: ['cableGroups', i, 'reachable', k],
                say: jobWords.backwardInterval({ from, to }),
              },
            ]
          : [],
      ),
    ]),
    ...job.homeRuns.flatMap((h, i) => (h.ownPath ? runProblem(h.ownPath, ['homeRuns', i, 'ownPath']) : [])),
    ...job.options.flatMap((o, i) => [
      ...onItsWall(site, o.enclosure.on, o.enclosure.size.width, ['options', i, 'enclosure', 'on']),
      ...o.pins.flatMap((pin, k) =>
        pin.pin === 'keep out' ? outlineProblem(pin.outline, ['options', i, 'pins', k, 'outline']) : [],
      ),
    ]),
  ];
};
