import { type ByEdition, everyEdition } from './source';
import type { Use } from './uses';

/** Rooms where breakers have no place, 240.24(D)–(F): 'ask' = the inspector says what the room is. */
export const ROOM_RULES = {
  CLOSET: { barred: ['clothes closet'], ask: ['other closet'] },
  BATH: { barred: ['bath'], ask: [] },
  STAIRS: { barred: ['stair'], ask: [] },
} as const satisfies Record<string, { readonly barred: readonly Use[]; readonly ask: readonly Use[] }>;

/** 2026 lets overcurrent devices stay in a bathroom where they lawfully were before (one source); a house seldom had any. */
export const BATH_RELIEF: ByEdition<boolean> = { 2017: false, 2020: false, 2023: false, 2026: true };

/** Wall builds with masonry behind the panel: 312.2 asks 1/4 in of air where they are damp; the plan mounts on standoffs. */
export const MASONRY: readonly string[] = ['poured', 'block', 'furred'];
/** Builds with no cavity for a recessed cabinet, and builds with one. */
export const NO_CAVITY: readonly string[] = ['poured', 'block', 'plywood board'];
export const STUD_CAVITY: readonly string[] = ['open studs', 'finished studs'];
export const FINISHED: readonly string[] = ['finished studs', 'furred'];

/** A panel stands in the area just in front of its wall: this far out, in, so that a boundary along the wall does not matter. */
export const IN_FRONT_IN = 1;
/** How thick an outline wall is drawn as a thing in the way: it only has to be met, in. */
export const WALL_SKIN_IN = 1;
/** What is taken as endless upward, in. */
export const SKY_IN = 12_000;

/** Extremes of what was not measured: a partition's thickness, its height, a ceiling, the joists' underside, in. */
export const EXTREMES = {
  thickness: { least: 0, most: 12 },
  height: { least: 0, most: SKY_IN },
  // Low enough to fail any headroom and still a thing that hangs.
  ceiling: { least: 61, most: SKY_IN },
  underside: { least: 0, most: SKY_IN },
  // A thing nobody measured stands at the sizes of an ordinary one: to each side it may be so much more, or less (common practice, no source).
  thing: 6,
} as const;

/** Least a person needs to pass an open panel door, 2023 on: see OPEN_DOOR_WAY. Existing dwellings are all this program plans for. */
export const EXISTING_DWELLING = everyEdition(true);

/** Air behind a surface cabinet in a damp place, in, 312.2; masonry in basements is taken as damp. */
export const AIR_GAP_IN = 0.25;

/** How far a recessed cabinet's front may stand behind the finished surface, in, 312.3: of noncombustible finish, drywall among it, and of any other. */
export const SETBACK_MOST_IN = { noncombustible: 0.25, other: 0 } as const;
