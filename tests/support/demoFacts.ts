import { readFileSync } from 'node:fs';
import type { Pt3 } from '../../src/units/types';

/** The tables of demo/FACTS.md as data. A row is read by the names in its table's head. */
const text = readFileSync(new URL('../../demo/FACTS.md', import.meta.url), 'utf8');

const cells = (line: string): string[] =>
  line
    .split('|')
    .slice(1, -1)
    .map((c) => c.trim());

type Cells = (column: string) => string;
const table = (heading: string): Cells[] => {
  const start = text.indexOf(`\n${heading}`);
  if (start < 0) throw new Error(`demo/FACTS.md has no "${heading}"`);
  const lines = text.slice(start).split('\n');
  const first = lines.findIndex((l) => l.startsWith('|'));
  const end = lines.findIndex((l, i) => i > first && !l.startsWith('|'));
  const head = cells(lines[first]!);
  return lines.slice(first + 2, end).map((line) => {
    const row = cells(line);
    return (column) => {
      const i = head.indexOf(column);
      if (i < 0 || row[i] === undefined) throw new Error(`"${heading}" has no column "${column}"`);
      return row[i];
    };
  });
};

const number = (cell: string): number => {
  if (!/^\d+(\.\d+)?$/.test(cell)) throw new Error(`not a number in demo/FACTS.md: ${cell}`);
  return Number(cell);
};
const numbers = (cell: string): number[] => cell.split(' + ').map(number);
export const sum = (parts: readonly number[]): number => parts.reduce((a, b) => a + b, 0);

const place = (row: Cells) => ({ job: row('job'), option: row('option'), homeRun: row('home run') });

/** Cables drawn back and used again. */
export const reuseFacts = table('## Cables drawn back').map((row) => ({
  ...place(row),
  ways: row('ways').split(', '),
  pivot: numbers(row('pivot')),
  path: numbers(row('path')),
  sum: number(row('sum')),
  spare: number(row('spare')),
  spareAtLeast: number(row('spare at least')),
  spareAtMost: number(row('spare at most')),
}));

/** Cables that come to the new can as they hang. */
export const stayFacts = table('## Cables that stay').map((row) => ({
  ...place(row),
  ways: row('ways').split(', '),
  oldTop: number(row("old can's top")),
  newTop: number(row("new can's top")),
  inside: number(row('sheath inside')),
}));

/** Cables lengthened or replaced. */
export const newCableFacts = table('## New cable').map((row) => ({
  ...place(row),
  ways: row('ways').split(', '),
  path: numbers(row('path by hand')),
  codeLength: number(row('code length')),
  slack: number(row('slack')),
  free: number(row('free')),
  cutLength: number(row('cut length')),
  codeAtLeast: number(row('code at least')),
  codeAtMost: number(row('code at most')),
}));

/** New feeders, from their source. */
export const feederFacts = table('## New feeders').map((row) => ({
  job: row('job'),
  option: row('option'),
  outside: number(row('outside')),
  path: numbers(row('path in the room by hand')),
  way: number(row('way')),
  slack: number(row('slack')),
  ends: number(row('ends')),
  cutLength: number(row('cut length')),
}));

/** Boxes of one spot beside each other. */
export const bankFacts = table('## Boxes side by side').map((row) => ({
  job: row('job'),
  option: row('option'),
  boxes: row('boxes').split(', '),
  parts: numbers(row('half + gap + half')),
  apart: number(row('apart')),
}));

/** Where circuits pass 6 ft as the washer job's option relocate-a moves right. */
export const stepFacts = table('## Job (a): what moving').map((row) => ({
  homeRuns: row('cables').match(/h-[\w-]+/g) ?? [],
  leavesAtX: number(row('leave at')),
  sheath: number(row('s')),
  farthestByCorner: number(row('farthest L, corner')),
  farthestByMiddle: number(row('farthest L, middle')),
}));

/** Which circuits of that option need AFCI by length, at left edges where every good route says the same. */
export const afciFacts = table('Between the two columns').map((row) => ({
  left: number(row('L')),
  circuits: row('circuits that need AFCI by length').match(/c-\d+/g) ?? [],
}));

/** Corners of a path with their distance from its start. */
export const pathOf = (path: readonly Pt3[]): { readonly point: Pt3; readonly chain: number }[] => {
  let chain = 0;
  return path.map((point, i) => {
    const before = path[i - 1];
    if (before) chain += Math.hypot(...point.map((v, axis) => v - before[axis]!));
    return { point, chain };
  });
};
