import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'oxc-parser';
import { describe, expect, test } from 'vitest';
import { RULES } from '../../../src/rules/list';
import { CELL_NAMES, CELLS, type Cell, EMPTY } from './emptyCells';
import { FIXTURES } from './fixtures/all';

const ROOT = fileURLToPath(new URL('../../../src/rules', import.meta.url));
const RULE_TEXTS = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.rule.ts'))
  .map((f) => readFileSync(`${ROOT}/${f}`, 'utf8'));

const filled = (rule: string, cell: Cell): boolean =>
  FIXTURES.some((f) => f.rule === rule && f.outcome === CELLS[cell].outcome && f.effect === CELLS[cell].effect);

/** Names of the functions a file calls. */
const callsIn = (source: string): ReadonlySet<string> => {
  const names = new Set<string>();
  const walk = (x: unknown): void => {
    if (Array.isArray(x)) x.forEach(walk);
    else if (typeof x === 'object' && x !== null) {
      const node = x as { type?: string; callee?: { type: string; name?: string } };
      if (node.type === 'CallExpression' && node.callee?.name !== undefined) names.add(node.callee.name);
      Object.values(x).forEach(walk);
    }
  };
  walk(parseSync('rule.ts', source).program);
  return names;
};

describe('the table of rule, outcome and effect', () => {
  test('every cell is produced by a fixture or has a written reason, never both', () => {
    const faults = RULES.flatMap(({ id }) =>
      CELL_NAMES.flatMap((cell) => {
        const reason = EMPTY[id]?.[cell] ?? '';
        if (filled(id, cell)) return reason === '' ? [] : [`${id} ${cell}: has a fixture and a reason why not`];
        return reason === '' ? [`${id} ${cell}: neither fixture nor reason`] : [];
      }),
    );
    expect(faults).toEqual([]);
  });
  test('no reason is written for a rule there is not', () => {
    const known = new Set<string>(RULES.map((r) => r.id));
    expect(Object.keys(EMPTY).filter((id) => !known.has(id))).toEqual([]);
  });
  test('what a rule file can say has a fixture: no reason covers for a missing one', () => {
    const faults = RULES.flatMap(({ id }) => {
      const calls = RULE_TEXTS.filter((text) => text.includes(`id: '${id}'`)).map(callsIn)[0];
      if (!calls) return [];
      return CELL_NAMES.flatMap((cell) =>
        CELLS[cell].said.some((name) => calls.has(name)) && !filled(id, cell) ? [`${id} can say '${cell}'`] : [],
      );
    });
    expect(faults).toEqual([]);
  });
});
