import type { U } from '../units/types';
import type { CableKind } from './cable';
import { nec } from './source';

/** Least inner radius of a bend as a multiple of the cable's diameter (the major one of a flat cable). */
export interface BendLimit {
  readonly times: number;
  readonly source: ReturnType<typeof nec>;
}
const NM: BendLimit = { times: 5, source: nec('334.24') };
const SE: BendLimit = { times: 5, source: nec('338.24', 'one source') };
const AC: BendLimit = { times: 5, source: nec('320.24', 'memory') };
/** Interlocked or corrugated sheath; a smooth sheath needs 10 and more. */
const MC: BendLimit = { times: 7, source: nec('330.24(B)', 'one source') };
const UF: BendLimit = { times: 5, source: nec('340.24', 'memory') };

const LIMITS: Readonly<Partial<Record<CableKind, BendLimit>>> = {
  NM,
  'NM without ground': NM,
  'SE-R': SE,
  'SE-U': SE,
  AC,
  MC,
  UF,
};
/** A kind not known takes the largest multiple, so that not knowing never helps. */
export const bendLimit = (kind: U<CableKind>): BendLimit | undefined => (kind === 'unknown' ? MC : LIMITS[kind]);
