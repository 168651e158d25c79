import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'oxc-parser';
import { expect, test } from 'vitest';

const SRC = resolve(dirname(fileURLToPath(import.meta.url)), '../../src');

/** The floors, lowest first. A folder may import folders on lower floors only, and itself. */
const FLOORS = [
  ['units', 'words'],
  ['geometry', 'standards'],
  ['job', 'calculations'],
  ['facts'],
  ['routing', 'rules', 'loads', 'pricing', 'cutlist'],
  ['plan'],
  ['drawings'],
  ['documents', 'storage', 'workers'],
  ['state'],
  ['scene', 'screens'],
  ['app'],
] as const;

/** Package → the folders that may use it. Anything not named here is allowed nowhere. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  zod: ['job', 'storage'],
  flatqueue: ['routing'],
  'polygon-clipping': ['geometry'],
  react: ['screens', 'scene', 'app'],
  'react-dom': ['screens', 'app'],
  three: ['scene'],
  '@react-three/fiber': ['scene'],
  zustand: ['state'],
  idb: ['storage'],
  comlink: ['workers'],
  highs: ['workers'],
};

const floorOf = new Map(FLOORS.flatMap((names, floor) => names.map((name) => [name as string, floor] as const)));

/** Every module a file names: imports, re-exports and imports on demand, read by a parser. */
const importsOf = (file: string, text: string): string[] => {
  const { module } = parseSync(file, text);
  return [
    ...module.staticImports.map((i) => i.moduleRequest.value),
    ...module.staticExports.flatMap((e) => e.entries.flatMap((x) => x.moduleRequest?.value ?? [])),
    ...module.dynamicImports.map((i) =>
      text.slice(i.moduleRequest.start, i.moduleRequest.end).replace(/^['"]|['"]$/g, ''),
    ),
  ];
};

/** What is wrong with one import, or null. */
const judgeImport = (file: string, spec: string): string | null => {
  const folder = file.split(sep)[0]!;
  const here = floorOf.get(folder);
  if (here === undefined) return `${file}: ${folder} is on no floor`;
  if (spec.startsWith('.')) {
    const target = relative(SRC, resolve(SRC, dirname(file), spec)).split(sep)[0]!;
    if (target === folder) return null;
    if (target === '..')
      return PARTS_OUTSIDE.some((p) => spec.includes(p)) && folder === 'app' ? null : `${file} -> ${spec}: outside src`;
    const there = floorOf.get(target);
    if (there === undefined) return `${file} -> ${spec}: ${target} is on no floor`;
    return there < here ? null : `${file} -> ${spec}: ${there === here ? 'sideways' : 'up'}`;
  }
  const name = spec
    .split('/')
    .slice(0, spec.startsWith('@') ? 2 : 1)
    .join('/');
  return PACKAGES[name]?.includes(folder) ? null : `${file} -> ${spec}: package not allowed in ${folder}`;
};
/** The one thing outside src that the app shows: the demo jobs. */
const PARTS_OUTSIDE = ['/demo/'];

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter(
  (f) => /\.tsx?$/.test(f) && f.includes(sep),
);

test('imports go down the floors only, and packages stay where they are allowed', () => {
  const faults = files.flatMap((file) =>
    importsOf(file, readFileSync(join(SRC, file), 'utf8')).flatMap((spec) => judgeImport(file, spec) ?? []),
  );
  expect(files.length).toBeGreaterThan(20);
  expect(faults).toEqual([]);
});

test('a type in a union of words is no import; one on demand is', () => {
  expect(
    importsOf('x.ts', "type Key = 'from' | 'import'; export type { A } from './a'; const b = () => import('./b');"),
  ).toEqual(['./a', './b']);
});

test('the floors test catches an import up, one sideways and a stray package', () => {
  const at = (folder: string) => [folder, 'x.ts'].join(sep);
  expect(judgeImport(at('units'), '../job/schema')).toContain('up');
  expect(judgeImport(at('routing'), '../rules/run')).toContain('sideways');
  expect(judgeImport(at('routing'), 'zod')).toContain('package');
  expect(judgeImport(at('plan'), '../routing/route')).toBeNull();
});
