/**
 * The rows no other row stands in for, of those that may be taken: a row goes when another is no dearer in every column
 * and comes first among equals. Rows are given in the order in which ties fall; their numbers come back in that order.
 * `may` is asked only of rows nothing stands in for.
 */
export const skyline = (rows: readonly Float64Array[], may: (row: number) => boolean): number[] => {
  const FAR = 1e15;
  const sums = rows.map((row) => row.reduce((sum, x) => sum + Math.min(x, FAR), 0));
  const order = rows.map((_, i) => i).sort((a, b) => sums[a]! - sums[b]! || a - b);
  const kept: number[] = [];
  const noDearer = (a: Float64Array, b: Float64Array): boolean => {
    for (let k = 0; k < a.length; k++) if (a[k]! > b[k]!) return false;
    return true;
  };
  for (const i of order) if (!kept.some((j) => noDearer(rows[j]!, rows[i]!)) && may(i)) kept.push(i);
  return kept.sort((a, b) => a - b);
};
