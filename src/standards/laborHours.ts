import type { Standing } from './source';

/**
 * Published ranges of hours for single tasks: planning ranges, no standard. Man-hour manual excerpt, trade forums and
 * how-to pages where a source is given; the rest is trade knowledge ('memory') that the contractor replaces.
 */
export interface TaskHours {
  readonly task: string;
  readonly low: number;
  readonly high: number;
  readonly per: 'each' | '100 ft';
  readonly standing: Standing;
}
const memory = (task: string, low: number, high: number, per: TaskHours['per'] = 'each'): TaskHours => ({
  task,
  low,
  high,
  per,
  standing: 'memory',
});
const sourced = (task: string, low: number, high: number): TaskHours => ({
  task,
  low,
  high,
  per: 'each',
  standing: 'one source',
});

export const TASK_HOURS: readonly TaskHours[] = [
  memory('hang an empty surface panel of 100 to 200 A on its board', 1, 3),
  memory('take out the old panel and tag its circuits', 0.5, 1.5),
  memory('land a 1-pole circuit', 0.15, 0.35),
  memory('land a 2-pole circuit', 0.25, 0.5),
  memory('pull 14/2 or 12/2 through open joists, stapled', 1, 2.5, '100 ft'),
  memory('pull 10/2 or 10/3', 1.5, 3, '100 ft'),
  memory('pull 8/3 or 6/3', 2.5, 4.5, '100 ft'),
  memory('pull aluminum SER up to 1/0', 3.5, 6, '100 ft'),
  memory('pull aluminum SER 2/0 to 4/0', 5, 9, '100 ft'),
  memory('bore a joist, 3/4 to 1 in', 0.03, 0.08),
  sourced('hang a 4 in square box', 0.2, 0.3),
  sourced('hang a one-gang nonmetallic box', 0.1, 0.15),
  memory('hang a screw-cover box of 6 to 12 in', 0.5, 1),
  memory('one twist-on joint', 0.03, 0.07),
  memory('splice a two-wire cable with its EGC', 0.1, 0.25),
  memory('terminate and torque a feeder lug up to 2 AWG', 0.15, 0.3),
  memory('terminate and torque a feeder lug, 1/0 to 250 kcmil', 0.3, 0.6),
  sourced('swap a breaker', 0.17, 0.33),
];

/** Factors on hours: from memory. */
export const CONDITION_FACTORS = {
  'open basement': [1, 1],
  'crowded or finished ceiling': [1.25, 1.5],
  'occupied house': [1.15, 1.4],
} as const;
