import { CABLE_KINDS, type Cable } from '../../../standards/cable';
import { cableFromName } from '../../../standards/cableFromName';
import { cableName } from '../../../standards/cableNames';
import { err, ok } from '../../../units/result';
import { gridWords as say } from '../../../words/en/grid';
import { type Read, saysNotKnown } from './read';

export const UNKNOWN_CABLE: Cable = {
  kind: 'unknown',
  size: 'unknown',
  metal: 'unknown',
  hots: 'unknown',
  neutral: 'unknown',
  ground: 'unknown',
  insulation: 'unknown',
};
const isUnknown = (cable: Cable): boolean => Object.values(cable).every((value) => value === 'unknown');
/** A cable as it stands in its cell. */
export const cableText = (cable: Cable): string => (isUnknown(cable) ? say.notKnown : cableName(cable));

const GROUND =
  /(?:,?\s*|^)(?:w\s*\/\s*g(?:round)?|wg|with\s+(?:ground|egc)|(?:[+/]\s*)?(?<![a-z-])(?:g|gnd|ground))\.?$/i;
const NO_GROUND = /,?\s*(?:without\s+(?:ground|egc)|no\s+(?:g|gnd|ground|egc)|w\/o\s*g(?:round)?)\.?$/i;
const NOT_SAID = /,?\s*(?:ground|egc)\s+not\s+known$/i;
/** What is written of the EGC at the end of a cable's name, and the name before it. */
const splitGround = (text: string): { name: string; ground: boolean | null } => {
  if (NO_GROUND.test(text)) return { name: text.replace(NO_GROUND, ''), ground: false };
  if (GROUND.test(text)) return { name: text.replace(GROUND, ''), ground: true };
  return { name: text.replace(NOT_SAID, ''), ground: null };
};
/** `14-2`, `14 / 2`, `#14/2`, `14-2 AWG` as `14/2`; lists of service cable keep their hyphens. */
const inTradeForm = (name: string): string =>
  name
    .replace(/^#/, '')
    .replace(/\bawg\b/i, '')
    .trim()
    .replace(/\s*\/\s*/g, '/')
    .replace(/^(\d{1,2})\s*-\s*([1-4])(?![\d-])/, '$1/$2')
    .replace(/\b(?:Alum(?:inum)?)\b/i, 'Al')
    .replace(/\b(?:Copper)\b/i, 'Cu')
    .replaceAll(/\s+/g, ' ')
    .trim();

const NM_PRINT = /\b(?:NMC?-B|NMC?)\b(?!-)/i;
/** As printed on a jacket, `AWG 14-2 TYPE NM-B WITH GROUND 600V`, in the order it is spoken: `AWG 14-2 NM-B WITH GROUND`. */
const asSpoken = (text: string): string => {
  const plain = text.replace(/\b600\s*v(?:olts?)?\b/i, '').replace(/\btype\b/i, '');
  const kind = NM_PRINT.exec(plain)?.[0];
  const [size] = /^(?:\s*awg)?[\s#]*\d+\s*[-/]\s*\d(?:\s*awg)?/i.exec(plain.replace(NM_PRINT, '').trim()) ?? [];
  if (kind === undefined || size === undefined) return plain.trim();
  return `${size} ${kind} ${plain.replace(NM_PRINT, '').trim().slice(size.length)}`.replaceAll(/\s+/g, ' ').trim();
};

/**
 * A cable as people write it. The NM kind and copper are what 14/2 says in the trade; whether it has an EGC is known
 * only where it is written (`w/G`, `without ground`) or where the kind has one by make. Two insulated conductors are
 * two hots on a two-pole circuit, else hot and neutral.
 */
export const readCable = (text: string, poles: 1 | 2, before: Cable): Read<Cable> => {
  if (saysNotKnown(text)) return ok(UNKNOWN_CABLE);
  const { name, ground } = splitGround(asSpoken(text));
  const read = cableFromName(inTradeForm(name));
  if (!read || !CABLE_KINDS.includes(read.kind)) return err(say.notACable({ typed: text }));
  const { kind, size, metal, insulated } = read;
  const isService = kind === 'SE-R';
  const armored = kind === 'AC' || kind === 'MC' || isService;
  if (insulated === 1 || insulated === 4) return err(say.notACable({ typed: text }));
  const twoHots = insulated === 3 || poles === 2;
  return ok({
    kind: kind === 'NM' && ground === false ? 'NM without ground' : kind,
    size,
    metal,
    hots: twoHots ? 2 : 1,
    neutral: insulated === 3 || !twoHots ? 'insulated' : 'none',
    ground: kind === 'NM without ground' ? false : (ground ?? (armored ? true : 'unknown')),
    insulation: /-B\b/i.test(name) ? 90 : before.insulation,
  });
};
