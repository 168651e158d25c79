/** What of the work stays in sight when the room is finished. */
export const visibleWords = {
  title: 'Stays visible',
  flush: 'panel door flush with the wall',
  surface: (v: { depth: string; finished: boolean }) =>
    `panel standing ${v.depth} out from ${v.finished ? 'a finished wall' : 'the wall'}`,
  boxes: (v: { count: number }) => `${v.count} splice box cover${v.count === 1 ? '' : 's'}`,
  cans: (v: { count: number }) => `${v.count} old can${v.count === 1 ? '' : 's'} behind a blank cover`,
  cable: (v: { feet: number }) => `${v.feet} ft of cable on boards or in sleeves`,
} as const;
