import type { BoxKind, SolverModel } from '../facts/routing';
import type { Mills } from '../units/money';
import type { Problem } from './choice';
import { type FillOf, leastVolume, mostCables, type SpliceLoad } from './packing';

/** Stopped by count and never by time, so that two machines prove the same. */
const NODE_LIMIT = 20_000;

const fitsAlone = (load: SpliceLoad, kind: BoxKind, fill: FillOf): boolean => {
  const needed = fill({ conductors: load.conductors, grounds: load.grounds, clamps: kind.clamps });
  return needed !== null && needed <= kind.volumeIn3 + 1e-9;
};

const term = (coefficient: number, name: string): string =>
  `${coefficient < 0 ? '-' : '+'} ${Math.abs(coefficient)} ${name}`;
const section = (title: string, lines: readonly string[]): string[] =>
  lines.length > 0 ? [title, ...lines.map((line) => ` ${line}`)] : [];
const sum = (terms: readonly string[]): string => (terms.length > 0 ? terms.join('\n ') : '+ 0 none');

/**
 * The choice of ways, spots and boxes as a mixed-integer model, LP text. Volumes are linear and low and box connectors
 * taken at their least, so its optimum is a bound from below on the true objective. x run_choice, z spot, y spot_kind,
 * p penalty.
 */
export const modelOf = (
  problem: Problem,
  kinds: readonly BoxKind[],
  fill: FillOf,
  price: { readonly box: (kind: BoxKind) => Mills; readonly connector: (size: string) => Mills },
): SolverModel => {
  const types = problem.packer.types;
  const anyClamps = kinds.some((k) => k.clamps);
  const entry = types.map((t) => (anyClamps ? 0 : t.connectors.reduce((s, size) => s + price.connector(size), 0)));
  const volume = types.map((t) => leastVolume(t, fill));
  const objective: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  const integers: string[] = [];
  const loads = problem.spots.map(() => [] as { name: string; type: number }[]);

  problem.runs.forEach((choices, r) => {
    const names = choices.map((c, i) => {
      const name = `x${r}_${i}`;
      binaries.push(name);
      objective.push(term(c.mills + (c.load === null ? 0 : entry[c.load]!), name));
      if (c.spot !== null) {
        rows.push(`${name} - z${c.spot} <= 0`);
        if (c.load !== null) loads[c.spot]!.push({ name, type: c.load });
      }
      for (const p of c.penalties) rows.push(`${name} - p${p} <= 0`);
      return name;
    });
    rows.push(`${names.join(' + ')} = 1`);
  });
  problem.penalties.forEach((mills, p) => {
    binaries.push(`p${p}`);
    objective.push(term(mills, `p${p}`));
  });
  problem.spots.forEach((spot, j) => {
    binaries.push(`z${j}`);
    objective.push(term(spot.mills, `z${j}`));
    if (loads[j]!.length === 0) return;
    kinds.forEach((kind, k) => {
      integers.push(`y${j}_${k}`);
      objective.push(term(price.box(kind), `y${j}_${k}`));
    });
    rows.push(
      `${loads[j]!.map((l) => term(volume[l.type]!, l.name)).join(' ')} ${kinds
        .map((kind, k) => term(-kind.volumeIn3, `y${j}_${k}`))
        .join(' ')} <= 0`,
    );
    rows.push(
      `${loads[j]!.map((l) => `+ ${l.name}`).join(' ')} ${kinds
        .map((kind, k) => term(-mostCables(kind), `y${j}_${k}`))
        .join(' ')} <= 0`,
    );
    for (const l of loads[j]!) {
      const holders = kinds.flatMap((kind, k) => (fitsAlone(types[l.type]!, kind, fill) ? [`- y${j}_${k}`] : []));
      rows.push(`${l.name} ${holders.join(' ')} <= 0`);
    }
  });
  if (problem.spots.length > problem.maxSpots)
    rows.push(`${problem.spots.map((_, j) => `z${j}`).join(' + ')} <= ${problem.maxSpots}`);

  const lp = [
    'Minimize',
    ` obj: ${sum(objective)}`,
    'Subject To',
    ...rows.map((row, i) => ` c${i}: ${row}`),
    ...section(
      'Bounds',
      integers.map((name) => `0 <= ${name} <= ${problem.runs.length}`),
    ),
    ...section('General', integers),
    ...section('Binary', binaries),
    'End',
  ].join('\n');
  return { lp, nodeLimit: NODE_LIMIT };
};

/** The choice of each home run in a solver's answer; null if the values do not name exactly one each. */
export const picksFrom = (problem: Problem, values: Readonly<Record<string, number>>): number[] | null => {
  const picks = problem.runs.map((choices, r) => choices.findIndex((_, i) => (values[`x${r}_${i}`] ?? 0) > 0.5));
  return picks.every((i) => i >= 0) ? picks : null;
};
