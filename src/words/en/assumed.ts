/** What a price takes for granted where the survey is silent; after the sentence that says what is not known. */
export const assumedWords = {
  title: 'Taken for granted in the price',
  note: 'In the price as said. Settle these first: what turns out otherwise changes it.',
  afci: (v: { circuits: readonly string[] }) =>
    `Whether AFCI comes with ${v.circuits.length > 3 ? `${v.circuits.length} circuits` : v.circuits.join(', ')} cannot be told: priced as if it does.`,
  protection: () => 'Priced as having none.',
  occupied: () => 'Priced as lived in.',
  yearBuilt: () => 'Priced as an old house.',
  sizes: (v: { things: readonly string[] }) =>
    `Not measured, but taken at an ordinary size: ${v.things.length > 3 ? `${v.things.slice(0, 3).join(', ')} and ${v.things.length - 3} more` : v.things.join(', ')}.`,
  feederOutside: () =>
    'The feeder outside the room is priced by its length: no hole, opening or tubing on its way there is in the price.',
} as const;
