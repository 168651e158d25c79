import type { Mills } from '../units/money';
import type { Problem } from './choice';

/** Sums that differ by less are the same. */
const NOISE = 1e-6;

/**
 * A choice of ways that is changed one home run at a time, with what it costs kept up to date: the same objective as
 * `costOf`, in the time of the change. Only the spots of `open` may be used.
 */
export class Standing {
  readonly picks: number[];
  private mills = 0;
  private readonly hits: number[];
  /** By spot: home runs there, cables of each type, and what their boxes cost; NaN = to be packed again. */
  private readonly users: number[];
  private readonly counts: (number[] | undefined)[] = [];
  private readonly packed: number[];

  constructor(
    private readonly problem: Problem,
    private readonly open: readonly number[],
    picks: readonly number[],
  ) {
    this.picks = picks.map(() => -1);
    this.hits = problem.penalties.map(() => 0);
    this.users = problem.spots.map(() => 0);
    this.packed = problem.spots.map(() => 0);
    picks.forEach((to, run) => {
      this.set(run, to);
    });
  }

  set(run: number, to: number): void {
    const from = this.picks[run]!;
    if (from >= 0) this.count(run, from, -1);
    this.count(run, to, 1);
    this.picks[run] = to;
  }

  /** Infinity where boxes or the number of spots do not allow it, and where it is seen at once that it is not below. */
  cost(below: Mills = Number.POSITIVE_INFINITY): Mills {
    const { spots, packer, maxSpots } = this.problem;
    let sum = this.mills;
    let floors = 0;
    let used = 0;
    for (const spot of this.open) {
      if (this.users[spot] === 0) continue;
      used++;
      sum += spots[spot]!.mills;
      if (!spots[spot]!.boxes) continue;
      if (Number.isNaN(this.packed[spot])) floors += packer.floor(this.counts[spot]!);
      else sum += this.packed[spot]!;
    }
    if (used > maxSpots) return Number.POSITIVE_INFINITY;
    for (const spot of this.open) {
      if (sum + floors >= below - NOISE) return Number.POSITIVE_INFINITY;
      if (this.users[spot] === 0 || !spots[spot]!.boxes || !Number.isNaN(this.packed[spot])) continue;
      const counts = this.counts[spot]!;
      floors -= packer.floor(counts);
      this.packed[spot] = packer.pack(counts)?.mills ?? Number.POSITIVE_INFINITY;
      sum += this.packed[spot]!;
    }
    return sum < below - NOISE ? sum : Number.POSITIVE_INFINITY;
  }

  private count(run: number, choice: number, by: 1 | -1): void {
    const { mills, penalties, spot, load } = this.problem.runs[run]![choice]!;
    this.mills += by * mills;
    for (const p of penalties) {
      const before = this.hits[p]!;
      this.hits[p] = before + by;
      if (before === 0 || this.hits[p] === 0) this.mills += by * this.problem.penalties[p]!;
    }
    if (spot === null) return;
    this.users[spot]! += by;
    if (load === null) return;
    this.counts[spot] ??= this.problem.packer.types.map(() => 0);
    this.counts[spot][load]! += by;
    this.packed[spot] = Number.NaN;
  }
}
