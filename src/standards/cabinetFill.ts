import { nec } from './source';

/** Wiring space of a cabinet at its tightest cross-section: share the conductors, and everything, may take. */
export const CABINET_FILL = {
  conductorsMost: 0.4,
  withSplicesMost: 0.75,
  source: nec({ 2017: '312.8(A)', 2020: '312.8(A)', 2023: '312.8(A)', 2026: '312.11(A)' }),
} as const;
