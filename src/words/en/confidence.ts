/** How sure the advice of a walk-through survey is. */
const things = (count: number): string => `${count} thing${count === 1 ? '' : 's'}`;

export const confidenceWords = {
  open: (v: { tried: number; unknown: number; turning: number }) =>
    `A walk-through survey: of ${things(v.unknown)} not known ${v.tried} were tried each way, and ${v.turning} would change the advice. Find out first:`,
  firm: (v: { tried: number; unknown: number }) =>
    `A walk-through survey: of ${things(v.unknown)} not known ${v.tried} were tried each way one at a time, and none changes the advice.`,
  turns: (v: { what: string; value: string; option: string }) => `${v.what} If it is ${v.value}: ${v.option}.`,
  none: (v: { what: string; value: string }) => `${v.what} If it is ${v.value}: no option would be free of stops.`,
  moves: (v: { what: string; value: string }) => `${v.what} If it is ${v.value}, only the price moves.`,
  yes: 'yes',
  no: 'no',
  otherwise: 'otherwise',
} as const;
