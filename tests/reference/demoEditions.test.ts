import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Finding } from '../../src/facts/result';
import { EDITIONS, type Edition } from '../../src/units/types';
import { findingsByYear, findingsPage, type TOLD } from '../support/demoFindings';
import { EDITION_CHANGES, STEPS } from '../unit/rules/editionChanges';

/**
 * Rules whose findings differ from one code year to the next, worked from the published comparison by edition for what
 * is in each demo: its service panel or subpanel, its lengths near 6 ft, its boxes with more than four grounds.
 */
const EXPECTED: Readonly<Record<`${(typeof TOLD)[number][0]} ${string}`, readonly [string, string, string]>> = {
  // a service panel replaced in its place: service surge device and emergency disconnect from 2020, outdoors in 2026
  'small-house in-place': ['EMDISC SPACES SPD-SVC', 'EMDISC WS-DOOR WS-FLOOR', 'LOAD SVC-LOC'],
  // behind a new disconnect outdoors, which settles EMDISC and SVC-LOC; cables spliced in boxes
  'small-house relocate-a': ['AFCI-EXT-17 BOX-FILL EMDISC SPACES SPD-SVC', 'SPD-FDR WS-DOOR WS-FLOOR', 'LOAD'],
  // subpanels: no service rule; the feeder's surge device from 2023; an outlet added in a basement room
  'l-shaped relocate-a': ['AFCI-EXT-17 BOX-FILL GFCI-NEW', 'GFCI-NEW SPACES SPD-FDR WS-DOOR WS-FLOOR', 'LOAD'],
  // with extensions just under 6 ft, which 2017 may count with what is inside boxes
  'washer relocate-a': ['AFCI-AREA AFCI-EXT AFCI-EXT-17 BOX-FILL', 'SPACES SPD-FDR WS-DOOR WS-FLOOR', 'LOAD'],
};
/** A consequence, not a rule that differs: the surge device takes its breaker spaces. */
const FOLLOWS = ['SPACES'];

const said = (findings: readonly Finding[], rule: string): string =>
  findings
    .filter((f) => f.rule === rule)
    .map((f) => JSON.stringify([f.subject, f.outcome, f.effect, f.measured, f.required, f.say]))
    .sort()
    .join('\n');

test.each(Object.keys(EXPECTED) as (keyof typeof EXPECTED)[])(
  '%s: another code year changes exactly the rules that differ',
  (name) => {
    const [demo, option] = name.split(' ') as [string, string];
    const years = findingsByYear(demo, option);
    const rules = [...new Set([...years.values()].flat().map((f) => f.rule))].sort();
    for (const [i, step] of STEPS.entries()) {
      const [from, to] = [years.get(EDITIONS[i] as Edition)!, years.get(EDITIONS[i + 1] as Edition)!];
      const differ = rules.filter((rule) => said(from, rule) !== said(to, rule));
      expect(differ.join(' '), step).toBe(EXPECTED[name]![i]);
      const known = Object.keys(EDITION_CHANGES[step]);
      expect(differ.filter((rule) => !known.includes(rule) && !FOLLOWS.includes(rule))).toEqual([]);
    }
  },
  60_000,
);

test('demo/FINDINGS.md is what the rules find: run npm run generate', () => {
  expect(readFileSync(new URL('../../demo/FINDINGS.md', import.meta.url), 'utf8')).toBe(findingsPage());
}, 60_000);
