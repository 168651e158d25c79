import type { RuleId } from './sections';

/** Rules that no check covers, each with the reason: none is passed in silence. */
export const NOT_COVERED: readonly { readonly rule: RuleId; readonly why: string }[] = [
  { rule: 'AFCI-RECP', why: 'The job file does not say which receptacles the crew replaces.' },
  { rule: 'GFCI-RECP', why: 'The job file does not say which receptacles the crew replaces.' },
  { rule: 'GFCI-OUT', why: 'A panel job alone does not bring it; protection that is there is kept by CARRY-OVER.' },
  { rule: 'SVC-SIX', why: 'Not yet: the survey does not count the disconnects of an old service panel.' },
  { rule: 'BACKFED', why: 'Not yet: the survey does not say whether a main breaker is plugged in back-fed.' },
  { rule: 'GUTS', why: 'The program never plans new guts in an old cabinet.' },
  { rule: 'WS-LIMITED', why: 'Panels in crawl spaces and above ceilings are not planned.' },
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
  {
    rule: 'SVC-COND',
    why: 'Not yet: the feeder checks do not look at service-entrance conductors; their ampacity is not compared with the service overcurrent device, even where the survey names the cable.',
  },
  {
    rule: 'FDR-TAP',
    why: 'Not yet: a feeder smaller than its upstream device is judged by FDR-SIZE, without the tap rules.',
  },
  { rule: 'FDR-N', why: 'Not yet: the neutral is taken as large as the hots and not reduced.' },
];
