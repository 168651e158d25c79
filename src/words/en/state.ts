/** What the state of the open job has to say by itself. */
export const stateWords = {
  keptJob: 'The kept job',
  wouldBeLost: 'This browser could not keep the job that is open. Save its file first, then open the other.',
  notKept: 'This browser no longer keeps that job. Open its file instead.',
} as const;
