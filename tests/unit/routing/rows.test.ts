import { describe, expect, it } from 'vitest';
import { type RowCable, rowLimit, rowNeed } from '../../../src/calculations/cableRows';
import { holeDiameter } from '../../../src/calculations/holes';
import type { Leg, LegBy } from '../../../src/facts/result';
import { joistHoles, makeHolePacker } from '../../../src/routing/holes';
import { buildNetwork } from '../../../src/routing/network';
import { type Member, rowsOf } from '../../../src/routing/rows';
import { spreadHoles } from '../../../src/routing/spreadHoles';
import type { Cable } from '../../../src/standards/cable';
import type { Pt3 } from '../../../src/units/types';
import { OUTLINE, room } from './smallRoom';

const nm = (size: string, insulation: Cable['insulation'] = 90): Cable => ({
  kind: 'NM',
  size,
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation,
});
const leg = (from: Leg['from'], to: Leg['to'], by: Leg['by'] = 'through joists'): Leg => ({
  from,
  to,
  by,
  cable: 'new',
  row: null,
});
const member = (id: string, legs: readonly Leg[], cable: RowCable): Member => ({
  homeRun: id,
  legs,
  cable: () => cable,
});
const rules = (pinned: string[][] = []): Parameters<typeof rowsOf>[1] => ({
  limit: (cables, policy) =>
    rowLimit(cables, { sealed: false, insulated: false, bundling: 'strict', nextSizeInRows: false, ...policy }, 2023),
  bears: (cable) => rowNeed(cable, { insulated: false, nextSizeInRows: false }, 2023).mostConductors,
  pinned,
});
const across = (length: number) => [leg([0, 50, 96], [length, 50, 96])];
const many = (n: number, cable: RowCable, legs: readonly Leg[]) =>
  Array.from({ length: n }, (_, i) => member(`h${i}`, legs, cable));

describe('rows: Table 310.15(C)(1), start at 90 °C, breakers as they are', () => {
  it('four 12/2 on 20 A in a row, not five: 8 conductors at 70 %, ten would be at 50 %', () => {
    const { rows } = rowsOf(many(5, { cable: nm('12'), amps: 20 }, across(100)), rules());
    expect(rows.map((r) => [r.homeRuns.length, r.conductors, r.factor])).toEqual([[4, 8, 0.7]]);
  });
  it('three 10/2 on 30 A: 40 × 0.8 = 32 holds, 40 × 0.7 = 28 does not', () => {
    const { rows } = rowsOf(many(6, { cable: nm('10'), amps: 30 }, across(100)), rules());
    expect(rows.map((r) => r.homeRuns.length)).toEqual([3, 3]);
  });
  it('an old cable without a print starts at 60 °C and keeps no company', () => {
    const old = member('a', across(100), { cable: nm('12', 'unknown'), amps: 20 });
    const { rows } = rowsOf([old, ...many(3, { cable: nm('12'), amps: 20 }, across(100))], rules());
    expect(rows.map((r) => r.homeRuns)).toEqual([['h0', 'h1', 'h2']]);
  });
  it('24 in together is not a row, a hair more is', () => {
    const at = (length: number) => rowsOf(many(2, { cable: nm('12'), amps: 20 }, across(length)), rules()).rows.length;
    expect(at(24)).toBe(0);
    expect(at(24 + 1 / 64)).toBe(1);
  });
  it('side by side on a board: ten, no factor', () => {
    const board = [leg([0, 50, 91], [100, 50, 91], 'running board')];
    const { rows } = rowsOf(many(12, { cable: nm('12'), amps: 20 }, board), rules());
    expect(rows.map((r) => [r.by, r.homeRuns.length, r.factor])).toEqual([
      ['board', 10, 1],
      ['board', 2, 1],
    ]);
  });
  it('legs carry their row only where it runs', () => {
    const long = member('a', [leg([0, 50, 96], [100, 50, 96])], { cable: nm('12'), amps: 20 });
    const short = member('b', [leg([40, 50, 96], [100, 50, 96])], { cable: nm('12'), amps: 20 });
    const { rows, legs } = rowsOf([long, short], rules());
    expect(rows[0]!.length).toBe(60);
    expect(rows[0]!.path).toEqual([
      [40, 50, 96],
      [100, 50, 96],
    ]);
    expect(legs.get('a')!.map((l) => [l.from[0], l.to[0], l.row])).toEqual([
      [0, 40, null],
      [40, 100, 'row-a'],
    ]);
    expect(legs.get('b')!.map((l) => l.row)).toEqual(['row-a']);
  });
  it('a pinned row comes first', () => {
    const cables = many(5, { cable: nm('12'), amps: 20 }, across(100));
    expect(rowsOf(cables, rules([['h1', 'h4']])).rows[0]!.homeRuns).toContain('h4');
    expect(rowsOf(cables, rules()).rows[0]!.homeRuns).not.toContain('h4');
  });
});

