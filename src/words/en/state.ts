/** What the state of the open job has to say by itself. */
export const stateWords = {
  keptJob: 'The kept job',
  keptJobs: 'The list of jobs',
  copyOf: (v: { title: string }) => `Copy of ${v.title}`,
  goBack: (v: { name: string | null; at: string }) =>
    v.name === null ? `go back to ${v.at.slice(0, 16).replace('T', ' ')}` : `go back to “${v.name}”`,
  wouldBeLost: 'This browser could not keep the job that is open. Save its file first, then open the other.',
  notKept: 'This browser no longer keeps that job. Open its file instead.',
} as const;
