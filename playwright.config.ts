import { defineConfig } from '@playwright/test';
// @ts-expect-error plain script without types
import { CHROMIUM_ARGS, findBrowser } from './scripts/browser.mjs';

export default defineConfig({
  testDir: 'tests/e2e',
  workers: 1,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  // a busy machine may miss a deadline once; what needed a second try is told as flaky
  retries: process.env.CI ? 1 : 0,
  reporter: [['list'], ['json']],
  use: {
    baseURL: 'http://localhost:4199',
    viewport: { width: 1440, height: 900 },
    launchOptions: { executablePath: findBrowser(), args: CHROMIUM_ARGS },
  },
  webServer: {
    command: 'node node_modules/vite/bin/vite.js preview --port 4199 --strictPort',
    url: 'http://localhost:4199',
    reuseExistingServer: !process.env.CI,
  },
});
