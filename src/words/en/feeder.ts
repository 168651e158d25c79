/** Sentences about the feeder on the screens. */
export const feederWords = {
  title: 'Feeder',
  way: { kept: 'kept', extended: 'extended', replaced: 'replaced' },
  cut: 'Cut',
  of: (v: { cable: string }) => `of ${v.cable}`,
  withOutside: 'outside the room:',
  untold: 'How long it is cannot be told.',
  partUntold: 'The way outside the room is not measured and not in it.',
  /** How the length outside the room is measured. */
  howTo:
    'Outside the room: follow the feeder from its source (at a service: from the meter) to where it comes into the room, and measure along its way, up and down as well. Measure to the cabinet there; what is left in both panels is added. 0 where it comes straight through the wall.',
  inRoom: 'Drawn in the room:',
  options: 'What becomes of it',
} as const;
