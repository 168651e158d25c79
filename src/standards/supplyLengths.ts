/** Lengths cable is sold in, ft: retail listings; 15, 100, 125 ft, the 8 and 6 AWG list and SER from memory. */
export const NM_LENGTHS_FT = {
  '14 to 10': [15, 25, 50, 100, 250, 500, 1000],
  '8 and 6': [25, 50, 125, 250, 500, 1000],
} as const;
export const SER_LENGTHS_FT = [250, 500, 1000] as const;
/** Up to here it is a coil, above a spool. */
export const COIL_UP_TO_FT = 250;
