import type { Id } from '../units/types';
import type { Job } from './schema';

/** A record by its list (a JSON pointer) and id. */
export interface Named {
  readonly list: string;
  readonly id: Id;
}

/** What stands on a wall, hangs on it or comes out of a panel directly: records that mean nothing without the one named. */
const direct = (job: Job, { list, id }: Named): Named[] => {
  const all = (of: string, records: readonly { readonly id: Id }[]): Named[] =>
    records.map((r) => ({ list: of, id: r.id }));
  switch (list) {
    case '/site/outline':
    case '/site/partitions':
      return [
        ...all(
          '/site/openings',
          job.site.openings.filter((o) => o.on.wall === id),
        ),
        ...all(
          '/enclosures',
          job.enclosures.filter((e) => e.on.wall === id),
        ),
        ...all(
          '/options',
          job.options.filter(
            ({ enclosure, serviceDisconnect: off }) =>
              enclosure.on.wall === id || (off !== null && off.on !== 'outdoors' && off.on.wall === id),
          ),
        ),
      ];
    case '/enclosures':
      return all(
        '/cableGroups',
        job.cableGroups.filter((g) => g.enclosure === id),
      );
    case '/cableGroups':
      return all(
        '/homeRuns',
        job.homeRuns.filter((h) => h.group === id),
      );
    default:
      return [];
  }
};

/** Everything that cannot stay when a record goes, nearest first, each once; the record itself is not among them. */
export const dependents = (job: Job, of: Named): Named[] => {
  const found: Named[] = [];
  const seen = new Set([`${of.list} ${of.id}`]);
  let next = [of];
  while (next.length > 0) {
    next = next
      .flatMap((n) => direct(job, n))
      .filter((n) => !seen.has(`${n.list} ${n.id}`) && seen.add(`${n.list} ${n.id}`));
    found.push(...next);
  }
  return found;
};
