import type { Plan } from '../facts/result';
import type { Area, Job, Option, PriceBook } from '../job/schema';
import { faceOf, wallFaces } from '../job/site';
import { isDirect } from '../pricing/lines';
import { formatFeetInches } from '../units/length';
import { formatDollars } from '../units/money';
import { byId } from '../units/order';
import type { Cents, Id, In } from '../units/types';
import { planWords as say } from '../words/en/plan';
import { bookOf } from './stages';

/** A change to the job that might turn the advice: what is tried, whose plans it can touch, and how it is told. */
export interface Candidate {
  readonly change: { readonly path: string; readonly value: unknown };
  readonly job: Job;
  /** The options whose plan the change can touch; the others stand. */
  readonly touches: readonly Id[];
  readonly say: (option: string) => string;
  /**
   * How it can turn the advice at all: others — the advised option gets no worse, another must overtake it; best — no
   * option gets better, the advised one must fall behind the others as they are.
   */
  readonly by: 'others' | 'best' | 'any';
}

const withOption = (job: Job, at: number, option: Option): Job => ({
  ...job,
  options: job.options.map((o, i) => (i === at ? option : o)),
});

/** Things that could be carried out of the way of an option that is stopped, one at a time. */
const movesOf = (job: Job, plan: Plan): Candidate[] => {
  const at = job.options.findIndex((o) => o.id === plan.option);
  const option = job.options[at]!;
  const movable = byId(job.site.obstacles).filter(
    (o) => o.moveCents !== null && o.blocksSpace && !option.moves.some((m) => m.obstacle === o.id),
  );
  return movable.map((thing) => {
    const moves = [...option.moves, { obstacle: thing.id, to: 'away' as const }];
    return {
      change: { path: `/options/${at}/moves`, value: moves },
      job: withOption(job, at, { ...option, moves }),
      touches: [option.id],
      say: (to) => say.flipMove({ thing: thing.kind, option: to }),
      by: 'others',
    };
  });
};

/** The inspector's answers that decide money: each the other way round. */
const answersOf = (job: Job, touches: readonly Id[]): Candidate[] => {
  const amended = (key: string, value: string, by: Candidate['by'], sentence: Candidate['say']): Candidate[] =>
    job.code.amendments[key] === value
      ? []
      : [
          {
            change: { path: `/code/amendments/${key}`, value },
            job: { ...job, code: { ...job.code, amendments: { ...job.code.amendments, [key]: value } } },
            touches,
            say: sentence,
            by,
          },
        ];
  return [
    ...amended('spliceCan', 'yes', 'others', (to) => say.flipSpliceCan({ answer: 'yes', option: to })),
    ...amended('spliceCan', 'no', 'best', (to) => say.flipSpliceCan({ answer: 'no', option: to })),
    ...amended('afciOnPanelReplacement', 'none', 'others', (to) => say.flipAfci({ option: to })),
  ];
};

const direct = (plan: Plan): Cents => plan.price.lines.filter(isDirect).reduce((sum, l) => sum + l.likelyCents, 0);
/** What a direct dollar of a plan is in its price. */
const loaded = (plan: Plan): number => (direct(plan) > 0 ? plan.tally.likelyCents / direct(plan) : 1);

const SHARED = /^(feeder|patch|running board|lift tile|sleeve|hole|staple|splice spot|box:|board)/;
/** All of a price that hangs on where cables go: no other way of theirs saves more. */
const mostSaved = (plan: Plan): Cents =>
  plan.price.lines
    .filter((l) => isDirect(l) && (l.homeRuns.length > 0 || SHARED.test(l.item)))
    .reduce((sum, l) => sum + l.likelyCents, 0) * loaded(plan);

/** Can an option that nothing stops come out first by having its cables go another way? */
const withinReach = (plan: Plan, best: Plan | undefined): boolean =>
  best === undefined || plan.tally.stops > 0 || plan.tally.likelyCents - mostSaved(plan) < best.tally.likelyCents;

const FOOT_IN: In = 12;
/** A foot to either side along its wall: the advised panel, and those that could overtake it. */
const feetOf = (job: Job, plans: readonly Plan[], best: Plan | undefined): Candidate[] =>
  plans
    .filter((p) => p.option === best?.option || withinReach(p, best))
    .flatMap((plan) => {
      const at = job.options.findIndex((o) => o.id === plan.option);
      const option = job.options[at]!;
      const { on, size } = option.enclosure;
      const face = faceOf(wallFaces(job.site, 'after'), on);
      if (!face) return [];
      return ([-FOOT_IN, FOOT_IN] as const).flatMap((by): Candidate[] => {
        const left = on.left + by;
        if (left < 0 || left + size.width > face.length) return [];
        const moved = { ...option, enclosure: { ...option.enclosure, on: { ...on, left } } };
        return [
          {
            change: { path: `/options/${at}/enclosure/on/left`, value: left },
            job: withOption(job, at, moved),
            touches: [option.id],
            say: (to) =>
              say.flipShift({
                title: option.title,
                by: formatFeetInches(FOOT_IN),
                toward: by < 0 ? 'left' : 'right',
                option: to,
              }),
            by: plan.option === best?.option ? 'best' : 'others',
          },
        ];
      });
    });

