import type { Finding } from '../facts/result';
import { type Answered, answerOf } from '../job/questions';
import type { Job } from '../job/schema';
import { QUESTION_KEYS, type QuestionKey, questionOf } from '../standards/questions';
import { isKnown } from '../units/types';
import { answerSays, questionWords } from '../words/en/questions';

/** One question of the sheet as it is shown and printed. */
export interface QuestionRow {
  readonly key: QuestionKey;
  readonly name: string;
  readonly ask: string;
  /** Where practice is split, or what the text says. */
  readonly why: string;
  /** What may be answered, in words; null = a length in inches. */
  readonly choices: readonly { readonly answer: string | number; readonly say: string }[] | null;
  readonly answered: (Answered & { readonly say: string }) | null;
  /** Is it worth asking in the code year in force? */
  readonly asked: boolean;
  /** Open findings that turn on it, and findings that quote the answer. */
  readonly waiting: number;
  readonly quoting: number;
}

/** The inspector's question sheet of a job, with the findings of the option shown. */
export const questionRows = (job: Job, findings: readonly Finding[]): QuestionRow[] =>
  QUESTION_KEYS.map((key) => {
    const { answers, rules, asked } = questionOf(key);
    const { name, ask, why } = questionWords.of[key];
    const answered = answerOf(job, key);
    const { edition } = job.code;
    const open = findings.filter((f) => rules.some((r) => r === f.rule) && f.effect !== null && f.amendment === null);
    return {
      key,
      name,
      ask,
      why,
      choices: answers === 'inches' ? null : answers.map((answer) => ({ answer, say: answerSays(key, answer) })),
      answered: answered && { ...answered, say: answerSays(key, answered.answer) },
      asked: !isKnown(edition) || asked.includes(edition),
      waiting: answered ? 0 : open.filter((f) => f.effect === 'verify in field' || f.split !== null).length,
      quoting: findings.filter((f) => f.amendment?.split('; ').some((part) => part.startsWith(`${key} = `))).length,
    };
  });

/** How many questions of the sheet have an answer. */
export const answeredCount = (rows: readonly QuestionRow[]): number => rows.filter((r) => r.answered !== null).length;
