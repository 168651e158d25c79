/**
 * The cheapest way to give each row a column of its own (Kuhn 1955, by shortest augmenting paths, Jonker and Volgenant
 * 1987): `cost[row][column]`, at least as many columns as rows. Of equal ways the one with the lower columns first.
 */
export const assignment = (cost: readonly (readonly number[])[]): number[] => {
  const rows = cost.length;
  const columns = cost[0]?.length ?? 0;
  const rowPrice = new Float64Array(rows + 1);
  const columnPrice = new Float64Array(columns + 1);
  /** Row in each column, counted from 1; 0 = free. */
  const taken = new Int32Array(columns + 1);
  const before = new Int32Array(columns + 1);
  for (let row = 1; row <= rows; row++) {
    const least = new Float64Array(columns + 1).fill(Number.POSITIVE_INFINITY);
    const done = new Uint8Array(columns + 1);
    let column = 0;
    taken[0] = row;
    do {
      done[column] = 1;
      const from = taken[column]!;
      let next = -1;
      let step = Number.POSITIVE_INFINITY;
      for (let c = 1; c <= columns; c++) {
        if (done[c]) continue;
        const reduced = cost[from - 1]![c - 1]! - rowPrice[from]! - columnPrice[c]!;
        if (reduced < least[c]!) {
          least[c] = reduced;
          before[c] = column;
        }
        if (least[c]! < step) {
          step = least[c]!;
          next = c;
        }
      }
      for (let c = 0; c <= columns; c++)
        if (done[c]) {
          rowPrice[taken[c]!]! += step;
          columnPrice[c]! -= step;
        } else least[c]! -= step;
      column = next;
    } while (taken[column] !== 0);
    for (; column !== 0; column = before[column]!) taken[column] = taken[before[column]!]!;
  }
  const columnOf = new Array<number>(rows).fill(-1);
  for (let c = 1; c <= columns; c++) if (taken[c]! > 0) columnOf[taken[c]! - 1] = c - 1;
  return columnOf;
};
