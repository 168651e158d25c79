import type { Area, Site } from '../job/schema';
import { byId } from '../units/order';
import type { Pt } from '../units/types';
import { type Frame, snap } from './networkFrame';

/** What a ceiling lets a cable do: lie among the joists, and hang below them. */
export type Access = 'open' | 'tile' | 'closed';
export interface Cover {
  readonly ring: readonly Pt[];
  readonly joists: Access;
  readonly below: Access;
}

const NOW: Readonly<Record<Area['state']['now']['cover'], Access>> = {
  'open joists': 'open',
  'lay-in': 'tile',
  drywall: 'closed',
  unknown: 'closed',
};

/** Outside every area the cover is not known: as a closed ceiling, the dearest. */
export const NO_COVER: Omit<Cover, 'ring'> = { joists: 'closed', below: 'closed' };

/**
 * Ceilings by area, the first counts where they overlap. Access is priced by the cover of today; nothing may hang
 * below joists that will be covered with drywall, or may be.
 */
export const readCovers = (site: Site, frame: Frame): Cover[] =>
  byId(site.areas).map((area) => {
    const joists = NOW[area.state.now.cover];
    const later = NOW[area.state.after.cover];
    return {
      ring: area.outline.map((p) => snap(frame, p)),
      joists,
      below: joists === 'closed' || later === 'closed' ? 'closed' : joists,
    };
  });

/** Bays no cable may follow. An insulated one lets cables through. */
export interface Bay {
  readonly ring: readonly Pt[];
  readonly crossing: boolean;
}
/** Panned returns may only be crossed at right angles (300.22(C) exception for dwellings); blocked bays not at all. */
export const readBays = (site: Site, frame: Frame, without: ReadonlySet<string>): Bay[] =>
  byId(site.bays)
    .filter((bay) => bay.state !== 'insulated' && !without.has(bay.id))
    .map((bay) => ({ ring: bay.outline.map((p) => snap(frame, p)), crossing: bay.state === 'panned return' }));
