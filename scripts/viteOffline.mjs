// What the built page gets beyond its bundles: a policy that lets it reach nobody but its own server, and the worker
// that keeps it usable without one.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';

const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only in the build: while developing, Vite injects scripts and styles of its own. */
export const strictPolicy = () => ({
  name: 'strict-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
  ],
});

const WORKER = 'src/app/serviceWorker.js';
/** Licenses go with the fonts, but nobody needs them without a network. */
const LEFT_OUT = /(^|\/)(sw\.js|[^/]+-OFL\.txt)$/;

/** Writes the service worker with the list of all built files and a version that is their hash. */
export const offline = () => {
  let out = 'dist';
  return {
    name: 'offline',
    apply: 'build',
    configResolved(config) {
      out = resolve(config.root, config.build.outDir);
    },
    closeBundle() {
      if (!existsSync(out)) return; // the build failed, and says why itself
      const files = readdirSync(out, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => relative(out, join(entry.parentPath, entry.name)).split(sep).join('/'))
        .filter((file) => !LEFT_OUT.test(file))
        .sort();
      const hash = createHash('sha256');
      for (const file of files) hash.update(file).update(readFileSync(join(out, file)));
      const source = readFileSync(WORKER, 'utf8');
      hash.update(source);
      const worker = source
        .replace('__VERSION__', hash.digest('hex').slice(0, 16))
        .replace("['__FILES__']", JSON.stringify(['', ...files]));
      writeFileSync(join(out, 'sw.js'), worker);
    },
  };
};
