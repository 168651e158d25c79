/** One question as it is put to the inspector. */
interface QuestionText {
  /** A name short enough for a list and for the undo list. */
  readonly name: string;
  /** The whole question. */
  readonly ask: string;
  /** Where practice is split, or what the text says: why it is asked at all. */
  readonly why: string;
  readonly answers: Readonly<Record<string, string>>;
}

const YES_NO = { yes: 'yes', no: 'no' } as const;

/** The inspector's question sheet, in our own words. */
export const questionWords = {
  title: 'Questions for the inspector',
  lead: 'Asked once before the bid, of the building department. What is answered here changes the findings, and each finding it changes says so. What is not answered stays as the code year has it, or is left to verify.',
  question: 'Question',
  print: 'Print the sheet',
  by: 'Answered by',
  on: 'On',
  note: 'Note',
  notAnswered: 'not answered',
  answer: 'Answer',
  answered: (v: { count: number; of: number }) => `${v.count} of ${v.of} answered`,
  open: 'Questions for the inspector',
  saidBy: (v: { by: string; on: string }) => `${v.by}, ${v.on}`,
  nobody: 'set without a name',
  whoMissing: 'Write down who answered: the name stands behind every answer. The answer waits until then.',
  waits: (v: { count: number }) =>
    v.count === 1 ? 'One open finding turns on it.' : `${v.count} open findings turn on it.`,
  changes: (v: { count: number }) =>
    v.count === 1 ? 'One finding quotes the answer.' : `${v.count} findings quote the answer.`,
  notInThisYear: 'The code year in force does not ask for it.',
  inches: 'inches',
  notInches: (v: { typed: string }) => `“${v.typed}” is not a number of inches. Kept as typed.`,
  undo: (v: { name: string }) => `Inspector’s answer: ${v.name}`,
  undoTakeBack: (v: { name: string }) => `Take back the inspector’s answer: ${v.name}`,
  notAnAnswer: (v: { name: string; answers: string }) => `“${v.name}” is answered with ${v.answers}.`,
  someLength: 'a length above nothing, in inches',
  noSuch: 'There is no such question on the sheet.',
  noName: 'An answer needs the name of who gave it.',
  blank: { answer: 'Answer', by: 'Who', on: 'Date' },
  of: {
    edition: {
      name: 'Code year',
      ask: 'Which NEC edition is in force for this permit, and since when?',
      why: 'States and cities are years apart; the program does not guess from the address.',
      answers: { 2017: 'NEC 2017', 2020: 'NEC 2020', 2023: 'NEC 2023', 2026: 'NEC 2026' },
    },
    afciOnPanelReplacement: {
      name: 'Arc-fault protection when a panel is replaced',
      ask: 'Does a replaced or relocated panel bring arc-fault protection to existing circuits?',
      why: 'Practice is split: by the text only an extension of more than 6 ft or an added outlet does; some inspectors ask for it on every panel job, and some states ask for none.',
      answers: { 'as NEC': 'as the code year has it', none: 'not asked for' },
    },
    afciCountsTails: {
      name: 'Tails in box and panel count in the 6 ft',
      ask: 'Is conductor inside the splice box and inside the panel counted in the 6 ft?',
      why: 'Left out by the text since 2020; the 2017 text is silent and some inspectors count it.',
      answers: YES_NO,
    },
    racewayCountsIn6ft: {
      name: 'Raceway counts in the 6 ft',
      ask: 'Is conductor inside conduit, a nipple or a wireway counted in the 6 ft?',
      why: 'The text leaves out enclosures, cabinets and junction boxes only, so raceway is counted unless the inspector says otherwise.',
      answers: YES_NO,
    },
    afciShortened: {
      name: 'A circuit only shortened needs arc-fault protection',
      ask: 'A cable is only drawn back and cut shorter: does that bring arc-fault protection?',
      why: 'Practice is split: “modified” by the word, seldom asked for.',
      answers: YES_NO,
    },
    afciShortNewRun: {
      name: 'A new home run of not more than 6 ft needs arc-fault protection',
      ask: 'A home run of not more than 6 ft is replaced by a new one: does that bring arc-fault protection?',
      why: 'Practice is split: the 6 ft are spoken of an extension, not of a replacement; the strict reading asks for it at any length.',
      answers: YES_NO,
    },
    spliceCan: {
      name: 'Old can kept for splices',
      ask: 'May the old panel, emptied and with a full cover, stay as a splice can?',
      why: 'Practice is split: read as a cabinet by some and as a box by others; some refuse it.',
      answers: { ...YES_NO, ask: 'ask each time' },
    },
    bundling: {
      name: 'Cables together',
      ask: 'Does a short bored or sealed hole with more than two cables count as bundled, or only a stretch over 24 in?',
      why: 'Practice is split: since 2008 the text knows no shortest length for a sealed hole; some still use the 24 in.',
      answers: { strict: 'counts at any length', 'over 24 in only': 'only over 24 in' },
    },
    spdInsideHouse: {
      name: 'Surge protection',
      ask: 'Is a surge protective device asked for with this panel inside a one-family house?',
      why: 'Practice is split: the feeder rule of 2023 was written with apartments in mind, but its words fit a subpanel in a house; some states did not adopt the service rule.',
      answers: { yes: 'asked for', no: 'not asked for' },
    },
    emergencyDisconnect: {
      name: 'Emergency disconnect outdoors',
      ask: 'Does replacing service equipment bring an emergency disconnect outdoors?',
      why: 'Practice is split under 2020, whose text does not speak of replacement; some states did not adopt it or ask only when the service grows or moves.',
      answers: { yes: 'asked for', no: 'not asked for' },
    },
    headroomInNewSpot: {
      name: 'Low headroom in a new place of an existing house',
      ask: 'Does the headroom exception for existing dwellings (not over 200 A) hold for a panel in a new spot?',
      why: 'Practice is split: the words say existing dwelling; some inspectors read existing location.',
      answers: YES_NO,
    },
    likeForLike: {
      name: 'Panel replaced where it hangs in a closet, a bathroom or over stairs',
      ask: 'May a panel in a clothes closet, a bathroom or over stairs be replaced in its place, like for like?',
      why: 'Practice is split: new equipment is generally held to today’s place; some departments allow like for like.',
      answers: YES_NO,
    },
    handleMaxIn: {
      name: 'Highest handle, inches',
      ask: 'What is the greatest height of the highest breaker handle here?',
      why: '79 in (6 ft 7 in) by the text; some still use 78 in.',
      answers: {},
    },
    nmAllowed: {
      name: 'Nonmetallic cable',
      ask: 'Is nonmetallic-sheathed cable allowed for new wiring in this house?',
      why: 'The code allows it in a dry one-family dwelling; some cities allow metal-clad cable or conduit only.',
      answers: { yes: 'allowed', no: 'not allowed' },
    },
    smokeAlarms: {
      name: 'Smoke and carbon monoxide alarms',
      ask: 'Does this permit ask that smoke and carbon monoxide alarms be brought up to date?',
      why: 'Often asked for with a permit (IRC R314, R315; local; one source). The price does not have them.',
      answers: YES_NO,
    },
  } satisfies Record<string, QuestionText>,
} as const;

/** An answer in words: '2023' of the code year, 'none' of arc-fault protection; a number is inches. */
export const answerSays = (question: keyof typeof questionWords.of, answer: string | number): string => {
  const answers: Readonly<Record<string, string>> = questionWords.of[question].answers;
  return answers[String(answer)] ?? (typeof answer === 'number' ? `${answer} in` : String(answer));
};

/** What a finding quotes, 'spliceCan = yes (name, date)', with the question by its name. */
export const quotedSays = (quoted: string): string =>
  quoted
    .split('; ')
    .map((part) => {
      const [, key, value, rest] = /^(\w+) = (.*?)( \(.*\))?$/.exec(part) ?? [];
      if (key === undefined || value === undefined || !Object.hasOwn(questionWords.of, key)) return part;
      const question = key as keyof typeof questionWords.of;
      return `${questionWords.of[question].name}: ${answerSays(question, value)}${rest ?? ''}`;
    })
    .join('; ');
