import { AMPACITY_TABLE, ampacity } from '../standards/ampacity';
import type { Metal, TempColumn } from '../standards/cable';
import { AMBIENT_TABLE, ambientFactor } from '../standards/correction';
import { COUNT_TABLE, countFactor, UNADJUSTED_LENGTH_IN } from '../standards/countAdjustment';
import { isSize } from '../standards/sizes';
import { BEYOND, type ByEdition, cited, type Source } from '../standards/source';
import { TERMINALS_RULE, terminalColumns } from '../standards/terminals';
import { START_COLUMN_RULE } from '../standards/wiringMethods';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import type { Edition, In, U } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import { refuse, tidy } from './refuse';
import type { Worked } from './types';

export type Steps = Worked['steps'];
type Step = Steps[number];

/** A conductor, what limits it and where it lies. */
export interface Carrying {
  readonly metal: Metal;
  readonly awg: string;
  readonly startColumn: TempColumn;
  /** Column the wiring method holds it to, and the rule that says so. */
  readonly limitColumn: 60 | 75 | null;
  readonly limitRule: ByEdition<Source> | null;
  readonly terminals: U<TempColumn>;
  /** Current-carrying conductors together. */
  readonly conductors: number;
  readonly ambientF: number;
  /** Length they stay together, in; null = not known, counts as more than 24. */
  readonly togetherIn: In | null;
}
export interface Carried {
  /** A in the column it starts from. */
  readonly base: number;
  readonly factor: number;
  /** A after correction and adjustment. */
  readonly corrected: number;
  /** A not above the columns of method and terminals, the terminals at their worst and at their best. */
  readonly usable: number;
  readonly usableAtBest: number;
  /** A before any factor, in the lower of the limiting columns; at worst and at best terminals. */
  readonly unadjusted: number;
  readonly unadjustedAtBest: number;
  readonly steps: Steps;
}

/** Ampacity of a conductor: table, ambient, count, then the columns of the wiring method and of the terminals (NEC 310.15, 110.14(C)). */
export const carrying = (c: Carrying, edition: Edition): Result<Carried, Fault> => {
  if (!isSize(c.awg)) return refuse('not-a-size', '/awg', say.notASize({ found: c.awg }));
  const table = cited(AMPACITY_TABLE[edition]);
  const lookUp = (column: TempColumn) => ampacity(c.metal, c.awg, column);
  const missing = (column: TempColumn) =>
    refuse('beyond-table', '/awg', say.notInTable({ what: `${c.awg} ${c.metal}, ${column} °C`, table }));

  const base = lookUp(c.startColumn);
  if (base === BEYOND) return missing(c.startColumn);
  const ambient = ambientFactor(c.startColumn, c.ambientF);
  if (ambient === BEYOND)
    return refuse('beyond-table', '/ambientF', say.tooHot({ column: c.startColumn, ambientF: c.ambientF }));
  const short = c.togetherIn !== null && c.togetherIn <= UNADJUSTED_LENGTH_IN;
  const count = short ? 1 : countFactor(c.conductors);
  const corrected = tidy(base * ambient * count);

  const { awg, metal, startColumn: column, ambientF, conductors } = c;
  const countSay = short ? say.notTogether : say.counted({ conductors });
  const correctedSay = say.corrected({ base, ambient, count });
  const steps: Step[] = [
    { say: say.base({ column, awg, metal }), value: base, unit: 'A', section: table },
    { say: say.ambient({ ambientF, column }), value: ambient, unit: '', section: cited(AMBIENT_TABLE[edition]) },
    { say: countSay, value: count, unit: '', section: cited(COUNT_TABLE[edition]) },
    { say: correctedSay, value: corrected, unit: 'A', section: cited(START_COLUMN_RULE[edition]) },
  ];
  let limited = base;
  if (c.limitColumn !== null) {
    const most = lookUp(c.limitColumn);
    if (most === BEYOND) return missing(c.limitColumn);
    limited = Math.min(limited, most);
    const section = c.limitRule ? cited(c.limitRule[edition]) : table;
    steps.push({ say: say.methodLimit({ column: c.limitColumn }), value: most, unit: 'A', section });
  }
  const columns = terminalColumns(c.terminals);
  const atTerminals = columns.map(lookUp);
  const beyond = columns.find((_, i) => atTerminals[i] === BEYOND);
  if (beyond !== undefined) return missing(beyond);
  const [worst, best] = [Number(atTerminals[0]), Number(atTerminals.at(-1))];
  steps.push({
    say:
      columns.length > 1
        ? say.terminalGuess({ column: columns[0], others: columns.slice(1).join(', ') })
        : say.terminalLimit({ column: columns[0] }),
    value: worst,
    unit: 'A',
    section: cited(TERMINALS_RULE[edition]),
  });
  // The columns of method and terminals cap the ampacity as printed; factors apply to the column of the insulation.
  const cap = c.limitColumn === null ? Number.POSITIVE_INFINITY : limited;
  const usable = Math.min(corrected, cap, worst);
  const list = [corrected, ...(c.limitColumn === null ? [] : [cap]), worst];
  steps.push({ say: say.usable({ list }), value: usable, unit: 'A', section: cited(TERMINALS_RULE[edition]) });
  return ok({
    base,
    factor: tidy(ambient * count),
    corrected,
    usable,
    usableAtBest: Math.min(corrected, cap, best),
    unadjusted: Math.min(limited, worst),
    unadjustedAtBest: Math.min(limited, best),
    steps,
  });
};
