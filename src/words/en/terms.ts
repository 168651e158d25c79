/**
 * Trade words where they are met: how they are found in a text, and what they mean for this kind of job, in our own
 * words. Not definitions of a code book.
 */
interface TermWords {
  /** As met in running text, a regular expression; the longest match at a place wins. */
  readonly met: string;
  readonly name: string;
  readonly say: string;
}
const term = (met: string, name: string, say: string): TermWords => ({ met, name, say });

export const TERMS = {
  subpanel: term(
    'subpanels?|distribution panels?',
    'Subpanel',
    'A panel fed by a feeder from the service panel, not by the utility. Its neutrals and grounds stay apart.',
  ),
  service: term(
    'service equipment|service panels?',
    'Service equipment',
    'Where the utility’s wires end and the house’s main disconnect is. Its line side stays live with the main off.',
  ),
  feeder: term('feeders?', 'Feeder', 'The cable that feeds a subpanel from the panel before it.'),
  homeRun: term(
    'home runs?',
    'Home run',
    'The cable of a circuit between the panel and the first box it serves. It is what must reach the new panel.',
  ),
  cutIn: term(
    'cut-ins?|cut in',
    'Cut-in',
    'The old cable is cut on its way, a box is set there, and new cable goes on from the box to the new panel.',
  ),
  spliceCan: term(
    'splice cans?|old can, splices',
    'Splice can',
    'The emptied old panel, kept as a box in which old cables are joined to new ones. Some inspectors do not take it.',
  ),
  reuse: term(
    'reuse',
    'Reuse',
    'The old cable is drawn back, lies along the new way, and is long enough to enter the new panel as it is.',
  ),
  splice: term(
    'splices?|spliced',
    'Splice',
    'A joint of conductors. It must stay in a box that can be reached without damage to the building.',
  ),
  afci: term(
    'AFCIs?',
    'AFCI',
    'Arc-fault protection: a breaker that opens on arcing in worn or nicked wiring. Extending an old circuit can bring it along.',
  ),
  gfci: term(
    'GFCIs?',
    'GFCI',
    'Ground-fault protection: opens when current leaks to ground, as through a person. Asked for at water and outdoors.',
  ),
  egc: term(
    'EGCs?|equipment grounding conductors?',
    'EGC',
    'Equipment grounding conductor: the bare or green wire that carries fault current back so that the breaker opens.',
  ),
  workingSpace: term(
    'working space',
    'Working space',
    'Room in front of a panel that is kept clear for whoever works on it: width, depth and height are each set.',
  ),
  dedicatedSpace: term(
    'dedicated space',
    'Dedicated space',
    'The space above and below a panel, as wide and deep as it is, kept free of pipes, ducts and other foreign things.',
  ),
  aff: term('AFF', 'AFF', 'Above finished floor: heights count from the floor as it will be.'),
  can: term('(?:^|(?<=\\s))[Cc]an(?=$|\\s×)', 'Can', 'The metal box of a panel, without its cover and its breakers.'),
  spaces: term('spaces', 'Spaces', 'Places for breakers: a one-pole breaker takes one, a two-pole breaker two.'),
  lugs: term(
    'lugs|terminals?',
    'Terminal',
    'Where a conductor is clamped. Its marking, 60 or 75 °C, sets how much current the wire may carry.',
  ),
  knockout: term('knockouts?', 'Knockout', 'A part of the can punched nearly through, taken out where a cable enters.'),
  jacketPrint: term(
    'jacket print|jacket',
    'Jacket',
    'The outer sheath of a cable. Its print tells kind, wire size, number of conductors and often the year.',
  ),
  spd: term(
    'surge protectors?|surge devices?|SPDs?',
    'Surge protector',
    'A device at the panel that takes voltage peaks from lightning and switching. Newer code years ask for one.',
  ),
  multiwire: term(
    'multiwire|shared neutrals?',
    'Multiwire circuit',
    'Two hots of different legs share one neutral. Both must open together, and both land on legs A and B.',
  ),
  cover: term(
    '[Cc]over off',
    'Cover off',
    'The panel’s cover is taken off to look inside: energized work unless proved dead.',
  ),
  disconnect: term('disconnects?', 'Disconnect', 'The switch or breaker that turns a panel or the whole house off.'),
  runningBoard: term(
    'running boards?',
    'Running board',
    'A board across the joists that small cables are stapled to, so that nothing hangs on them.',
  ),
  layIn: term(
    'lay-in(?: ceilings?)?',
    'Lay-in ceiling',
    'Tiles in a hung grid that can be lifted out; what is above can be reached.',
  ),
  staple: term(
    'last staple|staples?',
    'Staple',
    'What holds a cable to wood. Up to the last one left in place a cable can be drawn back.',
  ),
  outage: term('[Oo]utage', 'Outage', 'Hours the house, or a circuit, is without power.'),
  nec: term(
    'NEC \\d{4}|code year',
    'Code year',
    'The edition of the electrical code that the place has adopted. They differ on what a panel job brings along.',
  ),
} as const satisfies Readonly<Record<string, TermWords>>;
export type TermKey = keyof typeof TERMS;
