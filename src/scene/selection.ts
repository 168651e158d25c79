import type { Stroke } from '../drawings/items';
import { stroke } from '../drawings/items';
import type { Solid } from '../drawings/solids';
import type { Id } from '../units/types';

const inkOf = (solid: Solid, pen: Stroke): Solid => ({
  ...solid,
  faces: [],
  edges: solid.edges.filter((e) => e.fine === 0 && e.when?.but === undefined).map((e) => ({ ...e, stroke: pen })),
  body: solid.body && { ...solid.body, outline: pen, detail: { ...pen, weight: 'hair' } },
});

/** The selected thing's edges drawn once more: an ink line on a wider one of paper. Cables are inked by themselves. */
export const selectedSolid = (
  solids: readonly Solid[],
  id: Id | null,
): { readonly halo: readonly Solid[]; readonly ink: readonly Solid[] } | null => {
  const found = id === null ? [] : solids.filter((s) => s.id === id);
  if (found.length === 0) return null;
  return {
    halo: found.map((s) => inkOf(s, stroke('profile', 'paper'))),
    ink: found.map((s) => inkOf(s, stroke('cut', 'ink'))),
  };
};
