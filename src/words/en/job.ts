/** Sentences about a job file: what was wrong with it, where, and what was repaired. */
export const jobWords = {
  tooLarge: (v: { characters: number; most: number }) =>
    `The file holds ${v.characters} characters; at most ${v.most} are read.`,
  tooDeep: (v: { most: number }) => `Lists and objects are nested more than ${v.most} deep; a job file never is.`,
  tooMany: (v: { most: number }) => `More than ${v.most} entries; a job file never has so many.`,
  syntax: (v: { line: number; column: number; expected: string; found: string }) =>
    `Not JSON: line ${v.line}, column ${v.column}: expected ${v.expected}, found ${v.found}.`,
  endOfFile: 'the end of the file',
  expectedValue: 'a value',
  expectedKey: 'a key in double quotes',
  expectedText: 'a text closed by a double quote, without raw control characters and with valid escapes',
  expectedNumber: 'a number',
  expectedWord: 'true, false or null',
  expectedEnd: 'nothing more',
  expectedMark: (v: { marks: string }) => v.marks,
  notFinite: (v: { text: string }) => `${v.text} is too large to be a number here.`,
  forbiddenKey: (v: { key: string }) => `The key "${v.key}" is not allowed.`,
  duplicateKey: (v: { key: string }) => `The key "${v.key}" is written twice; one of the two values would be lost.`,

  notAnObject: 'Expected a job file: an object with "format": "backboard-job".',
  foreignFormat: (v: { found: string }) => `Expected "format": "backboard-job", found ${v.found}.`,
  newerVersion: (v: { found: number; known: number }) =>
    `The file is schema ${v.found}; this program reads up to schema ${v.known}. Open it with a newer version.`,
  badVersion: (v: { found: string }) => `Expected "schema" to be a whole number from 1 up, found ${v.found}.`,

  missingKey: (v: { key: string; expected: string }) => `The key "${v.key}" is missing; expected ${v.expected}.`,
  unknownKey: (v: { key: string }) => `The key "${v.key}" is not known here.`,
  expected: (v: { expected: string; found: string }) => `Expected ${v.expected}, found ${v.found}.`,
  or: (v: { choices: readonly string[] }) => v.choices.join(' or '),
  aThing: (v: { thing: string }) => v.thing,
  atLeast: (v: { thing: string; limit: number }) => `${v.thing} of at least ${v.limit}`,
  above: (v: { thing: string; limit: number }) => `${v.thing} above ${v.limit}`,
  atMost: (v: { thing: string; limit: number }) => `${v.thing} of at most ${v.limit}`,
  below: (v: { thing: string; limit: number }) => `${v.thing} below ${v.limit}`,
  aText: 'a text',
  aNumber: 'a number',
  aWholeNumber: 'a whole number',
  trueOrFalse: 'true or false',
  aList: 'a list',
  anObject: 'an object',
  nothing: 'null',
  aListOf: (v: { limit: number; least: boolean }) => `a list of ${v.least ? 'at least' : 'at most'} ${v.limit} entries`,
  aTextOf: (v: { limit: number; least: boolean }) =>
    `a text of ${v.least ? 'at least' : 'at most'} ${v.limit} characters`,
  aShortKey: 'a key of at most 80 characters',

  duplicateId: (v: { id: string; first: string }) => `The id "${v.id}" is already used at ${v.first}.`,
  dangling: (v: { id: string; what: string }) => `There is no ${v.what} with the id "${v.id}".`,
  listedTwice: (v: { id: string }) => `"${v.id}" is listed twice.`,
  partnerSelf: (v: { id: string }) => `The circuit "${v.id}" cannot be its own partner.`,
  partnerNotMutual: (v: { id: string; partner: string }) =>
    `Circuit "${v.id}" names "${v.partner}" as partner, but "${v.partner}" does not name "${v.id}".`,
  noBackFace: (v: { wall: string }) =>
    `Wall "${v.wall}" belongs to the room's outline: its back is earth or outdoors and nothing hangs there.`,
  what: {
    wall: 'wall',
    circuit: 'circuit',
    group: 'cable group',
    homeRun: 'home run',
    enclosure: 'panel',
    obstacle: 'obstacle',
    photo: 'photo',
  },

  notClockwise: 'The corners of the room must run clockwise seen from above; these run the other way round.',
  crossesItself: 'This outline touches or crosses itself.',
  zeroWall: 'This wall has no length: its two ends are the same place.',
  zeroEdge: 'Two neighboring corners are the same place.',
  noArea: 'This outline encloses no area.',
  shortRun: 'An existing run needs at least two different points.',
  backwardInterval: (v: { from: number; to: number }) => `The interval runs backward: from ${v.from} in to ${v.to} in.`,
  backwardRange: (v: { low: number; likely: number; high: number }) =>
    `Low, likely and high must not fall: found ${v.low}, ${v.likely}, ${v.high}.`,
  beyondWall: (v: { left: number; right: number; length: number }) =>
    `It reaches from ${v.left} in to ${v.right} in along a wall face that is ${v.length} in long.`,

  noSuchPlace: 'There is nothing at this place of the job.',
  aRecord: 'a record with an id',
  option: 'option',
  edits: {
    setValue: (v: { key: string }) => `Change ${v.key}`,
    addRecord: (v: { list: string }) => `Add to ${v.list}`,
    removeRecord: (v: { list: string; id: string }) => `Remove ${v.id} from ${v.list}`,
    movePanel: (v: { option: string }) => `Move the panel of ${v.option}`,
    moveCorner: (v: { wall: string }) => `Move the corner of ${v.wall}`,
    moveWall: (v: { wall: string }) => `Move wall ${v.wall}`,
    addOption: (v: { title: string }) => `Add option ${v.title}`,
    copyOption: (v: { title: string }) => `Copy to option ${v.title}`,
    rename: (v: { title: string }) => `Rename to ${v.title}`,
  },

  rounded: (v: { path: string; from: number; to: number }) =>
    `${v.path}: ${v.from} in was rounded to ${v.to} in (1/64 in).`,
  filled: (v: { path: string; value: string }) => `${v.path}: was missing in this older file; filled with ${v.value}.`,
  upgraded: (v: { from: number; to: number }) => `The file was brought from schema ${v.from} to schema ${v.to}.`,
} as const;
