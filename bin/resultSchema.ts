import { z } from 'zod';
import { LEG_WAYS } from '../src/facts/result';
import { cableSchema, jobSchema, termsSchema, WAYS } from '../src/job/schema';

/**
 * The result as a schema: for `docs/schema/result.schema.json` and for tests that hold every printed result against
 * it. The types in facts/result.ts are what the engine is written against; a test keeps the two the same.
 */
const number = z.number();
const text = z.string();
const whole = z.number().int();
const list = <T extends z.ZodType>(inner: T) => z.array(inner).readonly();
const record = <T extends z.ZodRawShape>(shape: T) => z.strictObject(shape).readonly();
const pt3 = z.tuple([number, number, number]).readonly();
const oneOf = <const T extends readonly [string, ...string[]]>(names: T) => z.enum(names);
const optionShape = jobSchema.unwrap().shape.options.unwrap().element.unwrap().shape;
const onWall = optionShape.enclosure.unwrap().shape.on;
const terms = termsSchema.unwrap().shape;
const tally = jobSchema.unwrap().shape.issued.unwrap().element.unwrap().shape.figures;

const leg = record({ from: pt3, to: pt3, cable: oneOf(['old', 'new']), row: text.nullable(), by: oneOf(LEG_WAYS) });
const run = record({
  homeRun: text,
  way: oneOf(WAYS),
  why: text,
  reach: record({ jacket: number, hot: number, neutral: number, ground: number }).nullable(),
  cutIn: pt3.nullable(),
  box: text.nullable(),
  newCable: cableSchema.nullable(),
  legs: list(leg),
  codeLength: number,
  codeLengthWithTails: number,
  cutLength: number,
  holes: whole,
  supports: whole,
  plates: whole,
  conductorsSpliced: whole,
  blockedBy: list(text),
});
const box = record({
  id: text,
  at: pt3,
  on: oneOf(['joist', 'wall', 'splice can', 'new panel', 'wireway']),
  size: text,
  material: oneOf(['metal', 'nonmetallic']),
  volumeIn3: number,
  fillIn3: number,
  homeRuns: list(text),
  conductorsSpliced: whole,
});
const row = record({
  id: text,
  by: oneOf(['bored', 'board', 'raceway', 'wireway', 'sealed hole', 'loose']),
  length: number,
  path: list(pt3),
  homeRuns: list(text),
  conductors: whole,
  factor: number,
  limit: text,
  holes: list(record({ at: pt3, diameter: number, homeRuns: list(text) })),
});
const worked = record({
  id: text,
  value: number,
  unit: text,
  steps: list(record({ say: text, value: z.union([number, text]), unit: text, section: text })),
});
const finding = record({
  rule: text,
  subject: text,
  outcome: oneOf(['holds', 'fails', 'cannot be told']),
  effect: oneOf(['stops the job', 'extra work', 'verify in field', 'note']).nullable(),
  measured: number.nullable(),
  required: number.nullable(),
  unit: text,
  section: text,
  standing: oneOf(['confirmed', 'one source', 'memory', 'unverified']),
  amendment: text.nullable(),
  split: text.nullable(),
  say: text,
  look: text.nullable(),
  remedies: list(record({ say: text, cents: whole.nullable() })),
  shape: list(pt3).nullable(),
});
const line = record({
  id: text,
  kind: oneOf(['material', 'labor', 'allowance', 'fee', 'overhead', 'profit', 'tax']),
  item: text,
  say: text,
  quantity: number,
  unit: text,
  dollarsEach: number,
  lowCents: whole,
  likelyCents: whole,
  highCents: whole,
  homeRuns: list(text),
  rule: text.nullable(),
  alternate: text.nullable(),
});
const proof = z.union([record({ best: z.literal(true) }), record({ best: z.literal(false), atMostAbove: number })]);
const when = oneOf(['before outage', 'outage', 'after']);

