import type { Way } from '../../job/schema';

/** A way at a glance: drawn back · cut in · spliced · run anew · left alone. The word stands beside it. */
const MARKS: Readonly<Record<Way, string>> = {
  stays: 'M1 6H17',
  'stays on old panel': 'M1 6H17',
  reuse: 'M1 6H16M11.5 2.5L16 6L11.5 9.5',
  'cut-in': 'M1 6H6M12 6H17M6 3H12V9H6Z',
  'splice can': 'M1 6H5M13 6H17M5 2H13V10H5Z',
  'splice in new panel': 'M1 6H9M9 1H17V11H9Z',
  'through raceway': 'M1 4H17M1 8H17',
  'new home run': 'M1 6H17',
};
const HEAVY: ReadonlySet<Way> = new Set(['new home run']);

export const WayMark = ({ way }: { readonly way: Way }) => (
  <svg width={18} height={12} viewBox="0 0 18 12" aria-hidden="true">
    <path d={MARKS[way]} fill="none" stroke="currentColor" strokeWidth={HEAVY.has(way) ? 3 : 1.3} />
  </svg>
);
