import type { Cable } from './cable';
import type { ByEdition } from './source';
import { nec, type Source } from './source';

/** How many current-carrying conductors a circuit brings into a cable, raceway or bundle (single-phase dwelling, and the two wye cases a feeder may meet). */
export const CIRCUIT_CONDUCTORS = [
  { circuit: '120 V two-wire', ungrounded: 1, neutralCounts: true, carrying: 2 },
  { circuit: '240 V two-wire, no neutral', ungrounded: 2, neutralCounts: false, carrying: 2 },
  {
    circuit: '120/240 V three-wire, shared neutral on opposite legs',
    ungrounded: 2,
    neutralCounts: false,
    carrying: 2,
  },
  { circuit: '240 V with neutral, single-phase 120/240 V', ungrounded: 2, neutralCounts: false, carrying: 2 },
  { circuit: '208Y/120 V: two phases plus neutral', ungrounded: 2, neutralCounts: true, carrying: 3 },
  { circuit: 'four-wire wye, mostly nonlinear load', ungrounded: 3, neutralCounts: true, carrying: 4 },
  { circuit: 'four-wire wye, mostly linear load', ungrounded: 3, neutralCounts: false, carrying: 3 },
  { circuit: 'switch loop', ungrounded: 2, neutralCounts: false, carrying: 2 },
] as const;
export type CircuitWiring = (typeof CIRCUIT_CONDUCTORS)[number]['circuit'];

export const COUNTING: ByEdition<Source> = nec({
  2017: '310.15(B)(5)',
  2020: '310.15(E)',
  2023: '310.15(E)',
  2026: '310.15(E)',
});

/** The row of one kind of circuit: conductors that count for adjustment, and whether its neutral is one of them. */
export const circuitConductors = (circuit: CircuitWiring): (typeof CIRCUIT_CONDUCTORS)[number] =>
  CIRCUIT_CONDUCTORS.find((row) => row.circuit === circuit)!;

/**
 * Current-carrying conductors of one cable on a 120/240 V system. A neutral counts beside one hot; the shared neutral
 * of two hots on opposite legs carries only the unbalance and does not (310.15(E)). EGCs never count. What is unknown
 * counts as the most it can be.
 */
export const currentCarrying = (cable: Cable): number => (cable.hots === 1 && cable.neutral === 'none' ? 1 : 2);
