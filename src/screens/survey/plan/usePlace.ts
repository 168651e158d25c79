import { distance } from '../../../geometry/vector';
import type { In, Pt } from '../../../units/types';
import { useJob } from '../../selected';
import { obstacleOf, PALETTE } from '../palette';
import { CAN_WIDTH, newEnclosure, newOpening, openingWidth } from '../placing';
import { freshId } from '../ref';
import { useSheet } from '../sheetState';
import { faceNear, snapBox, snapLeft, snapPoint } from '../snap';
import { isOutline, LEAST } from '../taken';
import { useAdd } from '../useAdd';
import { useTaken } from '../useTaken';

/** A tap this far from a wall still means the wall: two feet. */
const TO_WALL_IN = 24;

/** What a tap in the plan places with the tool in hand; null where a tap selects. */
export const usePlace = (): ((at: Pt, within: In) => void) | null => {
  const job = useJob();
  const { now } = useSheet();
  const add = useAdd();
  const { taken, take, finish } = useTaken();

  if (taken)
    return (at, within) => {
      const first = taken.points[0];
      const round = first && isOutline(taken.what) && taken.points.length >= LEAST[taken.what];
      if (round && distance([first[0], first[1]], at) <= within) finish();
      else take([...snapPoint(job.site, at, within), now.height]);
    };
  const onWall = (width: In, then: (on: { wall: string; face: 'front' | 'back'; left: In }) => void) => (at: Pt) => {
    const near = faceNear(job.site, at, TO_WALL_IN);
    if (!near) return;
    const left = snapLeft(near.chainage - width / 2, width, near.face.length);
    then({ wall: near.face.wall, face: near.face.face, left });
  };
  switch (now.tool) {
    case 'opening':
      return onWall(openingWidth(now.opening), (on) => add('/site/openings', newOpening(job, now.opening, on)));
    case 'panel':
      return onWall(CAN_WIDTH, (on) => add('/enclosures', newEnclosure(job, on)));
    case 'thing': {
      const thing = PALETTE.find((t) => t.kind === now.thing);
      if (!thing) return null;
      const { width, depth } = thing.size;
      return ([x, y], within) => {
        const corner = snapBox(job.site, [x - width / 2, y - depth / 2], width, depth, within);
        add('/site/obstacles', obstacleOf(thing, freshId(job, '/site/obstacles', thing.kind), corner));
      };
    }
    default:
      return null;
  }
};
