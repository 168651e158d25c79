import type { Job, Option } from '../job/schema';
import { enclosureOnFace } from '../job/site';
import type { Id, In, Pt } from '../units/types';
import { BAND } from './drawPlaces';
import type { Dimension } from './items';
import { type Unrolled, wallOf } from './unroll';
import { topOf } from './wallFraming';

/** Points of the paper from the panel to its dimensions, the nearer and the farther. */
const NEAR = 15;
const FAR = 34;

const dimension = (id: Id, from: Pt, to: Pt, off: number, beyond: Dimension['beyond']): Dimension => ({
  item: 'dimension',
  id,
  layer: 'dimensions',
  from,
  to,
  clear: 0,
  off,
  beyond,
});

/**
 * The new panel as it is set out on site: from the corner to its near edge, its bottom and its top above the floor. On
 * larger paper the length of each wall too, under the floor.
 */
export const dimensionWallDrawing = (
  job: Job,
  option: Option,
  walls: readonly Unrolled[],
  small: boolean,
  /** Below which the lengths of the walls stand. */
  foot: In = BAND.to,
): Dimension[] => {
  const { enclosure } = option;
  const wall = wallOf(walls, enclosure.on);
  const lengths = small
    ? []
    : walls.map(({ face, at }) => dimension(face.id, [at + face.length, foot], [at, foot], NEAR, 'from'));
  if (!wall) return lengths;
  const { left, right, bottom, top } = enclosureOnFace(enclosure);
  const [l, r] = [wall.at + left, wall.at + right];
  const ceiling = topOf(job.site, wall);
  return [
    ...lengths,
    ...(left > 0 ? [dimension(`${enclosure.id} offset`, [l, bottom], [wall.at, bottom], NEAR, 'to')] : []),
    ...(bottom > 0 ? [dimension(`${enclosure.id} bottom`, [r, bottom], [r, 0], NEAR, 'to')] : []),
    ...(top < ceiling ? [dimension(`${enclosure.id} top`, [r, top], [r, 0], FAR, 'to')] : []),
  ];
};
