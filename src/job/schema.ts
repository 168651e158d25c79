import { z } from 'zod';
import { CABLE_KINDS } from '../standards/cable';
import { USES } from '../standards/uses';
import { toSixtyFourths } from '../units/length';

/**
 * The job file, schema 1. Lengths in inches (site lengths whole 1/64), angles degrees counter-clockwise, areas ft²,
 * loads VA, currents A, money whole US cents except book prices (dollars, four decimals). x right, y up the sheet,
 * z up from the finished floor. Outline corners run clockwise seen from above; the wall with a corner's id starts
 * there; face 'front' lies right of from→to (the room side), 'back' left. `left` is measured from the left end of a
 * face as a person facing it sees it. No key is optional: what the surveyor does not know is 'unknown', what does
 * not exist is null or [].
 */

const MOST_INCHES = 12_000; // 1000 ft: beyond any house, and far inside the integer range of the route search
const id = z.string().min(1).max(80);
const text = z.string().max(4000);
/** A measured length is rounded to whole 1/64 in before its limits are looked at; opening a file lists what was rounded. */
const siteLength = z.number().overwrite((inches) => toSixtyFourths(inches) + 0); // -0 is written 0
const len = siteLength.min(-MOST_INCHES).max(MOST_INCHES);
const size0 = siteLength.min(0).max(MOST_INCHES);
const positive = siteLength.gt(0).max(MOST_INCHES);
/** A length of the contractor's own practice: kept as typed. */
const chosen = z.number().min(0).max(MOST_INCHES);
const count = z.number().int().min(0).max(10_000);
const amount = z.number().min(0).max(10_000_000);
/** What a thing costs: never less than nothing, and less than any house. */
const cents = z.number().int().min(0).max(100_000_000);
/** Bounds that keep every sum of a price a whole number of cents that a computer adds exactly. Below nothing = a credit. */
const dollars = z.number().min(-100_000).max(100_000);
const hours = z.number().min(0).max(100);
const share = z.number().min(0).max(10);
const angle = z.number().min(-360).max(360);
const date = z.string().max(40);
const unknown = z.literal('unknown');
const u = <T extends z.ZodType>(inner: T) => z.union([inner, unknown]);
const list = <T extends z.ZodType>(inner: T, most = 2000) => z.array(inner).max(most).readonly();
const twoStates = <T extends z.ZodType>(inner: T) => z.strictObject({ now: inner, after: inner }).readonly();
const record = <T extends z.ZodRawShape>(shape: T) => z.strictObject(shape).readonly();

const pt = z.tuple([len, len]).readonly();
const pt3 = z.tuple([len, len, len]).readonly();
const sizeOf = record({ width: positive, depth: positive, height: positive });
const outlineOf = z.array(pt).min(3).max(500).readonly();

export const buildSchema = z.enum(['poured', 'block', 'furred', 'open studs', 'finished studs', 'plywood board']);
const face = record({ build: u(buildSchema), insulated: u(z.boolean()) });
const onWall = record({ wall: id, face: z.enum(['front', 'back']), left: len, bottom: len });
const useSchema = z.enum(USES);

export const cableSchema = record({
  kind: u(z.enum(CABLE_KINDS)),
  size: u(z.string().min(1).max(10)),
  metal: u(z.enum(['Cu', 'Al'])),
  hots: u(z.union([z.literal(1), z.literal(2)])),
  neutral: u(z.enum(['insulated', 'bare', 'none'])),
  ground: u(z.boolean()),
  insulation: u(z.union([z.literal(60), z.literal(75), z.literal(90)])),
});
const lugs = u(z.union([z.literal(60), z.literal(75)]));
const tails = record({ hot: size0, neutral: size0, ground: size0 });

