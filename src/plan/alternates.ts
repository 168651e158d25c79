import type { AfciEntry } from '../facts/result';
import type { Job } from '../job/schema';
import { type Breaker, breakerItem, breakersOf } from '../loads/breakers';
import type { Alternate } from '../pricing/price';
import { SPD_ALTERNATE } from '../rules/panel/spd';
import type { Id } from '../units/types';
import { type OfferAsk, offersOf } from './offers';
import type { RequiredWork } from './required';

/** What the homeowner, or the inspector, may still decide. The ids are those of the job's `alternates`. */
export const AFCI_ALTERNATE = 'afci';

export const isTaken = (job: Job, id: Id): boolean => job.alternates.some((a) => a.id === id && a.taken);

/** Circuits whose AFCI is in the price: required, or not known not to be (a price that forgets it is the dear mistake). */
export const afciPriced = (afci: readonly AfciEntry[]): Id[] =>
  afci.filter((a) => a.required === 'yes' || a.required === 'cannot be told').map((a) => a.circuit);

/** Circuits the inspector decides on: plain in the price, with the difference as an alternate. */
export const afciOpen = (afci: readonly AfciEntry[]): Id[] =>
  afci.filter((a) => a.required === 'inspector decides').map((a) => a.circuit);

const piece = (
  item: string,
  quantity: number,
  homeRuns: readonly Id[],
  rule: string | null,
  alternate: Id,
): RequiredWork => ({
  item,
  quantity,
  homeRuns,
  rule,
  alternate,
});

/** The AFCI breaker in, the plain one out, for every breaker that gains it only by the inspector's word. */
const afciDifference = (
  job: Job,
  afci: readonly AfciEntry[],
  plain: readonly Breaker[],
  gfci: readonly Id[],
): RequiredWork[] => {
  const guarded = new Map(breakersOf(job, [...afciPriced(afci), ...afciOpen(afci)], gfci).map((b) => [b.id, b]));
  return plain.flatMap((b) => {
    const other = guarded.get(b.id);
    const [from, to] = [breakerItem(b), other ? breakerItem(other) : null];
    if (from === null || to === null || from === to) return [];
    const homeRuns = job.homeRuns
      .filter((h) => h.circuits.some((c) => b.circuits.some((x) => x.id === c)))
      .map((h) => h.id);
    return [
      piece(to, 1, homeRuns, 'AFCI-LOCAL', AFCI_ALTERNATE),
      piece(from, -1, homeRuns, 'AFCI-LOCAL', AFCI_ALTERNATE),
    ];
  });
};

/** Alternates with their work. A surge device that a rule requires is no choice; its work comes with the rule's cure. */
export const alternatesOf = (ask: OfferAsk): { alternates: Alternate[]; work: RequiredWork[] } => {
  const { job, afci, breakers, gfci, spdRule } = ask;
  const difference = afciDifference(job, afci, breakers, gfci);
  const spd: Alternate = {
    id: SPD_ALTERNATE,
    required: spdRule !== null,
    taken: spdRule !== null || isTaken(job, SPD_ALTERNATE),
    rule: spdRule,
    spaces: 2,
  };
  const inspector: Alternate = {
    id: AFCI_ALTERNATE,
    required: false,
    taken: isTaken(job, AFCI_ALTERNATE),
    rule: 'AFCI-LOCAL',
  };
  const owners = offersOf(ask);
  return {
    alternates: [...(difference.length > 0 ? [inspector] : []), spd, ...owners.map((o) => o.alternate)],
    work: [
      ...difference,
      ...(spdRule === null ? [piece('spd', 1, [], null, SPD_ALTERNATE)] : []),
      ...owners.flatMap((o) => o.work),
    ],
  };
};
