/** What could become of a feeder: each way, whether it does, and why not. */
export const feederChoiceWords = {
  title: 'Feeder: keep, extend or replace',
  colWay: 'Way',
  colDoes: 'For the breaker',
  colPrice: 'Price of it',
  way: { kept: 'Keep', extended: 'Extend', replaced: 'Replace' },
  planned: 'planned',
  notPossible: 'not here',
  noPrice: 'not known',

  kept: () => 'Its conductors reach the new lugs.',
  notKept: () => 'Its conductors do not reach the new lugs.',
  extended: (v: { box: string; feet: string; minimum: boolean }) =>
    `Spliced in a box of ${v.box} where the old panel hangs, ${v.feet} of the same cable led on.${v.minimum ? ' The box is sized by distance, 314.28(A)(2).' : ''}`,
  noConnector: () => ' The price book has no connector for conductors of that size.',
  extendedNoBox: (v: { feet: string }) =>
    `Spliced where the old panel hangs, ${v.feet} of the same cable led on; no box of the catalogue is large enough.`,
  noNeed: () => 'It reaches: there is nothing to extend.',
  fromDisconnect: () => 'The new feeder starts at the new service disconnect: the old one is not its part.',
  notExtended: () => 'The old cable is not known or not drawn, or no clear way leads on from the old panel.',
  replaced: (v: { cable: string; feet: string }) => `${v.feet} of ${v.cable} from where it comes into the room.`,
  replacedOutside: (v: { cable: string; feet: string }) =>
    `${v.feet} of ${v.cable} in the room; the way outside it is not measured and not in a price.`,
  notReplaced: () => 'Nobody drew where it comes into the room, or no clear way leads from there.',
} as const;
