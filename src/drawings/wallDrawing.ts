import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import type { Pt, Pt3 } from '../units/types';
import { drawWallMap, MAP_BAND } from './drawMap';
import { BAND, drawWallPlaces } from './drawPlaces';
import { seeCourse, seePoint } from './elevation';
import { type Drawing, type Drawn, inOrder, path, stroke } from './items';
import { keyNotes } from './keyNotes';
import { drawMarks } from './marks';
import { coursesOf, drawLimits } from './newWork';
import type { DrawingOf } from './planDrawing';
import { type Unrolled, unroll } from './unroll';
import { dimensionWallDrawing } from './wallDimensions';
import { topOf } from './wallFraming';
import { drawShell } from './wallShell';
import { drawWallSpaces } from './wallSpaces';
import { drawWallOpenings, drawWallThings, movedFrom } from './wallThings';
import { drawSleeves, drawWallNewWork, drawWallOldWork } from './wallWork';

/** The wall drawing with where each wall begins in it: x along the walls, y up from the finished floor, inches. */
export interface WallDrawing extends Drawing {
  readonly walls: readonly Unrolled[];
}

/**
 * The inside walls unrolled, turning right, with what hangs on them, runs along them and stands within the depth of the
 * working space before them; then each side of each partition. The same option and plan as in the plan drawing.
 */
export const wallDrawing = (
  job: Job,
  option: Option,
  plan: Plan | null,
  { homeRun, small, places = null, map = null }: DrawingOf,
): WallDrawing => {
  const walls = unroll(job);
  const { site } = job;
  const foot = map ? MAP_BAND.to : BAND.to;
  const items: Drawn[] = [
    ...drawShell(job, walls),
    ...drawWallOpenings(site, walls),
    ...movedFrom(site, walls, option.moves),
    ...drawWallThings(job, option, walls),
    ...drawSleeves(job, walls),
    ...drawWallOldWork(job, option, plan, walls),
    ...drawWallNewWork(job, option, plan, walls),
    ...dimensionWallDrawing(job, option, walls, small, foot),
    ...(map ? drawWallMap(job, walls, option, map, places ?? new Map()) : []),
    ...(places && !map ? drawWallPlaces(walls, option, places) : []),
  ];
  if (plan) {
    const see = (p: Pt3): Pt | null => seePoint(site, walls, p);
    items.push(
      ...drawWallSpaces(job, option, plan, walls),
      ...drawMarks(job, option, plan, keyNotes(plan.findings), see),
      ...drawLimits(plan, see),
    );
    for (const { cable, course } of coursesOf(plan))
      if (cable === homeRun)
        for (const wall of walls)
          for (const points of seeCourse(site, wall, course))
            items.push(path('marks', cable, points, stroke('profile', 'ink')));
  }
  const last = walls.at(-1);
  return {
    walls,
    items: inOrder(items),
    extent: {
      minX: 0,
      minY: places || map ? foot : 0,
      maxX: last ? last.at + last.face.length : 1,
      maxY: Math.max(...walls.map((w) => topOf(site, w))),
    },
  };
};
