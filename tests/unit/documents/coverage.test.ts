import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { coverageRows } from '../../../src/documents/coverage';
import { coveragePage } from '../../../src/documents/coveragePage';
import { RULE_IDS } from '../../../src/standards/sections';
import { MATTERS } from '../../../src/words/en/coverage';

const rows = coverageRows();

test('docs/coverage.md is what the rules say: run npm run generate', () => {
  expect(readFileSync(new URL('../../../docs/coverage.md', import.meta.url), 'utf8')).toBe(coveragePage());
});

test('no cell of the coverage page is blank', () => {
  for (const r of rows) {
    const cells = [r.rule, r.asks, r.source, ...r.sections.map((s) => s.section)];
    expect(cells.filter((c) => c.trim() === '')).toEqual([]);
    if (r.status === 'not covered') expect(r.why?.length ?? 0, r.rule).toBeGreaterThan(20);
    else expect(r.why, r.rule).toBeNull();
  }
  for (const line of coveragePage()
    .split('\n')
    .filter((l) => l.startsWith('| '))) {
    expect(
      line.split(' | ').filter((c) => c.trim() === ''),
      line,
    ).toEqual([]);
  }
});

test('every other matter has a rule or says where it stands', () => {
  const known: readonly string[] = RULE_IDS;
  for (const [matter, rules, where] of MATTERS) {
    expect(
      rules.filter((r) => !known.includes(r)),
      matter,
    ).toEqual([]);
    expect(where.length, matter).toBeGreaterThan(10);
  }
  expect(new Set(MATTERS.map(([matter]) => matter)).size).toBe(MATTERS.length);
});

test('no 2026 number of the NEC is printed as more than unverified', () => {
  for (const { rule, sections } of rows) {
    const cell = sections.find((s) => s.edition === 2026)!;
    const outsideNec = /^(IRC|29 CFR)/.test(cell.section);
    if (cell.asked && !outsideNec) expect(cell.standing, rule).toBe('unverified');
  }
  const cells = coveragePage()
    .split('\n')
    .filter((l) => /^\| [A-Z0-9]+[A-Z0-9-]* \|/.test(l))
    .map((l) => l.split(' | ')[5]!);
  expect(cells.length).toBe(rows.length);
  expect(cells.filter((c) => !/\(unverified\)$|^not asked for$|^(IRC|29 CFR)/.test(c))).toEqual([]);
});
