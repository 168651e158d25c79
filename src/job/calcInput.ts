import { z } from 'zod';
import { RACEWAYS } from '../standards/conduit';
import { USES } from '../standards/uses';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { firstFault, schemaProblems } from './faults';
import { readJson } from './readJson';

/** The shapes of the pocket calculations' inputs: checked once, at the border. Every key the contract names is there, none unknown. */

const MOST = 10_000_000; // far beyond any house, and no product of two of them leaves the range of a number
const any = z.number().min(-MOST).max(MOST);
const none = z.number().min(0).max(MOST);
const some = z.number().gt(0).max(MOST);
const count = z.number().int().min(0).max(10_000);
const text = z.string().min(1).max(80);
const list = <T extends z.ZodType>(inner: T) => z.array(inner).max(1000);
const unknown = z.literal('unknown');

const edition = z.union([z.literal(2017), z.literal(2020), z.literal(2023), z.literal(2026)]);
const metal = z.enum(['Cu', 'Al']);
const column = z.union([z.literal(60), z.literal(75), z.literal(90)]);
const lowColumn = z.union([z.literal(60), z.literal(75)]);
const counts = list(z.strictObject({ awg: text, count }));
const insulated = list(z.strictObject({ awg: text, count, insulation: text }));
const size = z.strictObject({ width: some, depth: some, height: some });

const inputs = {
  'box-fill': z.strictObject({
    edition,
    conductors: counts,
    grounds: counts,
    deviceYokes: counts,
    clamps: z.boolean(),
    fittings: count,
    boxIn3: some.nullable(),
  }),
  'cabinet-fill': z.strictObject({ sectionIn2: some, conductors: insulated, splicesIn2: none }),
  'pull-box': z.strictObject({ pull: z.enum(['straight', 'angle', 'splice']), racewaysIn: list(some) }),
  ampacity: z.strictObject({
    edition,
    metal,
    awg: text,
    startColumn: column,
    terminals: z.union([column, unknown]),
    limitColumn: lowColumn.nullable(),
    conductors: count,
    ambientF: any,
    togetherIn: none.nullable(),
    inRaceway: z.boolean(),
    breakerAmps: some.nullable(),
  }),
  feeder: z.strictObject({
    edition,
    metal,
    awg: text,
    cable: text,
    breakerAmps: some,
    terminals: z.union([lowColumn, unknown]),
    wholeDwelling: z.union([z.boolean(), unknown]),
    continuousAmps: none,
    otherAmps: none,
    conductors: count,
    ambientF: any,
    upsizedFrom: text.nullable(),
    insulated: z.boolean().exactOptional(),
    neutralAmps: none.nullable().exactOptional(),
    tap: z.strictObject({ ahead: some, feet: none }).nullable().exactOptional(),
  }),
  'voltage-drop': z.strictObject({
    volts: some,
    amps: none,
    feetOneWay: none,
    metal,
    awg: text,
    ohmPerKft: none.nullable(),
    raceway: z.enum(['PVC', 'aluminum', 'steel']),
    powerFactor: z.number().min(0).max(1),
  }),
  load: z.strictObject({
    edition,
    method: z.enum(['standard', 'optional', 'existing', 'measured']),
    areaFt2: none,
    smallAppliance: count,
    laundry: count,
    fixedVA: list(none),
    rangeVA: list(none),
    dryerVA: list(none),
    ovenVA: list(none),
    cooktopVA: list(none),
    wholeDwelling: z.boolean(),
    newHvac: z.boolean(),
    heatVA: none,
    heatUnits: count.exactOptional(),
    supplementVA: none.exactOptional(),
    fixedNoNeutralVA: none.exactOptional(),
    coolVA: none,
    largestMotorVA: none,
    evVA: none,
    otherVA: none,
    peakVA: none.nullable(),
  }),
  afci: z.strictObject({
    edition,
    volts: some,
    amps: some,
    serves: z.union([list(z.enum(USES)), unknown]),
    outsideIn: none,
    tailsIn: none,
    addsOutlet: z.boolean(),
    shortenedOnly: z.boolean(),
    newHomeRun: z.boolean(),
    amendments: z.record(text, z.string().max(4000)),
  }),
  'working-space': z.strictObject({
    edition,
    size,
    bottom: any,
    topHandle: any,
    free: z.strictObject({ left: any, right: any, depth: none, height: none }),
    existingDwelling: z.boolean(),
    amps: some,
    voltsToGround: some,
  }),
  boring: z.strictObject({
    member: z.enum(['joist', 'bearing stud', 'other stud']),
    depthIn: some,
    holeIn: none.nullable(),
    edgeIn: any.nullable(),
    notchIn: none.nullable(),
    betweenIn: none.nullable().exactOptional(),
    notchAt: z.enum(['outer third', 'middle third', 'end']).exactOptional(),
    notchBelow: z.boolean().exactOptional(),
    nominalIn: some.exactOptional(),
  }),
  bend: z.strictObject({ cable: text.nullable(), diameterIn: some.nullable() }),
  'raceway-fill': z.strictObject({
    raceway: z.enum(RACEWAYS),
    tradeSize: text,
    nipple: z.boolean(),
    conductors: insulated,
  }),
  'terminal-bend': z.strictObject({ awg: text, wires: count, wall: z.enum(['side', 'opposite']) }),
  'dedicated-space': z.strictObject({
    edition,
    size,
    bottom: any,
    structure: any,
    thing: z.strictObject({ left: any, right: any, out: any, outTo: any, from: any, to: any }),
  }),
  arrangement: z.strictObject({
    spaces: count,
    circuits: z
      .array(
        z.strictObject({
          id: text,
          poles: z.union([z.literal(1), z.literal(2)]),
          va: none,
          partner: text.nullable(),
        }),
      )
      .max(100),
  }),
  cut: z.strictObject({
    coils: list(z.strictObject({ length: some, dollars: none, have: count.nullable() })),
    pieces: list(z.strictObject({ length: some, count })),
    keepFrom: none.nullable(),
    remnantShare: z.number().min(0).max(1),
  }),
};

/** What comes out of the check; the command holds it against the calculations' own inputs, so a difference does not compile. */
export type CalcRead = { readonly [N in keyof typeof inputs]: z.infer<(typeof inputs)[N]> };
type CalcName = keyof CalcRead;

export const CALC_NAMES = Object.keys(inputs) as readonly CalcName[];
export const isCalcName = (name: string): name is CalcName => Object.hasOwn(inputs, name);

/** JSON text from outside becomes the input of one calculation, or a located fault. */
export const readCalcInput = <N extends CalcName>(name: N, json: string): Result<CalcRead[N], Fault> => {
  const read = readJson(json);
  if (!read.ok) return read;
  const parsed = inputs[name].safeParse(read.value);
  if (parsed.success) return ok(parsed.data as CalcRead[N]);
  return err(firstFault(read.value, schemaProblems(read.value, parsed.error.issues))!);
};
