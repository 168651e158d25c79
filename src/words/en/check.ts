/** The sheet on which findings are looked at one by one, confirmed on site, and the code year is set. */
export const checkWords = {
  countsTitle: 'Findings by what they do',
  effectShort: { 'stops the job': 'stops', 'extra work': 'extra work', 'verify in field': 'verify', note: 'notes' },
  drawingName: (v: { option: string }) => `Where the finding is, ${v.option}`,
  drawingAlt: (v: { option: string }) =>
    `The room from above with the work of ${v.option}; the finding chosen is framed. It is told in full beside.`,
  drawingTitle: 'Where it is',
  noDrawing: 'It has no place of its own in the drawing.',
  detailTitle: 'The finding',
  nothing: 'Nothing is open. No conflict found in the checks made.',
  next: 'Next',
  previous: 'Previous',
  of: (v: { number: number; count: number }) => `${v.number} of ${v.count}`,
  outcome: { holds: 'holds', fails: 'fails', 'cannot be told': 'cannot be told' },
  sectionsTitle: 'Section by code year',
  inForce: 'in force here',
  notAsked: 'not asked for',
  standing: { confirmed: 'confirmed', 'one source': 'one source', memory: 'from memory', unverified: 'unverified' },
  curesTitle: 'What would satisfy it',
  lookTitle: 'On site',

  // confirming
  confirmTitle: 'Looked at on site',
  confirmWhy: 'Settles what the program cannot tell. A finding that fails is settled by correcting the measure.',
  answer: 'It',
  yes: 'holds, or is accepted',
  no: 'does not hold',
  by: 'Who',
  on: 'When',
  note: 'Note',
  record: 'Record it',
  recorded: 'Recorded on site',
  noneRecorded: 'Nothing has been recorded yet.',
  whoMissing: 'Write down who looked: the name stands behind the answer.',
  recordSays: (v: { subject: string; answer: string; by: string; on: string }) =>
    `${v.subject}: ${v.answer}, ${v.by}, ${v.on}`,
  takeBack: 'Take it back',

  // settings
  settingsTitle: 'Code year and local rules',
  edition: 'Code year',
  editionUnknown: 'not known',
  nec: (v: { edition: number }) => `NEC ${v.edition}`,
  place: 'Place',
  parts: { findings: 'Findings', questions: 'Questions', coverage: 'Coverage' },
} as const;
