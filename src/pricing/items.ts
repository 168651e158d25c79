/**
 * Every item of work that can be priced, and what the price book is asked for when it is done once. One place:
 * routing, rules and plan count these items; price, hours, outage and order are all derived from this table.
 */

export type When = 'before outage' | 'outage' | 'after';
/** 'by way': a circuit whose old cable ends in the new panel is landed in the outage, an extended one before it. */
export type DoneWhen =
  | When
  | 'by way'
  /** In the outage where the new cabinet takes an old one's place on the wall; elsewhere before, or after, it. */
  | 'by place, else before'
  | 'by place, else after'
  /** The same, and where the feeder that is there is kept: until the outage it is live in the old cabinet. */
  | 'by feeder, else before';

export interface Part {
  readonly id: string;
  readonly quantity: number;
}
export interface Assembly {
  readonly unit: string;
  /** Price book materials used up by one unit. */
  readonly materials: readonly Part[];
  /** Price book tasks, each `quantity` times its hours. */
  readonly tasks: readonly Part[];
  /** A price book allowance by the same id, or null. A fee is money passed on to others. */
  readonly allowance: { readonly id: string; readonly kind: 'allowance' | 'fee' } | null;
  readonly when: DoneWhen;
  readonly say: string;
}

const one = (id: string): Part => ({ id, quantity: 1 });
const assembly = (
  unit: string,
  when: DoneWhen,
  say: string,
  materials: readonly Part[],
  tasks: readonly Part[],
): Assembly => ({ unit, materials, tasks, allowance: null, when, say });
/** Hours only: the task has the item's own id. */
const labor = (id: string, unit: string, when: DoneWhen, say: string) =>
  [id, assembly(unit, when, say, [], [one(id)])] as const;
/** A material and a task, both with the item's own id. */
const both = (id: string, unit: string, when: DoneWhen, say: string) =>
  [id, assembly(unit, when, say, [one(id)], [one(id)])] as const;
const goods = (id: string, unit: string, say: string) =>
  [id, assembly(unit, 'before outage', say, [one(id)], [])] as const;
const money = (kind: 'allowance' | 'fee', id: string, unit: string, say: string) =>
  [
    id,
    { unit, materials: [], tasks: [], allowance: { id, kind }, when: 'after', say } as const satisfies Assembly,
  ] as const;
const made = <K extends string>(id: K, value: Assembly) => [id, value] as const;

