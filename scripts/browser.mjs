// Finds a Chromium-family browser before anything is installed: plain Node only.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir, platform } from 'node:os';
import { join } from 'node:path';

const env = process.env;

function candidates() {
  const list = [env.CHROME_PATH, env.CHROMIUM_PATH];
  if (platform() === 'darwin') {
    for (const base of ['/Applications', join(homedir(), 'Applications')])
      list.push(
        join(base, 'Google Chrome.app/Contents/MacOS/Google Chrome'),
        join(base, 'Chromium.app/Contents/MacOS/Chromium'),
      );
  } else if (platform() === 'win32') {
    for (const base of [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA])
      if (base) list.push(join(base, 'Google\\Chrome\\Application\\chrome.exe'));
  } else {
    list.push(
      '/usr/bin/chromium',
      '/usr/bin/chromium-browser',
      '/usr/bin/google-chrome-stable',
      '/usr/bin/google-chrome',
      '/snap/bin/chromium',
    );
  }
  return list.filter(Boolean);
}

function playwrightBrowser() {
  try {
    const path = createRequire(import.meta.url)('playwright-core').chromium.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined; // playwright itself is not installed yet
  }
}

export function findBrowser() {
  return candidates().find((p) => existsSync(p)) ?? playwrightBrowser();
}

export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--enable-unsafe-swiftshader',
  '--force-color-profile=srgb',
];
