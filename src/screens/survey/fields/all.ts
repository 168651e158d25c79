import type { Ref } from '../ref';
import { CODE, FEEDER, GROUP, HOUSE, LOAD, PANEL, TAILS } from './oldWork';
import { AREA, BAY, FRAMING, OBSTACLE, OPENING, PARTITION, SLEEVE, SURVEY, WALL } from './site';
import type { Group, Spec } from './spec';

const BY_LIST: Readonly<Record<string, readonly Group[]>> = {
  '/site/outline': WALL,
  '/site/partitions': PARTITION,
  '/site/openings': OPENING,
  '/site/areas': AREA,
  '/site/framing': FRAMING,
  '/site/bays': BAY,
  '/site/obstacles': OBSTACLE,
  '/site/sleeves': SLEEVE,
  '/house/loads': LOAD,
  '/enclosures': PANEL,
  '/cableGroups': GROUP,
};
const BY_PART: Readonly<Record<string, readonly Group[]>> = {
  '/survey': SURVEY,
  '/code': CODE,
  '/house': HOUSE,
  '/feeder': FEEDER,
};

/** The typed fields of a thing, in groups. */
export const groupsOf = (ref: Ref): readonly Group[] => (ref.list === '' ? BY_PART[ref.id] : BY_LIST[ref.list]) ?? [];

/** Every field of it that may be unknown. */
export const specsOf = (ref: Ref): readonly Spec[] => [
  ...groupsOf(ref).flatMap((g) => g.specs),
  ...(ref.list === '/cableGroups' ? TAILS : []),
];
