/** Small changes to a panel that stays in place. Lengths arrive as feet and inches, money as dollars text. */
export const refineWords = {
  title: 'Refine in place',
  how: 'What an electrician tries before cutting a cable: each planned quickly.',
  find: 'Look for what saves cables',
  looking: 'Looking …',
  none: 'Nothing near saves a cable or costs less.',
  failed: (v: { say: string }) => `This could not be finished: ${v.say}`,
  is: {
    'flush tops': 'Tops flush',
    shift: 'Shifted along the wall',
    'upside down': 'Upside down',
    'other face': 'Other face of the wall',
    'next bay': 'Next stud bay',
  },
  saves: (v: { count: number }) =>
    v.count === 0
      ? 'saves no cable'
      : v.count > 0
        ? `saves ${v.count} cable${v.count === 1 ? '' : 's'} a joint`
        : `${-v.count} more cable${v.count === -1 ? '' : 's'} joined`,
  at: (v: { left: string; bottom: string }) => `${v.left} from the left end, bottom ${v.bottom}`,
  take: 'Hang it there',
} as const;
