import { plannedAt, relocated } from '../src/plan/map/lookAt';
import { mapSteps } from '../src/plan/map/mapSteps';
import { positionsOf } from '../src/plan/map/positions';
import { splicesOnly } from '../src/plan/map/splicesOnly';
import { stageOf } from '../src/plan/stages';
import { lengthWeights } from '../src/routing/prices';
import { settingOf } from '../src/routing/problem';
import { makeRoutes } from '../src/routing/routes';
import { ALONE } from '../src/routing/share';
import { sweep } from '../src/routing/sweep';
import { panelEntries } from '../src/routing/terminals';
import { basement } from './basement';
import { interleaved, type Line } from './rounds';

const CIRCUITS = 42;

/** B6: the whole map with every cable spliced where it lies, and one clear place planned, in sweeps (S). */
export const mapLines = (): Line[] => {
  const job = basement(CIRCUITS);
  const option = relocated(job.options[0]!);
  const stage = stageOf(job, option, 'live');
  const { ask, facts, network } = settingOf(stage.ask);
  const weights = makeRoutes(network, option.enclosure, ask.unit, ALONE).weights(
    facts[0]!.newCable,
    facts[0]!.type,
    'new',
  );
  const lengths = lengthWeights(network);
  const sources = panelEntries(network, option.enclosure).map(({ node, cost }) => ({ node, cost }));
  const positions = positionsOf(job, option);
  const clear = positions.filter((p) => p.why === null);
  let at = 0;
  const ms = interleaved({
    sweep: () => sweep(network, weights, sources, Number.POSITIVE_INFINITY, lengths),
    reckoned: () => {
      const reckon = splicesOnly(stage);
      return positions.map((p) => reckon(p.on).mills);
    },
    first: () => mapSteps(job, option).next(),
    planned: () => {
      const { on } = clear[(at++ * 17) % clear.length]!;
      return plannedAt(job, option, { on, upright: option.enclosure.upright }, 'live');
    },
  });
  const inSweeps = (x: number): number => x / ms.sweep;
  const most = 1.3 * CIRCUITS;
  const reckoned = inSweeps(ms.reckoned);
  const planned = inSweeps(ms.planned);
  return [
    {
      id: 'B6',
      what: `where it can go: ${positions.length} places on every wall, ${CIRCUITS} circuits, splices only`,
      goal: `≤ ${most.toFixed(1)} S = 1.3 C S`,
      measured: `${reckoned.toFixed(1)} S = ${(reckoned / CIRCUITS).toFixed(2)} C S`,
      ok: reckoned <= most,
    },
    {
      id: 'B6',
      what: 'the same with rules, what bars each place and one plan to begin from',
      goal: 'printed',
      measured: `${inSweeps(ms.first).toFixed(1)} S`,
      ok: null,
    },
    {
      id: 'B6',
      what: `one of ${clear.length} clear places planned with load, rules, findings and price`,
      goal: '≤ 11 S',
      measured: `${planned.toFixed(1)} S`,
      ok: planned <= 11,
    },
  ];
};
