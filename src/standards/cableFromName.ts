import type { CableKind, Metal } from './cable';

/** A cable read from its trade name, far enough to look its size up. */
export interface NamedCable {
  readonly kind: CableKind;
  readonly size: string;
  readonly insulated: number;
  readonly metal: Metal;
}
const SIZE = String.raw`\d{1,3}(?:/0)?`;
/** '12/2', '12/2 w/G', '12/2 NM', '12/2 Al NM', '10/3 MC', '14/2 UF w/G', '12/2 without ground'. */
const COUNTED = new RegExp(
  String.raw`^(?<size>${SIZE})/(?<count>[1-4])(?:\s+(?<metal>Al|Cu))?(?:\s+(?<kind>NM-B|NM|AC|MC|UF-B|UF))?(?<ground>\s+w/G|\s+without ground)?$`,
  'i',
);
/** '2-2-2-4', '2-2-2-4 Al SER', '4/0-4/0-4/0-2/0 Al SER'. */
const LISTED = new RegExp(
  String.raw`^(?<size>${SIZE})-\k<size>-\k<size>-${SIZE}(?:\s+(?<metal>Al|Cu))?(?:\s+SE-?R)?$`,
  'i',
);
const KINDS: Readonly<Record<string, CableKind>> = {
  'NM-B': 'NM',
  NM: 'NM',
  AC: 'AC',
  MC: 'MC',
  'UF-B': 'UF',
  UF: 'UF',
};
const metalOf = (text: string | undefined, otherwise: Metal): Metal =>
  text === undefined ? otherwise : text.toLowerCase() === 'al' ? 'Al' : 'Cu';

/** Reads a trade name; copper is the silent default, aluminum for four-conductor service-entrance cable. */
export const cableFromName = (name: string): NamedCable | undefined => {
  const text = name.trim();
  const listed = LISTED.exec(text)?.groups;
  if (listed) return { kind: 'SE-R', size: listed.size!, insulated: 3, metal: metalOf(listed.metal, 'Al') };
  const counted = COUNTED.exec(text)?.groups;
  if (!counted) return undefined;
  const kind = KINDS[(counted.kind ?? 'NM').toUpperCase()]!;
  return {
    kind: kind === 'NM' && /without/i.test(counted.ground ?? '') ? 'NM without ground' : kind,
    size: counted.size!,
    insulated: Number(counted.count),
    metal: metalOf(counted.metal, 'Cu'),
  };
};
