import type { Verdict } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import { compareText } from '../units/order';

/** Rules whose open question stops the price: things hung on the old panel, other sources, knob-and-tube. */
const STOPS_PRICE: ReadonlySet<string> = new Set(['HANG', 'SOURCES', 'KNOB-TUBE']);

/**
 * What must be answered before a price is whole, by JSON pointer. Whether an old panel is service equipment changes
 * everything, so not knowing it leaves no price; nor is there one for feeding an old panel that becomes a subpanel.
 */
export const openMatters = (job: Job, option: Option, verdicts: readonly Verdict[]): string[] => {
  const roles = job.enclosures.flatMap((e, i) =>
    e.role === 'unknown' && option.replaces.some((r) => r.enclosure === e.id) ? [`/enclosures/${i}/role`] : [],
  );
  // what feeds it, and its breaker in the new panel, are not planned
  const subpanels = option.replaces.flatMap((r, i) =>
    r.becomes === 'subpanel'
      ? [`/options/${job.options.findIndex((o) => o.id === option.id)}/replaces/${i}/becomes`]
      : [],
  );
  const waiting = verdicts.flatMap((v) => (STOPS_PRICE.has(v.rule) && v.outcome === 'cannot be told' ? v.unknown : []));
  return [...new Set([...roles, ...subpanels, ...waiting])].sort(compareText);
};
