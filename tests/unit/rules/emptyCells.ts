import type { RuleId } from '../../../src/standards/sections';
import type { Fixture } from './fixtures/fixture';

/** The eight things a rule may say: outcome and what it does to the job. */
export const CELLS = {
  stops: { outcome: 'fails', effect: 'stops the job', said: ['stops'] },
  extra: { outcome: 'fails', effect: 'extra work', said: ['extraWork'] },
  failsNote: { outcome: 'fails', effect: 'note', said: ['failsNote'] },
  untold: { outcome: 'cannot be told', effect: 'verify in field', said: ['cannotBeTold'] },
  duty: { outcome: 'cannot be told', effect: 'note', said: ['reminder', 'duty'] },
  nearly: { outcome: 'holds', effect: 'verify in field', said: ['holdsNearly'] },
  holds: { outcome: 'holds', effect: null, said: ['holds'] },
  silent: { outcome: 'does not apply', effect: null, said: ['doesNotApply'] },
} as const satisfies Record<string, Pick<Fixture, 'outcome' | 'effect'> & { said: readonly string[] }>;
export type Cell = keyof typeof CELLS;
export const CELL_NAMES = Object.keys(CELLS) as Cell[];

/** Why a rule never says one of them. */
const DUTY = 'a duty of the day: nobody can judge it before it is done';
const ALWAYS = 'there is always such a thing to look at';
const JUDGED = 'it is judged, so it is no duty of the day';
const NOT_IN_PASSING = 'nobody puts it right in passing on the day';
const NO_CURE = 'nothing priced inside the option cures it: another place, way or option does';
const CURED = 'whatever fails is cured by work that the plan prices';
const NO_BAND =
  'read or counted, or measured to 1/64 in: only the 6 ft of an extension and what practice splits have a band';
const KNOWN = 'all it looks at is laid by the plan, or is never unknown in a job file';
const ASKS = 'it only asks: the inspector or a look on site decides';
const TELLS = 'it only tells what is there: what may fail is another rule’s';
const ANSWERED = 'only an answer recorded on site makes it hold (run.test.ts)';
const ONLY_FAILS = 'where there is nothing wrong it has nothing to look at';
const OLD_WORK = 'the plan never makes new work of this kind, so there is nothing of it to accept';

type Empty = Partial<Record<Cell, string>>;

/** Said of every rule that judges, and of every duty of the day. */
const judged: Empty = { duty: JUDGED, failsNote: NOT_IN_PASSING, nearly: NO_BAND };
const duty: Empty = { stops: DUTY, extra: DUTY, failsNote: DUTY, untold: DUTY, nearly: DUTY, holds: DUTY };
const always: Empty = { ...duty, silent: ALWAYS };
/** Of the panel in its place: always asked, and only another place cures it. */
const place: Empty = { ...judged, extra: NO_CURE, silent: ALWAYS };
/** The plan prices the cure of every failure. */
const cured: Empty = { ...judged, stops: CURED };
/** Only another way or option cures it. */
const uncured: Empty = { ...judged, extra: NO_CURE };
const asks: Empty = { ...judged, stops: ASKS, extra: ASKS };

