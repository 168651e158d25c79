import type { Row } from '../../facts/result';
import { pointToSegment, SAME_PLACE_IN } from '../../geometry/polygon';
import { dot, subtract, unit } from '../../geometry/vector';
import { UNADJUSTED_LENGTH_IN } from '../../standards/countAdjustment';
import { BESIDE_IN } from '../../standards/editionsCables';
import type { In, Pt3 } from '../../units/types';
import type { FactsInYear } from '../rule';

const plan = ([x, y]: Pt3) => [x, y] as const;
const pieces = ({ path }: Row): [Pt3, Pt3][] => path.slice(1).map((p, i) => [path[i]!, p]);

/** Length of a level piece that another one runs along, near it and at its height, in; 0 where it only crosses. */
const sharedIn = ([a, b]: [Pt3, Pt3], [c, d]: [Pt3, Pt3]): In => {
  const [from, to] = [plan(a), plan(b)];
  const near = [c, d].every((p) => Math.abs(p[2] - a[2]) <= BESIDE_IN && Math.abs(p[2] - b[2]) <= BESIDE_IN);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (!near || length <= SAME_PLACE_IN) return 0;
  const along = unit(subtract(to, from));
  const at = (p: Pt3): number => dot(subtract(plan(p), from), along);
  const aside = (p: Pt3): number => {
    const t = at(p);
    return pointToSegment(plan(p), from, [from[0] + along[0] * t, from[1] + along[1] * t]);
  };
  if (aside(c) > BESIDE_IN || aside(d) > BESIDE_IN) return 0;
  return Math.max(0, Math.min(length, Math.max(at(c), at(d))) - Math.max(0, Math.min(at(c), at(d))));
};

/** Only cables that lie loose along wood can come to touch another row: the others have holes, a board or a raceway of their own. */
const LOOSE = 'loose';

/** Rows that lie along the same stretch for longer than goes unadjusted, and the longest such stretch, in. */
export const rowsBeside = ({ rows }: FactsInYear, row: Row): { readonly rows: number; readonly stretch: In } => {
  if (row.by !== LOOSE) return { rows: 0, stretch: 0 };
  const shared = rows
    .filter((other) => other.id !== row.id && other.by === LOOSE)
    .map((other) => pieces(row).reduce((sum, p) => sum + Math.max(0, ...pieces(other).map((q) => sharedIn(p, q))), 0))
    .filter((length) => length > UNADJUSTED_LENGTH_IN);
  return { rows: shared.length, stretch: Math.max(0, ...shared) };
};
