/**
 * Where conductors end in a load center, as shares of the can's height from the end the main stands at.
 * Common practice, no source: breakers fill the middle, neutral bars run beside them, and the crew hangs the
 * ground bar where the grounds reach it, from the first breaker down.
 */
export const TERMINAL_SPAN = { hot: [0.3, 0.92], neutral: [0.25, 0.85], ground: [0.3, 0.95] } as const;
/** Breaker terminals stand this far to either side of the can's middle; bars this far in from its sides. Common practice. */
export const BREAKER_FROM_MIDDLE_IN = 3.5;
export const BAR_FROM_SIDE_IN = 2;
/** Legs that differ by less than this are level for any practical purpose, VA. Common practice, no source. */
export const LEG_BAND_VA = 100;
