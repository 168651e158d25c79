import type { U } from '../units/types';
import type { CableKind } from './cable';
import { type ByEdition, nec } from './source';

/** How a cable is held: farthest apart, farthest from a box or cabinet, in. */
export interface SupportRule {
  readonly apartIn: number;
  readonly fromEntryIn: number;
  readonly source: ReturnType<typeof nec>;
}
const NM: SupportRule = { apartIn: 54, fromEntryIn: 12, source: nec('334.30') };
const RULES: Readonly<Partial<Record<CableKind, SupportRule>>> = {
  NM,
  'NM without ground': NM,
  /** Indoors SE and UF are installed like NM. */
  'SE-R': { ...NM, source: nec('338.10(B)(4), 334.30') },
  'SE-U': { ...NM, source: nec('338.10(B)(4), 334.30') },
  UF: { ...NM, source: nec('340.10(4), 334.30', 'memory') },
  AC: { apartIn: 54, fromEntryIn: 12, source: nec('320.30(B)', 'memory') },
  /** Up to four conductors of 10 AWG and smaller; larger ones need only the distance apart. */
  MC: { apartIn: 72, fromEntryIn: 12, source: nec('330.30(B)', 'one source') },
};
/** A kind not known is held like NM. */
export const supportRule = (kind: U<CableKind> = 'NM'): SupportRule => (kind === 'unknown' ? NM : (RULES[kind] ?? NM));

/** At a single-gang nonmetallic box without a clamp, in (one source). */
export const FROM_CLAMPLESS_BOX_IN = 8;

/**
 * Most cable between an entry and its first support, measured along the cable, in: 2020 on by a state text built on
 * 2020, 2023 by two sources; null = no cap.
 */
export const CABLE_TO_SUPPORT_IN: ByEdition<number | null> = { 2017: null, 2020: 18, 2023: 18, 2026: 18 };
export const CABLE_TO_SUPPORT_SOURCE = nec('334.30', {
  2017: 'confirmed',
  2020: 'one source',
  2023: 'confirmed',
  2026: 'unverified',
});

/**
 * Cables of an unfinished basement that may cross the lower edges of joists without holes or a running board: not
 * smaller than two 6 AWG or three 8 AWG. Armored and metal-clad cable may, held at every joist.
 */
export const UNDERSIDE = {
  twoConductorsLeastAwg: '6',
  threeConductorsLeastAwg: '8',
  source: nec('334.15(C)', 'one source'),
  armoredSource: { AC: nec('320.15', 'one source'), MC: nec('330.15', 'one source') },
} as const;

/** Staple by cable: from memory. */
export const STAPLE_KINDS = {
  '14/2 to 10/2': '1/2 in insulated',
  '10/3 and 8/3': '3/4 in',
  '6/3 and small SER': '1 in',
  'larger SER': 'one-hole strap or cable clamp',
} as const;
