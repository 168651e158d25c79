/** What the state of the open job has to say by itself. */
export const stateWords = {
  notKept: 'This browser no longer keeps that job. Open its file instead.',
} as const;
