import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { type Recorder, startRecorder } from './proxy';
import { chooseOption, goTo, openDemo, planned, SHEETS } from './support';

const OUTSIDE = 'http://example.invalid/';
let recorder: Recorder;
test.beforeEach(async () => {
  recorder = await startRecorder();
});
test.afterEach(() => recorder.close());

const useEverything = async (page: Page): Promise<void> => {
  await openDemo(page, 'small-house');
  await chooseOption(page, 'To the east wall, with a new disconnect outdoors');
  for (const sheet of SHEETS) await goTo(page, sheet);
  await page.getByLabel('From left end').fill('100');
  await page.getByLabel('From left end').press('Enter');
  await planned(page);
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page.getByRole('button', { name: 'Dark' }).click();
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await planned(page);
};
const serviceWorkerOf = async (context: BrowserContext) =>
  context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'));

test('page, planner and service worker ask nobody but their own server', async ({ browser }) => {
  const context = await browser.newContext({
    proxy: { server: recorder.address, bypass: 'localhost' },
    baseURL: 'http://localhost:4199',
  });
  const page = await context.newPage();
  const foreign: string[] = [];
  context.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== 'http://localhost:4199' && protocol !== 'data:' && protocol !== 'blob:') foreign.push(request.url());
  });
  await useEverything(page);
  expect(page.workers().length).toBeGreaterThan(0);
  await serviceWorkerOf(context);
  expect(foreign).toEqual([]);
  expect(recorder.asked).toEqual([]);
  await context.close();
});

test('control: an outside address asked for by page, planner or service worker is caught', async ({ browser }) => {
  const context = await browser.newContext({
    proxy: { server: recorder.address, bypass: 'localhost' },
    baseURL: 'http://localhost:4199',
    bypassCSP: true, // else the page's own policy stops it before it gets out; see the next test
  });
  const page = await context.newPage();
  await openDemo(page, 'small-house');
  const ask = (url: string) => fetch(url).catch(() => undefined);
  await page.evaluate(ask, `${OUTSIDE}page`);
  await page.workers()[0]!.evaluate(ask, `${OUTSIDE}planner`);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await (await serviceWorkerOf(context)).evaluate(ask, `${OUTSIDE}service-worker`);
  expect(recorder.asked).toEqual([`${OUTSIDE}page`, `${OUTSIDE}planner`, `${OUTSIDE}service-worker`]);
  await context.close();
});

test('the policy of the page stops an outside address by itself', async ({ browser }) => {
  const context = await browser.newContext({
    proxy: { server: recorder.address, bypass: 'localhost' },
    baseURL: 'http://localhost:4199',
  });
  const page = await context.newPage();
  await page.goto('./');
  const refused = await page.evaluate(async (url) => {
    const violated: string[] = [];
    document.addEventListener('securitypolicyviolation', (e) => violated.push(e.effectiveDirective));
    await fetch(url).catch(() => undefined);
    const image = new Image();
    image.src = `${url}image.png`;
    await new Promise((resolve) => {
      image.onerror = resolve;
    });
    return violated;
  }, OUTSIDE);
  expect(refused).toEqual(['connect-src', 'img-src']);
  expect(recorder.asked).toEqual([]);
  await context.close();
});
