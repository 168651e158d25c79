import type { Cut, OrderLine } from '../facts/result';
import type { PriceBook } from '../job/schema';
import { compareText } from '../units/order';
import { bookItemWords as words } from '../words/en/bookItems';

/** What work takes of one price book material, before waste. */
export interface Need {
  readonly id: string;
  readonly quantity: number;
  readonly unit: string;
}

/** More than counted is bought of what gets lost. Common practice, no source. */
const EXTRA: readonly (readonly [id: RegExp, factor: number])[] = [
  [/^connector:/, 1.1],
  [/^staple$/, 1.2],
];
/** Whole pieces and whole feet, up; a count like 11.000000001 is 11. */
const whole = (quantity: number): number => Math.ceil(quantity - 1e-6);
const INCHES_PER_FOOT = 12;

/** One list to buy from: whole coils as the cut list has them, nothing that is in the truck, the rest with its waste. */
export const orderList = (needs: readonly Need[], cuts: readonly Cut[], book: PriceBook): OrderLine[] => {
  const known = new Set(book.materials.map((entry) => entry.id));
  const lines = new Map<string, OrderLine>();
  const lead = new Map(book.lead.map(({ id, days }) => [id, days]));
  const add = (item: string, quantity: number, unit: string): void => {
    const sum = (lines.get(item)?.quantity ?? 0) + quantity;
    if (quantity > 0)
      lines.set(item, { item, say: words.material(item), quantity: sum, unit, leadDays: lead.get(item) ?? null });
  };
  for (const { cable, coils } of cuts)
    for (const { length, bought } of coils) {
      if (!bought) continue;
      const feet = length / INCHES_PER_FOOT;
      const coil = `cable:${cable}@${feet}`;
      if (known.has(coil)) add(coil, 1, 'each');
      else add(`cable:${cable}`, feet, 'ft');
    }
  const cutCables = new Set(cuts.map(({ cable }) => `cable:${cable}`));
  for (const { id, quantity, unit } of needs) {
    if (cutCables.has(id)) continue;
    const factor = EXTRA.find(([pattern]) => pattern.test(id))?.[1] ?? 1;
    add(id, whole(quantity * factor), unit);
  }
  return [...lines.values()].sort((a, b) => compareText(a.item, b.item));
};
