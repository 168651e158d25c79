import type { Fault } from '../units/fault';
import { err, type Result } from '../units/result';
import type { Id } from '../units/types';
import { jobWords } from '../words/en/job';
import { setValue } from './change';
import type { Named } from './dependents';
import type { Job } from './schema';
import { rehang } from './splitWalls';

/** Lists whose records are called by their ids on drawings and papers. */
export const NAMED_LISTS = [
  '/site/outline',
  '/site/partitions',
  '/site/openings',
  '/site/areas',
  '/site/framing',
  '/site/bays',
  '/site/obstacles',
  '/site/sleeves',
  '/house/loads',
  '/enclosures',
  '/cableGroups',
] as const;

/** A record under another name, and everything that names it along with it. `at` is its place in the list. */
export const renameRecord = (job: Job, of: Named, at: number, to: Id): Result<unknown, Fault> => {
  if (!(NAMED_LISTS as readonly string[]).includes(of.list))
    return err({ error: { type: 'no-such-place', path: `${of.list}/${of.id}`, say: jobWords.noSuchPlace } });
  const name = (id: Id): Id => (id === of.id ? to : id);
  const named = follow(job, of.list, name);
  return setValue(
    {
      ...named,
      answers: named.answers.map((a) => ({ ...a, subject: name(a.subject) })),
      photos: named.photos.map((p) => ({ ...p, pinnedTo: name(p.pinnedTo) })),
    },
    `${of.list}/${at}/id`,
    to,
  );
};

const follow = (job: Job, list: string, name: (id: Id) => Id): Job => {
  switch (list) {
    case '/site/outline':
    case '/site/partitions':
      return rehang(job, (on) => ({ ...on, wall: name(on.wall) }));
    case '/enclosures':
      return {
        ...job,
        cableGroups: job.cableGroups.map((g) => ({ ...g, enclosure: name(g.enclosure) })),
        options: job.options.map((o) => ({
          ...o,
          replaces: o.replaces.map((r) => ({ ...r, enclosure: name(r.enclosure) })),
        })),
      };
    case '/cableGroups':
      return { ...job, homeRuns: job.homeRuns.map((h) => ({ ...h, group: name(h.group) })) };
    case '/site/obstacles':
      return {
        ...job,
        options: job.options.map((o) => ({ ...o, moves: o.moves.map((m) => ({ ...m, obstacle: name(m.obstacle) })) })),
      };
    default:
      return job;
  }
};
