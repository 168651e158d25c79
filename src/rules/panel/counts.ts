import { isKnown, type U } from '../../units/types';
import { cannotBeTold, holds, type Says, stops } from '../rule';

/** What a count in the panel is compared with, and how it is said. */
export interface Count {
  readonly needed: number;
  readonly has: U<number>;
  readonly unit: string;
  readonly path: string;
  readonly say: {
    readonly holds: (v: { needed: number; has: number }) => string;
    readonly fails: (v: { needed: number; has: number }) => string;
    readonly unknown: () => string;
    readonly look: () => string;
    readonly remedy: () => string;
  };
}

/** Enough of something in the panel: spaces, knockouts, terminals. Equal is enough. */
export const enough = ({ needed, has, unit, path, say }: Count): Says => {
  const measure = { measured: isKnown(has) ? has : null, required: needed, unit };
  if (!isKnown(has)) return cannotBeTold(say.unknown(), say.look(), [path], measure);
  return needed <= has
    ? holds(say.holds({ needed, has }), measure)
    : stops(say.fails({ needed, has }), { ...measure, remedies: [{ say: say.remedy(), cents: null, work: [] }] });
};