const FIXED = [
  // survey and preparation
  labor('survey', 'each', 'before outage', 'full survey, cover off'),
  labor('trace', 'circuit', 'before outage', 'one unknown circuit traced, toned and tagged'),
  labor('pre-test', 'home run', 'before outage', 'neutral lifted and tested to other neutrals and ground before a cut'),
  labor('load in', 'day', 'before outage', 'load in and out, protect, clean'),
  // the new panel
  labor('mount panel', 'each', 'by place, else before', 'backboard and cabinet fixed to wood'),
  made(
    'mount on masonry',
    assembly(
      'each',
      'by place, else before',
      'added for poured or block wall',
      [{ id: 'standoff', quantity: 4 }],
      [one('mount on masonry')],
    ),
  ),
  goods('board', 'each', 'plywood backboard'),
  both('spd', 'each', 'by place, else before', 'surge protective device in the panel'),
  both('ground bar', 'each', 'before outage', 'equipment ground bar kit'),
  both('hub', 'each', 'by place, else before', 'hub of connected breakers, in two spaces of the panel'),
  both('tidy board', 'each', 'before outage', 'board painted, cables dressed in straight rows under straps'),
  goods('label', 'each', 'printed label'),
  both('light', 'each', 'before outage', 'luminaire with its switch over the working space'),
  both('handle tie', 'each', 'before outage', 'listed handle tie'),
  both('knockout seal', 'each', 'before outage', 'unused opening closed'),
  both('filler plate', 'each', 'after', 'unused breaker opening closed'),
  // the old panel
  labor('strip old panel', 'each', 'outage', 'guts out of one old panel'),
  labor('strip cable', 'home run', 'outage', 'one cable tagged and freed in the old panel'),
  both('splice can', 'each', 'after', 'old cabinet closed with a full cover'),
  labor('remove old panel', 'each', 'by place, else after', 'old cabinet taken off the wall'),
  labor('abandoned cable', 'each', 'after', 'dead piece pulled out, or made safe and tagged at both ends'),
  labor('attached device', 'each', 'outage', 'a thing hung on the old panel moved over and tested'),
  // home runs
  labor('reuse', 'home run', 'outage', 'cable drawn back, new holes, stapled, re-entered'),
  labor('pull', 'each', 'before outage', 'set-up of one new cable'),
  labor('pull ft', 'ft', 'before outage', 'new cable along its route, staples driven'),
  labor('new home run', 'each', 'before outage', 'one cable fished to its first outlet and joined there'),
  labor('hole', 'each', 'before outage', 'one hole bored through a joist, stud or plate'),
  goods('staple', 'each', 'staple or cable strap'),
  both('plate', 'each', 'before outage', 'steel nail plate'),
  both('fire stop', 'each', 'before outage', 'sealed hole through a floor, plate or rim'),
  both('running board', 'ft', 'before outage', 'board across the joists for cable to run on'),
  made(
    'sleeve',
    assembly(
      'ft',
      'before outage',
      'tubing on a bare wall, with bushings and straps',
      [one('sleeve:3/4')],
      [one('sleeve')],
    ),
  ),
  both('patch', 'ft', 'after', 'drywall strip opened and closed'),
  labor('lift tile', 'ft', 'before outage', 'lay-in tiles lifted and put back along a route'),
  // joints
  made(
    'splice',
    assembly(
      'two insulated conductors',
      'outage',
      'two insulated conductors and their EGC joined, 14 to 10 AWG copper',
      [{ id: 'splice:14-10 Cu', quantity: 3 }],
      [one('splice')],
    ),
  ),
  made(
    'splice Al',
    assembly(
      'two insulated conductors',
      'outage',
      'the same with aluminum on one side',
      [{ id: 'splice:Al-Cu', quantity: 3 }],
      [one('splice'), one('splice Al')],
    ),
  ),
  made(
    'splice large',
    assembly(
      'two insulated conductors',
      'outage',
      'the same, 8 AWG and larger',
      [{ id: 'splice:8-2', quantity: 3 }],
      [{ id: 'splice', quantity: 2 }],
    ),
  ),
  made(
    'pigtail',
    assembly(
      'each',
      'by way',
      'two cables of one breaker joined to one conductor',
      [{ id: 'splice:14-10 Cu', quantity: 1 }],
      [one('pigtail')],
    ),
  ),
  made(
    'splice:irreversible',
    assembly(
      'each',
      'outage',
      'compression or welded joint in an electrode conductor',
      [one('splice:irreversible')],
      [one('irreversible splice')],
    ),
  ),
  money('allowance', 'splice spot', 'each', 'one place with splice boxes: what a joint risks later'),
  // landings without a breaker
  labor('land 1p', 'each', 'by way', 'one-pole circuit landed'),
  labor('land AFCI', 'each', 'by way', 'AFCI, GFCI or dual breaker landed with its neutral'),
  labor('land 2p', 'each', 'by way', 'two-pole circuit landed'),
  labor('land range', 'each', 'by way', 'two-pole circuit of 40 A or more landed'),
  labor('AFCI trouble', 'each', 'after', 'allowance in hours for one added AFCI on wiring from before 1990'),
  // feeder and grounding
  labor('feeder', 'each', 'before outage', 'set-up of a feeder'),
  labor('feeder ft', 'ft', 'before outage', 'feeder pulled and supported'),
  labor('lug', 'each', 'by feeder, else before', 'feeder conductor landed and torqued at the new panel'),
  made(
    'lug at source',
    assembly('each', 'outage', 'feeder conductor landed and torqued at the source', [], [one('lug')]),
  ),
  labor('electrode', 'run', 'outage', 'grounding electrode conductor moved or added'),
  both('intersystem terminal', 'each', 'after', 'intersystem bonding termination'),
  both('bonding jumper', 'each', 'after', 'bonding jumper with two clamps'),
  // the day and after
  labor('shutdown', 'each', 'outage', 'shut down, prove dead, restore'),
  labor('roll over', 'circuit', 'after', 'one circuit switched off, proved dead and restored alone'),
  labor('test', 'each', 'after', 'test set-up and record'),
  labor('test circuit', 'circuit', 'outage', 'one circuit tested dead and live'),
  labor('directory', 'circuit', 'after', 'directory entry checked and written'),
  labor('inspection', 'each', 'after', 'one inspection attended'),
  // conditions: hours per hour of the work they slow down
  labor('occupied', 'labor-hour', 'before outage', 'added to every hour in an occupied house'),
  labor('crowded', 'labor-hour', 'before outage', 'added to every hour in a crowded or finished room'),
  // money for others
  money('fee', 'permit', 'each', 'electrical permit'),
  money('fee', 'utility pull', 'each', 'utility disconnect and reconnect'),
  money('fee', 're-inspection', 'each', 'a failed inspection repeated'),
  money('allowance', 'disposal', 'each', 'disposal, scrap deducted'),
  money('allowance', 'second trip', 'each', 'second trip for the final inspection'),
  money('allowance', 'generator', 'day', 'temporary power'),
  money('allowance', 'lead-safe set-up', 'each', 'lead-safe work set-up in a house of before 1978'),
  money('allowance', 'access hatch', 'each', 'access panel in a finished surface'),
  money('allowance', 'paint', 'each', 'prime and paint of a patch'),
  money('allowance', 'warranty', 'each', 'warranty reserve'),
  money('allowance', 'plumber', 'each', 'plumber for one thing moved or refitted'),
  money('allowance', 'sheet-metal worker', 'each', 'sheet-metal worker for one duct or flue moved'),
  money('allowance', 'drywall and paint trade', 'each', 'drywall and paint by others, one wall'),
  money('fee', 'utility service upgrade', 'each', 'utility’s own work on a larger service'),
] as const;

