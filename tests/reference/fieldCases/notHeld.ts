/** Cases whose expected facts the program does not answer, and why. */
export const NOT_HELD: Readonly<Record<string, string>> = {
  'FC-08': 'fillers of a kept trim are not counted: a kept can is priced with a full cover',
  'FC-15': 'splices by position are searched, but the case gives no cable paths to search with',
  'FC-30': 'the cost is the price of its day; ours comes from the price book',
  'FC-40': 'a panel in a cavity behind a door of its own is not in the job file',
  'FC-59': 'brittle cable is not cut back for reuse: it is replaced to the next box',
  'FC-67': 'a feeder is kept or replaced in one piece; lengthening it in boxes is not planned',
  'FC-68': 'a feeder is kept or replaced in one piece; lengthening it in boxes is not planned',
  'FC-69': 'service and feeder conductors are not spliced inside the new panel by any plan',
  'FC-75': 'work in two shutdowns is not planned: the outage is counted all at once',
  'FC-79': 'cables that pass through a stud bay without ending in the panel are not in the job file',
  'FC-83': 'prices of a magazine; ours come from the price book',
  'FC-87': 'roll-over cut-over with a temporary feed is not planned: the outage is counted all at once',
  'FC-89': 'loops for a wall that comes later are the crew’s practice; the job file has no such allowance of its own',
  'FC-90': 'a subpanel beside a kept main panel is not one of the options',
  'FC-92': 'days gained by surprises are a story, not a calculation',
  'FC-93': 'the job file has no flood line',
};

/** Facts of held cases that the program does not answer. */
export const FACTS_NOT_HELD: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'FC-01': {
    circuits_needing_splice: 'a rule of thumb: the case gives no cable paths',
    boxes_if_max_2_per_box: 'the program packs by volume, not two by two',
  },
  'FC-02': { pipes_with_reserve: 'one to spare is a choice' },
  'FC-03': { fits: 'a box is not fitted into a niche' },
  'FC-04': { cable_entries: 'entries of a splice box are bought one by one, not laid around it' },
  'FC-09': { hatches_if_not_moved: 'a box is never planned behind drywall, so hatches are only offered as a remedy' },
  'FC-11': { cable_ft_range: 'rounded by hand with spare; sixteen cuts by the program’s own practice give 328 ft' },
  'FC-18': { fill_needed: 'fill counts conductors, not whole cables' },
  'FC-37': { risk: 'a judgement' },
  'FC-51': { extra_length_in: 'moving a panel forward without moving its wall is not in the job file' },
  'FC-52': {
    sideways_us: 'a panel hung sideways is not in the job file',
    sideways_ca: 'not a code year of NFPA 70',
  },
  'FC-82': { swap: 'prices of a forum; ours come from the price book', move: 'prices of a forum' },
};
