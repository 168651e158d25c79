import type { Plan } from '../../src/facts/result';
import type { Job, Option, PriceBook } from '../../src/job/schema';
import { cableTrade } from '../../src/standards/cableNames';
import { holesOf, legLength, newLength } from './walkLegs';

/**
 * Counts a plan again from its legs, boxes, rows and directory, and prices the counts by the book.
 * Imports nothing from routing/ or pricing/: types, the job and cable names only.
 */

const ceilTo = (x: number, step: number) => Math.ceil(x / step - 1e-9) * step;

/** What the crew cuts for a piece of cable, from its legs, what stays inside at its ends and the job's practice. */
const cutFor = (job: Job, legs: Plan['runs'][number]['legs'], inside: number, more = 0): number => {
  const { practice } = job;
  const path = newLength({ legs }) + more;
  const whole = path + Math.max(path * practice.slackShare, practice.slackMinimum) + inside;
  return Math.max(practice.shortestPiece, ceilTo(whole, practice.cutStep));
};
export const cutLengthOf = (job: Job, run: Plan['runs'][number]): number =>
  cutFor(job, run.legs, job.practice.freeInBox + job.practice.tailInPanel);

/** What the feeder runs outside the room, as far as it is measured. */
const beyond = ({ outside }: Plan['feeder']): number => (outside === 'unknown' ? 0 : outside);

export interface Difference {
  readonly what: string;
  readonly counted: number;
  readonly printed: number;
}

const near = (a: number, b: number, tolerance: number) => Math.abs(a - b) <= tolerance;

/** Quantities that stand in the plan's legs, boxes, rows and directory, by price book id. */
const counts = (job: Job, plan: Plan) => {
  const feet = new Map<string, number>();
  const routed = plan.runs.filter((r) => r.blockedBy.length === 0);
  for (const run of routed) {
    if (!run.newCable || run.way === 'new home run') continue; // its hidden part is not in the legs
    const id = `cable:${cableTrade(run.newCable)}`;
    feet.set(id, (feet.get(id) ?? 0) + cutLengthOf(job, run) / 12);
  }
  const boxes = new Map<string, number>();
  for (const box of plan.boxes)
    if (box.on === 'joist' || box.on === 'wall') boxes.set(`box:${box.size}`, (boxes.get(`box:${box.size}`) ?? 0) + 1);
  return { feet, boxes };
};

/** Cables joined in a box of their own whose first new leg does not begin where that box hangs. */
const astray = (plan: Plan): number =>
  plan.boxes
    .filter((b) => b.on === 'joist' || b.on === 'wall')
    .flatMap((box) => plan.runs.filter((r) => r.box === box.id).map((run) => ({ box, run })))
    .filter(({ box, run }) => {
      const first = run.legs.find((l) => l.cable === 'new');
      return first !== undefined && Math.hypot(...first.from.map((x, k) => x - box.at[k]!)) > 1e-6;
    }).length;

const materialQuantity = (plan: Plan, item: string) =>
  plan.price.lines.filter((l) => l.kind === 'material' && l.item === item).reduce((n, l) => n + l.quantity, 0);

const feetBy = (legs: Plan['runs'][number]['legs'], by: string): number =>
  legs.reduce((n, l) => n + (l.by === by ? legLength(l) / 12 : 0), 0);

/**
 * What the whole work takes of holes, tubing, staples and plates: of all cables and the feeder together, as the lines
 * cannot be told apart. Holes that cables share are counted once, by the rows they lie in.
 */
const taken = (plan: Plan, book: PriceBook): (readonly [what: string, counted: number, printed: number])[] => {
  const { runs, rows, feeder } = plan;
  const hoursOf = (task: string) =>
    plan.price.lines.filter((l) => l.kind === 'labor' && l.item === task).reduce((n, l) => n + l.quantity, 0);
  const likely = (task: string) => book.tasks.find((t) => t.id === task)?.likely;
  const sum = (of: (r: Plan['runs'][number]) => number) => runs.reduce((n, r) => n + of(r), 0);
  const inRows = rows.flatMap((r) => r.holes);
  const alone = sum((r) => r.holes - inRows.filter((h) => h.homeRuns.includes(r.homeRun)).length);
  // studs and plates, and joists behind opened drywall, are bored too and stand in no figure of a run
  const unseen = [...runs.map((r) => r.legs), feeder.legs].some((legs) =>
    legs.some((l) => l.by === 'stud bay' || l.by === 'opened drywall'),
  );
  const hole = likely('hole');
  const feederCost = feeder.way === 'kept' ? 0 : feeder.cutLength / 12;
  const perFoot = likely('feeder ft');
  const tubing = plan.price.lines
    .filter((l) => l.kind === 'material' && l.item.startsWith('sleeve:'))
    .reduce((n, l) => n + l.quantity, 0);
  const untubed = plan.price.missing.some((m) => m.startsWith('sleeve:'));
  const sleeves = sum((r) => feetBy(r.legs, 'sleeve')) + feetBy(feeder.legs, 'sleeve');
  return [
    ...(hole && !unseen
      ? [['holes bored', inRows.length + alone + feeder.holes.length, hoursOf('hole') / hole] as const]
      : []),
    ...(perFoot ? [['feet of feeder', feederCost, hoursOf('feeder ft') / perFoot] as const] : []),
    ...(untubed ? [] : [['feet of tubing', sleeves, tubing] as const]),
    ...(book.materials.some((m) => m.id === 'staple' && m.dollars > 0)
      ? [['staples', sum((r) => r.supports) + feeder.supports, materialQuantity(plan, 'staple')] as const]
      : []),
  ];
};

