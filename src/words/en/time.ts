/** Sentences about crew, outage and inspections. */
export const timeWords = {
  overADay: (v: { hours: number; day: number }) =>
    `The house is dark for ${v.hours} h and a working day has ${v.day}: more people, circuits rolled over, or temporary power overnight.`,
  mayPass: (v: { hours: number }) =>
    `The outage may take ${v.hours} h, longer than from the first to the last hour of the day: start it early and keep temporary power at hand.`,
  rolled:
    'Rolled over: the house is dark while the new panel is fed; then each circuit that is cut upstream is moved alone, dead at its own breaker, and those drawn out of the old panel follow together.',
  noRollOver: {
    'old place': 'Not rolled over: the new panel takes the old one’s place, so both cannot be live.',
    'feeder kept': 'Not rolled over: the feeder that is kept can feed only one panel at a time.',
    'no space': 'Not rolled over: the source has no space for a second feeder breaker.',
    'space unknown': 'Not rolled over: whether the source has a space for a second feeder breaker is not known.',
  },
  holds: {
    permit: 'Permit in hand before anything is opened.',
    roughIn: 'Rough-in seen before splice boxes are closed.',
    beforeDrywall: 'Rough-in seen before splice boxes and drywall are closed.',
    release: 'The utility restores power only when the inspector has released it.',
    final: 'Final inspection, cover on, directory in the door, before the last payment.',
  },
} as const;
