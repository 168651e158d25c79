import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import type { In } from '../units/types';
import { type Label, type Line, ring, stroke } from './items';
import { intrusions, nameIntrusion, workingSpace } from './spaces';
import { spread, type Unrolled, wallOf } from './unroll';
import { box } from './wallThings';

/** Level of a finding's shape: what it was judged at. */
const levelOf = (plan: Plan, panel: string, rule: string): In | null =>
  plan.findings.find((f) => f.rule === rule && f.subject === panel)?.shape?.[0]?.[2] ?? null;

/** The spaces kept clear before and over the new panel, and what stands in them, on its wall. */
export const drawWallSpaces = (job: Job, option: Option, plan: Plan, walls: readonly Unrolled[]): (Line | Label)[] => {
  const { enclosure } = option;
  const wall = wallOf(walls, enclosure.on);
  const space = workingSpace(plan, option);
  if (!wall || !space) return [];
  const { left, right } = spread(wall.face, space);
  const floor = levelOf(plan, enclosure.id, 'WS-DEPTH') ?? 0;
  const head = levelOf(plan, enclosure.id, 'WS-HEIGHT') ?? enclosure.on.bottom + enclosure.size.height;
  const over = levelOf(plan, enclosure.id, 'DEDICATED');
  const top = enclosure.on.bottom + enclosure.size.height;
  const x = wall.at + enclosure.on.left;
  const within = (from: In, to: In, v: In): In => Math.min(to, Math.max(from, v));
  return [
    ring(
      'space',
      'working space',
      box(wall.at + left, wall.at + right, floor, head),
      stroke('object', 'new', 'zone'),
      'zone',
    ),
    ...(over !== null && over > top
      ? [ring('space', 'dedicated space', box(x, x + enclosure.size.width, top, over), stroke('thin', 'new', 'zone'))]
      : []),
    ...intrusions(job, option, plan).flatMap((thing): (Line | Label)[] => {
      const seen = spread(wall.face, thing.outline);
      const [l, r] = [wall.at + seen.left, wall.at + seen.right];
      const reach = over !== null && thing.fromZ >= top ? over : head;
      const [from, to] = [within(floor, reach, thing.fromZ), within(floor, reach, thing.toZ)];
      if (to <= from) return [];
      return [
        ring('space', `in the way: ${thing.id}`, box(l, r, from, to), stroke('thin', 'ink'), 'intrusion'),
        nameIntrusion(thing, [(l + r) / 2, (from + to) / 2]),
      ];
    }),
  ];
};