type FixedItem = (typeof FIXED)[number][0];
const fixed: ReadonlyMap<string, Assembly> = new Map<string, Assembly>(FIXED);
/** The fixed items in the order of the table; the families are in `FAMILIES`. */
export const FIXED_ITEMS: readonly string[] = FIXED.map(([id]) => id);

/** Items counted in labor-hours of other work. */
export const CONDITIONS: ReadonlySet<string> = new Set(['occupied', 'crowded']);

/** A box this big or bigger (inches of its first side) takes the longer task. */
const LARGE_BOX_IN = 6;
const RANGE_AMPS = 40;
const BREAKER = /^([12])p (\d+)(?: (AFCI|GFCI|AFCI\+GFCI))?$/;

/** Which landing goes with a breaker: trade-review (d), common practice. */
const landing = (kind: string): string | null => {
  const found = BREAKER.exec(kind);
  if (!found) return null;
  if (found[1] === '2' && Number(found[2]) >= RANGE_AMPS) return 'land range';
  if (found[3] !== undefined) return 'land AFCI';
  return found[1] === '2' ? 'land 2p' : 'land 1p';
};
const boxTask = (size: string): string => {
  const side = Number(/^(\d+)/.exec(size)?.[1] ?? 0);
  return side >= LARGE_BOX_IN ? 'hang large box' : 'hang box';
};

type Family = (kind: string) => Assembly | null;
const buy =
  (family: string, unit: string, when: DoneWhen, say: string, task: string | null = null): Family =>
  (kind) =>
    assembly(unit, when, say, [one(`${family}:${kind}`)], task === null ? [] : [one(task)]);

/** Items with a kind after the colon: `cable:12/2 NM`. */
export const FAMILIES = {
  cable: buy('cable', 'ft', 'before outage', 'cable cut, waste included in the price'),
  connector: buy('connector', 'each', 'before outage', 'cable connector of that trade size'),
  box: (kind: string) =>
    assembly('each', 'before outage', 'splice box with cover, hung', [one(`box:${kind}`)], [one(boxTask(kind))]),
  panel: buy('panel', 'each', 'before outage', 'panelboard, main lugs, cabinet, trim and door, that many spaces'),
  main: buy('main', 'each', 'by feeder, else before', 'main breaker kit of that rating', 'main'),
  breaker: (kind: string) => {
    const task = landing(kind);
    return task === null
      ? null
      : assembly('each', 'by way', 'branch breaker, landed', [one(`breaker:${kind}`)], [one(task)]);
  },
  'feeder breaker': (kind: string) =>
    BREAKER.test(kind)
      ? assembly(
          'each',
          'outage',
          'breaker of a feeder; its conductors are counted as lugs',
          [one(`breaker:${kind}`)],
          [one('feeder breaker')],
        )
      : null,
  'service disconnect': buy(
    'service disconnect',
    'each',
    'outage',
    'service disconnect, outdoor enclosure',
    'service disconnect',
  ),
  sleeve: buy('sleeve', 'ft', 'before outage', 'tubing of that trade size, with bushings and straps', 'sleeve'),
  nipple: buy('nipple', 'each', 'before outage', 'nipple with locknuts and bushings', 'nipple'),
  wireway: buy('wireway', 'ft', 'before outage', 'wireway of that section', 'wireway'),
  electrode: buy('electrode', 'ft', 'before outage', 'copper electrode conductor of that size'),
  receptacle: buy('receptacle', 'each', 'after', 'receptacle of that configuration, installed', 'receptacle'),
  cord: buy('cord', 'each', 'after', 'four-wire appliance cord, fitted', 'cord'),
  finish: buy('finish', 'each', 'after', 'finish of the trim, difference to the standard one'),
  trim: buy('trim', 'each', 'after', 'decorative cover over the panel'),
  connected: buy(
    'connected',
    'each',
    'by place, else after',
    'connected breaker in place of a plain one of that many poles: the difference',
    'set up connected',
  ),
} as const satisfies Record<string, Family>;

export type FamilyName = keyof typeof FAMILIES;
/** What a work item may be called. `move:<obstacle id>` brings its own cents. */
export type Item = FixedItem | `${FamilyName}:${string}` | `move:${string}`;

const family = (name: string): Family | undefined =>
  Object.hasOwn(FAMILIES, name) ? FAMILIES[name as FamilyName] : undefined;

/** What one unit of the item takes; null where no such item exists. */
export const assemblyOf = (item: string): Assembly | null => {
  const known = fixed.get(item);
  if (known) return known;
  const colon = item.indexOf(':');
  if (colon < 0 || colon === item.length - 1) return null;
  return family(item.slice(0, colon))?.(item.slice(colon + 1)) ?? null;
};
