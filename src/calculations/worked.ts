import { EPS, tidy } from './refuse';
import type { Worked } from './types';

export type Step = Worked['steps'][number];

export const step = (say: string, value: number | string, unit: string, section: string): Step => ({
  say,
  value: typeof value === 'number' ? tidy(value) : value,
  unit,
  section,
});

/** Equality at a limit passes, float noise included. */
export const atMost = (value: number, limit: number): boolean => value <= limit + EPS;
export const atLeast = (value: number, limit: number): boolean => value >= limit - EPS;