/** A reason for every cell that no fixture fills. A test holds that each empty cell has one and each filled one none. */
export const EMPTY: Partial<Record<RuleId, Empty>> = {
  'AC-MC': { ...duty },
  ACCESS: always,
  'AFCI-AREA': asks,
  'AFCI-EXT': { stops: CURED, failsNote: NOT_IN_PASSING, duty: JUDGED },
  'AFCI-EXT-17': asks,
  'AFCI-LOCAL': { ...judged, stops: TELLS, extra: TELLS, untold: TELLS },
  'AL-CU': { ...cured, holds: ANSWERED },
  BARRIER: duty,
  BATH: place,
  'BOX-FILL': place,
  'BREAKER-LIST': always,
  'CAB-FILL': place,
  'CABLE-BEND': { ...uncured, untold: KNOWN },
  'CABLE-SEC': always,
  'CARRY-OVER': { ...cured, holds: ANSWERED },
  CLOSET: place,
  DAMAGE: always,
  DAMP: { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED, silent: ALWAYS },
  DEDICATED: place,
  DIR: always,
  'DRYER-RANGE': { ...judged, holds: ANSWERED },
  DUCT: { ...uncured, untold: KNOWN },
  EGC: duty,
  EMDISC: uncured,
  'FDR-2AL': cured,
  'FDR-4W': uncured,
  'FDR-EGC': uncured,
  'FDR-SER': { ...judged, stops: TELLS, extra: TELLS },
  'FDR-SIZE': cured,
  'FIRE-STOP': always,
  FLUSH: uncured,
  'FREE-WIRE': duty,
  'GFCI-NEW': { ...asks, holds: ANSWERED },
  'GND-BOND': { ...judged, silent: ALWAYS },
  GROUP: { ...cured, untold: KNOWN, holds: ONLY_FAILS },
  HANDLE: place,
  HANG: asks,
  'JOIST-HOLE': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED },
  'KNOB-TUBE': { ...uncured, holds: OLD_WORK },
  KNOCKOUTS: place,
  LOAD: place,
  MWBC: { ...uncured, untold: KNOWN },
  'NEUTRAL-BAR': place,
  'NM-BORE': cured,
  'NM-BUNDLE': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED },
  'NM-JOIST': uncured,
  'NM-PRINT': asks,
  'NM-SUP': { ...uncured, untold: KNOWN },
  'NM-USE': { ...judged, stops: TELLS, extra: TELLS, untold: KNOWN },
  'OCPD-PANEL': place,
  'OLD-3WIRE': judged,
  'OLD-CAN': uncured,
  OPENINGS: always,
  ORIENT: { ...asks, silent: ALWAYS },
  SAFE: always,
  SCCR: always,
  SHEATH: always,
  SOURCES: asks,
  SPACES: place,
  'SPD-FDR': cured,
  'SPD-SVC': cured,
  'SPLICE-BOX': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED, silent: ALWAYS },
  STAIRS: place,
  'SVC-GROUND': { stops: CURED, failsNote: NOT_IN_PASSING, nearly: NO_BAND, holds: ANSWERED },
  'SVC-LOC': uncured,
  'SVC-TO-SUB': { ...judged, holds: 'becoming a subpanel always brings work, which it prices' },
  TEMP: { ...judged, stops: TELLS, extra: TELLS },
  TORQUE: always,
  UNGROUNDED: { ...asks, holds: ANSWERED },
  'SVC-COND': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED },
  'FDR-TAP': { ...asks, holds: ANSWERED },
  'FDR-N': { ...asks },
  'SVC-SIX': uncured,
  BACKFED: duty,
  'AFCI-RECP': always,
  'GFCI-OUT': duty,
  'GFCI-RECP': {
    stops: CURED,
    failsNote: NOT_IN_PASSING,
    untold: KNOWN,
    nearly: NO_BAND,
    holds: DUTY,
    silent: 'it looks only at the receptacles this job replaces, and at the job',
  },
  'WS-LIMITED': { ...asks, holds: ANSWERED },
  'TEN-PERCENT': { stops: TELLS, extra: TELLS, duty: JUDGED, nearly: NO_BAND },
  'NM-PAR': uncured,
  'BIG-BOX': { ...asks, holds: ANSWERED },
  'WIRE-BEND': { stops: DUTY, extra: DUTY, failsNote: DUTY, nearly: NO_BAND, holds: ANSWERED, silent: ALWAYS },
  SURFACE: uncured,
  'WS-6IN': { ...uncured, untold: KNOWN },
  'WS-DEPTH': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED, silent: ALWAYS },
  'WS-DOOR': asks,
  'WS-FLOOR': { stops: ASKS, extra: ASKS, failsNote: NOT_IN_PASSING, nearly: NO_BAND, holds: ANSWERED },
  'WS-HEIGHT': { extra: NO_CURE, failsNote: NOT_IN_PASSING, duty: JUDGED, silent: ALWAYS },
  'WS-LIGHT': { ...cured, silent: ALWAYS },
  'WS-STORE': {
    stops: 'stored goods are carried away: they never stop a job',
    extra: 'carrying goods away is not priced',
    untold: KNOWN,
    nearly: NO_BAND,
    duty: JUDGED,
    silent: ALWAYS,
  },
  'WS-WIDTH': place,
};
