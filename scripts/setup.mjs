// Installs what is missing, before anything is installed: plain Node only.
// `node scripts/setup.mjs` for packages, `--browser` for a Chromium as well.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { platform } from 'node:os';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './browser.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const log = (s) => console.log(`[setup] ${s}`);
const stop = (s) => {
  console.error(`[setup] ${s}`);
  process.exit(1);
};

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19) || major === 21)
  stop(`Node ${process.versions.node} will not do; use 20.19 or later, or 22.12 or later.`);

const win = platform() === 'win32';
function run(cmd, args, opts = {}) {
  const started = Date.now();
  const r = spawnSync(cmd, args, { stdio: ['ignore', 'inherit', 'inherit'], shell: win, ...opts });
  log(`${cmd} ${args.join(' ')} -> ${r.status ?? r.error?.code} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
  return r.status === 0;
}
const npmCli = process.env.npm_execpath;
const npm = (...args) =>
  npmCli?.endsWith('.js') ? run(process.execPath, [npmCli, ...args], { shell: false }) : run('npm', args);

const stampFile = 'node_modules/.setup-stamp';
const want = createHash('sha256')
  .update(readFileSync('package-lock.json'))
  .update(process.versions.modules + process.platform + process.arch)
  .digest('hex');
if (!existsSync(stampFile) || readFileSync(stampFile, 'utf8') !== want) {
  if (!npm('ci', '--no-audit', '--no-fund')) stop('Could not install the packages; see the lines above.');
  writeFileSync(stampFile, want);
}

function aptInstall(...packages) {
  const root = process.getuid?.() === 0;
  const sudo = !root && spawnSync('sudo', ['-n', 'true'], { stdio: 'ignore' }).status === 0;
  if (!root && !sudo) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...a) => (root ? run('apt-get', a, { env }) : run('sudo', ['-n', 'apt-get', ...a], { env }));
  apt('update', '-qq');
  return apt('install', '-y', '-qq', '--no-install-recommends', ...packages);
}

if (process.argv.includes('--browser')) {
  if (!findBrowser()) {
    log('no Chromium found');
    if (platform() === 'linux' && existsSync('/usr/bin/apt-get')) aptInstall('chromium', 'fonts-liberation');
    if (!findBrowser())
      run(process.execPath, ['node_modules/@playwright/test/cli.js', 'install', 'chromium'], {
        shell: false,
        timeout: 300_000,
      });
    if (!findBrowser())
      stop('No browser for the end-to-end tests. Install Chromium, or set CHROME_PATH to its executable.');
  }
  log(`browser: ${findBrowser()}`);
}
