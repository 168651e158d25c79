import {
  AFCI_EDITIONS,
  AFCI_EXEMPT_IN,
  AFCI_LISTED,
  AFCI_VOLTS,
  LENGTH_NOISE_IN,
  TAPE_BAND_IN,
} from '../standards/editionsAfci';
import { sectionOf } from '../standards/sections';
import { cited } from '../standards/source';
import { EDITIONS, type Edition, type In, isKnown, type U } from '../units/types';
import { circuitWords as say } from '../words/en/rulesCircuit';
import type { CalcInput, Worked } from './types';

export type AfciRequired = 'yes' | 'no' | 'inspector decides' | 'cannot be told';

/** The question of the pocket calculation, with what a survey may not know. */
export interface AfciQuestion extends Omit<CalcInput['afci'], 'edition' | 'volts' | 'amps' | 'amendments'> {
  readonly edition: U<Edition>;
  /** 120 where a load is connected line to neutral, whatever the poles of its breaker. */
  readonly volts: U<number>;
  readonly amps: U<number>;
  readonly amendments: Readonly<Record<string, string | number | boolean>>;
}

export interface AfciJudgement {
  readonly required: AfciRequired;
  /** Is the circuit of the voltage, the rating and the rooms that the rule speaks of? */
  readonly inScope: 'yes' | 'no' | 'cannot be told';
  /** The length decides and lies within the band around the limit. */
  readonly tapeIt: boolean;
  readonly section: string;
  readonly steps: Worked['steps'];
}

const RULE = 'AFCI-EXT';
type Step = Worked['steps'][number];

const yes = (setting: unknown): boolean => setting === true || setting === 'yes';
const no = (setting: unknown): boolean => setting === false || setting === 'no';

/** Inside the rule only when all three are; outside as soon as one is. */
const scope = (q: AfciQuestion, edition: Edition): AfciJudgement['inScope'] => {
  const rooms = isKnown(q.serves) ? q.serves.map((use) => AFCI_LISTED[use]) : [];
  const tests: U<boolean>[] = [
    isKnown(q.volts) ? q.volts === AFCI_VOLTS : 'unknown',
    isKnown(q.amps) ? AFCI_EDITIONS[edition].amps.includes(q.amps) : 'unknown',
    !isKnown(q.serves) ? 'unknown' : rooms.includes('listed') ? true : rooms.includes('not named') ? 'unknown' : false,
  ];
  if (tests.includes(false)) return 'no';
  return tests.includes('unknown') ? 'cannot be told' : 'yes';
};

/** What the work on the wiring asks for, were the circuit in scope. `lengthDecides` = a tape could change it. */
const byWork = (q: AfciQuestion, edition: Edition): { required: AfciRequired; counted: In | null } => {
  const limit = AFCI_EXEMPT_IN[edition] + LENGTH_NOISE_IN;
  const all = q.outsideIn + q.tailsIn;
  if (q.addsOutlet) return { required: 'yes', counted: null };
  if (q.newHomeRun) {
    const answer = q.amendments.afciShortNewRun;
    const short = yes(answer) ? 'yes' : no(answer) ? 'no' : 'inspector decides';
    return { required: q.outsideIn > limit ? 'yes' : short, counted: null };
  }
  if (q.shortenedOnly) {
    const answer = q.amendments.afciShortened;
    return { required: yes(answer) ? 'yes' : no(answer) ? 'no' : 'inspector decides', counted: null };
  }
  const setting = q.amendments.afciCountsTails;
  if (yes(setting)) return { required: all > limit ? 'yes' : 'no', counted: all };
  if (q.outsideIn > limit) return { required: 'yes', counted: q.outsideIn };
  const silent = AFCI_EDITIONS[edition].tails === 'text silent' && !no(setting);
  return silent && all > limit
    ? { required: 'inspector decides', counted: q.outsideIn }
    : { required: 'no', counted: silent ? all : q.outsideIn };
};

const judgeIn = (q: AfciQuestion, edition: Edition): AfciJudgement => {
  const clause = sectionOf(RULE, edition);
  const section = cited(clause);
  const areaSection = cited(sectionOf('AFCI-AREA', edition));
  const limit = AFCI_EXEMPT_IN[edition];
  const inScope = scope(q, edition);
  const relief = q.amendments.afciOnPanelReplacement === 'none' && !q.addsOutlet;
  const { required: asked, counted } = byWork(q, edition);
  // What the work does not ask for is not required of any circuit; what it does ask for waits for the rooms.
  const required: AfciRequired =
    inScope === 'no' || relief || asked === 'no' ? 'no' : inScope === 'yes' ? asked : 'cannot be told';
  const tapeIt =
    inScope !== 'no' &&
    !relief &&
    counted !== null &&
    (Math.abs(q.outsideIn - limit) <= TAPE_BAND_IN || Math.abs(counted - limit) <= TAPE_BAND_IN);
  const steps: Step[] = [
    { say: say.afciVolts, value: q.volts, unit: 'V', section },
    { say: say.afciRating, value: q.amps, unit: 'A', section },
    {
      say: say.afciRooms,
      value: isKnown(q.serves) ? [...q.serves].sort().join(', ') : q.serves,
      unit: '',
      section: areaSection,
    },
    ...(relief ? [{ say: say.afciAmendment, value: 'none', unit: '', section }] : []),
    ...(q.addsOutlet ? [{ say: say.afciOutlet, value: 'yes', unit: '', section }] : []),
    ...(q.newHomeRun ? [{ say: say.afciNewHomeRun, value: 'yes', unit: '', section }] : []),
    ...(q.shortenedOnly ? [{ say: say.afciShortened, value: 'yes', unit: '', section }] : []),
    { say: say.afciOutside, value: q.outsideIn, unit: 'in', section },
    { say: say.afciTails, value: q.outsideIn + q.tailsIn, unit: 'in', section },
    { say: say.afciLimit, value: limit, unit: 'in', section },
    { say: say.afciResult, value: required, unit: '', section },
  ];
  return { required, inScope, tapeIt, section: clause.section, steps };
};

/**
 * Must a circuit whose wiring is extended, replaced or only shortened get arc-fault protection? NEC 210.12(D) of 2017
 * and 2020, (E) since 2023: an extension of not more than 6 ft with no outlet or device added is excused, measured
 * along its way once, outside cabinets and boxes (2017 does not say). With the code year unknown all four are asked,
 * and only a common answer is one.
 */
export const judgeAfci = (q: AfciQuestion): AfciJudgement => {
  if (isKnown(q.edition)) return judgeIn(q, q.edition);
  const answers = EDITIONS.map((edition) => judgeIn(q, edition));
  const common = <T>(of: (a: AfciJudgement) => T): T | undefined => {
    const first = of(answers[0]!);
    return answers.every((a) => of(a) === first) ? first : undefined;
  };
  const required = common((a) => a.required) ?? 'cannot be told';
  const { section } = sectionOf(RULE, 'unknown');
  const stepSection = cited(sectionOf(RULE, 'unknown'));
  return {
    required,
    inScope: common((a) => a.inScope) ?? 'cannot be told',
    tapeIt: answers.some((a) => a.tapeIt),
    section,
    steps: [
      ...answers[0]!.steps.slice(0, -1).map((step) => ({ ...step, section: stepSection })),
      {
        say: say.afciEditions,
        value: answers.map((a, i) => `${EDITIONS[i]}: ${a.required}`).join('; '),
        unit: '',
        section: stepSection,
      },
      { say: say.afciResult, value: required, unit: '', section: stepSection },
    ],
  };
};
