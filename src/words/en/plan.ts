/** Sentences of the decision. Money arrives as dollars text, lengths as feet and inches. */
export const planWords = {
  noOption: () =>
    'No option can be recommended yet: each one has a finding that stops the job, or a cable without a clear way.',
  noOptionAsked: () => 'This job has no option to plan.',
  onlyOption: (v: { title: string }) => `${v.title}: the only option planned, no conflict found in the checks made.`,
  recommend: (v: { title: string; over: string; saves: string }) =>
    `${v.title}: no conflict found in the checks made, and ${v.saves} less than ${v.over} at the likely price.`,
  recommendSame: (v: { title: string; over: string }) =>
    `${v.title}: no conflict found in the checks made, at the same likely price as ${v.over}.`,
  recommendBarred: (v: { title: string }) =>
    `${v.title}: the only option planned without a finding that stops the job.`,
  missingTitle: 'The price waits for:',
  onlyComplete: (v: { title: string }) =>
    `${v.title}: no conflict found in the checks made, and the only price that is complete; the others cannot be compared with it. See what they wait for.`,
  noneComplete: () => 'No price is complete yet, so none can be called the lowest.',
  lessSoFar: (v: { title: string; over: string; saves: string }) =>
    ` In what is priced so far ${v.title} is ${v.saves} less than ${v.over}, with no conflict found in the checks made. See what each waits for.`,
  sameSoFar: (v: { title: string; over: string }) =>
    ` In what is priced so far ${v.title} and ${v.over} are alike, with no conflict found in the checks made. See what each waits for.`,
  cheaperWithHoles: (v: { title: string }) => ` ${v.title} reads less, but its price is not complete.`,
  incomplete: () => ' Its price is not complete; see what is missing.',
  stops: (v: { title: string; count: number; findings: string }) =>
    `${v.title} is stopped by ${v.count} finding${v.count === 1 ? '' : 's'}. ${v.findings}`,
  price: (v: { title: string; dollars: string }) => `${v.title} is likely to cost ${v.dollars}.`,
  afci: (v: { title: string; count: number }) =>
    `${v.title}: ${v.count} circuit${v.count === 1 ? '' : 's'} gain${v.count === 1 ? 's' : ''} AFCI protection.`,
  splices: (v: { title: string; count: number; boxes: number }) =>
    `${v.title}: ${v.count} conductor${v.count === 1 ? '' : 's'} spliced in ${v.boxes} box${v.boxes === 1 ? '' : 'es'}.`,
  outage: (v: { title: string; hours: number }) => `${v.title}: power off for about ${v.hours} h.`,
  flipMove: (v: { thing: string; option: string }) => `With the ${v.thing} out of the way, ${v.option}.`,
  flipSpliceCan: (v: { answer: string; option: string }) =>
    `If the inspector answers "${v.answer}" on keeping the old can for splices, ${v.option}.`,
  flipAfci: (v: { option: string }) => `If no AFCI is asked for on a panel relocation here, ${v.option}.`,
  flipShift: (v: { title: string; by: string; toward: string; option: string }) =>
    `Were the panel of “${v.title}” ${v.by} farther ${v.toward}, ${v.option}.`,
  flipAfciPrice: (v: { now: string; at: string; option: string }) =>
    `At ${v.at} for an AFCI breaker that is ${v.now} in the price book, the others in step, ${v.option}.`,
  flipOpened: (v: { option: string }) => `With the drywall ceilings down before the crew comes, ${v.option}.`,
  flipClosed: (v: { option: string }) => `With the drywall ceilings hung before the crew comes, ${v.option}.`,
  flipTo: (v: { title: string; dollars: string }) => `${v.title} would be recommended, at ${v.dollars}`,
  flipNone: () => 'no option would be free of stops',
  moved: (v: { thing: string; dollars: string }) => `Move the ${v.thing} (${v.dollars}).`,
  feederBlocked: (v: { by: string }) => `No way for the feeder: ${v.by} in the way.`,
  feederNotDrawn: () =>
    'The feeder is not drawn, so the length of a new one cannot be told and is not in the price. Draw it on the Survey from where it comes into the room to the old panel.',
  feederUnmeasured: (v: { from: string | null }) =>
    `The feeder outside the room is not measured: follow it from ${v.from === null ? 'the meter, where the new disconnect outdoors will stand,' : `its source (${v.from === '' ? 'not named' : v.from})`} to where it comes into the room and measure along its way. Neither that length nor the work there is in the price.`,
  bestPlaces: (v: { clear: number; of: number }) =>
    `Best places (${v.clear} of ${v.of} have no conflict in the checks made):`,
  inTheWay: (v: { thing: string }) => `In the way: ${v.thing}.`,
  unreachable: (v: { cable: string; by: string }) => `No way for ${v.cable}: ${v.by} in the way.`,
  coilTooShort: (v: { cable: string; piece: string; coil: string }) =>
    `No coil of ${v.cable} holds the longest piece, ${v.piece}: the longest there is is ${v.coil}, and none is sold by the foot.`,
  laborHour: 'a labor-hour, at cost',
} as const;
