import type { Id } from '../units/types';
import type { Job } from './schema';

/**
 * What a removed record leaves behind: names of it that mean nothing by themselves go with it. Records that cannot do
 * without it (a home run without its group, a panel without its wall) stay, and the removal is refused.
 */
export const forget = (job: Job, list: string, id: Id): Job => {
  switch (list) {
    case '/circuits':
      return {
        ...job,
        circuits: job.circuits.map((c) => (c.partner === id ? { ...c, partner: null } : c)),
        homeRuns: job.homeRuns.map((h) =>
          h.circuits.includes(id) ? { ...h, circuits: h.circuits.filter((c) => c !== id) } : h,
        ),
      };
    case '/homeRuns':
      return eachOption(job, (o) => ({ ...o, pins: o.pins.map((p) => unpin(p, id)).filter((p) => p !== null) }));
    case '/site/obstacles':
      return eachOption(job, (o) => ({ ...o, moves: o.moves.filter((m) => m.obstacle !== id) }));
    case '/enclosures':
      return eachOption(job, (o) => ({ ...o, replaces: o.replaces.filter((r) => r.enclosure !== id) }));
    case '/photos':
      return { ...job, answers: job.answers.map((a) => (a.photo === id ? { ...a, photo: null } : a)) };
    default:
      return job;
  }
};

type Option = Job['options'][number];
type Pin = Option['pins'][number];

const eachOption = (job: Job, change: (option: Option) => Option): Job => ({
  ...job,
  options: job.options.map(change),
});

/** A pin without that home run; null where it was about nothing else. */
const unpin = (pin: Pin, homeRun: Id): Pin | null => {
  if ('homeRun' in pin) return pin.homeRun === homeRun ? null : pin;
  if (!('homeRuns' in pin) || !pin.homeRuns.includes(homeRun)) return pin;
  const homeRuns = pin.homeRuns.filter((h) => h !== homeRun);
  return homeRuns.length === 0 ? null : { ...pin, homeRuns };
};
