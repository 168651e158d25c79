import { inPlan, risesAway } from '../../drawings/courses';
import { dimensionWalls } from '../../drawings/dimensions';
import {
  type Dimension,
  type Drawing,
  type Drawn,
  LAYERS,
  type Label,
  path,
  ring,
  SIDES,
  stroke,
} from '../../drawings/items';
import { drawJoists } from '../../drawings/joists';
import { isNamed, nameRoom, thingLabel } from '../../drawings/names';
import { canOutline, drawOldFeeder } from '../../drawings/oldWork';
import { drawOpenings } from '../../drawings/openings';
import { drawThings, middle, stands } from '../../drawings/things';
import { drawOutline, drawPartitions, wallQuads } from '../../drawings/walls';
import { type Bounds, bounds, pointToSegment } from '../../geometry/polygon';
import type { Job } from '../../job/schema';
import { isKnown, type Pt } from '../../units/types';
import { nameWords } from '../../words/en/names';
import { surveyWords as say } from '../../words/en/survey';

/** Points of the paper between the lines a bundle of cables is drawn with. */
const BESIDE = 2.2;

const drawPanels = (job: Job): Drawn[] =>
  job.enclosures.flatMap((e): Drawn[] => {
    const outline = canOutline(job, e);
    if (!outline) return [];
    const label: Label = {
      item: 'label',
      id: e.id,
      layer: 'names',
      lines: [{ say: say.panelName({ name: nameWords.spoken(e.id) }), lettering: 'small', tone: 'ink-2', size: 11.5 }],
      rank: 2,
      must: false,
      lead: middle(outline),
      ofThing: true,
      places: [10, 22, 36].flatMap((gap) => SIDES.map((side) => ({ at: middle(outline), side, gap }))),
    };
    const measured = isKnown(e.role) && isKnown(e.busAmps);
    return [ring('old work', e.id, outline, stroke('profile', 'old'), measured ? 'paper' : 'not measured'), label];
  });

/** Each group as it lies: three lines, where it goes up through the floor a circle with a dot. */
const drawGroups = (job: Job): Drawn[] => [
  ...job.cableGroups.flatMap((g): Drawn[] => {
    const points = inPlan(g.path);
    const end = g.path.at(-1)!;
    return [
      ...(points.length < 2
        ? []
        : [-BESIDE, 0, BESIDE].map((b) => path('old work', g.id, points, stroke('old', 'old'), b))),
      ...(risesAway(g.path)
        ? [{ item: 'sign', sign: 'from above', id: g.id, layer: 'old work', at: [end[0], end[1]], turn: 0 } as const]
        : []),
    ];
  }),
  ...job.homeRuns.flatMap((h): Drawn[] => {
    const points = h.ownPath ? inPlan(h.ownPath) : [];
    return points.length < 2 ? [] : [path('old work', h.id, points, stroke('old', 'old'))];
  }),
];

/** What the framing of a part covers, bays with something in them, sleeves, edges of areas. */
const drawRegions = (job: Job): Drawn[] => {
  const { site } = job;
  // an edge of an area that runs along a wall is the wall
  const walls = [
    ...site.outline.map((c, i): [Pt, Pt] => [c.at, site.outline[(i + 1) % site.outline.length]!.at]),
    ...site.partitions.map((p): [Pt, Pt] => [p.from, p.to]),
  ];
  const onWall = (a: Pt, b: Pt) =>
    walls.some(([from, to]) => pointToSegment(a, from, to) < 4 && pointToSegment(b, from, to) < 4);
  return [
    ...site.areas.flatMap((a) =>
      a.outline.flatMap((p, i) => {
        const q = a.outline[(i + 1) % a.outline.length]!;
        return onWall(p, q) ? [] : [path('joists', a.id, [p, q], stroke('thin', 'ink-3', 'overhead'))];
      }),
    ),
    ...site.bays.map((b) =>
      ring('joists', b.id, b.outline, stroke('thin', 'ink-3'), b.state === 'insulated' ? 'block' : 'appliance'),
    ),
    ...site.sleeves.map((s) =>
      path(
        'old work',
        s.id,
        [
          [s.from[0], s.from[1]],
          [s.to[0], s.to[1]],
        ],
        stroke('profile', 'ink-2'),
      ),
    ),
  ];
};

/** The survey from above: what stands now and what the finishing brings, no option in it. */
export const surveyDrawing = (
  job: Job,
  { small, extra }: { readonly small: boolean; readonly extra: readonly Drawn[] },
): Drawing => {
  const { site } = job;
  const items: Drawn[] = [
    ...drawJoists(site),
    ...drawRegions(job),
    ...drawOutline(site),
    ...drawPartitions(site),
    ...drawOpenings(site),
    ...drawThings(site, []),
    ...drawGroups(job),
    ...drawOldFeeder(job, null),
    ...drawPanels(job),
    ...(small ? [] : dimensionWalls(site)),
    ...site.areas.map((area) => nameRoom(area, small)),
    ...stands(site, [])
      .filter((stand) => isNamed(job, stand))
      .map((stand) => thingLabel(stand, stand.outline)),
    ...extra,
  ];
  const order = new Map(LAYERS.map((layer, i) => [layer, i]));
  return {
    items: items
      .map((item, i) => ({ item, i }))
      .sort((a, b) => order.get(a.item.layer)! - order.get(b.item.layer)! || a.i - b.i)
      .map(({ item }) => item),
    extent: bounds(wallQuads(site).flatMap((w) => w.quad)),
  };
};

/** A room with more of it to come: its extent and the points typed so far. */
export const extentWith = (extent: Bounds, points: readonly Pt[]): Bounds =>
  bounds([[extent.minX, extent.minY], [extent.maxX, extent.maxY], ...points]);

export const dimensionLine = (id: string, from: Pt, to: Pt): Dimension => ({
  item: 'dimension',
  id,
  layer: 'dimensions',
  from,
  to,
  clear: 0,
  off: 0,
  beyond: 'to',
});
