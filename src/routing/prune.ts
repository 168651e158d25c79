import type { Choice, Problem } from './choice';

/**
 * Leaves out what no cheapest answer needs, exactly:
 * a choice at a spot that costs at least as much as one of the same home run that needs no spot, and
 * a spot another spot can stand in for: whoever could splice there can splice here for no more (moving everybody over
 * only saves, since boxes packed together never cost more than boxes packed apart).
 */
export const prune = (problem: Problem): Problem => {
  const charged = (c: Choice) => c.mills + c.penalties.reduce((s, p) => s + problem.penalties[p]!, 0);
  const worthwhile = problem.runs.map((choices) => {
    const free = Math.min(...choices.filter((c) => c.spot === null).map(charged), Number.POSITIVE_INFINITY);
    return choices.filter((c) => c.spot === null || c.mills < free);
  });
  const at = problem.spots.map((_, j) => worthwhile.map((choices) => choices.filter((c) => c.spot === j)));
  const covers = (a: readonly Choice[], b: readonly Choice[]) =>
    b.every((c) =>
      a.some((d) => d.load === c.load && d.mills <= c.mills && d.penalties.every((p) => c.penalties.includes(p))),
    );
  const standsIn = (i: number, j: number) =>
    problem.spots[i]!.mills <= problem.spots[j]!.mills &&
    problem.spots[i]!.boxes === problem.spots[j]!.boxes &&
    at[j]!.every((b, r) => covers(at[i]![r]!, b));
  const used = problem.spots.map((_, j) => at[j]!.some((list) => list.length > 0));
  const gone = problem.spots.map(() => false);
  for (let j = 0; j < problem.spots.length; j++) {
    if (!used[j]) {
      gone[j] = true;
      continue;
    }
    for (let i = 0; i < problem.spots.length && !gone[j]; i++) {
      if (i === j || gone[i] || !used[i] || !standsIn(i, j)) continue;
      // equal spots: the earlier one stays, so that exactly one of them does
      if (i < j || !standsIn(j, i)) gone[j] = true;
    }
  }
  const kept = problem.spots.flatMap((_, j) => (gone[j] ? [] : [j]));
  const renumbered = new Map(kept.map((j, k) => [j, k]));
  return {
    ...problem,
    spots: kept.map((j) => problem.spots[j]!),
    runs: worthwhile.map((choices) =>
      choices.flatMap((c) =>
        c.spot === null ? [c] : renumbered.has(c.spot) ? [{ ...c, spot: renumbered.get(c.spot)! }] : [],
      ),
    ),
  };
};
