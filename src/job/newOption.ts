import type { Id } from '../units/types';
import type { Enclosure, Job, OnWall, Option } from './schema';

/** A common can of 40 spaces, to start from. Common practice, no source; every figure can be typed over. */
const COMMON_CAN = {
  size: { width: 14.5, depth: 3.875, height: 36 },
  mount: 'surface',
  upright: true,
  mainAt: 'top',
  mainAmps: null,
  bonded: false,
  electrodeLandsHere: false,
  busAmps: 225,
  spaces: 40,
  knockouts: 60,
  neutralTerminals: 48,
  groundTerminals: 0,
  lugs: 75,
  topHandle: 30,
  doorHinge: 'right',
  weatherproof: false,
  finish: 'white',
  trim: 'solid',
  attached: [],
} as const satisfies Omit<Enclosure, 'id' | 'on' | 'role'>;

/** An id no record of a list has yet: `option-4`. */
export const freshId = (prefix: string, taken: readonly Id[]): Id => {
  let n = 1;
  while (taken.includes(`${prefix}-${n}`)) n++;
  return `${prefix}-${n}`;
};

/**
 * An option to start from: a panel like the one of `like`, or a common can, at a place; it replaces every old panel,
 * and what becomes of each is left to the program.
 */
export const newOption = (
  job: Job,
  start: { readonly kind: Option['kind']; readonly title: string; readonly on: OnWall; readonly like: Option | null },
): Option => {
  const { kind, title, on, like } = start;
  const panels = [...job.enclosures, ...job.options.map((o) => o.enclosure)].map((e) => e.id);
  return {
    id: freshId(
      'option',
      job.options.map((o) => o.id),
    ),
    title,
    kind,
    enclosure: { ...COMMON_CAN, role: 'feeder-fed', ...like?.enclosure, id: freshId('new', panels), on },
    pins: [],
    moves: [],
    serviceDisconnect: like?.serviceDisconnect ?? null,
    replaces: job.enclosures.map((e) => ({ enclosure: e.id, becomes: 'program chooses' })),
  };
};
