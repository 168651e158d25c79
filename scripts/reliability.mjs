// Writes docs/reliability.md from what the last run put down: nothing in it is typed by hand.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const FOUND = fileURLToPath(new URL('../node_modules/.cache/reliability/', import.meta.url));
const PAGE = fileURLToPath(new URL('../docs/reliability.md', import.meta.url));

const found = Object.fromEntries(
  (existsSync(FOUND) ? readdirSync(FOUND) : [])
    .filter((file) => file.endsWith('.json'))
    .map((file) => [file.replace('.json', ''), JSON.parse(readFileSync(FOUND + file, 'utf8'))]),
);
/** One line a part; a part that was not run says so. */
const line = (part, say) => (found[part] ? `${say(found[part])} | ${found[part].on}` : 'not run |');

const LINES = [
  [
    'Browser killed while editing',
    line(
      'killed',
      (f) =>
        `${f.kills} kills of all its processes, ${f.aimedAtSaves} of them aimed into a save; ${f.edits} edits made; nothing that had been told as kept was lost, no job was spoiled; work lost at most ${(f.worstLostMs / 1000).toFixed(2)} s`,
    ),
  ],
  [
    'Job files spoiled by structure',
    line('jobs-structure', (f) => `${f.files} files: ${f.opened} opened, ${f.refused} refused with their place`),
  ],
  [
    'Job files spoiled by bytes',
    line('jobs-bytes', (f) => `${f.files} files: ${f.opened} opened, ${f.refused} refused with their place`),
  ],
  [
    'Price books spoiled',
    line('price-books', (f) => `${f.files} files: ${f.taken} taken, ${f.refused} refused with their lines`),
  ],
  [
    'Circuits as CSV spoiled',
    line('circuits', (f) => `${f.files} files: ${f.taken} taken, ${f.refused} refused with their place`),
  ],
  [
    'A job of 200 circuits, 12 options, 60 photos',
    line(
      'large',
      (f) =>
        `file ${f.fileMb} MB; opened in ${f.openMs} ms; an edit ${f.editMs} ms; kept in ${f.keepMs} ms; its first option planned in ${f.firstOptionS} s`,
    ),
  ],
  ['A thousand jobs in the list', line('list', (f) => `listed in ${f.openMs} ms; a search shown in ${f.findMs} ms`)],
];

writeFileSync(
  PAGE,
  `# Reliability, as measured

Written by \`npm run hard\` from what its run found (figures of time are of the machine it ran on). The faults themselves
(database deleted, taken over, held by an older tab, full; planner killed or hung; no WebGL, WebGL lost; no network; two
tabs; update) are tests in \`tests/e2e/\` and run with every \`npm test\`.

| what | found | on |
|---|---|---|
${LINES.map(([what, say]) => `| ${what} | ${say} |`).join('\n')}
`,
);