describe('holes', () => {
  const { job, option } = room();
  const network = buildNetwork(job, option, { points: [] });
  const xs = (...stops: number[]) =>
    joistHoles(
      network,
      stops.slice(1).map((x, i) => ({ from: [stops[i]!, 50, 96], to: [x, 50, 96], by: 'through joists' as const })),
    ).map(({ at, of }) => [at[0], of]);
  it('joists at 8, 24, … are bored where the cable passes from one side to the other', () => {
    expect(xs(0, 40)).toEqual([
      [8, 0],
      [24, 0],
    ]);
    expect(xs(40, 0)).toEqual([
      [24, 0],
      [8, 0],
    ]);
    expect(xs(0, 24, 60)).toEqual([
      [8, 0],
      [24, 1],
      [40, 1],
      [56, 1],
    ]);
  });
  it('a joist it begins, ends or turns back on is not bored', () => {
    expect(xs(8, 24)).toEqual([]);
    expect(xs(10, 24, 10)).toEqual([]);
  });
  it('one it lies along for a while is bored when it goes on, and not when it went down between', () => {
    const leg = (from: Pt3, to: Pt3, by: LegBy) => ({ from, to, by });
    const [before, along] = [
      leg([10, 50, 96], [24, 50, 96], 'through joists'),
      leg([24, 50, 96], [24, 80, 96], 'joist side'),
    ];
    const after = leg([24, 80, 96], [30, 80, 96], 'through joists');
    expect(joistHoles(network, [before, along, after])).toEqual([{ at: [24, 80, 96], of: 2 }]);
    const down = leg([24, 50, 96], [24, 50, 90], 'joist side');
    const up = leg([24, 50, 90], [24, 50, 96], 'joist side');
    expect(joistHoles(network, [before, down, up, leg([24, 50, 96], [30, 50, 96], 'through joists')])).toEqual([]);
  });
  it('two two-wire cables in 3/4 in, three in 1 in, never four (common practice)', () => {
    const pack = makeHolePacker((cables) => holeDiameter(cables) ?? null);
    const at = (n: number) =>
      pack(
        [8, 50, 96],
        Array.from({ length: n }, (_, i) => ({ homeRun: `h${i}`, cable: nm('12') })),
      ).map((h) => [h.diameter, h.homeRuns.length]);
    expect(at(1)).toEqual([[0.75, 1]]);
    expect(at(2)).toEqual([[0.75, 2]]);
    expect(at(3)).toEqual([[1, 3]]);
    expect(at(4).map((h) => h[1])).toHaveLength(2);
    expect(at(4).reduce((n, h) => n + h[0]!, 0)).toBe(1.5);
    expect(at(7)).toHaveLength(3);
  });
  it('holes in one joist keep 3 in between centers, about where the cables cross', () => {
    const list = [0, 1, 2].map((i) => ({ hole: { at: [8, 50, 96] as const, diameter: 0.75, homeRuns: [`h${i}`] } }));
    const far = { hole: { at: [8, 70, 96] as const, diameter: 0.75, homeRuns: ['h3'] } };
    const ys = spreadHoles(network, OUTLINE, [...list, far]).map((x) => x.hole.at[1]);
    expect([...ys].sort((a, b) => a - b)).toEqual([47, 50, 53, 70]);
  });
  it('no hole over the wall a joist ends on: the drill has no way there', () => {
    const by = (y: number, homeRun: string) => ({
      hole: { at: [8, y, 96] as const, diameter: 0.75, homeRuns: [homeRun] },
    });
    const at = (...ys: number[]) =>
      spreadHoles(
        network,
        OUTLINE,
        ys.map((y, i) => by(y, `h${i}`)),
      )
        .map((x) => x.hole.at[1])
        .sort((a, b) => a - b);
    // the joist runs from wall to wall, 0 to 144; 2 in for the drill
    expect(at(141, 141, 141)).toEqual([136, 139, 142]);
    expect(at(3, 3, 3)).toEqual([2, 5, 8]);
    expect(at(141, 141, 141, 131)).toEqual([131, 136, 139, 142]);
    expect(at(141, 141, 141, 135)).toEqual([133, 136, 139, 142]);
    // a cable that runs nearer to the wall keeps its place
    expect(at(143)).toEqual([143]);
  });
});
