import { isQuestion, QUESTION_KEYS, type Question, type QuestionKey, questionOf } from '../standards/questions';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { questionWords as say } from '../words/en/questions';
import { setValue } from './change';
import { fromPointer, valueAt } from './pointer';
import type { Job } from './schema';

/** An answer as it stands in the job; `by` and `on` are null where it was set without a name. */
export interface Answered {
  readonly answer: string | number;
  readonly by: string | null;
  readonly on: string | null;
  readonly note: string;
}

/** Yes and no may be written as true and false in a file. */
const plain = (value: unknown): string | number | null =>
  value === true
    ? 'yes'
    : value === false
      ? 'no'
      : typeof value === 'string' || typeof value === 'number'
        ? value
        : null;

/** What was answered to a question; null while it is open. An answer the question does not have counts as none. */
export const answerOf = (job: Job, key: QuestionKey): Answered | null => {
  const { at, answers, unanswered } = questionOf(key);
  const answer = plain(valueAt(job, fromPointer(at) ?? []));
  const who = Object.hasOwn(job.code.saidBy, key) ? job.code.saidBy[key] : undefined;
  if (answer === null || (answer === unanswered && !who)) return null;
  if (answers === 'inches' ? typeof answer !== 'number' : !answers.includes(answer)) return null;
  return { answer, by: who?.by ?? null, on: who?.on ?? null, note: who?.note ?? '' };
};

/** The settings as a finding quotes them, 'key = value (who, when)'; null where none of them is answered. */
export const quoted = (job: Job, ...keys: readonly QuestionKey[]): string | null =>
  keys
    .flatMap((key) => {
      const a = answerOf(job, key);
      if (!a) return [];
      return [`${key} = ${a.answer}${a.by === null ? '' : ` (${a.by}, ${a.on})`}`];
    })
    .join('; ') || null;

/** The question whose answer stands at this place of the job. */
const askedAt = (pointer: string): QuestionKey | undefined =>
  QUESTION_KEYS.find((key) => questionOf(key).at === pointer);

/** A value set by hand is no longer what somebody said: the name behind it is dropped. */
export const withoutName = (job: Job, pointer: string): Job => {
  const key = askedAt(pointer);
  if (!key || !Object.hasOwn(job.code.saidBy, key)) return job;
  const { [key]: _, ...saidBy } = job.code.saidBy;
  return { ...job, code: { ...job.code, saidBy } };
};

/** What the sheet is answered with; `answer` null takes an answer back. */
export interface Answering {
  readonly question: string;
  readonly answer: string | number | null;
  readonly by: string;
  readonly on: string;
  readonly note: string;
}

const fault = (path: string, text: string): Result<never, Fault> =>
  err({ error: { type: 'wrong-type', path, say: text } });

const allowed = ({ answers }: Question, answer: string | number): boolean =>
  answers === 'inches' ? typeof answer === 'number' && answer > 0 : answers.includes(answer);

/** The job with one question answered, who and when beside it. Not checked yet: the caller checks the whole job. */
export const answerQuestion = (job: Job, { question, answer, by, on, note }: Answering): Result<unknown, Fault> => {
  if (!isQuestion(question)) return err({ error: { type: 'no-such-place', path: '/code', say: say.noSuch } });
  const asked = questionOf(question);
  if (answer === null) {
    const { [question]: _, ...saidBy } = job.code.saidBy;
    const { [question]: __, ...amendments } = job.code.amendments;
    const bare = { ...job, code: { ...job.code, saidBy, amendments } };
    return asked.unanswered === null ? ok(bare) : setValue(bare, asked.at, asked.unanswered);
  }
  if (by.trim() === '') return fault(`/code/saidBy/${question}/by`, say.noName);
  if (!allowed(asked, answer)) {
    const answers = asked.answers === 'inches' ? say.someLength : asked.answers.join(', ');
    return fault(asked.at, say.notAnAnswer({ name: say.of[question].name, answers }));
  }
  const saidBy = { ...job.code.saidBy, [question]: { by: by.trim(), on, note: note.trim() } };
  return setValue({ ...job, code: { ...job.code, saidBy } }, asked.at, answer);
};
