import type { Plan } from '../facts/result';
import { type Bounds, bounds } from '../geometry/polygon';
import type { Job, Option } from '../job/schema';
import type { Id, In, Pt, Pt3 } from '../units/types';
import { dimensionPanel, dimensionWalls } from './dimensions';
import { drawPlanMap, PLAN_MAP_IN } from './drawMap';
import { drawPlanPlaces, type PlacesByFace } from './drawPlaces';
import { type Drawing, type Drawn, inOrder } from './items';
import { drawJoists } from './joists';
import { keyNotes } from './keyNotes';
import type { MapModel } from './mapModel';
import { drawMarks } from './marks';
import { drawNames } from './names';
import { drawBoxes, drawLimits, drawNewFeeder, drawNewPanel, drawOneRun, drawRoutes, tagRows } from './newWork';
import { drawOldFeeder, drawOldPanels, drawOldRuns } from './oldWork';
import { drawOpenings, sweptBy } from './openings';
import { drawSpaces } from './spaces';
import { drawThings } from './things';
import { drawOutline, drawPartitions, wallQuads } from './walls';

export interface DrawingOf {
  /** Drawn by itself over all others. */
  readonly homeRun: Id | null;
  /** On small paper the lengths of the walls are left out, so that there is more room; the panel's place stays. */
  readonly small: boolean;
  /** Where the new panel can go, where that is shown. */
  readonly places?: PlacesByFace | null;
  /** What it comes to where it can go, where that is asked for. */
  readonly map?: MapModel | null;
}

const grown = ({ minX, minY, maxX, maxY }: Bounds, by: In): Bounds => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

const flat = ([x, y]: Pt3): Pt => [x, y];

/** Seen from above: the room after the finishing, the old work, and an option's new work as far as it is planned. */
export const planDrawing = (
  job: Job,
  option: Option,
  plan: Plan | null,
  { homeRun, small, places = null, map = null }: DrawingOf,
): Drawing => {
  const { site } = job;
  const items: Drawn[] = [
    ...drawJoists(site),
    ...drawOutline(site),
    ...drawPartitions(site),
    ...drawOpenings(site),
    ...drawThings(site, option.moves),
    ...drawOldRuns(job, plan),
    ...drawOldFeeder(job, plan),
    ...drawOldPanels(job, option, plan),
    ...drawNewPanel(job, option),
    ...[...(small ? [] : dimensionWalls(site)), ...dimensionPanel(job, option, small)].map((d) =>
      map ? { ...d, clear: d.clear + PLAN_MAP_IN } : d,
    ),
    ...(map ? drawPlanMap(job, option, map) : []),
    ...(places && !map ? drawPlanPlaces(site, option, places) : []),
    ...drawNames(job, option, plan, small),
  ];
  if (plan) {
    items.push(
      ...drawSpaces(job, option, plan),
      ...drawNewFeeder(plan),
      ...drawRoutes(plan),
      ...drawBoxes(job, plan),
      ...drawLimits(plan, flat),
      ...(small ? [] : tagRows(plan, flat)),
      ...drawMarks(job, option, plan, keyNotes(plan.findings)),
    );
    if (homeRun !== null) items.push(...drawOneRun(plan, homeRun));
  }
  const extent = bounds([...wallQuads(site).flatMap((w) => w.quad), ...sweptBy(site)]);
  return {
    items: inOrder(items),
    extent: map ? grown(extent, PLAN_MAP_IN) : extent,
  };
};
