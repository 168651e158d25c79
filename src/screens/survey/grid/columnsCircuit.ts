import type { Circuit } from '../../../job/schema';
import { USES, type Use } from '../../../standards/uses';
import { err, ok } from '../../../units/result';
import type { U } from '../../../units/types';
import { gridWords as say } from '../../../words/en/grid';
import { type Column, circuitColumn } from './column';
import {
  orNotKnown,
  type Read,
  readAmount,
  readAmps,
  readChoice,
  readText,
  readWords,
  readYesNo,
  saysNotKnown,
} from './read';

export const showKnown = (value: U<string | number | boolean>): string => {
  if (value === 'unknown') return say.notKnown;
  return typeof value === 'boolean' ? (value ? say.yes : say.no) : String(value);
};
export const showWords = (words: readonly string[]): string => (words.length === 0 ? say.none : words.join(', '));
export const YES_NO = [say.yes, say.no, say.notKnown];

const POLES: Readonly<Record<string, 1 | 2>> = {
  '1p': 1,
  '1-p': 1,
  '1 pole': 1,
  '1-pole': 1,
  'one-pole': 1,
  single: 1,
  '2p': 2,
  '2-p': 2,
  '2 pole': 2,
  '2-pole': 2,
  'two-pole': 2,
  double: 2,
};
const readPoles = (text: string): Read<1 | 2> =>
  saysNotKnown(text) ? err(say.polesNeeded) : readChoice([1, 2] as const, POLES)(text);

const PROTECTIONS = ['none', 'AFCI', 'GFCI', 'AFCI and GFCI'] as const satisfies readonly Circuit['protection'][];
const ALSO_PROTECTION: Readonly<Record<string, Circuit['protection']>> = {
  no: 'none',
  plain: 'none',
  dual: 'AFCI and GFCI',
  'dual-function': 'AFCI and GFCI',
  'dual function': 'AFCI and GFCI',
  both: 'AFCI and GFCI',
  'afci/gfci': 'AFCI and GFCI',
  'afci+gfci': 'AFCI and GFCI',
  'afci + gfci': 'AFCI and GFCI',
  'gfci and afci': 'AFCI and GFCI',
};

/** One room by its use; an s too many is no fault. */
const roomOf = (word: string): Use | undefined => {
  const small = word.toLowerCase();
  return USES.find((use) => use === small || `${use}s` === small || (small === 'bathroom' && use === 'bath'));
};
const readRooms = (text: string): Read<U<Use[]>> => {
  if (saysNotKnown(text)) return ok('unknown');
  const words = readWords(text.replaceAll(/\s+and\s+|\s*&\s*/gi, ','));
  if (!words.ok) return words;
  const rooms: Use[] = [];
  for (const word of words.value) {
    const room = roomOf(word);
    if (!room) return err(say.notOneOf({ typed: word, choices: USES }));
    if (!rooms.includes(room)) rooms.push(room);
  }
  return ok(rooms);
};

export const NUMBER: Column = circuitColumn(
  { id: 'number', width: 7 },
  (c) => c.number,
  readText,
  (c, number) => ({ ...c, number }),
);

export const CIRCUIT_COLUMNS: readonly Column[] = [
  circuitColumn(
    { id: 'label', width: 22 },
    (c) => c.label,
    readText,
    (c, label) => ({ ...c, label }),
  ),
  circuitColumn(
    { id: 'amps', width: 7, right: true, choices: ['15', '20', '30', '40', '50', say.notKnown] },
    (c) => showKnown(c.amps),
    orNotKnown(readAmps),
    (c, amps) => ({ ...c, amps }),
  ),
  circuitColumn(
    { id: 'poles', width: 6, right: true, choices: ['1', '2'] },
    (c) => String(c.poles),
    readPoles,
    (c, poles) => (poles === c.poles ? c : { ...c, poles, volts: poles === 2 ? 240 : 120 }),
  ),
];

export const MORE_CIRCUIT_COLUMNS: readonly Column[] = [
  circuitColumn(
    { id: 'serves', width: 16, choices: [...USES, say.notKnown] },
    (c) => (c.serves === 'unknown' ? say.notKnown : showWords(c.serves)),
    readRooms,
    (c, serves) => ({ ...c, serves }),
  ),
  circuitColumn(
    { id: 'protection', width: 13, choices: [...PROTECTIONS, say.notKnown] },
    (c) => showKnown(c.protection),
    orNotKnown(readChoice(PROTECTIONS, ALSO_PROTECTION as Record<string, (typeof PROTECTIONS)[number]>)),
    (c, protection) => ({ ...c, protection }),
  ),
];

export const LAST_CIRCUIT_COLUMNS: readonly Column[] = [
  circuitColumn(
    { id: 'va', width: 9, right: true },
    (c) => showKnown(c.va),
    orNotKnown(readAmount),
    (c, va) => ({ ...c, va }),
  ),
  circuitColumn(
    { id: 'continuous', width: 10, choices: YES_NO },
    (c) => showKnown(c.continuous),
    orNotKnown(readYesNo),
    (c, continuous) => ({ ...c, continuous }),
  ),
  circuitColumn(
    { id: 'hardWired', width: 10, choices: YES_NO },
    (c) => showKnown(c.hardWired),
    orNotKnown(readYesNo),
    (c, hardWired) => ({ ...c, hardWired }),
  ),
  circuitColumn(
    { id: 'addsOutlet', width: 9, choices: [say.yes, say.no] },
    (c) => showKnown(c.addsOutlet),
    (text) => (text.trim() === '' ? ok(false) : readYesNo(text)),
    (c, addsOutlet) => ({ ...c, addsOutlet }),
  ),
  circuitColumn(
    { id: 'flags', width: 16, choices: ['double tap', 'borrowed neutral', 'aluminum', 'dead', 'spare', say.none] },
    (c) => showWords(c.flags),
    readWords,
    (c, flags) => ({ ...c, flags }),
  ),
];
