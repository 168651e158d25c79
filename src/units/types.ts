/** Stable text made by the caller; never a list position. */
export type Id = string;
/** Inches. Site lengths are whole 1/64 in. */
export type In = number;
/** Whole US cents. */
export type Cents = number;
/** A value the surveyor may not know. Unknown is a real value, never a default. */
export type U<T> = T | 'unknown';
/** Code year of NFPA 70 (NEC). */
export type Edition = 2017 | 2020 | 2023 | 2026;
export const EDITIONS: readonly Edition[] = [2017, 2020, 2023, 2026];
/** Plan coordinates: x right, y up the sheet, inches. */
export type Pt = readonly [x: In, y: In];
/** Plan coordinates and z up from the finished floor, inches. */
export type Pt3 = readonly [x: In, y: In, z: In];
export interface Size {
  readonly width: In;
  readonly depth: In;
  readonly height: In;
}

export const isKnown = <T>(value: U<T>): value is T => value !== 'unknown';
/** The value, or `otherwise` where it is not known. Only for estimates that say so; rules never use it. */
export const knownOr = <T>(value: U<T>, otherwise: T): T => (isKnown(value) ? value : otherwise);
