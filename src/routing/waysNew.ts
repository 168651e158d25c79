import { thingNamed } from '../job/names';
import { toPointer } from '../job/pointer';
import type { Job } from '../job/schema';
import { formatFeetInches } from '../units/length';
import type { Id, In } from '../units/types';
import { isKnown } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { besideSpliced, type Candidate, candidate, item, newCableItems, splices, type Terms } from './candidate';
import { BACK_FROM_CUT_IN } from './cutIn';
import { limit64 } from './cutInKinds';
import { pointAlong, runPoints } from './existingRuns';
import { labelWithin } from './frontier';
import type { HomeRunFacts } from './homeRunFacts';
import type { Routes, Way3 } from './routes';
import { type BoxSite, placeKey } from './sites';
import type { Spurs } from './spurs';
import type { Assumed } from './types';
import type { OldWays } from './waysOld';

const feet = (x: In) => formatFeetInches(x, 8);

/** Cable kinds that are not cut into upstream. */
export const barredFromCutIn = (f: HomeRunFacts): string | null => {
  if (f.homeRun.cable.kind === 'knob-and-tube') return say.becauseKnobAndTube();
  if (f.homeRun.cable.kind === 'conductors in raceway') return say.becauseRaceway();
  if (f.runAnew !== 'never') return say.becauseThreeWire();
  return null;
};

/** The routes worth having from a place: the cheapest, and the cheapest within each length that matters. */
const variants = (routes: Routes, node: number, f: HomeRunFacts, limits: readonly In[]) => {
  const cheap = routes.to(node, f.newCable, f.type, 'new', 'cheap');
  if (!cheap) return [];
  const found: { variant: string; way: Way3 }[] = [{ variant: 'cheap', way: cheap }];
  for (const limit of limits) {
    if (found.some(({ way }) => way.length <= limit)) continue;
    const ways = routes.bounded(f.newCable, f.type, 'new', limit64(limits.at(-1)!));
    for (let label = labelWithin(ways, node, limit64(limit)); label >= 0; label = ways.next[label]!) {
      const way = routes.along(ways, label, f.newCable, f.type, 'new');
      if (way.length > limit) continue;
      found.push({ variant: `within ${limit}`, way });
      break;
    }
  }
  return found;
};

/** Cut in upstream, the splice in a box at each place the old cable gets to. */
export const cutInWays = (
  terms: Terms,
  routes: Routes,
  spurs: Spurs,
  sites: readonly BoxSite[],
  f: HomeRunFacts,
  limits: readonly In[],
  old: OldWays,
): Candidate[] => {
  if (barredFromCutIn(f) !== null) return [];
  const { freeInBox, tailInPanel } = terms.practice;
  return sites.flatMap((site) => {
    const spur = spurs.to(f, site.node);
    if (!spur) return [];
    const cut = Math.max(0, spur.leaves.chain - spur.length - BACK_FROM_CUT_IN);
    return variants(routes, site.node, f, limits).map(({ variant, way }) =>
      candidate(terms, {
        id: `cut-in ${site.key} ${variant}`,
        way: 'cut-in',
        spot: `box ${site.key}`,
        needsBox: true,
        cutIn: pointAlong(f.path, cut),
        newCable: f.newCable,
        stretches: spur.way ? [spur.way, way] : [way],
        free: freeInBox + tailInPanel,
        conductorsSpliced: f.conductors,
        own: (path, length) => [...newCableItems(f, path, length, []), splices(f)],
        beside: [...besideSpliced(f), item('abandoned cable', 1)],
        why: old.short
          ? say.cutInShort({ ...old.short, short: old.short.by, length: feet(way.length) })
          : say.cutIn({ length: feet(way.length) }),
      }),
    );
  });
};

/** An old can kept for splices, and the places on its wall where cables leave it. */
export interface SpliceCan {
  readonly id: Id;
  readonly nodes: readonly number[];
}

