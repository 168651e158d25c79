import { expect, test } from 'vitest';
import { runRules } from '../../../src/rules/run';
import type { Changes } from './support';
import { factsFor } from './support';

// Table 310.16 (2023): 2 AWG aluminum 75 A at 60 °C, 90 A at 75 °C; 240.6(A): 80 and 90 A are standard ratings;
// 310.12: 83 % of the rating where the whole dwelling is on the feeder.
const said = (set: Changes): string => {
  const { verdicts } = runRules(factsFor({ '/feeder/cable/size': '2', ...set }));
  return verdicts.find((v) => v.rule === 'FDR-2AL')!.say;
};
const UNREAD_SOURCE = { '/feeder/from/lugs': 'unknown' };
const UNREAD_BOTH = { ...UNREAD_SOURCE, '/options/0/enclosure/lugs': 'unknown' };
const ON_90 = { '/feeder/from/breakerAmps': 90 };

test('marking at the source not read: what 2 AWG aluminum carries at either marking, and what cannot be told', () => {
  const text = said({ ...ON_90, ...UNREAD_SOURCE });
  expect(text).toContain('90 A with both ends marked 75 °C (a breaker up to 90 A)');
  expect(text).toContain('75 A where either end is marked 60 °C (a breaker up to 80 A)');
  expect(text).toContain('Not known: the terminal marking at the feeder source.');
  expect(text).toContain('whether 90 A may protect it cannot be told');
});

test('neither end read: both are named', () => {
  expect(said({ ...ON_90, ...UNREAD_BOTH })).toContain(
    'Not known: the terminal marking at the feeder source; the terminal marking at the panel.',
  );
});

test('whole dwelling or part not known: both readings', () => {
  const text = said({ '/feeder/wholeDwelling': 'unknown' });
  expect(text).toContain('carries 90 A with terminals of 75 °C (a breaker up to 90 A)');
  expect(text).toContain('With the whole dwelling on this feeder the breaker may be up to 100 A');
  expect(text).toContain('whether the whole dwelling hangs on it');
});

test('breaker or jacket not known: named, and the strictest reading of the jacket is shown', () => {
  expect(said({ '/feeder/from/breakerAmps': 'unknown' })).toContain('what may protect it cannot be told');
  expect(said({ ...ON_90, '/feeder/cable/insulation': 'unknown' })).toContain('its jacket');
});

test('too large a breaker: the sentence gives the reason that is true, 60 °C terminals or part of a dwelling', () => {
  expect(said({ ...ON_90, '/feeder/from/lugs': 60 })).toBe(
    '2 AWG aluminum on 90 A is too much. 2 AWG aluminum carries 75 A with terminals of 60 °C (a breaker up to 80 A).',
  );
  expect(said({})).toContain('carries 90 A with terminals of 75 °C (a breaker up to 90 A)');
  expect(said(UNREAD_SOURCE)).not.toContain('Not known');
});

// 75 °C: 90 A. 60 °C: 75 A, no standard rating, so the next larger, 80 A (240.4(B), 240.6(A)).
test('the smaller breaker: at either marking where the ends are not read, alone where they are', () => {
  const cured = (set: Changes) => {
    const { verdicts } = runRules(factsFor({ '/feeder/cable/size': '2', ...set }));
    return verdicts.find((v) => v.rule === 'FDR-2AL')!.remedies[0]!;
  };
  expect(cured(UNREAD_SOURCE).say).toBe(
    'Put a breaker of 90 A at the source if both ends are marked 75 °C, else 80 A; the price has 80 A.',
  );
  expect(cured(UNREAD_SOURCE).work.map((w) => w.item)).toEqual(['feeder breaker:2p 80']);
  expect(cured({}).say).toBe('Put a breaker of 90 A at the source.');
  expect(cured({ '/feeder/from/lugs': 60 }).say).toBe('Put a breaker of 80 A at the source.');
});

test('a smaller breaker that the known load exceeds is not offered: the feeder is replaced', () => {
  const cured = (least: number, set: Changes = {}) => {
    const facts = factsFor({ '/feeder/cable/size': '2', ...set });
    const { verdicts } = runRules({ ...facts, load: { ...facts.load, amps: 'unknown', least } });
    return verdicts.find((v) => v.rule === 'FDR-2AL')!;
  };
  const over = cured(95.6);
  expect(over.remedies.map((r) => r.say)).toEqual([
    'Replace the feeder: 90 A, the most it may have in front of it, is too small for a load of at least 95 A.',
  ]);
  expect([over.effect, over.cure, over.remedies[0]!.work]).toEqual(['stops the job', [], []]);
  expect(cured(85, UNREAD_SOURCE).remedies.map((r) => r.say)).toEqual([
    'Put a breaker of 90 A at the source if both ends are marked 75 °C; else 80 A is too small for a load of at least 85 A and the feeder is replaced.',
  ]);
  expect(cured(80, UNREAD_SOURCE).cure.map((w) => w.item)).toEqual(['feeder breaker:2p 80']);
});
