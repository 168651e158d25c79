import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { openJob } from '../../src/job/parse';
import { chooseOption, demoJob, openDemo, planned, savedFile } from './support';

const EAST = 'To the east wall, with a new disconnect outdoors';

test('a bug in the screens: the crash screen saves the job', async ({ page }) => {
  await openDemo(page, 'small-house');
  await page.evaluate(() => {
    Math.atan2 = () => {
      throw new Error('planted bug');
    };
  });
  await page.getByRole('radio', { name: EAST }).evaluate((radio) => (radio as HTMLInputElement).click());
  await expect(page.getByRole('heading', { name: /met an error of its own/ })).toBeVisible();
  await expect(page.getByText('planted bug').first()).toBeAttached();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save job file' }).click(),
  ]);
  const opened = openJob(readFileSync(await download.path(), 'utf8'));
  expect(opened.ok && opened.value.job).toEqual(demoJob('small-house'));
  const report = async (): Promise<Record<string, unknown>> => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save error report' }).click(),
    ]);
    return JSON.parse(readFileSync(await file.path(), 'utf8')) as Record<string, unknown>;
  };
  expect(await report()).toMatchObject({ format: 'backboard-error-report', error: 'planted bug', steps: [] });
  expect(await report()).not.toHaveProperty('job');
  await page.getByLabel('Put the job in too').check();
  expect(await report()).toHaveProperty('job.id', 'demo-small-house');
  await page.getByRole('button', { name: 'Reload' }).click();
  await planned(page);
  await expect(page.getByRole('radio', { name: EAST })).toBeVisible();
});

test('a planner that cannot start is said plainly, the job stays, and it is tried again', async ({ browser }) => {
  const context = await browser.newContext({ serviceWorkers: 'block', baseURL: 'http://localhost:4199' });
  const page = await context.newPage();
  await page.route(/plan\.worker/, (route) => route.abort());
  await page.goto('./');
  await page.getByRole('button', { name: 'Small house' }).click();
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('The planner stopped on an error of the program.');
  await expect(page.getByText('NEC 2017')).toBeVisible();
  await page.unroute(/plan\.worker/);
  await alert.getByRole('button', { name: 'Plan again' }).click();
  await planned(page);
  await expect(alert).toHaveCount(0);
  await context.close();
});

test('a browser that keeps nothing: said, and the job can still be worked on and saved', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get() {
        throw new DOMException('not allowed', 'SecurityError');
      },
    });
  });
  await openDemo(page, 'small-house');
  await expect(page.getByRole('alert')).toContainText('The browser could not keep the job.');
  await expect(page.getByText('not kept', { exact: true })).toBeVisible();
  await chooseOption(page, EAST);
  expect(openJob(readFileSync(await (await savedFile(page)).path(), 'utf8')).ok).toBe(true);
});

test('no word of complaint in the console over a whole use', async ({ page }) => {
  const said: string[] = [];
  page.on('console', (m) => {
    if (m.type() === 'error' || m.type() === 'warning') said.push(m.text());
  });
  page.on('pageerror', (e) => said.push(e.message));
  await openDemo(page, 'small-house');
  await chooseOption(page, EAST);
  await page.getByLabel('From left end').fill('90');
  await page.getByLabel('From left end').press('Enter');
  await planned(page);
  expect(said).toEqual([]);
});
