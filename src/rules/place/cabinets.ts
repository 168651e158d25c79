import type { Enclosure } from '../../job/schema';
import { keptPanels, oldPanels, spliceCans } from '../reading';
import type { FactsInYear } from '../rule';

/** Cabinets that stay on the same wall: not replaced, or left as a splice can or subpanel. */
export const cabinetsBeside = (facts: FactsInYear, own: Enclosure): Enclosure[] => {
  const kept = new Set([...spliceCans(facts), ...keptPanels(facts)].map((e) => e.id));
  const gone = new Set(oldPanels(facts).map((e) => e.id));
  return facts.job.enclosures.filter(
    (e) =>
      e.id !== own.id && e.on.wall === own.on.wall && e.on.face === own.on.face && (kept.has(e.id) || !gone.has(e.id)),
  );
};
