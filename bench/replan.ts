import type { Job } from '../src/job/schema';
import { planOption } from '../src/plan/planOption';
import { stageOf } from '../src/plan/stages';
import { lengthWeights } from '../src/routing/prices';
import { settingOf } from '../src/routing/problem';
import { route } from '../src/routing/route';
import { makeRoutes } from '../src/routing/routes';
import { ALONE } from '../src/routing/share';
import { sweep } from '../src/routing/sweep';
import { panelEntries } from '../src/routing/terminals';
import { basement } from './basement';
import { interleaved, type Line, median } from './rounds';

const KINDS = 7;
const FRAMES = 100;

/** The job with its new panel somewhere else on the wall, as a hand drags it. */
const draggedTo = (job: Job, left: number): Job => ({
  ...job,
  options: job.options.map((o) => ({ ...o, enclosure: { ...o.enclosure, on: { ...o.enclosure.on, left } } })),
});
const leftOf = (frame: number) => 60 + ((frame * 7) % 300);

/** S: one sweep over the network of a job, the measure of all others. */
export const oneSweep = (job: Job) => {
  const option = job.options[0]!;
  const { ask, facts, network } = settingOf(stageOf(job, option, 'live').ask);
  const weights = makeRoutes(network, option.enclosure, ask.unit, ALONE).weights(
    facts[0]!.newCable,
    facts[0]!.type,
    'new',
  );
  const lengths = lengthWeights(network);
  const sources = panelEntries(network, option.enclosure).map(({ node, cost }) => ({ node, cost }));
  return () => sweep(network, weights, sources, Number.POSITIVE_INFINITY, lengths);
};

const frames = (job: Job): number[] =>
  Array.from({ length: FRAMES }, (_, i) => {
    const dragged = draggedTo(job, leftOf(i));
    const started = performance.now();
    route(stageOf(dragged, dragged.options[0]!, 'live').ask);
    return performance.now() - started;
  });
const p99 = (list: readonly number[]) => [...list].sort((a, b) => a - b)[Math.floor(list.length * 0.99)]!;

/** B4, B5 and B7: what following the hand takes, in sweeps (S). */
export const replanLines = (): Line[] => {
  const job = basement();
  const [more, wider, crowded] = [basement(66), basement(42, 12, 4), basement(42, 48)];
  let frame = 0;
  const live = (of: Job) => () => {
    const dragged = draggedTo(of, leftOf(frame++));
    return route(stageOf(dragged, dragged.options[0]!, 'live').ask);
  };
  const moved = () => {
    const dx = (frame++ % 20) + 1;
    const obstacles = job.site.obstacles.map((o, i) =>
      i === 0 ? { ...o, corner: [o.corner[0] + dx, o.corner[1]] as [number, number] } : o,
    );
    const changed = { ...job, site: { ...job.site, obstacles } };
    return planOption(changed, changed.options[0]!, 'live');
  };
  const withFindings = () => {
    const dragged = draggedTo(job, leftOf(frame++));
    return planOption(dragged, dragged.options[0]!, 'live');
  };
  const ms = interleaved({
    sweep: oneSweep(job),
    live: live(job),
    withFindings,
    more: live(more),
    wider: live(wider),
    crowded: live(crowded),
    moved,
  });
  const inSweeps = (x: number) => x / ms.sweep;
  const best = [0, 1, 2].map(() => frames(job)).map((list) => p99(list) / median(list));
  const ratio = (id: string, what: string, value: number, goal: number, unit = '×'): Line => ({
    id,
    what,
    goal: `≤ ${goal} ${unit}`,
    measured: `${value.toFixed(1)} ${unit}`,
    ok: value <= goal,
  });
  return [
    ratio(
      'B4',
      `live re-plan of 42 circuits of ${KINDS} kinds in a drag: ways, boxes, AFCI, price`,
      inSweeps(ms.live),
      1.1 * (KINDS + 1),
      'S',
    ),
    {
      id: 'B4',
      what: 'the same with load, rules and findings',
      goal: 'printed',
      measured: `${inSweeps(ms.withFindings).toFixed(1)} S`,
      ok: null,
    },
    ratio('B5', `99th percentile of ${FRAMES} frames beside their median, best of three`, Math.min(...best), 1.8),
    ratio('B5', '42 to 66 circuits', ms.more / ms.live, 1.9),
    ratio('B5', '12 to 48 obstacles', ms.crowded / ms.live, 4),
    ratio('B5', 'four times the area', ms.wider / ms.live, 3),
    ratio('B7', 'an obstacle moved: new plan', inSweeps(ms.moved), 20, 'S'),
  ];
};
