import { describe, expect, test } from 'vitest';
import { calcArrangement } from '../../../src/calculations/arrangement';
import { legOfSpace } from '../../../src/calculations/panelSlots';
import type { Run } from '../../../src/facts/result';
import type { Job, Option } from '../../../src/job/schema';
import { arrangePanel } from '../../../src/loads/arrangePanel';
import { assignment } from '../../../src/loads/assignment';
import { breakersOf } from '../../../src/loads/breakers';
import { entriesInto, spaceAt, tailTo } from '../../../src/loads/insidePanel';
import { type Placing, placeUnits } from '../../../src/loads/slots';
import { planOption } from '../../../src/plan/planOption';
import { LEG_BAND_VA } from '../../../src/standards/insideCan';
import { isKnown } from '../../../src/units/types';
import { DEMOS, demoJob } from '../../support/demos';
import { random } from '../../support/random';

const cheapest = (cost: number[][], row = 0, used = new Set<number>()): number =>
  row === cost.length
    ? 0
    : Math.min(
        ...cost[row]!.map((c, i) => (used.has(i) ? Infinity : c + cheapest(cost, row + 1, new Set([...used, i])))),
      );

test('assignment costs what trying every way costs', () => {
  const r = random(41);
  for (let round = 0; round < 150; round++) {
    const rows = r.int(0, 5);
    const columns = r.int(rows, 6);
    const cost = Array.from({ length: rows }, () => Array.from({ length: columns }, () => r.int(0, 30)));
    const found = assignment(cost);
    expect(new Set(found).size).toBe(rows);
    expect(found.reduce((sum, c, i) => sum + cost[i]![c]!, 0)).toBe(rows === 0 ? 0 : cheapest(cost));
  }
});

describe('slots', () => {
  const unit = (id: string, va: number, r: ReturnType<typeof random>): Placing => {
    const tails = Array.from({ length: 60 }, () => r.int(4, 40));
    return { id, va, tail: (s) => tails[s]! };
  };
  test('each unit in spaces of its own, two-poles on both legs, legs no farther apart than the best or the band', () => {
    const r = random(77);
    for (let round = 0; round < 60; round++) {
      const spaces = 2 * r.int(4, 21);
      const doubles = Array.from({ length: r.int(0, Math.floor(spaces / 8)) }, (_, i) => unit(`d${i}`, 0, r));
      const left = spaces - 2 * doubles.length;
      const singles = Array.from({ length: r.int(0, left) }, (_, i) => unit(`s${i}`, r.int(0, 1900), r));
      const answer = calcArrangement({
        spaces,
        circuits: [
          ...doubles.map((d) => ({ id: d.id, poles: 2 as const, va: 0, partner: null })),
          ...singles.map((s) => ({ id: s.id, poles: 1 as const, va: s.va, partner: null })),
        ],
      });
      if (!answer.ok) throw new Error(answer.error.error.say);
      const best = Number(answer.value.figures.differenceVA);
      // half of them on either leg, any half: what the exact split would wish stands in arrangePanel's own test
      const wished = new Map(singles.map((s, i) => [s.id, i % 2 === 0 ? ('A' as const) : ('B' as const)]));
      const differs = singles.reduce((d, s) => d + (wished.get(s.id) === 'A' ? s.va : -s.va), 0);
      const { at, legs } = placeUnits(spaces, doubles, singles, wished, differs);
      const taken = [...at.values()].flat();
      expect(new Set(taken).size).toBe(taken.length);
      expect(taken.length).toBe(2 * doubles.length + singles.length);
      for (const d of doubles) {
        const [a, b] = at.get(d.id)!;
        expect([b! - a!, legOfSpace(a!) === legOfSpace(b!)]).toEqual([2, false]);
      }
      const apart = singles.reduce((d, s) => d + (legs.get(s.id) === 'A' ? s.va : -s.va), 0);
      const lent = singles.some((s) => legs.get(s.id) !== wished.get(s.id)) && left < singles.length + 2;
      if (!lent) expect(Math.abs(apart)).toBeLessThanOrEqual(Math.max(Math.abs(differs), LEG_BAND_VA));
      expect(best).toBeLessThanOrEqual(Math.abs(apart) + 1e-6);
    }
  });
  test('three breakers, tails by hand: each leg the nearest spaces it has', () => {
    // cables come in at the top left: space 1, 2 on leg A, 3, 4 on leg B, rows 2 in apart, columns 7 in
    const place = (s: number) => 2 * (Math.ceil(s / 2) - 1) + (s % 2 === 1 ? 0 : 7);
    const singles = ['a', 'b', 'c'].map((id, i) => ({ id, va: [900, 500, 400][i]!, tail: place }));
    const wished = new Map([
      ['a', 'A'],
      ['b', 'B'],
      ['c', 'B'],
    ] as const);
    const { at } = placeUnits(8, [], singles, wished, 0);
    expect([at.get('a'), [...at.get('b')!, ...at.get('c')!].sort()]).toEqual([[1], [3, 7]]);
  });
});

