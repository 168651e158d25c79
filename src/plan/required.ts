import type { FeederPlan, Plan, Run } from '../facts/result';
import type { RoutingAnswer } from '../facts/routing';
import type { Work } from '../facts/work';
import { thingNamed } from '../job/names';
import type { Job, Option, PriceBook } from '../job/schema';
import { faceOf, wallFaces } from '../job/site';
import { type Breaker, breakerItem } from '../loads/breakers';
import { cableItem } from '../standards/cableNames';
import { connectorToOrder } from '../standards/connectors';
import { PANEL_SPACES, panelSpacesFor } from '../standards/panelSpaces';
import { compareText } from '../units/order';
import { type Id, isKnown } from '../units/types';
import { bookItemWords as items } from '../words/en/bookItems';
import { unratedBreaker } from './missing';
import { isOldWiring } from './penalties';

/** Work with money of its own: moving a thing costs what the survey says. */
export type RequiredWork = Work & { readonly cents?: number; readonly say?: string };

const piece = (item: string, quantity = 1, homeRuns: readonly Id[] = []): RequiredWork => ({
  item,
  quantity,
  homeRuns: [...homeRuns].sort(compareText),
  rule: null,
  alternate: null,
});

/** Rooms finished before this year may hold lead paint (US rule on renovation, EPA 40 CFR 745). */
const LEAD_PAINT_BEFORE = 1978;

const SPLICED: ReadonlySet<Run['way']> = new Set(['cut-in', 'splice can', 'splice in new panel', 'new home run']);

const PANEL_ITEM = /^panel:(\d+)$/;

/**
 * Spaces of the panel that is bought: as the option has it where panels are sold with so many, else the next larger the
 * price book has. `spaces` = those of the directory, which is laid out for a panel that is sold where the option leaves it open.
 */
export const boughtSpaces = (option: Option, spaces: number, book: PriceBook): number => {
  if (isKnown(option.enclosure.spaces) && PANEL_SPACES.includes(spaces)) return spaces;
  const offered = book.materials.flatMap(({ id }) => PANEL_ITEM.exec(id)?.[1] ?? []).map(Number);
  return offered.some((size) => size >= spaces) ? panelSpacesFor(spaces, offered) : spaces;
};

/** Cabinet, board and what the wall asks for. */
const newPanel = (job: Job, option: Option, spaces: number, book: PriceBook): RequiredWork[] => {
  const { enclosure } = option;
  const face = faceOf(wallFaces(job.site, 'now'), enclosure.on);
  const masonry = face !== undefined && (face.build === 'poured' || face.build === 'block' || !isKnown(face.build));
  const main = enclosure.mainAmps;
  return [
    piece(`panel:${boughtSpaces(option, spaces, book)}`),
    piece('mount panel'),
    ...(face?.build === 'plywood board' ? [] : [piece('board')]),
    ...(masonry ? [piece('mount on masonry')] : []),
    ...(isKnown(main) && main !== null && main > 0 ? [piece(`main:${main}`)] : []),
    ...(enclosure.role === 'service' && option.serviceDisconnect === null ? [] : [piece('ground bar')]),
    piece('label'),
  ];
};

const oldPanels = (job: Job, option: Option, answer: RoutingAnswer): RequiredWork[] => {
  // one that becomes a subpanel keeps its breakers and cables
  const replaced = option.replaces
    .filter((r) => r.becomes !== 'subpanel')
    .map((r) => r.enclosure)
    .sort(compareText);
  const enclosures = job.enclosures.filter((e) => replaced.includes(e.id));
  const cables = job.homeRuns.filter((h) =>
    job.cableGroups.some((g) => g.id === h.group && replaced.includes(g.enclosure)),
  );
  const cans = new Set(answer.spliceCans);
  // what ends with the work is taken down with the can
  const attached = enclosures.reduce((n, e) => n + e.attached.filter((a) => a.becomes !== 'ends').length, 0);
  return [
    piece('strip old panel', replaced.length),
    piece(
      'strip cable',
      cables.length,
      cables.map((h) => h.id),
    ),
    piece('splice can', replaced.filter((id) => cans.has(id)).length),
    piece('remove old panel', replaced.filter((id) => !cans.has(id)).length),
    piece('attached device', attached),
  ];
};

/** Feeder conductors landed at one end: two hots and the neutral; the EGC goes to a bar with them. */
export const LUGS_AN_END = 3;

/** A cable is fastened at either end by a connector of its own. */
const ENDS = 2;