export const planSchema = record({
  option: text,
  grade: oneOf(['live', 'final', 'proven']),
  tally,
  electrode: record({ size: text, length: number }).nullable(),
  spds: whole,
  connectors: list(record({ size: text, count: whole })),
  knockoutsUsed: whole,
  loadMethod: text,
  runs: list(run),
  boxes: list(box),
  rows: list(row),
  feeder: record({
    way: oneOf(['kept', 'extended', 'replaced']),
    why: text,
    legs: list(leg),
    cutLength: number,
    outside: z.union([number, z.literal('unknown')]),
    holes: list(record({ at: pt3, diameter: number.nullable() })),
    supports: whole,
    plates: whole,
    cable: cableSchema,
    breakerAmps: number.nullable(),
    egc: record({ size: text, metal: oneOf(['Cu', 'Al']) }).nullable(),
    worked: list(worked),
    choices: list(
      record({
        way: oneOf(['kept', 'extended', 'replaced']),
        possible: z.boolean(),
        outcome: oneOf(['holds', 'fails', 'cannot be told']),
        cents: whole.nullable(),
        say: text,
      }),
    ),
  }),
  afci: list(
    record({
      circuit: text,
      required: oneOf(['yes', 'no', 'inspector decides', 'cannot be told']),
      codeLength: number,
      tapeIt: z.boolean(),
      section: text,
      remedy: text.nullable(),
    }),
  ),
  afciOpen: whole,
  findings: list(finding),
  doesNotApply: z.record(text, whole).readonly(),
  load: list(worked),
  directory: list(record({ space: whole, leg: oneOf(['A', 'B']), circuit: text.nullable(), text, protection: text })),
  price: record({
    complete: z.boolean(),
    missing: list(text),
    missingSay: list(text),
    assumed: list(record({ id: text, say: text })),
    unverifiedShare: number,
    lines: list(line),
    alternates: list(
      record({
        id: text,
        say: text,
        required: z.boolean(),
        taken: z.boolean(),
        cents: whole,
        rule: text.nullable(),
        spaces: whole,
        hours: number,
      }),
    ),
    packages: list(
      record({
        id: oneOf(['good', 'better', 'best']),
        say: text,
        alternates: list(text),
        lowCents: whole,
        likelyCents: whole,
        highCents: whole,
        hours: number,
        taken: z.boolean(),
      }),
    ),
    drivers: list(record({ id: text, say: text, cents: whole })),
    unitChanges: list(record({ id: text, say: text, unit: text, cents: whole })),
    forgettingAfci: record({ circuits: whole, cents: whole }),
    quote: record({
      asked: terms.quote,
      as: terms.quote,
      fixedCents: whole.nullable(),
      hourCents: whole,
      materialShare: number,
      say: text,
    }),
  }),
  time: record({
    days: number,
    byTask: list(record({ id: text, say: text, hours: number, when })),
    outage: list(record({ circuit: text, hours: number })),
    people: terms.people,
    cutOver: terms.cutOver,
    crews: list(record({ people: terms.people, cutOver: terms.cutOver, days: number, outageHours: number })),
    longOutageHours: number,
    goNoGo: number.nullable(),
    holds: list(record({ id: text, when, say: text })),
    remarks: list(record({ id: text, say: text })),
  }),
  cuts: list(
    record({
      cable: text,
      coils: list(
        record({
          length: number,
          bought: z.boolean(),
          pieces: list(record({ homeRun: text, length: number })),
          left: number,
          kept: z.boolean(),
        }),
      ),
      cents: whole,
      proof,
    }),
  ),
  order: list(record({ item: text, say: text, quantity: number, unit: text, leadDays: number.nullable() })),
  proof: record({ splices: proof, rows: proof }),
  pins: list(record({ pin: text, cents: whole.nullable(), say: text })),
});

export const resultSchema = record({
  format: z.literal('backboard-plan'),
  schema: z.literal(1),
  engine: text,
  job: text,
  edition: jobSchema.unwrap().shape.code.unwrap().shape.edition,
  plans: list(planSchema),
  advice: record({
    option: text.nullable(),
    say: text,
    reasons: list(record({ say: text, figure: text, value: number })),
    flips: list(
      record({ say: text, change: record({ path: text, value: z.unknown() }), option: text.nullable(), cents: whole }),
    ),
    visible: list(
      record({
        option: text,
        things: list(record({ id: oneOf(['panel', 'boxes', 'cans', 'cable']), say: text })),
      }),
    ),
    confidence: record({
      say: text,
      unknowns: list(
        record({
          path: text,
          value: z.unknown(),
          say: text,
          turns: z.boolean(),
          option: text.nullable(),
          cents: whole,
        }),
      ),
    }).nullable(),
  }),
  unknown: list(record({ path: text, say: text, blocks: list(text) })),
  notCovered: list(record({ rule: text, why: text })),
  places: list(
    record({
      on: onWall,
      upright: z.boolean(),
      clear: z.boolean(),
      rules: list(text),
      why: text,
      cents: whole.nullable(),
      afciAdded: whole.nullable(),
      past: list(text),
      conductorsSpliced: whole.nullable(),
      grade: oneOf(['splices only', 'live', 'final']).nullable(),
    }),
  ).nullable(),
  comparisons: list(
    record({
      option: text,
      against: text,
      rows: list(
        record({
          id: text,
          kind: line.unwrap().shape.kind,
          say: text,
          cents: whole,
          againstCents: whole,
          differsCents: whole,
        }),
      ),
      differsCents: whole,
      breakEvens: list(record({ id: text, say: text, unit: text, now: number, at: number })),
    }),
  ),
});

/** The JSON Schema as a file's text. */
export const resultSchemaText = (): string => `${JSON.stringify(z.toJSONSchema(resultSchema), null, 2)}\n`;
