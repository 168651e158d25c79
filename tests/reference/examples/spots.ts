import type { Value } from './asking';
import { readPublished } from './published';
import { electricalSpots } from './spotElectrical';
import { mechanicalSpots } from './spotMechanical';

/** One number of the published spot checks: the sentence, the table file it is from, what it is. */
export interface Spot {
  readonly assertion: string;
  readonly file: string;
  readonly expected: Value;
}
export const SPOTS = readPublished<{ readonly assertions: readonly Spot[] }>('99_spot_checks.json').assertions;

/** What the product's look-up functions say to each, by its sentence. */
export const SPOT_ANSWERS: Readonly<Record<string, () => Value | undefined>> = {
  ...electricalSpots,
  ...mechanicalSpots,
};
