import type { RoutingAsk } from '../facts/routing';
import type { Id, In } from '../units/types';
import { type CutInKind, cutInKinds, limitsOf } from './cutInKinds';
import { feederPoints } from './feeder';
import type { HomeRunFacts } from './homeRunFacts';
import { buildNetwork } from './network';
import type { Pins } from './pins';
import { makeRoutes, type Routes } from './routes';
import type { Share } from './share';
import { makePlaceCheck, type PlaceCheck } from './sites';
import { makeSpurs, type Spurs } from './spurs';
import { endsOfCutIn, turningPoints } from './turningPoints';
import type { Network } from './types';

/** Every way in one network for one manner of sharing. */
export interface Roads {
  readonly routes: Routes;
  /** A home run pinned through points has routes of its own. */
  readonly of: (homeRun: Id) => Routes;
  readonly spurs: Spurs;
  readonly kinds: readonly CutInKind[];
  readonly may: PlaceCheck;
}

const yes = (value: unknown): boolean => value === true || value === 'yes';

/** Lengths of new cable along a way beyond which a home run's breaker gets dearer, inches. */
export const lengthsThatMatter = ({ job, penalties }: RoutingAsk): ((f: HomeRunFacts) => readonly In[]) => {
  const { practice, code } = job;
  const free = yes(code.amendments.afciCountsTails) ? practice.freeInBox + practice.tailInPanel : 0;
  return (f) => limitsOf(penalties, f, free);
};

export const roadsIn = (
  network: Network,
  ask: RoutingAsk,
  pins: Pins,
  cut: readonly HomeRunFacts[],
  share: Share,
  may: PlaceCheck,
): Roads => {
  const { option, unit } = ask;
  const routes = makeRoutes(network, option.enclosure, unit, share);
  const own = new Map<Id, Routes>();
  const of = (id: Id): Routes => {
    const { through } = pins.of(id);
    if (!through) return routes;
    const made = own.get(id) ?? makeRoutes(network, option.enclosure, unit, share, through.points);
    own.set(id, made);
    return made;
  };
  const spurs = makeSpurs(routes);
  const kinds = cutInKinds(cut, (f) => of(f.id), spurs, lengthsThatMatter(ask));
  return { routes, of, spurs, kinds, may };
};

/**
 * The network with a node at every place where a box may pay, whatever the manner of sharing. While dragging, with the
 * nodes it has anyway.
 */
export const networkFor = (
  ask: RoutingAsk,
  pins: Pins,
  cut: readonly HomeRunFacts[],
  shares: readonly Share[],
): Network => {
  const { job, option, grade } = ask;
  const base = [...feederPoints(ask), ...cut.flatMap(endsOfCutIn)];
  const first = buildNetwork(job, option, { points: base });
  if (grade === 'live' || cut.length === 0) return first;
  const may = makePlaceCheck(first, job.site, option);
  const points = shares.flatMap((share) => turningPoints(first, roadsIn(first, ask, pins, cut, share, may).kinds, may));
  return points.length === 0 ? first : buildNetwork(job, option, { points: [...base, ...points] });
};
