import type { AfciEntry } from '../facts/result';
import type { Job, PriceBook } from '../job/schema';
import { type Breaker, breakerItem } from '../loads/breakers';
import { indexBook, missingFor } from '../pricing/assemblies';
import type { Alternate, Package } from '../pricing/price';
import { PANEL_SPACES } from '../standards/panelSpaces';
import type { Id } from '../units/types';
import type { RequiredWork } from './required';

/** What the owner may take beyond what the job needs. The ids are those of the job's `alternates`. */
export interface OfferAsk {
  readonly job: Job;
  readonly book: PriceBook;
  readonly afci: readonly AfciEntry[];
  /** Breakers as they are in the price. */
  readonly breakers: readonly Breaker[];
  readonly gfci: readonly Id[];
  readonly spdRule: string | null;
  /** Spaces of the panel that is bought. */
  readonly spaces: number;
}
interface Offer {
  readonly alternate: Alternate;
  readonly work: readonly RequiredWork[];
}

const WHITE = 'white finish';
const MATCH = 'finish to match';
const SOLID = 'solid cover';
const CLEAR = 'clear cover';

/** Spare spaces more than the panel has. Common practice, no source. */
const MORE_SPARES = 6;
/** A hub sits in the place of one two-pole breaker. Common practice, no source. */
const HUB_SPACES = 2;
/** One more circuit "within 50 ft" of the panel, by cable. */
const NEARBY_FT = 50;

const goods = (alternate: Id, pieces: readonly (readonly [item: string, quantity: number])[]): RequiredWork[] =>
  pieces.map(([item, quantity]) => ({ item, quantity, homeRuns: [], rule: null, alternate }));

/** AFCI breakers for dual-function ones, of the same rating. */
const dual = (breakers: readonly Breaker[]): (readonly [string, number])[] =>
  breakers.flatMap((b) => {
    const [from, to] = [breakerItem(b), breakerItem({ ...b, gfci: true })];
    return b.afci && !b.gfci && from !== null && to !== null ? [[to, 1] as const, [from, -1] as const] : [];
  });
/** Plain breakers of up to 60 A for connected ones; there is none with AFCI or GFCI in the book. */
const MOST_CONNECTED_AMPS = 60;
const connected = (breakers: readonly Breaker[]): (readonly [string, number])[] => {
  const plain = breakers.filter((b) => !b.afci && !b.gfci && b.amps !== 'unknown' && b.amps <= MOST_CONNECTED_AMPS);
  const count = (poles: number) => plain.filter((b) => b.poles === poles).length;
  return plain.length === 0
    ? []
    : [
        ['connected:1p', count(1)],
        ['connected:2p', count(2)],
        ['hub', 1],
      ];
};
/** The smallest panel sold, and priced, with that many spaces more. */
const larger = (spaces: number, book: PriceBook): number | undefined =>
  PANEL_SPACES.filter(
    (size) => size >= spaces + MORE_SPARES && book.materials.some(({ id }) => id === `panel:${size}`),
  ).sort((a, b) => a - b)[0];

/** Every alternate the book can price whole, or that was taken: a taken one without a price is missing, never dropped. */
export const offersOf = ({ job, book, breakers, spaces }: OfferAsk): Offer[] => {
  const books = indexBook(book);
  const isTaken = (id: Id): boolean => job.alternates.some((a) => a.id === id && a.taken);
  const next = larger(spaces, book);
  const offer = (
    id: Id,
    pieces: readonly (readonly [string, number])[],
    more: Pick<Alternate, 'spaces' | 'insteadOf'> = {},
  ): Offer[] => {
    const work = goods(
      id,
      pieces.filter(([, quantity]) => quantity !== 0),
    );
    const beside = more.insteadOf?.some(isTaken) ?? false;
    const priced = work.every(({ item }) => missingFor(books, item).length === 0);
    if (work.length === 0 || !(priced || isTaken(id))) return [];
    return [{ alternate: { id, required: false, taken: isTaken(id) && !beside, rule: null, ...more }, work }];
  };
  return [
    ...offer(WHITE, [['finish:white', 1]], { insteadOf: [MATCH] }),
    ...offer(MATCH, [['finish:paint to match', 1]]),
    ...offer(SOLID, [['trim:solid', 1]], { insteadOf: [CLEAR] }),
    ...offer(CLEAR, [['trim:clear', 1]]),
    ...offer('dual', dual(breakers)),
    ...offer('connected', connected(breakers), { spaces: HUB_SPACES }),
    ...(next === undefined
      ? []
      : offer(
          'spares',
          [
            [`panel:${next}`, 1],
            [`panel:${spaces}`, -1],
          ],
          { spaces: spaces - next },
        )),
    ...offer('tidy board', [['tidy board', 1]]),
    ...offer(
      'extra circuit',
      [
        ['breaker:1p 20 AFCI', 1],
        ['cable:12/2 NM', NEARBY_FT],
        ['connector:1/2', 1],
        ['pull', 1],
        ['pull ft', NEARBY_FT],
        ['receptacle:5-20', 1],
        ['test circuit', 1],
        ['directory', 1],
      ],
      { spaces: 1 },
    ),
  ];
};

/** What is offered as one. Good is what the job and its rules need; the others are our own choice, no source. */
const BETTER = ['spd', WHITE, 'tidy board'] as const;
const BEST = ['spd', MATCH, CLEAR, 'tidy board', 'dual', 'connected', 'spares'] as const;

/** Packages of the alternates there are. */
export const packagesOf = (alternates: readonly Alternate[]): Package[] => {
  const there = (ids: readonly Id[]) => ids.filter((id) => alternates.some((a) => a.id === id && !a.required));
  return [
    { id: 'good', alternates: [] },
    { id: 'better', alternates: there(BETTER) },
    { id: 'best', alternates: there(BEST) },
  ];
};