/** Joined in the old can, extended from its wall. */
export const spliceCanWays = (
  terms: Terms,
  routes: Routes,
  can: SpliceCan | undefined,
  f: HomeRunFacts,
  limits: readonly In[],
): Candidate[] => {
  if (!can || f.homeRun.cable.kind === 'knob-and-tube' || f.runAnew !== 'never') return [];
  const { freeInBox, tailInPanel } = terms.practice;
  return can.nodes.flatMap((node) =>
    variants(routes, node, f, limits).map(({ variant, way }) =>
      candidate(terms, {
        id: `splice can ${can.id} ${placeKey(routes.network, node)} ${variant}`,
        way: 'splice can',
        spot: `can ${can.id}`,
        newCable: f.newCable,
        stretches: [way],
        free: freeInBox + tailInPanel,
        conductorsSpliced: f.conductors,
        own: (path, length) => [...newCableItems(f, path, length, [], 2), splices(f)],
        beside: besideSpliced(f),
        why: say.spliceCan({ can: thingNamed(terms.job, can.id), length: feet(way.length) }),
      }),
    ),
  );
};

/** Taken for the hidden part of a home run whose length nobody knows, while ways are compared. Common practice, no source. */
const HIDDEN_WHEN_UNKNOWN_IN = 600;

/**
 * A new cable to the first outlet: the last resort, at the old cable's whole length. Without a clear way it is offered
 * only where what bars it is asked for, because nothing else is left.
 */
export const newHomeRunWay = (
  terms: Terms,
  routes: Routes,
  f: HomeRunFacts,
  because: string | null,
  blockedBy: ((node: number) => readonly Id[]) | null,
): Candidate | null => {
  const { freeInBox, tailInPanel } = terms.practice;
  const end = runPoints(routes.network, f.id).at(-1);
  const way = end ? routes.to(end.node, f.newCable, f.type, 'new', 'cheap') : null;
  if (!way && !blockedBy) return null;
  const whole = f.homeRun.wholeLength;
  const hidden = isKnown(whole) ? Math.max(0, whole - f.pathLength) : 0;
  const by = way ? [] : end ? blockedBy!(end.node) : [f.group.id];
  const trade = f.type.slice('cable:'.length);
  return candidate(terms, {
    id: 'new home run',
    way: 'new home run',
    newCable: f.newCable,
    stretches: way ? [way] : [],
    hidden,
    free: freeInBox + tailInPanel,
    own: (path, length) => [
      ...newCableItems(f, path, length, []),
      item('new home run', 1),
      ...(isKnown(whole) ? [] : [item(`length unknown:${trade}`, 1)]),
    ],
    beside: [
      ...besideSpliced(f),
      item('abandoned cable', 1),
      ...(isKnown(whole)
        ? []
        : [item(f.type, HIDDEN_WHEN_UNKNOWN_IN / 12), item('pull ft', HIDDEN_WHEN_UNKNOWN_IN / 12)]),
    ],
    why: way
      ? because === null
        ? say.newHomeRun()
        : say.newHomeRunOnly({ because })
      : say.blocked({ by: by.map((id) => thingNamed(terms.job, id)).join(', ') }),
    blockedBy: by,
  });
};

export const hiddenAssumption = (job: Job, f: HomeRunFacts): Assumed => ({
  path: toPointer(['homeRuns', job.homeRuns.indexOf(f.homeRun), 'wholeLength']),
  value: Math.round(f.pathLength) + HIDDEN_WHEN_UNKNOWN_IN,
});

/** Stays in an old panel that the option does not replace, or keeps as a subpanel. */
export const staysOnOldWay = (terms: Terms, f: HomeRunFacts): Candidate =>
  candidate(terms, {
    id: 'stays on old panel',
    way: 'stays on old panel',
    stretches: [],
    own: () => [],
    why: say.staysOnOld({ can: thingNamed(terms.job, f.can?.id ?? f.group.enclosure) }),
  });
