import type { Fault } from '../units/fault';
import { err } from '../units/result';

/** An input that cannot be calculated, located by a JSON pointer. */
export const refuse = (type: string, path: string, say: string) => err<Fault>({ error: { type, path, say } });

/** Without the noise of binary fractions: 26.240000000000002 → 26.24. Figures keep nine places. */
export const tidy = (x: number): number => Math.round(x * 1e9) / 1e9;

/** Amperes and shares are compared with this much room, so that 0.7 × 30 is 21. */
export const EPS = 1e-9;
