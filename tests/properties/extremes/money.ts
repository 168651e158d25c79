import { defaultBook } from '../../../src/pricing/defaultBook';
import { type Extreme, extreme, must, type Raw } from './extreme';

/** Price books, stock and practices at the ends of what the file may hold. */

const book = (change: (b: Raw) => void) => (j: Raw) => {
  // the labor-hour as it is entered, so that a changed one agrees with it
  j.priceBook = { ...structuredClone(defaultBook), wage: null };
  change(j.priceBook);
};
const practice = (more: Raw) => (j: Raw) => {
  Object.assign(j.practice, more);
};
const incomplete: Extreme['expect'] = ({ plans }) =>
  plans.flatMap((p) =>
    must(!p.price.complete && p.price.missing.length > 0, `${p.option}: the price is called complete`),
  );

export const MONEY: readonly Extreme[] = [
  extreme(
    'a book without anything',
    book((b) => Object.assign(b, { materials: [], tasks: [], allowances: [] })),
    incomplete,
  ),
  extreme(
    'a book without cables',
    book((b) => (b.materials = b.materials.filter((m: Raw) => !m.id.startsWith('cable:')))),
    ({ plan }) => must(!plan('relocate').price.complete, 'cable is needed and has no price'),
  ),
  extreme(
    'a book without boxes',
    book((b) => (b.materials = b.materials.filter((m: Raw) => !m.id.startsWith('box:')))),
  ),
  extreme(
    'a book without breakers',
    book((b) => (b.materials = b.materials.filter((m: Raw) => !m.id.startsWith('breaker:')))),
    incomplete,
  ),
  extreme(
    'a book without tasks',
    book((b) => (b.tasks = [])),
    incomplete,
  ),
  extreme(
    'a book without allowances',
    book((b) => (b.allowances = [])),
  ),
  extreme(
    'a book of every second thing',
    book((b) => {
      b.materials = b.materials.filter((_: Raw, i: number) => i % 2);
      b.tasks = b.tasks.filter((_: Raw, i: number) => i % 2);
    }),
  ),
  ...[0.99, 0.9999999999, 1, 1.5, 10].map((rate) =>
    extreme(
      `a margin of ${rate}`,
      book((b) => (b.profit = { as: 'margin', rate })),
    ),
  ),
  extreme(
    'a markup of ten',
    book((b) => (b.profit = { as: 'markup', rate: 10 })),
  ),
  extreme(
    'an overhead of ten and a tax of ten',
    book((b) => Object.assign(b, { overheadRate: 10, tax: { rate: 10, on: ['material', 'labor', 'moon'] } })),
  ),
  extreme(
    'everything at its dearest',
    book((b) => {
      for (const m of b.materials) m.dollars = 100_000;
      b.dollarsPerCrewHour = 1000;
      Object.assign(b, {
        overheadRate: 10,
        profit: { as: 'markup', rate: 10 },
        tax: { rate: 10, on: ['material', 'labor', 'profit'] },
      });
      for (const t of b.tasks) Object.assign(t, { low: 100, likely: 100, high: 100 });
    }),
  ),
  extreme(
    'everything for nothing',
    book((b) => {
      for (const m of b.materials) m.dollars = 0;
      b.dollarsPerCrewHour = 0;
      for (const t of b.tasks) Object.assign(t, { low: 0, likely: 0, high: 0 });
      for (const a of b.allowances) Object.assign(a, { low: 0, likely: 0, high: 0 });
    }),
  ),
  extreme(
    'credits: everything below nothing',
    book((b) => {
      for (const m of b.materials) m.dollars = -1000;
      for (const a of b.allowances) Object.assign(a, { low: -9, likely: -9, high: -9 });
    }),
  ),
  extreme(
    'prices of a hundredth of a cent',
    book((b) => {
      for (const m of b.materials) m.dollars = 0.0001;
    }),
  ),
  extreme('stock of every length', (j) => {
    j.stock = [
      { cable: '12/2 w/G', lengths: [36, 36.5, 300, 12000, 0.25] },
      { cable: '12/2 w/G', lengths: [100] },
      { cable: '14/2 w/G', lengths: [] },
      { cable: 'string', lengths: [50] },
    ];
  }),
  extreme('stock of two thousand ends', (j) => {
    j.stock = [{ cable: '12/2 w/G', lengths: Array.from({ length: 2000 }, (_, i) => 12 + (i % 700) / 2) }];
  }),
  extreme('cut to a quarter inch', practice({ cutStep: 0.25 })),
  extreme('cut to a millionth', practice({ cutStep: 1e-6, slackShare: 0.0123 })),
  extreme('cut to 900 ft', practice({ cutStep: 10_800 })),
  extreme('slack of three times', practice({ slackShare: 3 })),
  extreme('slack of ten times and 1000 ft', practice({ slackShare: 10, slackMinimum: 12_000 })),
  extreme(
    'no slack and no tails',
    practice({ slackShare: 0, slackMinimum: 0, freeInBox: 0, tailInPanel: 0, tailOfFeeder: 0, shortestPiece: 0 }),
  ),
  extreme('no splice spots', practice({ maxSpliceSpots: 0 })),
  extreme('ten thousand splice spots', practice({ maxSpliceSpots: 10_000, spliceSpotCents: 0 })),
  extreme('a splice spot for a million dollars', practice({ spliceSpotCents: 100_000_000 })),
  extreme('ten thousand spare spaces', practice({ spareSpaces: 10_000 })),
  extreme(
    'the other practices',
    practice({ bundling: 'over 24 in only', nextSizeInRows: true, tenPercentException: true }),
  ),
  extreme('amendments of every kind', (j) => {
    j.code.amendments = { spliceCan: 7, afciOnPanelReplacement: false, workingDepth: -1, x: 1e300, '': '' };
  }),
  extreme('answers to rules there are and are not', (j) => {
    const answer = (rule: string, subject: string, value: Raw) => ({
      rule,
      subject,
      answer: value,
      by: '',
      on: '',
      note: '',
      photo: null,
    });
    j.answers = [
      answer('KNOCKOUTS', 'new-a', -1e300),
      answer('SPACES', 'new-a', 'yes'),
      answer('NO-SUCH-RULE', 'nobody', true),
      answer('WS-DEPTH', 'job', ''),
    ];
  }),
  extreme('alternates taken that are not there', (j) => {
    j.alternates = [{ id: 'gold plating', taken: true }];
  }),
  extreme('loads of every size', (j) => {
    j.house.loads = [
      { id: 'a', kind: 'heat pump', va: 1e7, onPanel: true },
      { id: 'b', kind: '', va: 0, onPanel: 'unknown' },
      { id: 'c', kind: 'range', va: 'unknown', onPanel: true },
    ];
  }),
  extreme('moving a thing costs a million dollars', (j) => {
    for (const o of j.site.obstacles) o.moveCents = 100_000_000;
    for (const o of j.options) o.moves = [{ obstacle: 'washer', to: 'away' }];
  }),
];
