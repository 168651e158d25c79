/** Made once: making a format takes longer than a whole calculation. */
const FORMAT = new Intl.NumberFormat('en-US', { maximumFractionDigits: 3 });
const n = (value: number): string => FORMAT.format(value);
const dollars = (cents: number): string => `$${(cents / 100).toFixed(2)}`;

/** Steps of cutting cable from coils. */
export const cutCalcWords = {
  pieces: (v: { list: readonly { readonly count: number; readonly length: number }[] }) =>
    `Pieces: ${v.list.map((p) => `${p.count} × ${n(p.length)} in`).join(' + ')}`,
  total: 'Length of all pieces',
  coil: (v: { length: number; pieces: readonly number[]; left: number; kept: boolean }) =>
    `A coil of ${n(v.length)} in cut into ${v.pieces.map(n).join(' + ')}; ${n(v.left)} in left${v.left > 0 ? (v.kept ? ', kept' : ', waste') : ''}`,
  outlay: (v: { parts: readonly { readonly count: number; readonly dollars: number }[] }) =>
    `To pay: ${v.parts.map((p) => `${p.count} × ${dollars(100 * p.dollars)}`).join(' + ')}`,
  kept: (v: { share: number }) => `Worth of what is kept, at ${n(100 * v.share)} % of its price by length`,
  net: 'To pay, less what is kept',
  bound: (v: { proven: boolean }) =>
    v.proven
      ? 'No way of cutting costs less'
      : 'No way of cutting can cost less than this; whether one costs so little is not known',
  arithmetic: 'arithmetic',
  practice: 'common practice',
  method: 'coil sets in order of cost, cut patterns searched',
} as const;
