import type { Row } from '../../facts/result';
import type { Framing } from '../../job/schema';
import { framingAt } from '../../job/site';
import { BORING } from '../../standards/boring';
import { byId } from '../../units/order';
import { type Id, type In, isKnown } from '../../units/types';
import { sitePath } from '../reading';
import type { FactsInYear } from '../rule';

export type Hole = Row['holes'][number];

export const FEEDER = 'feeder';
/** The holes a new feeder has to itself; none where its outside, and so the bit, is not known. */
export const feederHoles = ({ feeder }: FactsInYear): Hole[] =>
  feeder.holes.flatMap(({ at, diameter }) => (diameter === null ? [] : [{ at, diameter, homeRuns: [] }]));
/** The rows of holes, and those of the feeder. */
export const boredFor = (facts: FactsInYear): Id[] => [...byId(facts.rows).map((r) => r.id), FEEDER];
export const holesOf = (facts: FactsInYear, subject: Id): readonly Hole[] =>
  subject === FEEDER ? feederHoles(facts) : (facts.rows.find((r) => r.id === subject)?.holes ?? []);

/** A hole in its joist: wood left to the nearer edge, in; null where the joist was not measured. */
export interface HoleIn {
  readonly hole: Hole;
  readonly framing: Framing | undefined;
  readonly edge: In | null;
}
export const holesIn = (facts: FactsInYear, holes: readonly Hole[]): HoleIn[] =>
  holes.map((hole) => {
    const framing = framingAt(facts.job.site, [hole.at[0], hole.at[1]]);
    const { depth = 'unknown', underside = 'unknown' } = framing ?? {};
    if (!isKnown(depth) || !isKnown(underside)) return { hole, framing, edge: null };
    const up = hole.at[2] - underside;
    return { hole, framing, edge: Math.min(up, depth - up) - hole.diameter / 2 };
  });

/** Wood left between two holes, in. */
const woodBetween = (a: Hole, b: Hole): In =>
  Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1], a.at[2] - b.at[2]) - (a.diameter + b.diameter) / 2;

/** A hole with those of all rows and of the feeder that are drawn too near to it to be bored there. */
export const crowdAt = (facts: FactsInYear, hole: Hole): Hole[] =>
  facts.rows
    .flatMap((r) => r.holes)
    .concat(feederHoles(facts))
    .filter((other) => woodBetween(hole, other) < (BORING.joist.betweenIn ?? 0));

/** Stretch of joist that holes side by side take, with the wood between them, in. */
export const stretchFor = (holes: readonly Hole[]): In =>
  holes.reduce((sum, hole) => sum + hole.diameter, 0) + (holes.length - 1) * (BORING.joist.betweenIn ?? 0);

export const framingPaths = (
  facts: FactsInYear,
  holes: readonly HoleIn[],
  keys: readonly ('depth' | 'underside' | 'kind')[],
): string[] =>
  holes.flatMap(({ framing }) =>
    framing
      ? keys.flatMap((key) => (isKnown(framing[key]) ? [] : [sitePath(facts.job, 'framing', framing.id, key)]))
      : ['/site/framing'],
  );
