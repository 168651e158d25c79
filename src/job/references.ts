import type { Id } from '../units/types';
import { jobWords } from '../words/en/job';
import type { Problem } from './faults';
import { type Path, toPointer } from './pointer';
import type { Job, OnWall, Pin } from './schema';

/** Ids are used once in their list, and every name of another record leads to one. */

interface Named {
  readonly id: Id;
}
type What = keyof typeof jobWords.what;

const LISTS_IN_SITE = ['openings', 'areas', 'framing', 'bays', 'obstacles', 'sleeves'] as const;
const LISTS = ['enclosures', 'cableGroups', 'homeRuns', 'circuits', 'options', 'alternates', 'photos'] as const;

/** Lists in which an id may stand only once; walls of the outline and partitions share one. */
const idLists = (job: Job): { readonly at: Path; readonly list: readonly Named[] }[][] => [
  [
    { at: ['site', 'outline'], list: job.site.outline },
    { at: ['site', 'partitions'], list: job.site.partitions },
  ],
  ...LISTS_IN_SITE.map((key) => [{ at: ['site', key], list: job.site[key] }]),
  ...LISTS.map((key) => [{ at: [key], list: job[key] }]),
  [{ at: ['house', 'loads'], list: job.house.loads }],
  ...job.options.map((o, i) => [{ at: ['options', i, 'pins'], list: o.pins }]),
  ...(job.priceBook === 'default'
    ? []
    : [
        [{ at: ['priceBook', 'materials'], list: job.priceBook.materials }],
        [{ at: ['priceBook', 'tasks'], list: job.priceBook.tasks }],
        [{ at: ['priceBook', 'allowances'], list: job.priceBook.allowances }],
        [{ at: ['priceBook', 'lead'], list: job.priceBook.lead }],
      ]),
];

export const duplicateIds = (job: Job): Problem[] =>
  idLists(job).flatMap((lists) => {
    const seen = new Map<Id, Path>();
    return lists.flatMap(({ at, list }) =>
      list.flatMap(({ id }, i) => {
        const path = [...at, i, 'id'];
        const first = seen.get(id);
        if (first === undefined) seen.set(id, path);
        return first
          ? [{ type: 'duplicate-id', path, say: jobWords.duplicateId({ id, first: toPointer(first) }) }]
          : [];
      }),
    );
  });

const ids = (list: readonly Named[]): ReadonlySet<Id> => new Set(list.map((r) => r.id));

export const danglingReferences = (job: Job): Problem[] => {
  const { site } = job;
  const outlineWalls = ids(site.outline);
  const known: Readonly<Record<What, ReadonlySet<Id>>> = {
    wall: new Set([...outlineWalls, ...ids(site.partitions)]),
    circuit: ids(job.circuits),
    group: ids(job.cableGroups),
    homeRun: ids(job.homeRuns),
    enclosure: ids(job.enclosures),
    obstacle: ids(site.obstacles),
    photo: ids(job.photos),
  };
  const lead = (what: What, id: Id, path: Path): Problem[] =>
    known[what].has(id)
      ? []
      : [{ type: 'no-such-record', path, say: jobWords.dangling({ id, what: jobWords.what[what] }) }];
  const leadAll = (what: What, list: readonly Id[], at: (i: number) => Path): Problem[] =>
    list.flatMap((id, i) =>
      list.indexOf(id) < i
        ? [{ type: 'listed-twice', path: at(i), say: jobWords.listedTwice({ id }) }]
        : lead(what, id, at(i)),
    );
  /** A wall, and a face of it that something can hang on. */
  const hangs = (on: OnWall, path: Path, outdoors = false): Problem[] =>
    on.face === 'back' && outlineWalls.has(on.wall) && !outdoors
      ? [{ type: 'no-such-face', path: [...path, 'face'], say: jobWords.noBackFace({ wall: on.wall }) }]
      : lead('wall', on.wall, [...path, 'wall']);
  const pinned = (pin: Pin, path: Path): Problem[] => {
    if ('homeRun' in pin) return lead('homeRun', pin.homeRun, [...path, 'homeRun']);
    return 'homeRuns' in pin ? leadAll('homeRun', pin.homeRuns, (i) => [...path, 'homeRuns', i]) : [];
  };

  return [
    ...site.openings.flatMap((o, i) => hangs(o.on, ['site', 'openings', i, 'on'])),
    ...job.enclosures.flatMap((e, i) => hangs(e.on, ['enclosures', i, 'on'])),
    ...job.cableGroups.flatMap((g, i) => lead('enclosure', g.enclosure, ['cableGroups', i, 'enclosure'])),
    ...job.homeRuns.flatMap((h, i) => [
      ...lead('group', h.group, ['homeRuns', i, 'group']),
      ...leadAll('circuit', h.circuits, (k) => ['homeRuns', i, 'circuits', k]),
    ]),
    ...partners(job),
    ...job.options.flatMap((o, i) => {
      const at = ['options', i];
      return [
        ...hangs(o.enclosure.on, [...at, 'enclosure', 'on']),
        ...o.pins.flatMap((pin, k) => pinned(pin, [...at, 'pins', k])),
        ...leadAll(
          'obstacle',
          o.moves.map((m) => m.obstacle),
          (k) => [...at, 'moves', k, 'obstacle'],
        ),
        ...(o.serviceDisconnect && o.serviceDisconnect.on !== 'outdoors'
          ? hangs(o.serviceDisconnect.on, [...at, 'serviceDisconnect', 'on'], true)
          : []),
        ...leadAll(
          'enclosure',
          o.replaces.map((r) => r.enclosure),
          (k) => [...at, 'replaces', k, 'enclosure'],
        ),
      ];
    }),
    ...job.answers.flatMap((a, i) => (a.photo === null ? [] : lead('photo', a.photo, ['answers', i, 'photo']))),
  ];
};

/** The two circuits of a shared neutral name each other. */
const partners = (job: Job): Problem[] => {
  const circuits = new Map(job.circuits.map((c) => [c.id, c]));
  return job.circuits.flatMap(({ id, partner }, i): Problem[] => {
    if (partner === null) return [];
    const path = ['circuits', i, 'partner'];
    if (partner === id) return [{ type: 'partner-not-mutual', path, say: jobWords.partnerSelf({ id }) }];
    const other = circuits.get(partner);
    if (!other)
      return [{ type: 'no-such-record', path, say: jobWords.dangling({ id: partner, what: jobWords.what.circuit }) }];
    return other.partner === id
      ? []
      : [{ type: 'partner-not-mutual', path, say: jobWords.partnerNotMutual({ id, partner }) }];
  });
};