export const enclosureSchema = record({
  id,
  on: onWall,
  size: sizeOf,
  mount: z.enum(['surface', 'recessed']),
  upright: z.boolean(),
  mainAt: z.enum(['top', 'bottom']),
  mainAmps: u(amount.nullable()),
  role: u(z.enum(['service', 'feeder-fed'])),
  bonded: u(z.boolean()),
  electrodeLandsHere: u(z.boolean()),
  busAmps: u(amount),
  spaces: u(count),
  knockouts: u(count),
  neutralTerminals: u(count),
  groundTerminals: u(count),
  lugs,
  topHandle: u(size0),
  doorHinge: u(z.enum(['left', 'right', 'lift-off'])),
  weatherproof: u(z.boolean()),
  finish: text,
  trim: text,
  attached: list(record({ kind: text, becomes: u(z.enum(['moves', 'ends'])), answer: u(text) })),
});

export const cableGroupSchema = record({
  id,
  enclosure: id,
  path: z.array(pt3).min(2).max(200).readonly(),
  reachable: list(z.tuple([size0, size0]).readonly()),
  pivot: u(size0),
  drawsBack: u(z.boolean()),
  entry: z.enum(['top', 'bottom', 'left', 'right', 'back']),
  tails: u(tails),
});

export const homeRunSchema = record({
  id,
  group: id,
  circuits: list(id),
  cable: cableSchema,
  ownPath: z.array(pt3).min(2).max(200).readonly().nullable(),
  ownPivot: u(size0).nullable(),
  ownTails: u(tails).nullable(),
  wholeLength: u(size0),
  traced: z.boolean(),
  condition: list(text),
});

export const circuitSchema = record({
  id,
  number: text,
  label: text,
  poles: z.union([z.literal(1), z.literal(2)]),
  volts: z.union([z.literal(120), z.literal(240)]),
  amps: u(amount),
  partner: id.nullable(),
  serves: u(list(useSchema)),
  va: u(amount),
  continuous: u(z.boolean()),
  protection: u(z.enum(['none', 'AFCI', 'GFCI', 'AFCI and GFCI'])),
  addsOutlet: z.boolean(),
  hardWired: u(z.boolean()),
  flags: list(text),
});

const feederEnd = record({ panel: text, lugs, breakerAmps: u(amount.nullable()), spaceFree: u(z.boolean()) });
export const feederSchema = record({
  from: feederEnd,
  entersAt: pt3,
  /** Along its way from its source (at a service: from the meter) to where it comes into the room. */
  outside: u(size0),
  path: z.array(pt3).max(200).readonly(),
  cable: cableSchema,
  raceway: u(z.enum(['none', 'metal', 'PVC'])),
  wires: u(z.union([z.literal(3), z.literal(4)])),
  wholeDwelling: u(z.boolean()),
});

export const WAYS = [
  'stays',
  'reuse',
  'cut-in',
  'splice can',
  'splice in new panel',
  'through raceway',
  'new home run',
  'stays on old panel',
] as const;
const pin = z.discriminatedUnion('pin', [
  record({ id, pin: z.literal('way'), homeRun: id, way: z.enum(WAYS) }),
  record({ id, pin: z.literal('through'), homeRun: id, points: list(pt3, 200) }),
  record({ id, pin: z.literal('splice at'), homeRuns: list(id), at: pt3 }),
  record({ id, pin: z.literal('keep out'), outline: outlineOf, fromZ: len, toZ: len }),
  record({ id, pin: z.literal('row'), homeRuns: list(id) }),
]);

export const optionSchema = record({
  id,
  title: text,
  kind: z.enum(['in place', 'relocate']),
  enclosure: enclosureSchema,
  pins: list(pin),
  moves: list(record({ obstacle: id, to: z.union([pt, z.literal('away')]) })),
  serviceDisconnect: record({ on: z.union([onWall, z.literal('outdoors')]), amps: amount }).nullable(),
  replaces: list(record({ enclosure: id, becomes: z.enum(['removed', 'splice can', 'subpanel', 'program chooses']) })),
});