/** Each printed figure that a recount does not confirm. Empty = the plan adds up. */
export const recount = (job: Job, option: Option, plan: Plan, book: PriceBook): Difference[] => {
  const out: Difference[] = [];
  const check = (what: string, counted: number, printed: number, tolerance = 1e-6) => {
    if (!near(counted, printed, tolerance)) out.push({ what, counted, printed });
  };
  const routed = plan.runs.filter((r) => r.blockedBy.length === 0);

  for (const run of routed) {
    if (run.way === 'new home run') continue;
    check(`code length of ${run.homeRun}`, newLength(run), run.codeLength, 1 / 64);
    if (run.newCable) check(`cut length of ${run.homeRun}`, cutLengthOf(job, run), run.cutLength);
    const holes = holesOf(job, run);
    if (!Number.isNaN(holes)) check(`joists bored by ${run.homeRun}`, holes, run.holes);
  }

  const { feeder } = plan;
  const laid = feeder.way !== 'kept' && feeder.legs.length > 0;
  check(
    'cut length of the feeder',
    laid ? cutFor(job, feeder.legs, 2 * job.practice.tailOfFeeder, beyond(feeder)) : 0,
    feeder.cutLength,
  );
  const bored = holesOf(job, feeder);
  if (!Number.isNaN(bored)) check('joists bored by the feeder', bored, feeder.holes.length);
  for (const [what, counted, printed] of taken(plan, book)) check(what, counted, printed, 1e-4);

  const { feet, boxes } = counts(job, plan);
  const others = new Set(
    plan.runs.flatMap((r) => (r.way === 'new home run' && r.newCable ? [`cable:${cableTrade(r.newCable)}`] : [])),
  );
  if (plan.feeder.way !== 'kept') others.add(`cable:${cableTrade(plan.feeder.cable)}`);
  // what the book has no price for is named as missing and stands in no line
  const missing = new Set(plan.price.missing);
  const quantity = (id: string, n: number, tolerance?: number) =>
    check(id, missing.has(id) ? 0 : n, materialQuantity(plan, id), tolerance);
  for (const [id, n] of feet) if (!others.has(id)) quantity(id, n, 1e-4);
  const kinds = plan.price.lines.flatMap((l) => (l.kind === 'material' && l.item.startsWith('box:') ? [l.item] : []));
  for (const id of new Set([...boxes.keys(), ...kinds])) quantity(id, boxes.get(id) ?? 0);
  if (plan.grade !== 'live') check('new cables that begin elsewhere than at their box', astray(plan), 0);
  check(
    'boxes',
    [...boxes.values()].reduce((a, b) => a + b, 0),
    plan.boxes.filter((b) => b.on === 'joist' || b.on === 'wall').length,
  );
  check(
    'conductors spliced',
    plan.runs.reduce((n, r) => n + r.conductorsSpliced, 0),
    plan.tally.conductorsSpliced,
  );
  check('AFCI gained', plan.afci.filter((a) => a.required === 'yes').length, plan.tally.afciAdded);

  // breakers: one a circuit with a cable in the new panel, or without any cable; one a shared-neutral pair
  const staying = new Set(plan.runs.filter((r) => r.way === 'stays on old panel').map((r) => r.homeRun));
  const fed = job.circuits.filter((c) => {
    const cables = job.homeRuns.filter((h) => h.circuits.includes(c.id));
    const idle = c.flags.includes('dead') || c.flags.includes('spare');
    return !idle && (cables.length === 0 || cables.some((h) => !staying.has(h.id)));
  });
  const here = new Set(fed.map((c) => c.id));
  const breakers = fed.filter((c) => !(c.partner !== null && here.has(c.partner) && c.partner < c.id)).length;
  const bought = plan.price.lines
    .filter((l) => l.kind === 'material' && /^breaker:[12]p/.test(l.item) && !(l.rule ?? '').startsWith('FDR'))
    .reduce((n, l) => n + l.quantity, 0);
  // of those without a price it is not printed how many there are: at least one
  const unpriced = plan.price.missing.some((m) => m.startsWith('breaker:'));
  if (!unpriced) check('breakers', breakers, bought);
  else if (bought >= breakers) check('breakers with a price', breakers - 1, bought);
  for (const d of plan.directory)
    if (d.circuit !== null && !here.has(d.circuit)) check(`${d.circuit} in the panel`, 0, 1);

  for (const line of plan.price.lines) {
    if (line.kind === 'material') {
      const dollars = book.materials.find((m) => m.id === line.item)?.dollars ?? Number.NaN;
      check(`price of ${line.id}`, Math.round(dollars * line.quantity * 100 + 1e-9), line.likelyCents, 0.5);
    }
    if (line.kind === 'labor')
      check(
        `price of ${line.id}`,
        Math.round(book.dollarsPerCrewHour * line.quantity * 100 + 1e-9),
        line.likelyCents,
        0.5,
      );
  }
  check(
    'the whole',
    plan.price.lines.reduce((n, l) => n + l.likelyCents, 0),
    plan.tally.likelyCents,
  );
  for (const move of option.moves) {
    const cents = job.site.obstacles.find((o) => o.id === move.obstacle)?.moveCents;
    const line = plan.price.lines.find((l) => l.item === `move:${move.obstacle}`);
    if (cents !== null && cents !== undefined) check(`moving ${move.obstacle}`, cents, line?.likelyCents ?? Number.NaN);
  }
  return out;
};
