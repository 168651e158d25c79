import { describe, expect, test } from 'vitest';
import { ASKED, compare, SKIPPED } from './examples/all';
import { EXAMPLES } from './examples/published';

const open = EXAMPLES.filter((e) => !(e.id in SKIPPED));

// Each example carries its own source (publication, title, where); `expected` is the answer as recomputed from the rule.
describe.each(open.map((e) => [`${e.id} ${e.source.title} (${e.source.publication})`, e] as const))(
  '%s',
  (_, example) => {
    const rows = ASKED[example.id] ?? [];
    test('is asked', () => expect(rows.length).toBeGreaterThan(0));
    test.each(rows.map((row) => [typeof row.expect === 'string' ? row.expect : row.expect.what, row] as const))(
      '%s',
      (_what, row) => {
        const { ours, wanted, agrees } = compare(example, row);
        expect(agrees, `ours ${ours}, wanted ${wanted}`).toBe(true);
      },
    );
  },
);

test('all 104 examples are asked or left out for a stated reason, never both', () => {
  expect(EXAMPLES.length).toBe(104);
  expect([...Object.keys(ASKED), ...Object.keys(SKIPPED)].sort()).toEqual(EXAMPLES.map((e) => e.id).sort());
});

/** Figures an example lists that are no answer of the product, and why. */
const UNASKED: Readonly<Record<string, string>> = {
  'AM-10.effective_ambient_f': 'the adder for rooftops left the code in 2017; the ambient is entered',
  'FD-08.fix': 'words; both remedies are asked as figures',
  'FD-20.2008': 'code year 2008 is not offered',
  'AF-05.length_basis': 'words; the length is entered once',
  'AF-07.2011': 'code year 2011 is not offered',
  'WS-02.panel_top_in': 'the sum of two inputs',
  'JB-04.count_limit': 'words',
  'JB-04.top_edge_clear_in': 'a difference of inputs',
  'JB-04.between_holes_in': 'a difference of inputs',
  'SP-01.path': 'asked as words, its points',
  'SP-01.other_path_length': 'a path nobody asks for',
};
/** Of cutting problems: total, bounds and what simple methods find are there to compare with. */
const COMPARISONS = ['total_demand_length', 'length_bound', 'lp_bound', 'lower_bound', 'ffd', 'bfd', 'first_fit'];

test('every figure of every open example is asked, or told why not', () => {
  const missing = open.flatMap((e) => {
    const asked = (ASKED[e.id] ?? []).flatMap((row) => (typeof row.expect === 'string' ? [row.expect] : []));
    return Object.keys(e.expected)
      .filter((key) => !asked.some((path) => path === key || path.startsWith(`${key}.`)))
      .map((key) => `${e.id}.${key}`)
      .filter((name) => !(name in UNASKED) && !(name.startsWith('OR-') && COMPARISONS.includes(name.slice(6))));
  });
  expect(missing).toEqual([]);
});
