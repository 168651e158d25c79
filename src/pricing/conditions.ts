import type { Work } from '../facts/work';
import type { PriceBook } from '../job/schema';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { indexBook } from './assemblies';
import { assemblyOf } from './items';

export interface Conditions {
  /** Somebody lives in the house during the work. */
  readonly occupied: boolean;
  /** Finished or crowded room. */
  readonly crowded: boolean;
}

/** Work that stands for the hours lost to conditions: one 'labor-hour' for every likely hour of the work given. Each counts on the plain hours; they do not multiply. */
export const conditionWork = (work: readonly Work[], book: PriceBook, conditions: Conditions): Work[] => {
  const { tasks } = indexBook(book);
  const hours = new Map<Id | null, number>();
  for (const { item, quantity, alternate } of [...work].sort((a, b) => compareText(a.item, b.item)))
    for (const task of assemblyOf(item)?.tasks ?? [])
      hours.set(alternate, (hours.get(alternate) ?? 0) + quantity * task.quantity * (tasks.get(task.id)?.likely ?? 0));
  return (['occupied', 'crowded'] as const)
    .filter((name) => conditions[name])
    .flatMap((item) =>
      [...hours]
        .filter(([, sum]) => sum !== 0)
        .sort(([a], [b]) => compareText(a ?? '', b ?? ''))
        .map(([alternate, sum]) => ({
          item,
          quantity: Math.round(sum * 1e4) / 1e4,
          homeRuns: [],
          rule: null,
          alternate,
        })),
    );
};
