import { type Interval, overlap, slabProjection } from '../geometry/freeIntervals';
import { SAME_PLACE_IN } from '../geometry/polygon';
import { DEDICATED_ABOVE_IN, DWELLING_DEPTH_IN, HEADROOM_EXCEPTION_AMPS } from '../standards/workingSpace';
import { byId } from '../units/order';
import type { Id, In, U } from '../units/types';
import { doorVerdict, type Hinge } from './spaceDoor';
import {
  bestWindow,
  finite,
  gapAround,
  hangs,
  headroomNeeded,
  judgeDepth,
  judgeZone,
  verdict,
  windowWidth,
} from './spaceJudge';
import { reachInto, type SpaceBlocker, type SpaceBox, type SpacePanel, type SpaceVerdict } from './spaceZone';

export interface SpaceAsk {
  readonly panel: SpacePanel;
  readonly faceLength: In;
  readonly blockers: readonly SpaceBlocker[];
  /** Underside of the structural ceiling over the panel. */
  readonly structureZ: U<In>;
  readonly hinge: U<Hinge>;
  readonly existingDwelling: boolean;
  readonly amps: U<number>;
}
export interface SpaceAnswer {
  readonly depth: SpaceVerdict;
  readonly width: SpaceVerdict;
  /** `exception`: holds only by the headroom exception for existing dwellings, so verify in field. */
  readonly height: SpaceVerdict & { readonly exception: boolean };
  readonly door: SpaceVerdict;
  /** Dedicated zone over and under the panel. */
  readonly above: SpaceVerdict;
  readonly below: SpaceVerdict;
  /** Does anything stand where the panel itself would hang? */
  readonly body: SpaceVerdict;
  /** The working space as it was judged: the best place of the window found. */
  readonly workingSpace: SpaceBox;
  /** Goods stored in the working space: to be carried away, no bar. */
  readonly stored: readonly Id[];
}

/** Room for the panel itself: on its face, under the structural ceiling, nothing standing there. */
const judgeBody = ({ panel, faceLength, structureZ }: SpaceAsk, solid: readonly SpaceBlocker[]): SpaceVerdict => {
  const { left, right, bottom, top, out } = panel;
  const body = judgeZone(solid, { along: [left, right], out: [0, out], z: [bottom, top] });
  const over = Math.max(-left, right - faceLength, -bottom, structureZ === 'unknown' ? 0 : top - structureZ);
  return over <= SAME_PLACE_IN ? body : { ...body, outcome: 'fails', measuredIn: Math.max(over, body.measuredIn ?? 0) };
};

/**
 * Working and dedicated space of a panel at 120 V to ground (110.26(A), (E); the same measures in every edition). The
 * 30 in window, or one as wide as a wider panel, may slide as long as it holds the whole front. Touching is allowed.
 * Lists come back sorted by id; measured to the blockers' own edges.
 */
export const searchSpace = (ask: SpaceAsk): SpaceAnswer => {
  const { panel } = ask;
  const { left, right, bottom, top, out, depth } = panel;
  const blockers = byId(ask.blockers);
  const solid = blockers.filter((b) => !b.stored);
  const headroom = headroomNeeded(top);
  const z: Interval = [0, headroom];
  const keepsOut = solid.filter((b) => b.blocksSpace && b.toZ > SAME_PLACE_IN);
  const standing = keepsOut.filter((b) => !hangs(b, headroom) && overlap([b.fromZ, b.toZ], z));

  const depthVerdict = judgeDepth(panel, standing, z);
  // What bars the front is charged to the depth alone; the width is judged by what stands beside it.
  const barring = new Set(depthVerdict.intruders.map((i) => i.id));
  const gap = gapAround(
    panel,
    standing.filter((b) => !barring.has(b.id)),
  );
  const width = windowWidth(panel);
  const clearWidth = gap.right.at - gap.left.at;
  const wide = clearWidth >= width - SAME_PLACE_IN;
  const bounds = [gap.left.id, gap.right.id].flatMap((id) => id ?? []);

  const outRange: Interval = [out, out + DWELLING_DEPTH_IN];
  const starts: Interval = wide
    ? [
        Math.max(right - width, gap.left.at),
        Math.max(Math.max(right - width, gap.left.at), Math.min(left, gap.right.at - width)),
      ]
    : [right - width, left];
  const hanging = keepsOut
    .filter((b) => hangs(b, headroom))
    .flatMap((b) => slabProjection(b.outline, ...outRange).map((along) => ({ id: b.id, fromZ: b.fromZ, along })));
  const window = bestWindow(starts, width, (left + right - width) / 2, hanging);
  const along: Interval = [window.start, window.start + width];
  const low = new Map(window.under.filter((h) => h.fromZ < headroom - SAME_PLACE_IN).map((h) => [h.id, h.fromZ]));
  const excepted =
    low.size > 0 && ask.existingDwelling && ask.amps !== 'unknown' && ask.amps <= HEADROOM_EXCEPTION_AMPS;
  const workingSpace: SpaceBox = { along, out: outRange, z };

  const foreign = solid.filter((b) => b.foreign);
  const foot = { along: [left, right], out: [out - depth, out] } satisfies Omit<SpaceBox, 'z'>;
  const zoneTop =
    ask.structureZ === 'unknown' ? top + DEDICATED_ABOVE_IN : Math.min(top + DEDICATED_ABOVE_IN, ask.structureZ);
  const above = judgeZone(foreign, { ...foot, z: [top, zoneTop] });
  return {
    depth: depthVerdict,
    width: verdict(wide, {
      measuredIn: finite(clearWidth),
      requiredIn: width,
      intruders: wide ? [] : [...new Set(bounds)].sort().map((id) => ({ id, byIn: width - clearWidth })),
      shape: { along: [Math.max(gap.left.at, left - width), Math.min(gap.right.at, right + width)], out: outRange, z },
    }),
    height: {
      outcome:
        low.size === 0 || excepted
          ? 'holds'
          : ask.existingDwelling && ask.amps === 'unknown'
            ? 'cannot be told'
            : 'fails',
      exception: excepted,
      measuredIn: finite(window.headroom),
      requiredIn: headroom,
      intruders: [...low].map(([id, fromZ]) => ({ id, byIn: headroom - fromZ })),
      shape: workingSpace,
    },
    door: doorVerdict(
      panel,
      ask.hinge,
      keepsOut.filter((b) => overlap([b.fromZ, b.toZ], [bottom, top])),
    ),
    above: above.outcome === 'fails' && ask.structureZ === 'unknown' ? { ...above, outcome: 'cannot be told' } : above,
    below: judgeZone(foreign, { ...foot, z: [0, bottom] }),
    body: judgeBody(ask, solid),
    workingSpace,
    stored: blockers.filter((b) => b.stored && reachInto(b, workingSpace) > 0).map((b) => b.id),
  };
};
