import { loadOhms, neutralAmps, openNeutralVolts } from '../../../src/calculations/sharedNeutral';
import { pathTo } from '../../../src/routing/path';
import { sweep } from '../../../src/routing/sweep';
import type { Network } from '../../../src/routing/types';
import { asker, calc, code, type Row } from './asking';
import { inputOf } from './published';

const SHARED = 'shared neutrals';

interface Stock {
  readonly stock_length?: number;
  readonly capacity?: number;
  readonly sizes?: readonly number[];
  readonly demand?: readonly number[];
  readonly items?: readonly number[];
}
/** Every stock length costs a dollar, so that the outlay counts them. */
const cut = (id: string) => {
  const input = inputOf(id) as Stock;
  const pieces = input.sizes
    ? input.sizes.map((length, i) => ({ length, count: input.demand![i]! }))
    : input.items!.map((length) => ({ length, count: 1 }));
  const coils = [{ length: input.stock_length ?? input.capacity!, dollars: 1, have: null }];
  return asker('cut', { coils, pieces, keepFrom: null, remnantShare: 0 })();
};
const cutting = (id: string, expect: string): Row[] => [
  calc(expect, cut(id), (a) => Number(a.outlayCents) / 100),
  calc({ what: 'proven', is: true }, cut(id), 'proven'),
];

type Points = readonly (readonly [number, number])[];
/** Points joined along rows and columns to their nearest listed neighbors, as a network of the route search. */
const shortest = (points: Points, from: number, to: number) => {
  const joined = points.flatMap(([x, y], a) =>
    ([0, 1] as const).flatMap((axis) => {
      const along = points
        .map((p, b) => ({ b, far: p[axis] - points[a]![axis] }))
        .filter(({ b, far }) => far > 0 && points[b]![1 - axis] === [x, y][1 - axis])
        .sort((p, q) => p.far - q.far)[0];
      return along ? [[a, along.b, along.far] as const, [along.b, a, along.far] as const] : [];
    }),
  );
  const edges = [...joined].sort((p, q) => p[0] - q[0]);
  const off = Int32Array.from({ length: points.length + 1 }, (_, n) => edges.filter(([a]) => a < n).length);
  const place = (axis: 0 | 1) => Int32Array.from(points, (p) => p[axis]);
  const network = {
    nodeCount: points.length,
    off,
    to: Int32Array.from(edges, ([, b]) => b),
    x: place(0),
    y: place(1),
    z: new Int32Array(points.length),
    cls: new Uint8Array(edges.length),
  } as unknown as Network;
  const search = sweep(
    network,
    Float64Array.from(edges, ([, , far]) => far),
    [{ node: from, cost: 0 }],
  );
  return { length: search.dist[to]!, path: pathTo(search, to) };
};

const POINTS = (): Points => (inputOf('SP-01') as { points: Points }).points;

export const otherExamples: Readonly<Record<string, readonly Row[]>> = {
  'OR-01': cutting('OR-01', 'min_stock'),
  'OR-02': cutting('OR-02', 'min_stock'),
  ...Object.fromEntries(['OR-06', 'OR-07', 'OR-08', 'OR-10', 'OR-11'].map((id) => [id, cutting(id, 'optimum')])),
  'PB-01': [
    code('neutral_a', SHARED, () => [neutralAmps(15, 5, true), neutralAmps(15, 15, true), neutralAmps(15, 15, false)]),
  ],
  'PB-03': [
    code('l1_a', SHARED, () => 120 / loadOhms(100, 120), 5e-5),
    code('l2_a', SHARED, () => 120 / loadOhms(200, 120), 5e-5),
    code('r_ohm', SHARED, () => [loadOhms(100, 120), loadOhms(200, 120)]),
    code('neutral_a', SHARED, () => neutralAmps(100 / 120, 200 / 120, true), 5e-5),
    code('open_neutral_v', SHARED, () => openNeutralVolts(loadOhms(100, 120), loadOhms(200, 120), 240)),
  ],
  'SP-01': [
    code('length', 'route search', () => shortest(POINTS(), 0, 5).length),
    code({ what: 'path, by its points', is: '0,0 0,2 1,2 1,1' }, 'route search', () => {
      const { path } = shortest(POINTS(), 0, 5);
      return (path[0] === 0 ? path : [...path].reverse()).map((i) => POINTS()[i]!.join(',')).join(' ');
    }),
  ],
};
