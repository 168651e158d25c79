import { isKnown } from '../units/types';
import type { Cable, CableKind } from './cable';

/** Words of a cable's trade name after its figures. */
const KIND_WORD: Readonly<Record<CableKind, string>> = {
  NM: 'NM',
  'NM without ground': 'NM without ground',
  AC: 'AC',
  MC: 'MC',
  'SE-R': 'SER',
  'SE-U': 'SEU',
  UF: 'UF',
  'knob-and-tube': 'knob-and-tube',
  'conductors in raceway': 'in raceway',
};

/**
 * Bare conductor of service-entrance cable by size of its ungrounded conductors: building-wire data sheets
 * (8 to 2/0), size 3 and those above 2/0 from memory.
 */
const SE_BARE: Readonly<Record<string, string>> = {
  '8': '8',
  '6': '6',
  '4': '6',
  '3': '5',
  '2': '4',
  '1': '3',
  '1/0': '2',
  '2/0': '1',
  '3/0': '1/0',
  '4/0': '2/0',
};

const isService = (kind: Cable['kind']): boolean => kind === 'SE-R' || kind === 'SE-U';

/** '12/2': size and number of insulated conductors; an unknown part reads '?'. */
const sizeAndCount = (cable: Cable): string => {
  const size = isKnown(cable.size) ? cable.size : '?';
  const count =
    isKnown(cable.hots) && isKnown(cable.neutral) ? cable.hots + (cable.neutral === 'insulated' ? 1 : 0) : '?';
  return `${size}/${count}`;
};

/** '2-2-2-4': every conductor's size, the bare one last. */
const everyConductor = (cable: Cable): string => {
  if (!isKnown(cable.size)) return '?';
  const bare = SE_BARE[cable.size] ?? '?';
  const hots = isKnown(cable.hots) ? Array<string>(cable.hots).fill(cable.size) : ['?'];
  const neutral = { insulated: [cable.size], bare: [bare], none: [], unknown: ['?'] }[cable.neutral];
  const ground = isKnown(cable.ground) ? (cable.ground ? [bare] : []) : ['?'];
  return [...hots, ...neutral, ...ground].join('-');
};

/** Aluminum is said, copper is the silent default, except for service-entrance cable and loose wire. */
const metalWord = (cable: Cable): string => {
  if (!isKnown(cable.metal)) return '? ';
  return cable.metal === 'Al' || isService(cable.kind) || cable.kind === 'conductors in raceway'
    ? `${cable.metal} `
    : '';
};

const figures = (cable: Cable): string => (isService(cable.kind) ? everyConductor(cable) : sizeAndCount(cable));
const kindWord = (cable: Cable): string => (isKnown(cable.kind) ? KIND_WORD[cable.kind] : '?');

/** Name of a cable in the price book and the cut list, without 'cable:': '12/2 NM', '2-2-2-4 Al SER', '12/2 Al NM'. */
export const cableTrade = (cable: Cable): string => `${figures(cable)} ${metalWord(cable)}${kindWord(cable)}`;

/** Price-book id of a foot of cable. An unknown part reads '?', so that no book has it and the price says so. */
export const cableItem = (cable: Cable): string => `cable:${cableTrade(cable)}`;

/** Name for people: '12/2 w/G', '14/3 w/G', '12/2 without ground', '2-2-2-4 Al SER', '12/2 MC'. */
export const cableName = (cable: Cable): string => {
  if (isService(cable.kind)) return cableTrade(cable);
  const metal = metalWord(cable);
  const jacketed = cable.kind === 'NM' || cable.kind === 'NM without ground';
  const kind = jacketed ? '' : ` ${isKnown(cable.kind) ? KIND_WORD[cable.kind] : 'cable, kind not known'}`;
  const ground = !isKnown(cable.ground)
    ? ', ground not known'
    : cable.ground
      ? cable.kind === 'AC' || cable.kind === 'MC'
        ? ''
        : ' w/G'
      : ' without ground';
  return `${figures(cable)}${metal ? ` ${metal.trim()}` : ''}${kind}${ground}`;
};
