import type { RuleId } from './sections';

/** Rules that no check covers, each with the reason: none is passed in silence. */
export const NOT_COVERED: readonly { readonly rule: RuleId; readonly why: string }[] = [
  { rule: 'GUTS', why: 'The program never plans new guts in an old cabinet.' },
  { rule: 'BIG-BOX', why: 'Not yet: splices of 4 AWG and larger are not laid out; BOX-FILL says when one is met.' },
  { rule: 'WIRE-BEND', why: 'Not yet: bending space depends on the cabinet of the maker chosen.' },
  {
    rule: 'SURFACE',
    why: 'Wall drops are laid only in sleeves, on boards or in stud bays, so there is nothing to find.',
  },
  {
    rule: 'NM-PAR',
    why: 'Not yet: the distance of each cable from the nail edge along its joist is not in the result.',
  },
  { rule: 'TEN-PERCENT', why: 'Not yet: the length of each whole circuit is seldom known; the exception is not used.' },
  { rule: 'WIREWAY', why: 'Not yet: wireways are not laid out.' },
];
