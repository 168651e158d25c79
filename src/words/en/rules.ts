/** Sentences that any rule may say. */
export const rulesWords = {
  inThePlan: () => 'The plan and its price include this.',
  broken: () => 'This check could not be carried out: the program failed in it. All other checks were made.',
  brokenLook: (v: { fault: string }) => `Check this by hand, and report the fault: ${v.fault}`,
  editionUnknown: () => 'The code year in force is not known, and the code years differ on this.',
  editionLook: () => 'Ask the building department which code year is in force.',
  answered: (v: { yes: boolean; by: string; on: string; note: string }) =>
    `${v.yes ? 'Accepted' : 'Refused'} by ${v.by} on ${v.on}${v.note ? `: ${v.note}` : '.'}`,
} as const;
