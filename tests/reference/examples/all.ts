import { afciExamples, afciSkipped } from './afci';
import { ampacityExamples } from './ampacity';
import type { Row, Value } from './asking';
import { boxFillExamples } from './boxFill';
import { feederExamples } from './feeder';
import { loadExamples, loadSkipped } from './load';
import { otherExamples } from './others';
import { type Example, expectedOf } from './published';
import { spaceExamples } from './space';
import { voltageDropExamples } from './voltageDrop';
import { woodExamples, woodSkipped } from './wood';

/** What the product is asked of every published example. */
export const ASKED: Readonly<Record<string, readonly Row[]>> = {
  ...boxFillExamples,
  ...ampacityExamples,
  ...feederExamples,
  ...voltageDropExamples,
  ...loadExamples,
  ...afciExamples,
  ...spaceExamples,
  ...woodExamples,
  ...otherExamples,
};
/** Examples that are not answered, and why. */
export const SKIPPED: Readonly<Record<string, string>> = { ...loadSkipped, ...afciSkipped, ...woodSkipped };

const same = (a: unknown, b: unknown, within: number): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= within + 1e-9 : a === b;
export const agree = (ours: Value, wanted: Value, within: number): boolean =>
  Array.isArray(ours) && Array.isArray(wanted)
    ? ours.length === wanted.length && ours.every((x, i) => same(x, wanted[i], within))
    : same(ours, wanted, within);

/** One line of the comparison. */
export interface Compared {
  readonly what: string;
  readonly wanted: Value;
  readonly ours: Value;
  readonly agrees: boolean;
  /** The example implies the figure and does not list it. */
  readonly implied: boolean;
  readonly by: string;
}
export const compare = (example: Example, row: Row): Compared => {
  const implied = typeof row.expect !== 'string';
  const wanted = typeof row.expect === 'string' ? expectedOf(example, row.expect) : row.expect.is;
  const ours = row.ours();
  const what = implied ? (row.expect as { what: string }).what : (row.expect as string).replaceAll('_', ' ');
  return { what, wanted, ours, agrees: agree(ours, wanted, row.within), implied, by: row.by };
};
