/** Cautions that stand where they matter, in our own words, with the duty behind each. */
export const cautionWords = {
  title: 'Cautions for this job',
  practice: 'common practice, no source',
  coverOff:
    'Reading tails, lugs and the bond means cover off: energized work for a qualified person, unless it is dead and proved dead. An arc flash can happen in a house too, though no label is asked for there.',
  dead: 'Dead before work, locked out upstream, proved dead with a tester tried before and after.',
  lineLive: 'Line-side conductors and lugs stay live with the main off until the utility opens the service.',
  lineMayBeLive:
    'Whether this is service equipment is not known: take line-side conductors as live until the utility opens the service.',
  backfeed: (v: { kinds: string }) => `Can feed back while the main is off: ${v.kinds}. Lock it out too.`,
  backfeedUnknown:
    'Whether there is solar, a battery or a generator is not known: look before anything is taken as dead.',
  permit: 'Permit and inspection first; licensed work; who pulls the meter is settled with the utility.',
  lead: (v: { year: number | null; before: number; area: number }) =>
    `${v.year === null ? 'Year built not known' : `Built ${v.year}`}: paint from before ${v.before} may hold lead; where more than ${v.area} sq ft of it in a room is disturbed, the lead-safe rule applies.`,
  asbestos: (v: { year: number | null }) =>
    `${v.year === null ? 'Year built not known' : `Built ${v.year}`}: backer boards, duct wrap and tape may hold asbestos. Test; do not drill.`,
  oldCable: (v: { cables: string }) => `Stop and assess before touching: ${v.cables}.`,
  engineered: (v: { kinds: string }) => `Not cut or bored without the maker’s chart or an engineer: ${v.kinds}.`,
  unknownJoists:
    'What kind the joists are is not known: an I-joist or truss is not cut or bored without the maker’s chart.',
  sump: 'A sump is in the room: it waits for its power, and its pit shows how high the water comes. Keep the panel above that line.',
  alarms: (v: { by: string; on: string }) =>
    `The permit asks for smoke and carbon monoxide alarms to be brought up to date (${v.by}, ${v.on}); the price does not have them.`,
  alarmsUnnamed:
    'The permit asks for smoke and carbon monoxide alarms to be brought up to date; the price does not have them.',
  alarmsAsk:
    'Ask whether the permit wants smoke and carbon monoxide alarms brought up to date; the price does not have them.',
  anotherSource: 'another source of power',
  aluminum: 'aluminum branch wiring',
  knobTube: 'knob-and-tube wiring',
  condition: (v: { condition: string }) => `${v.condition} cable`,
} as const;
