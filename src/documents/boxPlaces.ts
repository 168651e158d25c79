import { boxNames } from '../drawings/newWork';
import type { Box, Plan } from '../facts/result';
import { cross, distance, dot, subtract } from '../geometry/vector';
import type { Job } from '../job/schema';
import type { Id, In, Pt } from '../units/types';

/** Where a thing is, as a tape finds it: off the nearest wall, and along it from its left end. */
export interface FromWall {
  readonly wall: Id;
  readonly off: In;
  readonly along: In;
}

/** The nearest wall of the room that stands beside a point; null where the point lies beside none. */
export const fromWall = (job: Job, [x, y]: Pt): FromWall | null => {
  const corners = job.site.outline;
  const beside = corners.flatMap((corner, i): FromWall[] => {
    const a = corner.at;
    const b = corners[(i + 1) % corners.length]!.at;
    const length = distance(a, b);
    const [along, p] = [subtract(b, a), subtract([x, y], a)];
    const t = dot(p, along) / length;
    // the outline runs clockwise: the room lies right of each wall, and its left end is where it starts
    const off = -cross(along, p) / length;
    return t >= 0 && t <= length && off >= 0 ? [{ wall: corner.id, off, along: t }] : [];
  });
  return beside.sort((a, b) => a.off - b.off)[0] ?? null;
};

/** One splice box with its place in the result. */
export interface BoxRow {
  readonly box: Box;
  readonly at: number;
  readonly name: string;
  readonly from: FromWall | null;
  /** Numbers of the circuits spliced in it, for the label on its cover. */
  readonly numbers: readonly string[];
}

/** New splice boxes as the drawing names them; old cans and the panel are named as what they are. */
export const boxSchedule = (job: Job, plan: Plan): BoxRow[] => {
  const names = boxNames(plan);
  return plan.boxes.map((box, at) => {
    const circuits = job.homeRuns.filter((h) => box.homeRuns.includes(h.id)).flatMap((h) => h.circuits);
    return {
      box,
      at,
      name: names.get(box.id) ?? '',
      from: fromWall(job, [box.at[0], box.at[1]]),
      numbers: job.circuits.filter((c) => circuits.includes(c.id)).map((c) => c.number),
    };
  });
};
