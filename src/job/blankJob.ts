import type { Cable } from '../standards/cable';
import type { Id } from '../units/types';
import { DEFAULT_PRACTICE, DEFAULT_TERMS } from './practice';
import type { Job } from './schema';

const UNKNOWN_CABLE: Cable = {
  kind: 'unknown',
  size: 'unknown',
  metal: 'unknown',
  hots: 'unknown',
  neutral: 'unknown',
  ground: 'unknown',
  insulation: 'unknown',
};

/** A room of 20 ft by 12 ft to start drawing from; nothing else is assumed. */
const ROOM: readonly (readonly [id: Id, x: number, y: number])[] = [
  ['west', 0, 0],
  ['north', 0, 144],
  ['east', 240, 144],
  ['south', 240, 0],
];
/** True while the room is the one to start from: nobody has drawn or measured it yet. */
export const isRoomToBegin = ({ site }: Pick<Job, 'site'>): boolean =>
  site.outline.length === ROOM.length &&
  ROOM.every(([id, x, y], i) => {
    const corner = site.outline[i];
    return corner?.id === id && corner.at[0] === x && corner.at[1] === y && corner.thickness === 'unknown';
  });
const UNKNOWN_FACE = { build: 'unknown', insulated: 'unknown' } as const;

/** A valid job in which everything that must be surveyed is unknown. `on` is the day, as a text; the core has no clock. */
export const blankJob = (start: { readonly id: Id; readonly on: string }): Job => ({
  format: 'backboard-job',
  schema: 1,
  id: start.id,
  title: '',
  changedOn: start.on,
  survey: { grade: 'walk-through', by: '', on: start.on },
  code: { edition: 'unknown', place: '', amendments: {}, saidBy: {} },
  house: {
    yearBuilt: 'unknown',
    floorAreaFt2: 'unknown',
    panelAreaFt2: 'unknown',
    occupied: 'unknown',
    panelLit: 'unknown',
    smallApplianceCircuits: 'unknown',
    laundryCircuits: 'unknown',
    loads: [],
    otherSource: 'unknown',
  },
  site: {
    outline: ROOM.map(([id, x, y]) => ({
      id,
      at: [x, y],
      face: { now: UNKNOWN_FACE, after: UNKNOWN_FACE },
      studSpacing: 'unknown',
      thickness: 'unknown',
    })),
    partitions: [],
    openings: [],
    areas: [],
    framing: [],
    bays: [],
    obstacles: [],
    sleeves: [],
  },
  enclosures: [],
  feeder: {
    from: { panel: '', lugs: 'unknown', breakerAmps: 'unknown', spaceFree: 'unknown' },
    entersAt: [0, 0, 0],
    outside: 'unknown',
    path: [],
    cable: UNKNOWN_CABLE,
    raceway: 'unknown',
    wires: 'unknown',
    wholeDwelling: 'unknown',
  },
  cableGroups: [],
  homeRuns: [],
  circuits: [],
  options: [],
  practice: DEFAULT_PRACTICE,
  priceBook: 'default',
  terms: DEFAULT_TERMS,
  stock: [],
  alternates: [],
  answers: [],
  photos: [],
  people: { contractor: {}, customer: {} },
  issued: [],
  notes: '',
});
