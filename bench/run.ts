import { writeFileSync } from 'node:fs';
import { boxLines } from './boxes';
import { cutLines } from './cuts';
import { gridLines } from './grid';
import { keepingLines } from './keeping';
import { mapLines } from './map';
import { panelLines } from './panel';
import { replanLines } from './replan';
import type { Line } from './rounds';
import { routeLines } from './routes';
import { sameLines } from './same';

/** `npm run bench [-- B1 B3 …]`: ratios measured side by side in one run; nothing here fails a build. */
const PARTS: Readonly<Record<string, () => Line[] | Promise<Line[]>>> = {
  'B1 B2': routeLines,
  B3: gridLines,
  'B4 B5 B7': replanLines,
  B6: mapLines,
  B8: boxLines,
  B10: cutLines,
  B12: panelLines,
  B13: sameLines,
  B16: keepingLines,
};

const wanted = process.argv.slice(2);
const lines: Line[] = [];
for (const [ids, part] of Object.entries(PARTS)) {
  if (wanted.length > 0 && !ids.split(' ').some((id) => wanted.includes(id))) continue;
  for (const line of await part()) {
    lines.push(line);
    const verdict = line.ok === null ? '' : line.ok ? 'ok' : 'short';
    console.log(
      [line.id.padEnd(4), verdict.padEnd(6), `${line.measured} (${line.goal})`.padEnd(58), line.what].join(' '),
    );
  }
}
if (wanted.length === 0) writeFileSync('bench/latest.json', `${JSON.stringify(lines, null, 2)}\n`);
