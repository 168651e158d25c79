import type { HomeRun } from '../../../job/schema';
import { CABLE_KINDS, type Cable } from '../../../standards/cable';
import { formatFeetInches } from '../../../units/length';
import { err, ok } from '../../../units/result';
import type { In, U } from '../../../units/types';
import { gridWords as say } from '../../../words/en/grid';
import { cableText, readCable } from './cableText';
import { type Column, cableColumn } from './column';
import { showKnown, showWords, YES_NO } from './columnsCircuit';
import { orNotKnown, type Read, readChoice, readSiteLength, readWords, readYesNo } from './read';

const showLength = (inches: U<In>): string => (inches === 'unknown' ? say.notKnown : formatFeetInches(inches, 64));
/** What a cable has of its own where it differs from its group; nothing typed is the group's. */
const orAsGroup =
  <T>(read: (text: string) => Read<T>) =>
  (text: string): Read<T | null> => {
    const word = text.trim().toLowerCase();
    return word === '' || word === say.asGroup || word === 'group' ? ok(null) : read(text);
  };

const readTails = (text: string): Read<NonNullable<Exclude<HomeRun['ownTails'], 'unknown'>>> => {
  // a slash between two digits without spaces is a fraction of an inch
  const parts = text.includes(' / ') ? text.split(' / ') : text.split(/[/;,]/);
  const read = parts.map((part) => readSiteLength(part));
  const [hot, neutral, ground] = read;
  if (read.length !== 3 || !hot?.ok || !neutral?.ok || !ground?.ok) return err(say.notTails({ typed: text }));
  return ok({ hot: hot.value, neutral: neutral.value, ground: ground.value });
};
const showTails = (tails: HomeRun['ownTails']): string => {
  if (tails === null) return say.asGroup;
  if (tails === 'unknown') return say.notKnown;
  return [tails.hot, tails.neutral, tails.ground].join(' / ');
};

const SIZE = /^#?(\d{1,3}(?:\/0)?)(?:\s*awg)?$/i;
const readSize = (text: string): Read<string> => {
  const found = SIZE.exec(text.trim());
  return found ? ok(found[1]!) : err(say.notOneOf({ typed: text, choices: ['14', '12', '10', '8', '6', '1/0'] }));
};

/** One field of the cable itself, for what its name does not say. */
const detail = <K extends keyof Cable>(
  id: 'kind' | 'size' | 'metal' | 'hots' | 'neutral' | 'ground' | 'insulation',
  key: K,
  width: number,
  choices: readonly string[],
  read: (text: string) => Read<Cable[K]>,
): Column =>
  cableColumn(
    { id, width, choices: [...choices, say.notKnown] },
    (h) => showKnown(h.cable[key]),
    read,
    (h, value) => ({ ...h, cable: { ...h.cable, [key]: value } }),
  );

export const CABLE: Column = cableColumn(
  {
    id: 'cable',
    width: 16,
    pass: 3,
    choices: ['14/2 w/G', '12/2 w/G', '14/3 w/G', '12/3 w/G', '10/2 w/G', '10/3 w/G'],
  },
  (h) => cableText(h.cable),
  (text, { circuit, homeRun }) =>
    text === cableText(homeRun.cable) ? ok(homeRun.cable) : readCable(text, circuit?.poles ?? 1, homeRun.cable),
  (h, cable) => ({ ...h, cable }),
);

export const CABLE_COLUMNS: readonly Column[] = [
  cableColumn(
    { id: 'condition', width: 14, choices: ['brittle', 'cloth', 'damaged', 'overheated', say.none] },
    (h) => showWords(h.condition),
    readWords,
    (h, condition) => ({ ...h, condition }),
  ),
  cableColumn(
    { id: 'traced', width: 8, choices: [say.yes, say.no] },
    (h) => showKnown(h.traced),
    (text) => (text.trim() === '' ? ok(false) : readYesNo(text)),
    (h, traced) => ({ ...h, traced }),
  ),
  cableColumn(
    { id: 'wholeLength', width: 11, right: true },
    (h) => showLength(h.wholeLength),
    orNotKnown(readSiteLength),
    (h, wholeLength) => ({ ...h, wholeLength }),
  ),
  cableColumn(
    { id: 'pivot', width: 13, right: true, choices: [say.asGroup, say.notKnown] },
    (h) => (h.ownPivot === null ? say.asGroup : showLength(h.ownPivot)),
    orAsGroup(orNotKnown(readSiteLength)),
    (h, ownPivot) => ({ ...h, ownPivot }),
  ),
  cableColumn(
    { id: 'tails', width: 15, right: true, choices: [say.asGroup, say.notKnown] },
    (h) => showTails(h.ownTails),
    orAsGroup(orNotKnown(readTails)),
    (h, ownTails) => ({ ...h, ownTails }),
  ),
];

export const DETAIL_COLUMNS: readonly Column[] = [
  detail(
    'kind',
    'kind',
    13,
    CABLE_KINDS,
    orNotKnown(readChoice(CABLE_KINDS, { ser: 'SE-R', seu: 'SE-U', 'nm-b': 'NM' })),
  ),
  detail('size', 'size', 7, ['14', '12', '10', '8', '6'], orNotKnown(readSize)),
  detail(
    'metal',
    'metal',
    7,
    ['Cu', 'Al'],
    orNotKnown(readChoice(['Cu', 'Al'] as const, { copper: 'Cu', aluminum: 'Al' })),
  ),
  detail('hots', 'hots', 6, ['1', '2'], orNotKnown(readChoice([1, 2] as const))),
  detail(
    'neutral',
    'neutral',
    10,
    ['insulated', 'bare', 'none'],
    orNotKnown(readChoice(['insulated', 'bare', 'none'] as const)),
  ),
  detail('ground', 'ground', 9, YES_NO.slice(0, 2), orNotKnown(readYesNo)),
  detail('insulation', 'insulation', 10, ['60', '75', '90'], orNotKnown(readChoice([60, 75, 90] as const))),
];
