import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Value } from './asking';

/** One published worked example: what was printed, where, and what it should be. */
export interface Example {
  readonly id: string;
  readonly topic: string;
  readonly section: string;
  readonly edition: string;
  readonly input: unknown;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly source: { readonly publication: string; readonly title: string; readonly where: string };
  readonly published: string;
  readonly recomputed?: string;
  readonly notes?: string;
  readonly agrees: 'yes' | 'no' | 'partly' | 'no_key';
}
export const readPublished = <T>(file: string): T =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../published', file), 'utf8')) as T;

export const EXAMPLES = readPublished<readonly Example[]>('worked-examples.json');
export const exampleOf = (id: string): Example => {
  const example = EXAMPLES.find((e) => e.id === id);
  if (!example) throw new Error(`no example ${id}`);
  return example;
};
export const inputOf = (id: string): unknown => exampleOf(id).input;

/** The figure an example expects, by its key; keys of inner ones after a dot. */
export const expectedOf = (example: Example, path: string): Value => {
  if (path in example.expected) return example.expected[path] as Value;
  const value = path
    .split('.')
    .reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], example.expected);
  if (value === undefined) throw new Error(`${example.id} expects no ${path}`);
  return value as Value;
};
