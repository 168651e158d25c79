import { expect, test } from 'vitest';
import { keyNotes, remedyCents } from '../../../src/drawings/keyNotes';
import type { Effect, Finding } from '../../../src/facts/result';

const finding = (rule: string, effect: Effect | null, cents: (number | null)[] = []): Finding => ({
  rule,
  subject: 's',
  outcome: effect === null ? 'holds' : 'fails',
  effect,
  measured: null,
  required: null,
  unit: '',
  section: '1',
  standing: 'confirmed',
  amendment: null,
  split: null,
  say: '',
  look: null,
  remedies: cents.map((c) => ({ say: '', cents: c })),
  shape: null,
});

test('gravest first, one number a rule, what holds has none, places in the list kept', () => {
  const notes = keyNotes([
    finding('AFCI-EXT', 'extra work'),
    finding('TORQUE', 'note'),
    finding('AFCI-EXT', null),
    finding('WS-DEPTH', 'stops the job'),
    finding('AFCI-EXT', 'extra work'),
    finding('LOAD', 'verify in field'),
    finding('AFCI-EXT', 'verify in field'),
  ]);
  expect(notes.map((n) => [n.number, n.effect, n.rule, n.findings.map((f) => f.at)])).toEqual([
    [1, 'stops the job', 'WS-DEPTH', [3]],
    [2, 'extra work', 'AFCI-EXT', [0, 4]],
    [3, 'verify in field', 'AFCI-EXT', [6]],
    [4, 'verify in field', 'LOAD', [5]],
    [5, 'note', 'TORQUE', [1]],
  ]);
});

test('remedies: the cheapest of each finding added up; one without a price leaves the sum open', () => {
  const sum = (...findings: Finding[]) => remedyCents(keyNotes(findings)[0]!);
  expect(sum(finding('A', 'extra work', [900, 400]), finding('A', 'extra work', [null, 250]))).toBe(650);
  expect(sum(finding('A', 'extra work', [900]), finding('A', 'extra work', [null]))).toBeNull();
  expect(sum(finding('A', 'extra work'))).toBeNull();
});
