/** Timing that compares: everything is run in turn, round by round, in one process, and only ratios are judged. */

const WARM_UPS = 5;
const ROUNDS = 21;

export const median = (list: readonly number[]): number => {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
};

/** Median milliseconds of each task, the tasks interleaved so that a slow moment of the machine hits all of them. */
export const interleaved = <K extends string>(
  tasks: Readonly<Record<K, () => unknown>>,
  rounds = ROUNDS,
  warmUps = WARM_UPS,
): Record<K, number> => {
  const names = Object.keys(tasks) as K[];
  const times = Object.fromEntries(names.map((n) => [n, [] as number[]])) as Record<K, number[]>;
  for (let round = -warmUps; round < rounds; round++)
    for (const name of names) {
      const started = performance.now();
      tasks[name]();
      if (round >= 0) times[name].push(performance.now() - started);
    }
  return Object.fromEntries(names.map((n) => [n, median(times[n])])) as Record<K, number>;
};

/** One line of the table. `ok` null = printed, not judged. */
export interface Line {
  readonly id: string;
  readonly what: string;
  readonly goal: string;
  readonly measured: string;
  readonly ok: boolean | null;
}
