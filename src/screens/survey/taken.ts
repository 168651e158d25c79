import type { Job } from '../../job/schema';
import type { Pt, Pt3 } from '../../units/types';
import { type Entry, newArea, newBay, newFraming, newGroup, newPartition, newSleeve } from './placing';
import type { Taken } from './sheetState';

const flat = (points: readonly Pt3[]): Pt[] => points.map(([x, y]) => [x, y]);

/** Fewest points that make one, and whether two are all it has. */
export const LEAST: Readonly<Record<Taken['what'], number>> = {
  partition: 2,
  sleeve: 2,
  area: 3,
  framing: 3,
  bay: 3,
  cables: 2,
  feeder: 2,
};
export const twoEnds = (what: Taken['what']): boolean => what === 'partition' || what === 'sleeve';
export const isOutline = (what: Taken['what']): boolean => LEAST[what] === 3;

/** The record the points taken make; null for the feeder, of which there is one already. */
export const recordOf = (
  job: Job,
  { what, points }: Taken,
  group: { readonly enclosure: string; readonly entry: Entry },
): { readonly list: string; readonly record: { readonly id: string } } | null => {
  const [a, b] = points as [Pt3, Pt3];
  switch (what) {
    case 'partition':
      return { list: '/site/partitions', record: newPartition(job, [a[0], a[1]], [b[0], b[1]]) };
    case 'sleeve':
      return { list: '/site/sleeves', record: newSleeve(job, a, b) };
    case 'area':
      return { list: '/site/areas', record: newArea(job, flat(points)) };
    case 'framing':
      return { list: '/site/framing', record: newFraming(job, flat(points)) };
    case 'bay':
      return { list: '/site/bays', record: newBay(job, flat(points)) };
    case 'cables':
      return { list: '/cableGroups', record: newGroup(job, group.enclosure, points, group.entry) };
    case 'feeder':
      return null;
  }
};
