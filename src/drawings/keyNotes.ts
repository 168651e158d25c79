import type { Effect, Finding } from '../facts/result';
import { compareText } from '../units/order';
import type { Cents } from '../units/types';

/** Gravest first. */
export const EFFECTS: readonly Effect[] = ['stops the job', 'extra work', 'verify in field', 'note'];

/** Findings of one rule that do the same to the job, under one number: the key in drawing, notes and papers. */
export interface KeyNote {
  readonly number: number;
  readonly effect: Effect;
  readonly rule: string;
  readonly section: string;
  /** With its place in the plan's list. */
  readonly findings: readonly { readonly at: number; readonly finding: Finding }[];
}

/** Every finding that does something to the job, gravest first, numbered from 1. */
export const keyNotes = (findings: readonly Finding[]): KeyNote[] => {
  const groups = new Map<string, { effect: Effect; rule: string; findings: { at: number; finding: Finding }[] }>();
  findings.forEach((finding, at) => {
    if (finding.effect === null) return;
    const key = `${EFFECTS.indexOf(finding.effect)} ${finding.rule}`;
    const group = groups.get(key) ?? { effect: finding.effect, rule: finding.rule, findings: [] };
    group.findings.push({ at, finding });
    groups.set(key, group);
  });
  return [...groups]
    .sort(([a], [b]) => compareText(a, b))
    .map(([, group], i) => ({ number: i + 1, section: group.findings[0]!.finding.section, ...group }));
};

/** What the cheapest priced remedies of a note come to; null where one of them has no price. */
export const remedyCents = (note: KeyNote): Cents | null => {
  let sum = 0;
  for (const { finding } of note.findings) {
    const priced = finding.remedies.flatMap((r) => (r.cents === null ? [] : [r.cents]));
    if (priced.length === 0) return null;
    sum += Math.min(...priced);
  }
  return sum;
};