/** What a feeder takes: landed where it is kept; cut, pulled, connected and landed at both ends where it is new. */
export const feederPieces = (
  feeder: Pick<FeederPlan, 'way' | 'cutLength' | 'cable'>,
  along: readonly Work[],
): RequiredWork[] =>
  feeder.way === 'kept'
    ? [piece('lug', LUGS_AN_END)]
    : [
        piece('feeder'),
        piece('feeder ft', feeder.cutLength / 12),
        piece(cableItem(feeder.cable), feeder.cutLength / 12),
        piece(`connector:${connectorToOrder(feeder.cable)}`, ENDS),
        ...along,
        piece('lug', LUGS_AN_END),
        piece('lug at source', LUGS_AN_END),
      ];

/** Every breaker is new money: breakers are listed by panel (110.3(B)). An unknown rating is named, not left out. */
const breakers = (job: Job, list: readonly Breaker[], runs: readonly Run[]): RequiredWork[] => {
  const homeRunsOf = (b: Breaker) =>
    job.homeRuns.filter((h) => h.circuits.some((c) => b.circuits.some((x) => x.id === c))).map((h) => h.id);
  return [
    ...list.map((b) => piece(breakerItem(b) ?? unratedBreaker(b.id), 1, homeRunsOf(b))),
    ...list.flatMap((b) =>
      b.circuits.flatMap((c) => {
        const cables = job.homeRuns.filter((h) => h.circuits.includes(c.id));
        return cables.length > 1
          ? [
              piece(
                'pigtail',
                cables.length - 1,
                cables.map((h) => h.id),
              ),
            ]
          : [];
      }),
    ),
    ...runs.flatMap((r) =>
      r.way === 'cut-in' || r.way === 'new home run' ? [piece('abandoned cable', 1, [r.homeRun])] : [],
    ),
  ];
};

const dayAndAfter = (job: Job, option: Option, circuits: number, service: boolean): RequiredWork[] => [
  ...(job.survey.grade === 'walk-through' ? [piece('survey')] : []),
  piece('shutdown'),
  piece('test'),
  piece('test circuit', circuits),
  piece('directory', circuits),
  piece('inspection', option.kind === 'relocate' ? 2 : 1),
  piece('permit'),
  piece('disposal'),
  piece('second trip'),
  ...(service ? [piece('utility pull')] : []),
];

/** Work the option needs whatever the rules say: panel, breakers, old panels, feeder, tests, papers, moves. */
export const requiredWork = (
  job: Job,
  option: Option,
  answer: RoutingAnswer,
  plan: Pick<Plan, 'electrode'> & { readonly feeder: FeederPlan },
  list: readonly Breaker[],
  afciAdded: readonly Id[],
  directorySpaces: number,
  book: PriceBook,
): RequiredWork[] => {
  const spliced = answer.runs.filter((r) => SPLICED.has(r.way)).map((r) => r.homeRun);
  const untraced = job.homeRuns.filter((h) => !h.traced && spliced.includes(h.id)).map((h) => h.id);
  const patched = [...answer.work, ...answer.feeder.work].some((w) => w.item === 'patch' && w.quantity > 0);
  const service = job.enclosures.some((e) => option.replaces.some((r) => r.enclosure === e.id) && e.role === 'service');
  const moves = option.moves.flatMap((m): RequiredWork[] => {
    const cents = job.site.obstacles.find((o) => o.id === m.obstacle)?.moveCents;
    return [
      cents === null || cents === undefined
        ? piece(`move:${m.obstacle}`)
        : { ...piece(`move:${m.obstacle}`), cents, say: items.move({ thing: thingNamed(job, m.obstacle) }) },
    ];
  });
  return [
    ...newPanel(job, option, directorySpaces, book),
    ...oldPanels(job, option, answer),
    ...breakers(job, list, answer.runs),
    ...feederPieces(plan.feeder, answer.feeder.work),
    ...(plan.electrode
      ? [piece('electrode'), piece(`electrode:${plan.electrode.size}`, plan.electrode.length / 12)]
      : []),
    ...(option.serviceDisconnect ? [piece(`service disconnect:${option.serviceDisconnect.amps}`)] : []),
    piece('trace', untraced.length, untraced),
    piece('pre-test', spliced.length, spliced),
    ...(isOldWiring(job) ? [piece('AFCI trouble', afciAdded.length)] : []),
    ...(patched && (job.house.yearBuilt === 'unknown' || job.house.yearBuilt < LEAD_PAINT_BEFORE)
      ? [piece('lead-safe set-up')]
      : []),
    ...dayAndAfter(job, option, job.circuits.length, service),
    ...moves,
  ].filter((w) => w.quantity !== 0);
};
