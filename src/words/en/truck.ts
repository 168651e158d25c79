/** Sentences about the truck's stock of cable. */
export const truckWords = {
  title: 'In the truck',
  note: 'Lengths there are cut first: they cost nothing. What is left of 15 ft or more goes back into it.',
  add: 'Another cable',
  choose: 'choose …',
  example: `25', 18' 6"`,
  edit: (v: { cable: string }) => `Change ${v.cable} in the truck`,
  noLength: (v: { found: string }) => `“${v.found}” is no length. Lengths are separated by commas: 25', 18' 6", 140.`,
  takeKept: 'Load what the last job left',
  taken: 'Load the truck from the last job',
  handOn: 'Keep what is left for the next job',
  handedOn: (v: { count: number }) =>
    `${v.count === 1 ? '1 length is' : `${v.count} lengths are`} kept on this machine for the next job.`,
  noRoom: 'This machine has no room for it: note the lengths on the cut list.',
} as const;
