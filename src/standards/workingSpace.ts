import { type ByEdition, nec } from './source';
import type { Use } from './uses';

/** Clear depth in front of live parts by volts to ground, in: condition 1 nothing live or grounded opposite, 2 a grounded surface, 3 live parts. */
export interface DepthRow {
  readonly voltsFrom: number;
  readonly voltsTo: number;
  readonly depthIn: readonly [condition1: number, condition2: number, condition3: number];
}
export const DEPTH_TABLE: readonly DepthRow[] = [
  { voltsFrom: 0, voltsTo: 150, depthIn: [36, 36, 36] },
  { voltsFrom: 151, voltsTo: 600, depthIn: [36, 42, 48] },
  { voltsFrom: 601, voltsTo: 1000, depthIn: [36, 48, 60] },
];
/** The row for a voltage to ground; undefined beyond the table. */
export const depthRow = (voltsToGround: number): DepthRow | undefined =>
  DEPTH_TABLE.find((row) => voltsToGround <= row.voltsTo);

/** 120/240 V single-phase is 120 V to ground: 36 in whatever is opposite. */
export const DWELLING_DEPTH_IN = 36;
export const WIDTH_IN = 30;
export const HEIGHT_IN = 78;
/** Associated electrical equipment above or below may stand out this far past the panel's front. */
export const ASSOCIATED_PROJECTION_IN = 6;
export const DOOR_OPENS_DEGREES = 90;
export const HANDLE_MOST_IN = 79;
/** Service equipment and panelboards up to this rating in an existing dwelling may stand under less headroom. */
export const HEADROOM_EXCEPTION_AMPS = 200;
/** The dedicated zone ends this far above the equipment, or at the structural ceiling if that is lower. */
export const DEDICATED_ABOVE_IN = 72;

/** Way past open equipment doors, in; null = no such rule for a dwelling panel in that edition. */
export interface OpenDoorWay {
  readonly widthIn: number;
  readonly heightIn: number;
  readonly doorsAt90: boolean;
}
export const OPEN_DOOR_WAY: ByEdition<OpenDoorWay | null> = {
  2017: null,
  2020: null,
  2023: { widthIn: 24, heightIn: 78, doorsAt90: false },
  2026: { widthIn: 24, heightIn: 78, doorsAt90: true },
};
/** Must the floor of the space be clear and about level? */
export const FLOOR_LEVEL: ByEdition<boolean> = { 2017: false, 2020: false, 2023: true, 2026: true };

export const SPACE_SOURCES = {
  depth: nec('110.26(A)(1)'),
  width: nec('110.26(A)(2)'),
  height: nec('110.26(A)(3)'),
  headroomException: nec({
    2017: '110.26(A)(3) Exc. 1',
    2020: '110.26(A)(3) Exc. 1',
    2023: '110.26(A)(3) Exc. 2',
    2026: '110.26(A)(3) Exc. 2',
  }),
  door: nec('110.26(A)(2)'),
  storage: nec('110.26(B)'),
  dedicated: nec('110.26(E)(1)'),
  handle: nec('240.24(A), 404.8(A)'),
} as const;

/** Places of limited access, 110.26(A)(4) (one source), and the least opening into them, in. */
export const LIMITED_ACCESS: {
  readonly uses: readonly Use[];
  readonly openingIn: { readonly width: number; readonly length: number };
} = { uses: ['crawl space'], openingIn: { width: 22, length: 30 } };