type Cover = Area['state']['now']['cover'];
/** The ceilings as they are when the crew comes: all drywall taken down before, or hung before where it is to come. */
const drywallOf = (job: Job, plans: readonly Plan[], best: Plan | undefined): Candidate[] => {
  const touches = plans.map((p) => p.option);
  const changed = (to: (area: Area) => Cover): { job: Job; areas: Area[]; differs: boolean } => {
    const areas = job.site.areas.map((a) => ({ ...a, state: { ...a.state, now: { ...a.state.now, cover: to(a) } } }));
    const differs = areas.some((a, i) => a.state.now.cover !== job.site.areas[i]!.state.now.cover);
    return { job: { ...job, site: { ...job.site, areas } }, areas, differs };
  };
  const opened = changed((a) => (a.state.now.cover === 'drywall' ? 'open joists' : a.state.now.cover));
  const closed = changed((a) => (a.state.after.cover === 'drywall' ? 'drywall' : a.state.now.cover));
  const path = '/site/areas';
  // opened, no way gets dearer: only one that could come out first by cheaper ways is worth asking
  const overtakes = plans.some((p) => p.option !== best?.option && withinReach(p, best));
  return [
    ...(opened.differs && overtakes
      ? [
          {
            change: { path, value: opened.areas },
            job: opened.job,
            touches,
            say: (option: string) => say.flipOpened({ option }),
            by: 'others' as const,
          },
        ]
      : []),
    ...(closed.differs
      ? [
          {
            change: { path, value: closed.areas },
            job: closed.job,
            touches,
            say: (option: string) => say.flipClosed({ option }),
            by: 'best' as const,
          },
        ]
      : []),
  ];
};

const AFCI_BREAKER = /^breaker:.*AFCI/;
const afciCents = (plan: Plan): Cents =>
  plan.price.lines.filter((l) => AFCI_BREAKER.test(l.item)).reduce((sum, l) => sum + l.likelyCents, 0);

/** Times what AFCI breakers cost today: beyond it nobody would believe the price. */
const MOST_TIMES = 5;
/** Past the reckoned price by so much: the ways are chosen anew for the new price, and may shift it. */
const PAST = [0.01, 0.1, 0.3] as const;

const bookAt = (book: PriceBook, times: number): PriceBook => ({
  ...book,
  materials: book.materials.map((m) =>
    AFCI_BREAKER.test(m.id) ? { ...m, dollars: Math.round(m.dollars * times * 100) / 100 } : m,
  ),
});

/** The AFCI price at which another option would come out first: reckoned from both plans as they are, then tried. */
const afciPriceOf = (job: Job, plans: readonly Plan[], best: Plan | undefined): Candidate[][] => {
  if (!best) return [];
  const book = bookOf(job);
  const common = plans.flatMap((p) => p.price.lines).find((l) => AFCI_BREAKER.test(l.item));
  const now = book.materials.find((m) => m.id === common?.item);
  if (!now) return [];
  const turning = plans
    .filter((p) => p.option !== best.option && p.tally.stops === 0)
    .flatMap((other) => {
      const gap = other.tally.likelyCents - best.tally.likelyCents;
      const more = afciCents(other) * loaded(other) - afciCents(best) * loaded(best);
      if (more === 0) return [];
      const times = 1 - gap / more;
      return times > 0 && times <= MOST_TIMES ? [times] : [];
    });
  const touches = plans.map((p) => p.option);
  return turning.map((times) =>
    PAST.map((past): Candidate => {
      const at = times < 1 ? times * (1 - past) : times * (1 + past);
      const priced = bookAt(book, at);
      const dollars = priced.materials.find((m) => m.id === now.id)!.dollars;
      return {
        change: { path: '/priceBook', value: priced },
        job: { ...job, priceBook: priced },
        touches,
        say: (option) =>
          say.flipAfciPrice({
            now: formatDollars(Math.round(now.dollars * 100)),
            at: formatDollars(Math.round(dollars * 100)),
            option,
          }),
        by: 'any',
      };
    }),
  );
};

/** Everything that is tried, in groups: of each the first that turns the advice is told. */
export const candidates = (job: Job, plans: readonly Plan[], best: Plan | undefined): Candidate[][] => {
  const all = plans.map((p) => p.option);
  return [
    ...plans.filter((p) => p.tally.stops > 0).flatMap((p) => movesOf(job, p).map((c) => [c])),
    ...answersOf(job, all).map((c) => [c]),
    ...afciPriceOf(job, plans, best),
    ...feetOf(job, plans, best).map((c) => [c]),
    ...drywallOf(job, plans, best).map((c) => [c]),
  ];
};
