import type { Leg } from '../facts/result';
import type { Practice } from '../job/schema';
import type { In, Pt3 } from '../units/types';

/** A fished or hidden stretch is allowed this much slack at least: it cannot be seen where it goes. Common practice, no source. */
export const HIDDEN_SLACK_SHARE = 0.1;
/** Keeps a length that is a whole number of steps from being rounded one step up by float noise. */
const STEP_NOISE = 1e-6;

export const distance3 = (a: Pt3, b: Pt3): In => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Length along points, inches, in float64 from the coordinates themselves. */
export const lengthAlong = (points: readonly Pt3[]): In => {
  let sum = 0;
  for (let i = 1; i < points.length; i++) sum += distance3(points[i - 1]!, points[i]!);
  return sum;
};

const isInside = (leg: Leg) => leg.by === 'inside box' || leg.by === 'inside panel';

/** What the code year counts: new cable along its path outside cabinets and boxes, measured once, inches. */
export const codeLengthOf = (legs: readonly Leg[], racewayCounts = true): In => {
  let sum = 0;
  for (const leg of legs) {
    if (leg.cable !== 'new' || isInside(leg)) continue;
    if (leg.by === 'raceway' && !racewayCounts) continue;
    sum += distance3(leg.from, leg.to);
  }
  return sum;
};

/** New cable outside cabinets and boxes whatever the inspector counts: what the crew has to pull, inches. */
export const newPathOf = (legs: readonly Leg[]): In => codeLengthOf(legs);
export const oldPathOf = (legs: readonly Leg[]): In => {
  let sum = 0;
  for (const leg of legs) if (leg.cable === 'old' && !isInside(leg)) sum += distance3(leg.from, leg.to);
  return sum;
};

/** Slack for dips and dodges: a share of the path, at least a minimum (the job's own practice). */
export const slackFor = (path: In, practice: Practice, hidden: In = 0): In =>
  Math.max(
    path * practice.slackShare + hidden * Math.max(practice.slackShare, HIDDEN_SLACK_SHARE),
    practice.slackMinimum,
  );

export const roundUpToStep = (length: In, step: In): In => Math.ceil(length / step - STEP_NOISE) * step;

/** What the crew cuts: path + slack + what is left free inside at the ends, rounded up to the crew's step. */
export const cutLengthOf = (path: In, free: In, practice: Practice, hidden: In = 0): In => {
  const exact = path + hidden + slackFor(path, practice, hidden) + free;
  return Math.max(roundUpToStep(exact, practice.cutStep), practice.shortestPiece);
};
