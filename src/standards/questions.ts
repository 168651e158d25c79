import { EDITIONS, type Edition } from '../units/types';
import type { RuleId } from './sections';

/** One question to the inspector before the bid: where the answer stands in the job, what may be answered, what it bears on. */
export interface Question {
  /** JSON pointer of the answer in the job. */
  readonly at: string;
  /** The answers there are; 'inches' = a length above nothing. */
  readonly answers: readonly (string | number)[] | 'inches';
  /** The value at `at` while nobody has answered; null: the key is absent. */
  readonly unanswered: string | null;
  /** Rules whose findings quote the answer. */
  readonly rules: readonly RuleId[];
  /** Code years in which it is worth asking. */
  readonly asked: readonly Edition[];
}

const amendment = (
  key: string,
  answers: Question['answers'],
  rules: readonly RuleId[],
  asked: readonly Edition[] = EDITIONS,
): Question => ({ at: `/code/amendments/${key}`, answers, unanswered: null, rules, asked });

const YES_NO = ['yes', 'no'] as const;

/**
 * The question sheet. Which matters are asked: where public sources and inspectors differ, or where states and cities
 * are known to have amended the code (two or more public sources for each but the alarms, which rest on one).
 */
export const QUESTIONS = {
  edition: { at: '/code/edition', answers: EDITIONS, unanswered: 'unknown', rules: [], asked: EDITIONS },
  afciOnPanelReplacement: amendment(
    'afciOnPanelReplacement',
    ['as NEC', 'none'],
    ['AFCI-EXT', 'AFCI-EXT-17', 'AFCI-LOCAL'],
  ),
  afciCountsTails: amendment('afciCountsTails', YES_NO, ['AFCI-EXT', 'AFCI-EXT-17']),
  racewayCountsIn6ft: amendment('racewayCountsIn6ft', YES_NO, ['AFCI-EXT']),
  afciShortened: amendment('afciShortened', YES_NO, ['AFCI-EXT']),
  afciShortNewRun: amendment('afciShortNewRun', YES_NO, ['AFCI-EXT']),
  spliceCan: amendment('spliceCan', ['yes', 'no', 'ask'], ['OLD-CAN']),
  bundling: {
    at: '/practice/bundling',
    answers: ['strict', 'over 24 in only'],
    unanswered: 'strict',
    rules: ['NM-BUNDLE'],
    asked: EDITIONS,
  },
  spdInsideHouse: amendment('spdInsideHouse', YES_NO, ['SPD-FDR', 'SPD-SVC'], [2020, 2023, 2026]),
  emergencyDisconnect: amendment('emergencyDisconnect', YES_NO, ['EMDISC'], [2020, 2023, 2026]),
  headroomInNewSpot: amendment('headroomInNewSpot', YES_NO, ['WS-HEIGHT']),
  likeForLike: amendment('likeForLike', YES_NO, ['CLOSET', 'BATH', 'STAIRS']),
  handleMaxIn: amendment('handleMaxIn', 'inches', ['HANDLE']),
  nmAllowed: amendment('nmAllowed', YES_NO, ['NM-USE']),
  smokeAlarms: amendment('smokeAlarms', YES_NO, []),
} as const satisfies Record<string, Question>;

export type QuestionKey = keyof typeof QUESTIONS;
export const QUESTION_KEYS = Object.keys(QUESTIONS) as QuestionKey[];
export const isQuestion = (key: string): key is QuestionKey => Object.hasOwn(QUESTIONS, key);
export const questionOf = (key: QuestionKey): Question => QUESTIONS[key];