const arranged = (job: Job, option: Option, runs: readonly Run[]) => {
  const breakers = breakersOf(job, [], [], runs);
  return { breakers, facts: arrangePanel(job, option, breakers, runs, 1) };
};

describe.each(DEMOS)('%s', (name) => {
  const job = demoJob(name);
  for (const option of job.options)
    test(`${option.id}: legs level, tails shorter than from the top down, the directory complete`, () => {
      const { runs } = planOption(job, option).plan;
      const { breakers, facts } = arranged(job, option, runs);
      const spaces = facts.directory.length;
      const exact = calcArrangement({
        spaces,
        circuits: [
          { id: 'spd', poles: 2, va: 0, partner: null },
          ...breakers.flatMap((b) =>
            b.circuits.map((c) => ({
              id: c.id,
              poles: b.circuits.length === 2 ? (1 as const) : b.poles,
              va: isKnown(c.va) ? c.va : 0,
              partner: b.circuits.length === 2 ? b.circuits.find((o) => o !== c)!.id : null,
            })),
          ),
        ],
      });
      if (!exact.ok) throw new Error(exact.error.error.say);
      const best = Number(exact.value.figures.differenceVA);
      expect(Math.abs(facts.legA - facts.legB)).toBeLessThanOrEqual(Math.max(best, LEG_BAND_VA) + 1e-6);
      // the directory says the same of the legs
      const onLeg = (leg: 'A' | 'B') =>
        facts.directory.reduce((sum, d) => {
          const c = job.circuits.find((x) => x.id === d.circuit);
          if (!c || d.leg !== leg || !isKnown(c.va)) return sum;
          const alone = breakers.find((b) => b.circuits.includes(c))!;
          return sum + (alone.poles === 2 && alone.circuits.length === 1 ? c.va / 2 : c.va);
        }, 0);
      expect(onLeg('A')).toBeCloseTo(facts.legA, 6);
      expect(onLeg('B')).toBeCloseTo(facts.legB, 6);

      const entries = entriesInto(job, option.enclosure, runs);
      const tails = (spaceOf: (circuit: string) => readonly number[]) =>
        job.homeRuns.reduce((sum, h) => {
          const entry = entries.get(h.id);
          const spacesOf = h.circuits.flatMap(spaceOf);
          if (!entry || spacesOf.length === 0) return sum;
          return (
            sum +
            spacesOf.reduce((n, s) => n + tailTo(entry, spaceAt(option.enclosure, spaces, s)), 0) / spacesOf.length
          );
        }, 0);
      const ours = tails((id) => facts.directory.filter((d) => d.circuit === id).map((d) => d.space));
      const downwards = facts.directory.filter((d) => d.circuit !== null).map((d) => d.circuit!);
      const topDown = tails((id) => downwards.flatMap((c, i) => (c === id ? [i + 5] : [])));
      expect(ours).toBeLessThanOrEqual(topDown);
      // 408.4(A): every circuit named, no two alike, unused spaces said to be spare
      const texts = new Map(facts.directory.flatMap((d) => (d.circuit ? [[d.circuit, d.text] as const] : [])));
      expect(new Set(texts.values()).size).toBe(texts.size);
      for (const d of facts.directory) expect(d.text).not.toBe('');
    });
});
