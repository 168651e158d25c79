// The license of every package whose code is in the build, as one text that goes with it. What is listed is what was
// bundled: it cannot be stale.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const TEXT = /^(licen[cs]e|copying|notice)/i;
/** The folder of the package a module comes from; undefined for our own. */
const packageOf = (id) => /^(?:\0|.*:)?(.*\/node_modules\/(?:@[^/]+\/)?[^/?]+)/.exec(id.replaceAll('\\', '/'))?.[1];

/** With what a package depends on: some carry it inside themselves, already bundled. */
const withDependencies = (folders) => {
  const all = new Set();
  const add = (folder) => {
    if (all.has(folder)) return;
    all.add(folder);
    const { dependencies = {} } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    for (const name of Object.keys(dependencies)) {
      if (name.startsWith('@types/')) continue;
      const near = [
        join(folder, 'node_modules', name),
        join(folder.replace(/\/node_modules\/.*/, '/node_modules'), name),
      ];
      const found = near.find((place) => existsSync(join(place, 'package.json')));
      if (!found) throw new Error(`${name}, which ${folder} depends on, is not found`);
      add(found);
    }
  };
  for (const folder of folders) add(folder);
  return [...all];
};

const about = (folder) => {
  const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => TEXT.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  const by = typeof author === 'string' ? author : author?.name;
  const said = `The package brings no license text. It names its license, ${license}${by ? `, and its author, ${by}` : ''}.`;
  return { name, version, license, text: texts.join('\n\n') || said };
};

/** `ownText`: our own license; `fonts`: folder with the fonts' licenses. */
export const licenses = ({ ownText, fonts }) => {
  const folders = new Set();
  const collect = {
    name: 'collect-licenses',
    moduleParsed: ({ id }) => {
      const folder = packageOf(id);
      if (folder && existsSync(join(folder, 'package.json'))) folders.add(folder);
    },
  };
  let out = 'dist';
  const write = {
    ...collect,
    name: 'licenses',
    apply: 'build',
    configResolved(config) {
      out = resolve(config.root, config.build.outDir);
    },
    writeBundle() {
      const packages = withDependencies(folders)
        .map(about)
        .sort((a, b) => (a.name < b.name ? -1 : 1));
      const without = packages.filter((p) => !p.license);
      if (without.length > 0) throw new Error(`No license: ${without.map((p) => p.name).join(', ')}`);
      const parts = [
        ['Backboard', readFileSync(ownText, 'utf8').trim()],
        ...packages.map((p) => [`${p.name} ${p.version} (${p.license})`, p.text]),
        ...readdirSync(fonts)
          .filter((file) => file.endsWith('-OFL.txt'))
          .map((file) => [
            `Font: ${file.replace('-OFL.txt', '')} (OFL-1.1)`,
            readFileSync(join(fonts, file), 'utf8').trim(),
          ]),
      ];
      const rule = '='.repeat(72);
      writeFileSync(
        join(out, 'licenses.txt'),
        parts.map(([head, text]) => `${rule}\n${head}\n${rule}\n\n${text}\n`).join('\n'),
      );
    },
  };
  return { inPage: write, inWorkers: collect };
};
