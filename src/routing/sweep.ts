import type { Network, Source, Sweep } from './types';

/**
 * One-to-all cheapest costs with a queue of buckets (Dial 1969), label-correcting inside a bucket, so that its width
 * changes the time and never the answer. All costs are whole numbers.
 */

/** Items waiting in buckets, as linked lists. One pool serves all sweeps, one after the other. */
const pool = { value: new Int32Array(0), key: new Float64Array(0), next: new Int32Array(0) };
const growPool = (size: number): void => {
  if (pool.value.length >= size) return;
  const { value, key, next } = pool;
  pool.value = new Int32Array(size);
  pool.key = new Float64Array(size);
  pool.next = new Int32Array(size);
  pool.value.set(value);
  pool.key.set(key);
  pool.next.set(next);
};

type Span = readonly [least: number, most: number];
const spans = new WeakMap<Float64Array, Span>();
/** Weights are not written to once they are swept over. */
const spanOf = (weights: Float64Array): Span => {
  const known = spans.get(weights);
  if (known) return known;
  let least = Number.POSITIVE_INFINITY;
  let most = 1;
  for (let e = 0; e < weights.length; e++) {
    const w = weights[e]!;
    if (w < least) least = w;
    if (w > most) most = w;
  }
  const span: Span = [Math.min(least, most), most];
  spans.set(weights, span);
  return span;
};

/** Buckets the heaviest edge spans: few, since labels are corrected inside a bucket. Measured on basements. */
const BUCKETS = 64;
/** Most buckets in the ring: a far start cost must not ask for more memory than the graph itself. */
const MOST_BUCKETS = 1 << 17;

/**
 * Costs of every node from the cheapest source; with a second measure, the least of that among the cheapest. Nodes
 * dearer than `limit` may be left unreached.
 */
export const sweep = (
  network: Network,
  weights: Float64Array,
  sources: readonly Source[],
  limit = Number.POSITIVE_INFINITY,
  second: Float64Array | null = null,
): Sweep => {
  const { off, to, nodeCount } = network;
  const dist = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  const ties = second ? { weights: second, dist: new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY) } : null;
  const [least, most] = spanOf(weights);
  const lowest = Math.min(...sources.map((s) => s.cost), Number.POSITIVE_INFINITY);
  const highest = Math.max(...sources.map((s) => s.cost), 0);
  if (sources.length === 0) return { network, weights, sources, dist, ties };
  const widest = Math.max(most, highest - lowest);
  const width = Math.max(least, most / BUCKETS, widest / (MOST_BUCKETS - 4));
  let buckets = 4;
  while (buckets < Math.ceil(widest / width) + 2) buckets *= 2;
  const mask = buckets - 1;
  const head = new Int32Array(buckets).fill(-1);
  growPool(2 * nodeCount + 16);
  let { value, key, next } = pool;
  let used = 0;
  let waiting = 0;
  const push = (node: number, cost: number) => {
    if (used === value.length) {
      growPool(2 * used);
      ({ value, key, next } = pool);
    }
    const bucket = ((cost - lowest) / width) & mask;
    value[used] = node;
    key[used] = cost;
    next[used] = head[bucket]!;
    head[bucket] = used++;
    waiting++;
  };
  for (const { node, cost, tie = 0 } of sources) {
    const nearer = cost < dist[node]! || (ties !== null && cost === dist[node] && tie < ties.dist[node]!);
    if (!nearer || cost > limit) continue;
    dist[node] = cost;
    if (ties) ties.dist[node] = tie;
    push(node, cost);
  }
  let bucket = 0;
  while (waiting > 0) {
    let item = head[bucket]!;
    if (item < 0) {
      bucket = (bucket + 1) & mask;
      continue;
    }
    head[bucket] = -1;
    while (item >= 0) {
      const u = value[item]!;
      const cost = key[item]!;
      item = next[item]!;
      waiting--;
      if (cost > dist[u]!) continue;
      for (let e = off[u]!; e < off[u + 1]!; e++) {
        const v = to[e]!;
        const through = cost + weights[e]!;
        if (through > dist[v]! || through > limit) continue;
        if (ties) {
          const tie = ties.dist[u]! + ties.weights[e]!;
          if (through === dist[v] && tie >= ties.dist[v]!) continue;
          ties.dist[v] = tie;
        } else if (through === dist[v]) continue;
        dist[v] = through;
        push(v, through);
      }
    }
  }
  return { network, weights, sources, dist, ties };
};
