import { createHash } from 'node:crypto';
import { buildGlb } from './glb';
import { KINDS } from './kinds';

/** What stands in public/models/manifest.json, one entry a model. */
export interface Entry {
  readonly name: string;
  readonly file: string;
  /** Inches; in the file meters. */
  readonly size: { readonly width: number; readonly depth: number; readonly height: number };
  readonly triangles: number;
  readonly lines: number;
  readonly bytes: number;
  readonly sha256: string;
}
/** Every model built anew, with its entry; the same bytes every time. */
export const buildAll = (): { readonly entry: Entry; readonly bytes: Uint8Array }[] =>
  KINDS.map((kind) => {
    const { bytes, triangles, lines } = buildGlb(kind);
    const entry: Entry = {
      name: kind.name,
      file: `${kind.name}.glb`,
      size: kind.size,
      triangles,
      lines,
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
    };
    return { entry, bytes };
  });
