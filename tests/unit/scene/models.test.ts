import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { buildAll } from '../../../scripts/models/manifest';
import { MODELS } from '../../../src/drawings/solids';

const OUT = new URL('../../../public/models/', import.meta.url);
const built = buildAll();

interface Report {
  readonly issues: { readonly numErrors: number; readonly numWarnings: number; readonly numInfos: number };
  readonly info: { readonly totalTriangleCount: number };
}
// @ts-expect-error plain script without types
const { validateBytes } = (await import('gltf-validator')).default as {
  validateBytes: (bytes: Uint8Array) => Promise<Report>;
};

test('the models in public/models are what the script builds, byte for byte, and the manifest says so', () => {
  const manifest = JSON.parse(readFileSync(new URL('manifest.json', OUT), 'utf8'));
  expect(manifest).toEqual(built.map((b) => b.entry));
  expect(readdirSync(OUT).sort()).toEqual([...built.map((b) => b.entry.file), 'manifest.json'].sort());
  for (const { entry, bytes } of built) expect(Buffer.compare(readFileSync(new URL(entry.file, OUT)), bytes)).toBe(0);
});

test('there is a model for every name the drawings use, and none too many', () => {
  expect(built.map((b) => b.entry.name).sort()).toEqual([...MODELS].sort());
});

test('the validator of the standard finds nothing in them, and counts the triangles the manifest says', async () => {
  for (const { entry, bytes } of built) {
    const { issues, info } = await validateBytes(bytes);
    expect([entry.name, issues.numErrors, issues.numWarnings, issues.numInfos]).toEqual([entry.name, 0, 0, 0]);
    expect(info.totalTriangleCount).toBe(entry.triangles);
  }
});

test('models have their true size in meters and stand on the floor', () => {
  for (const { entry, bytes } of built) {
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + view.getUint32(12, true))));
    const used = json.meshes[0].primitives.map((p: { attributes: { POSITION: number } }) => p.attributes.POSITION);
    const bounds = used.map((i: number) => json.accessors[i]);
    const of = (k: number) => [
      Math.min(...bounds.map((b: { min: number[] }) => b.min[k]!)) / 0.0254,
      Math.max(...bounds.map((b: { max: number[] }) => b.max[k]!)) / 0.0254,
    ];
    const { width, height, depth } = entry.size;
    // fine lines stand a hair before the skin
    const want = [
      [-width / 2, width / 2],
      [0, height],
      [-depth / 2, depth / 2],
    ];
    want.forEach(([low, high], k) => {
      expect(Math.abs(of(k)[0]! - low!), `${entry.name} ${k}`).toBeLessThan(0.2);
      expect(Math.abs(of(k)[1]! - high!), `${entry.name} ${k}`).toBeLessThan(0.2);
    });
  }
});
