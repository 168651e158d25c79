import type { Rule } from './rule';

/** Every rule the program checks. */
export const RULES: readonly Rule[] = [];
