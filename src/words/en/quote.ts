/** Sentences about how a price is offered. */
export const quoteWords = {
  as: {
    fixed: 'A fixed sum for the work listed; what turns up beyond it is charged at the unit prices.',
    range: 'A range; the fixed sum follows when what is open has been answered.',
    'time and material': 'Hours and material as they come, at the rates given; the range says what to expect.',
  },
  walkThrough: 'Offered as a range: a walk-through survey, cover on, carries no fixed sum.',
  incomplete: 'Offered as a range: a price with something missing carries no fixed sum.',
} as const;
