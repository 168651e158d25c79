import type { Practice, Terms } from './schema';

/** A contractor's practice before anything is changed. All common practice, no published source; every one is editable. */
export const DEFAULT_PRACTICE: Practice = {
  slackShare: 0.05, // of the path: dips and dodges
  slackMinimum: 6,
  freeInBox: 12, // twice what 300.14 asks: entry, bend and one re-strip
  tailInPanel: 42, // can height + 8 in for a 34 in can: any breaker, the neutral bar on either side
  tailOfFeeder: 48, // to the far lugs without a tight bend
  cutStep: 6, // nobody cuts to the inch
  shortestPiece: 36,
  bundling: 'strict', // bored joists count as bundled
  nextSizeInRows: false,
  tenPercentException: false,
  spareSpaces: 6,
  maxSpliceSpots: 3,
  spliceSpotCents: 4500, // so that boxes are not scattered
};

/** Two electricians from eight to five with an hour of rest, everything cut over at once, a range until more is known. Common practice, no source. */
export const DEFAULT_TERMS: Terms = {
  quote: 'range',
  people: 2,
  cutOver: 'all at once',
  startsAt: 8,
  endsAt: 17,
};
