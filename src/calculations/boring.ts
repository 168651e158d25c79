import { BORING, type Member, NAIL_SETBACK } from '../standards/boring';
import type { U } from '../units/types';

export type JoistKind = 'sawn' | 'I-joist' | 'open-web truss' | 'LVL';

/** What may be cut out of one member, in. */
export interface BoringLimits {
  readonly maxHoleIn: number;
  readonly minEdgeIn: number;
  /** Wood between a hole and the next hole or notch; null = no figure. */
  readonly betweenIn: number | null;
  readonly maxNotchIn: number;
  readonly maxEndNotchIn: number;
  /** A cable's hole nearer than this to the nail face needs a steel plate. */
  readonly plateUnderIn: number;
}

/**
 * Limits for a solid sawn member of actual depth `depthIn`. Null for engineered wood, and for a joist whose kind is
 * not known: only its maker's chart or an engineer can say (IRC R502.8.2).
 */
export const boringLimits = (member: Member, depthIn: number, kind: U<JoistKind> = 'sawn'): BoringLimits | null => {
  if (member === 'joist' && kind !== 'sawn') return null;
  const rule = BORING[member];
  return {
    maxHoleIn: depthIn * rule.holeShare,
    minEdgeIn: rule.edgeIn,
    betweenIn: rule.betweenIn,
    maxNotchIn: depthIn * rule.notchShare,
    maxEndNotchIn: depthIn * rule.endNotchShare,
    plateUnderIn: NAIL_SETBACK.edgeIn,
  };
};

/** Where the center of a hole may lie, measured from the bottom edge, in; null where a hole that size fits nowhere. */
export const holeBand = (limits: BoringLimits, depthIn: number, holeIn: number): readonly [number, number] | null => {
  const from = limits.minEdgeIn + holeIn / 2;
  const to = depthIn - from;
  return holeIn <= limits.maxHoleIn + 1e-9 && from <= to + 1e-9 ? [from, Math.max(from, to)] : null;
};
