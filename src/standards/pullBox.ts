import { nec } from './source';

/** Boxes for conductors of 4 AWG and larger, sized by the trade size of their entries; 2026 number not seen. */
export const PULL_BOX = {
  appliesFromAwg: '4',
  straightTimes: 8,
  angleOrSpliceTimes: 6,
  /** Between the two entries that hold the same conductor. */
  sameConductorTimes: 6,
  straight: nec('314.28(A)(1)'),
  angleOrSplice: nec('314.28(A)(2)'),
  general: nec('314.28(A)', 'memory'),
} as const;
