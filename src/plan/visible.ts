import type { Leg, Plan, Visible } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { areaAt, faceOf, wallFaces } from '../job/site';
import { formatFeetInches } from '../units/length';
import type { In, Pt } from '../units/types';
import { visibleWords as say } from '../words/en/visible';

/** Ways on which a cable lies before the wall or under the joists. */
const ON_WALL: readonly Leg['by'][] = ['wall board', 'sleeve', 'raceway'];
const UNDER_JOISTS: readonly Leg['by'][] = ['running board', 'joist underside'];

const FINISHED: readonly string[] = ['finished studs', 'furred'];

/** Inches of way on which new cable stays in sight: each stretch once, however many cables lie there. */
const inSight = (job: Job, plan: Plan): In => {
  const seen = new Set<string>();
  let sum = 0;
  for (const { from, to, cable, by } of [...plan.runs.flatMap((r) => r.legs), ...plan.feeder.legs]) {
    const middle: Pt = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const open = () => areaAt(job.site, middle)?.state.after.cover !== 'drywall';
    if (cable === 'old' || !(ON_WALL.includes(by) || (UNDER_JOISTS.includes(by) && open()))) continue;
    const key = [from.join(), to.join()].sort().join(' ');
    if (seen.has(key)) continue;
    seen.add(key);
    sum += Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  }
  return sum;
};

/** What of an option is seen when all is finished. */
export const visibleOf = (job: Job, option: Option, plan: Plan): Visible['things'] => {
  const { enclosure } = option;
  const build = faceOf(wallFaces(job.site, 'after'), enclosure.on)?.build;
  const finished = build !== undefined && FINISHED.includes(build);
  const covers = plan.boxes.filter((b) => b.on === 'joist' || b.on === 'wall').length;
  const cans = plan.boxes.filter((b) => b.on === 'splice can').length;
  const feet = Math.round(inSight(job, plan) / 12);
  return [
    {
      id: 'panel' as const,
      say:
        enclosure.mount === 'recessed'
          ? say.flush
          : say.surface({ depth: formatFeetInches(enclosure.size.depth), finished }),
    },
    ...(covers > 0 ? [{ id: 'boxes' as const, say: say.boxes({ count: covers }) }] : []),
    ...(cans > 0 ? [{ id: 'cans' as const, say: say.cans({ count: cans }) }] : []),
    ...(feet > 0 ? [{ id: 'cable' as const, say: say.cable({ feet }) }] : []),
  ];
};
