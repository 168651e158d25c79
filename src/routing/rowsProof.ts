import type { Proof, Row } from '../facts/result';
import type { Work } from '../facts/work';
import { cableItem } from '../standards/cableNames';
import type { Candidate } from './candidate';
import { lengthAlong } from './cutLength';
import { nodeAt } from './network';
import { weigh } from './prices';
import type { Posed } from './problem';
import { pricesOf } from './routes';
import { leastShare } from './share';
import { sweep } from './sweep';
import { panelEntries } from './terminals';
import { COST_PER_MILL } from './types';

/**
 * How far the holes, boards and opened strips of the chosen ways can be above the least possible between the same ends.
 * Bound: every cable alone along its cheapest way with each shared thing at the smallest share it can ever have.
 */
export const rowsProof = (
  posed: Posed,
  chosen: readonly Candidate[],
  made: { readonly rows: readonly Row[]; readonly work: readonly Work[] },
): Proof => {
  const { network } = posed.routes;
  const { unit, option } = posed.ask;
  const entries = panelEntries(network, option.enclosure).map(({ node, cost }) => ({ node, cost }));
  const routed = posed.facts.flatMap((f, r) =>
    (['old', 'new'] as const).flatMap((which) => {
      const legs = chosen[r]!.legs.filter((l) => l.cable === which && l.by !== 'inside panel');
      const first = legs[0];
      const node = first && nodeAt(network, first.from);
      // an old cable's spur ends at a box and not at the panel: its part is left out on both sides
      return first && node !== undefined && (which === 'new' || chosen[r]!.way === 'reuse')
        ? [{ f, which, legs, node }]
        : [];
    }),
  );
  if (routed.length === 0) return { best: true };
  const dist = new Map<string, Float64Array>();
  let bound = 0;
  let actual = 0;
  for (const { f, which, legs, node } of routed) {
    const cable = which === 'new' ? f.newCable : f.homeRun.cable;
    const prices = pricesOf(cable, unit, which, leastShare(routed.length), 0);
    const key = `${which} ${cableItem(cable)}`;
    const known = dist.get(key) ?? sweep(network, weigh(network, prices), entries).dist;
    dist.set(key, known);
    bound += known[node]! / COST_PER_MILL;
    actual += (prices.perFt * lengthAlong([legs[0]!.from, ...legs.map((l) => l.to)])) / 12;
  }
  for (const w of made.work)
    if (['hole', 'running board', 'patch', 'lift tile', 'sleeve'].includes(w.item))
      actual += posed.terms.pricer.of(w.item) * w.quantity;
  const above = bound > 0 ? (actual - bound) / bound : 0;
  return above <= 1e-6 ? { best: true } : { best: false, atMostAbove: above };
};