export const priceBookSchema = record({
  id,
  dated: date,
  materials: list(record({ id, unit: text, dollars, source: text }), 5000),
  tasks: list(record({ id, unit: text, low: hours, likely: hours, high: hours, source: text }), 1000),
  dollarsPerCrewHour: z.number().min(0).max(1000),
  overheadRate: share,
  profit: record({ as: z.enum(['margin', 'markup']), rate: z.number().min(0).max(10) }),
  tax: record({ rate: share, on: list(text) }),
  allowances: list(record({ id, low: dollars, likely: dollars, high: dollars })),
  /** Wage of an electrician and what is paid on top of it, as a share; null = the labor-hour was entered as it is. */
  wage: record({ dollarsPerHour: z.number().min(0).max(1000), burden: share }).nullable(),
  /** The least that is charged before tax; 0 = no least charge. */
  minimumDollars: z.number().min(0).max(100_000),
  /** The price is shown to the nearest of these; 0 = to the cent. */
  roundToDollars: z.number().min(0).max(1000),
  /** Working days a supply counter needs for a material that it does not have on the shelf. */
  lead: list(record({ id, days: z.number().min(0).max(365) }), 5000),
});
/** How a price is offered and the work is done, common to all options. Hours of the clock, 24-hour. */
export const termsSchema = record({
  quote: z.enum(['fixed', 'range', 'time and material']),
  people: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  cutOver: z.enum(['all at once', 'roll-over']),
  startsAt: z.number().min(0).max(24),
  endsAt: z.number().min(0).max(24),
});

/** Lengths in the truck, by cable. */
export const stockSchema = list(record({ cable: text, lengths: list(chosen.gt(0)) }));

/** Measured, or not known: then those of an ordinary thing of its kind stand in for them. */
const sizes = u(z.literal('measured'));

export const openingSchema = record({
  id,
  kind: z.enum(['door', 'window', 'cased opening']),
  exists: twoStates(z.boolean()),
  on: onWall,
  width: positive,
  height: positive,
  sizes,
  hinge: u(z.enum(['left', 'right']).nullable()),
  swings: u(z.enum(['front', 'back']).nullable()),
});
export const areaSchema = record({
  id,
  outline: outlineOf,
  state: twoStates(
    record({
      use: u(useSchema),
      cover: u(z.enum(['open joists', 'drywall', 'lay-in'])),
      ceiling: u(positive),
      floorRise: size0,
    }),
  ),
});
export const framingSchema = record({
  id,
  outline: outlineOf.nullable(),
  direction: u(angle),
  firstJoist: u(len),
  spacing: u(positive),
  depth: u(positive),
  kind: u(z.enum(['sawn', 'I-joist', 'open-web truss', 'LVL'])),
  underside: u(positive),
});
export const baySchema = record({ id, outline: outlineOf, state: z.enum(['panned return', 'blocked', 'insulated']) });
export const obstacleSchema = record({
  id,
  kind: text,
  corner: pt,
  turn: angle,
  size: sizeOf,
  sizes,
  bottom: len,
  blocksCable: z.boolean(),
  blocksSpace: z.boolean(),
  foreign: z.boolean(),
  clearance: size0,
  exists: twoStates(z.boolean()),
  stored: z.boolean(),
  moveCents: cents.nullable(),
});
export const partitionSchema = record({
  id,
  from: pt,
  to: pt,
  thickness: u(positive),
  height: u(positive),
  exists: twoStates(z.boolean()),
  front: twoStates(face),
  back: twoStates(face),
  studSpacing: u(positive.nullable()),
});

export const siteSchema = record({
  outline: z
    .array(record({ id, at: pt, face: twoStates(face), studSpacing: u(positive.nullable()), thickness: u(positive) }))
    .min(3)
    .max(500)
    .readonly(),
  partitions: list(partitionSchema),
  openings: list(openingSchema),
  areas: list(areaSchema),
  framing: list(framingSchema),
  bays: list(baySchema),
  obstacles: list(obstacleSchema),
  sleeves: list(record({ id, from: pt3, to: pt3, diameter: positive, metal: z.boolean() })),
});

