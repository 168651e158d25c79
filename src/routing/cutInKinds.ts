import type { AfciPenalty } from '../facts/routing';
import type { In } from '../units/types';
import type { Frontier } from './frontier';
import type { HomeRunFacts } from './homeRunFacts';
import { cableRate } from './prices';
import type { Reckoned, Routes } from './routes';
import type { SpurReckoned, Spurs } from './spurs';

/** Home runs that are cut in at the same costs: old and new cable alike, charged beyond the same lengths. */
export interface CutInKind {
  readonly f: HomeRunFacts;
  readonly spur: SpurReckoned;
  /** Cost of every edge for the old cable and for the new one. */
  readonly weights: { readonly old: Float64Array; readonly new: Float64Array };
  /** Search cost of the new cable alone, 1/128 mill per 1/64 in. */
  readonly rate: number;
  readonly cheap: Reckoned;
  /** Ways of new cable within the longest length that matters; null where none does. */
  readonly within: Frontier | null;
  /** Lengths of new cable beyond which a breaker gets dearer, 1/64 in. */
  readonly limits: readonly number[];
}

/** Lengths of new cable that matter to a home run, inches. `free`: conductor at its ends that counts too. */
export const limitsOf = (penalties: readonly AfciPenalty[], f: HomeRunFacts, free: In): In[] => {
  const mine = penalties.filter((p) => p.mills > 0 && p.homeRuns.includes(f.id));
  return [...new Set(mine.map((p) => p.limitIn - free))].filter((x) => x > 0).sort((a, b) => a - b);
};

/** The same in the search's own unit, 1/64 in. */
export const limit64 = (limit: In): number => Math.floor(limit * 64 + 1e-6);

export const cutInKinds = (
  facts: readonly HomeRunFacts[],
  routesOf: (f: HomeRunFacts) => Routes,
  spurs: Spurs,
  limits: (f: HomeRunFacts) => readonly In[],
): CutInKind[] => {
  const found = new Map<string, CutInKind>();
  const numbers = new Map<Routes, number>();
  for (const f of facts) {
    const routes = routesOf(f);
    if (!numbers.has(routes)) numbers.set(routes, numbers.size);
    const mine = limits(f).map(limit64);
    const key = `${numbers.get(routes)} ${f.type} ${mine.join()} ${spurs.key(f)}`;
    if (found.has(key)) continue;
    found.set(key, {
      f,
      spur: spurs.reckon(f),
      weights: { old: spurs.weights(f), new: routes.weights(f.newCable, f.type, 'new') },
      rate: cableRate(routes.prices(f.newCable, f.type, 'new')),
      cheap: routes.reckon(f.newCable, f.type, 'new'),
      within: mine.length > 0 ? routes.bounded(f.newCable, f.type, 'new', mine.at(-1)!) : null,
      limits: mine,
    });
  }
  return [...found.values()];
};
