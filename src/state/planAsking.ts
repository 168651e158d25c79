import type { StoreApi } from 'zustand/vanilla';
import { withoutPictures } from '../job/pictures';
import type { Job } from '../job/schema';
import { AnswerShelf } from './answers';
import type { JobState } from './jobState';
import type { Ports } from './ports';

/** Answers kept for undo and redo; a plan of 66 circuits is below 2 MB. */
const MOST_ANSWERS = 16;

/** Asks the planner about a state of the job, and takes what it says as long as that state is the one shown. */
export const makePlanAsking = (store: StoreApi<JobState>, planner: Ports['planner']) => {
  const answers = new AnswerShelf(MOST_ANSWERS);
  const isNow = (revision: number): boolean => store.getState().revision === revision;

  return async (job: Job, revision: number): Promise<void> => {
    const known = answers.get(revision);
    if (known) {
      store.setState({ answer: known, planning: { phase: 'done' } });
      return;
    }
    store.setState({ planning: { phase: 'working', done: 0, of: job.options.length + 1 } });
    const reply = await planner.plan(
      { revision, job: withoutPictures(job) },
      ({ revision: of, done, of: steps, plan }) => {
        if (!isNow(of)) return;
        const before = store.getState().answer;
        // the first step again: a lost worker was replaced and began anew
        const plans = before?.revision === of && done > 1 ? before.plans : [];
        store.setState({
          answer: { revision: of, plans: [...plans, plan], result: null },
          planning: { phase: 'working', done, of: steps },
        });
        if (store.getState().live?.option === plan.option) store.setState({ live: null }); // dropped, and final now
      },
    );
    if (reply.kind === 'planned')
      answers.keep({ revision: reply.revision, plans: reply.result.plans, result: reply.result });
    if (reply.kind === 'dropped' || !isNow(reply.revision)) return;
    if (reply.kind === 'failed') store.setState({ planning: { phase: 'failed', say: reply.say } });
    else store.setState({ answer: answers.get(reply.revision) ?? null, planning: { phase: 'done' } });
  };
};