const sum = z.number().int();
const tally = record({
  stops: sum.min(0),
  lowCents: sum,
  likelyCents: sum,
  highCents: sum,
  crewHours: z.number().min(0),
  outageHours: z.number().min(0),
  conductorsSpliced: sum.min(0),
  boxes: sum.min(0),
  afciAdded: sum.min(0),
});
const words = z.record(z.string().max(80), text).readonly();

export const jobSchema = record({
  format: z.literal('backboard-job'),
  schema: z.literal(1),
  id,
  title: text,
  changedOn: date,
  survey: record({ grade: z.enum(['walk-through', 'full']), by: text, on: date }),
  code: record({
    edition: u(z.union([z.literal(2017), z.literal(2020), z.literal(2023), z.literal(2026)])),
    place: text,
    amendments: z.record(z.string().max(80), z.union([z.string().max(400), z.number(), z.boolean()])).readonly(),
    saidBy: z.record(z.string().max(80), record({ by: text, on: date, note: text })).readonly(),
  }),
  house: record({
    yearBuilt: u(z.number().int().min(1600).max(2200)),
    floorAreaFt2: u(amount),
    panelAreaFt2: u(amount),
    occupied: u(z.boolean()),
    panelLit: u(z.boolean()),
    smallApplianceCircuits: u(count),
    laundryCircuits: u(count),
    loads: list(record({ id, kind: text, va: u(amount), onPanel: u(z.boolean()) })),
    otherSource: u(z.boolean()),
  }),
  site: siteSchema,
  enclosures: list(enclosureSchema),
  feeder: feederSchema,
  cableGroups: list(cableGroupSchema),
  homeRuns: list(homeRunSchema),
  circuits: list(circuitSchema),
  options: list(optionSchema, 60),
  practice: record({
    slackShare: share,
    slackMinimum: chosen,
    freeInBox: chosen,
    tailInPanel: chosen,
    tailOfFeeder: chosen,
    cutStep: chosen.gt(0),
    shortestPiece: chosen,
    bundling: z.enum(['strict', 'over 24 in only']),
    nextSizeInRows: z.boolean(),
    tenPercentException: z.boolean(),
    spareSpaces: count,
    maxSpliceSpots: count,
    spliceSpotCents: cents,
  }),
  priceBook: z.union([priceBookSchema, z.literal('default')]),
  terms: termsSchema,
  stock: stockSchema,
  alternates: list(record({ id, taken: z.boolean() })),
  answers: list(
    record({
      rule: text,
      subject: id,
      answer: z.union([text, z.number(), z.boolean()]),
      by: text,
      on: date,
      note: text,
      photo: id.nullable(),
    }),
  ),
  photos: list(
    record({
      id,
      pinnedTo: id,
      takenOn: date,
      type: z.literal('image/jpeg'),
      widthPx: count,
      heightPx: count,
      data: z.string().max(4_000_000).nullable(),
    }),
  ),
  people: record({ contractor: words, customer: words }),
  issued: list(record({ on: date, paper: text, option: id, engine: text, figures: tally })),
  notes: z.string().max(100_000),
});

export type Job = z.infer<typeof jobSchema>;
export type Site = Job['site'];
export type Option = Job['options'][number];
export type Enclosure = Job['enclosures'][number];
export type CableGroup = Job['cableGroups'][number];
export type HomeRun = Job['homeRuns'][number];
export type Circuit = Job['circuits'][number];
export type Feeder = Job['feeder'];
export type PriceBook = Exclude<Job['priceBook'], 'default'>;
export type Terms = Job['terms'];
export type Pin = Option['pins'][number];
export type Way = (typeof WAYS)[number];
export type Obstacle = Site['obstacles'][number];
export type Partition = Site['partitions'][number];
export type Opening = Site['openings'][number];
export type Area = Site['areas'][number];
export type Framing = Site['framing'][number];
export type OnWall = Enclosure['on'];
export type Build = z.infer<typeof buildSchema>;
export type Tails = z.infer<typeof tails>;
export type Practice = Job['practice'];
export type Tally = z.infer<typeof tally>;
