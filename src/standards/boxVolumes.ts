import type { Edition } from '../units/types';
import { type ByEdition, nec } from './source';

/** Volume one conductor counts for in a box, cu in. (two public reprints agree). 4 AWG and larger are not in the table: 314.28 sizes their box. */
export const CONDUCTOR_VOLUME_IN3: Readonly<Record<string, number>> = {
  '18': 1.5,
  '16': 1.75,
  '14': 2,
  '12': 2.25,
  '10': 2.5,
  '8': 3,
  '6': 5,
};
export const CONDUCTOR_VOLUME_SOURCE = nec({
  2017: 'Table 314.16(B)',
  2020: 'Table 314.16(B)',
  2023: 'Table 314.16(B)(1)',
  2026: 'Table 314.16(B)(1)',
});

/** Cu in. one conductor of that size counts for; undefined where the table does not reach (4 AWG and larger). */
export const conductorVolume = (awg: string): number | undefined =>
  Object.hasOwn(CONDUCTOR_VOLUME_IN3, awg) ? CONDUCTOR_VOLUME_IN3[awg] : undefined;

/**
 * What else counts, in allowances of one conductor. Clamps inside the box count once whatever their number, support
 * fittings once a type, a device yoke twice by the largest conductor on it.
 */
export const ALLOWANCES = {
  conductorEndingOrSpliced: 1,
  conductorPassingThrough: 1,
  loopOfTwiceTheFreeLength: 2,
  pigtailInsideBox: 0,
  clampsInside: 1,
  fittingType: 1,
  deviceYoke: 2,
} as const;

/** EGCs: the first `group` of them are one allowance of the largest, each one beyond adds `beyond` of it. */
export interface GroundAllowance {
  readonly group: number;
  readonly beyond: number;
}
const QUARTER_OVER_FOUR: GroundAllowance = { group: 4, beyond: 0.25 };
/** Before 2020 every EGC together was one allowance (rules H4: two or more sources). */
export const GROUND_ALLOWANCE: ByEdition<GroundAllowance> = {
  2017: { group: Number.POSITIVE_INFINITY, beyond: 0 },
  2020: QUARTER_OVER_FOUR,
  2023: QUARTER_OVER_FOUR,
  2026: QUARTER_OVER_FOUR,
};
export const groundAllowances = (edition: Edition, grounds: number): number => {
  const { group, beyond } = GROUND_ALLOWANCE[edition];
  return grounds === 0 ? 0 : 1 + beyond * Math.max(0, grounds - group);
};

export const FILL_SOURCES = {
  conductors: nec('314.16(B)(1)'),
  clamps: nec('314.16(B)(2)'),
  fittings: nec('314.16(B)(3)'),
  yokes: nec('314.16(B)(4)'),
  grounds: nec('314.16(B)(5)'),
  box: nec('314.16(A)'),
} as const;

/** A terminal block in the box counts one allowance of its largest conductor; 2023 on (one source). */
export const TERMINAL_BLOCK_ALLOWANCE: ByEdition<number> = { 2017: 0, 2020: 0, 2023: 1, 2026: 1 };

/** A barrier that is not marked takes this much of the box, cu in. */
export const BARRIER_IN3 = { metal: 0.5, nonmetallic: 1 } as const;

/** Free conductor at a box: 6 in from where it leaves the sheath, and 3 in outside an opening under 8 in. */
export const FREE_CONDUCTOR = {
  leastIn: 6,
  smallOpeningIn: 8,
  outsideSmallOpeningIn: 3,
  source: nec({ 2017: '300.14', 2020: '300.14', 2023: '300.14', 2026: 'Article 300 (renumbered; see adopted text)' }),
} as const;
