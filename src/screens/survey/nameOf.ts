import type { Job } from '../../job/schema';
import { nameWords } from '../../words/en/names';
import { surveyWords as say } from '../../words/en/survey';
import { type Ref, recordsOf } from './ref';

const KINDS: Readonly<Record<string, string>> = say.one;

/** What a thing of the survey is called here: the surveyor's own name for it, hyphens as spaces. */
export const nameOf = (ref: Ref): string =>
  ref.list === '' ? say.parts[ref.id as keyof typeof say.parts] : nameWords.spoken(ref.id);

/** What sort of thing it is; nothing where its name says so already. */
export const kindOf = (job: Job, ref: Ref): string => {
  const record = recordsOf(job, ref.list).find((r) => r.id === ref.id);
  const own = record && 'kind' in record && typeof record.kind === 'string' ? record.kind : undefined;
  const kind =
    (ref.list === '/site/obstacles' || ref.list === '/house/loads' ? own : undefined) ?? KINDS[ref.list] ?? '';
  return nameOf(ref).startsWith(kind) ? '' : kind;
};
