import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { openJob } from '../../src/job/parse';
import { outcome } from '../support/outcome';
import { serveBuild } from './staticServer';
import { demoText, planned, savedFile } from './support';

/** What goes wrong around the browser's database, and other tabs on it: each time nothing is lost. */

const newJob = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'New job' }).first().click();
  await page.getByText(/^kept here/).waitFor();
};
const jobs = (page: Page) => page.getByRole('dialog');
const openJobs = (page: Page) => page.getByRole('button', { name: 'Jobs', exact: true }).click();
const rename = async (page: Page, title: string): Promise<void> => {
  await page.bringToFront(); // a tab behind another is slow to react
  await openJobs(page);
  await page.getByLabel('Title of this job').fill(title);
  await page.getByLabel('Title of this job').press('Enter');
  await jobs(page).getByRole('button', { name: 'Close' }).click();
};
const keptNow = (page: Page) => expect(page.getByText(/^kept here/)).toBeVisible();
const titled = (page: Page, title: string) => expect(page.getByTitle(title, { exact: true })).toBeVisible();
const savedTitle = async (page: Page): Promise<unknown> => {
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  return opened.ok && opened.value.job.title;
};

test('two tabs on one job: one holds it, the other follows, and a change there goes on as a job of its own', async ({
  context,
}) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  await one.goto('./');
  await newJob(one);
  await two.goto('./');
  await expect(two.getByText(/open in another tab, and follows/)).toBeVisible();
  await rename(one, 'by the first tab');
  await titled(two, 'by the first tab');
  await rename(two, 'by the second tab');
  await expect(two.getByText(/kept as a job of its own/)).toBeVisible();
  await keptNow(two);
  await rename(one, 'again by the first');
  await keptNow(one);
  await one.reload();
  await titled(one, 'again by the first');
  await two.reload();
  await titled(two, 'by the second tab');
});

test('the database deleted under an open job: it is kept anew, and that is said', async ({ page }) => {
  await page.goto('./');
  await newJob(page);
  await rename(page, 'survives');
  await keptNow(page);
  await page.evaluate(() => indexedDB.deleteDatabase('backboard'));
  await expect(page.getByRole('alert')).toContainText('cleared away');
  await keptNow(page);
  await page.reload();
  await titled(page, 'survives');
});

test('the database taken over by a newer version: said, saved as a file, and carried over a reload', async ({
  page,
}) => {
  await page.goto('./');
  await newJob(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('backboard', 2_000);
        opening.onsuccess = () => resolve(opening.result.close());
      }),
  );
  await rename(page, 'after the newer one');
  await expect(page.getByRole('alert')).toContainText('A newer version of the program');
  expect(await savedTitle(page)).toBe('after the newer one');
  page.on('dialog', (dialog) => void dialog.accept());
  await page.reload();
  expect(await page.evaluate(() => Object.entries(localStorage).join())).toContain('after the newer one');
});

test('an older version of the program holds the database: said, and kept once its tab is closed', async ({
  context,
}) => {
  const old = await context.newPage();
  await old.goto('./icon.svg');
  await old.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('backboard', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('jobs', { keyPath: 'key' });
        opening.onsuccess = () => {
          Object.assign(window, { held: opening.result }); // or it is collected, and with it closed
          resolve();
        };
      }),
  );
  const page = await context.newPage();
  await page.goto('./');
  await page.getByRole('button', { name: 'New job' }).first().click();
  await expect(page.getByRole('alert')).toContainText('older version of the program holds');
  await old.close();
  await page.getByRole('button', { name: 'Try again' }).click();
  await keptNow(page);
});

const limitRoom = async (page: Page, bytes: number | undefined): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  const origin = new URL(page.url()).origin;
  await session.send('Storage.overrideQuotaForOrigin', bytes === undefined ? { origin } : { origin, quotaSize: bytes });
};
test('no room left: said with the file offered, and kept once there is room', async ({ page }) => {
  await page.goto('./');
  await limitRoom(page, 1); // before the first writing: the browser remembers for a while how much room there is
  await page.getByRole('button', { name: 'New job' }).first().click();
  await rename(page, 'too much');
  const alert = page.getByRole('alert').filter({ hasText: 'no room left' });
  await expect(alert).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    alert.getByRole('button', { name: 'Save job file' }).click(),
  ]);
  expect(readFileSync(await file.path(), 'utf8')).toContain('"title": "too much"');
  await limitRoom(page, undefined);
  await alert.getByRole('button', { name: 'Try again' }).click();
  await keptNow(page);
  await page.reload();
  await titled(page, 'too much');
});

test('a planner that is killed, or hangs, is replaced and goes on from the last state', async ({ browser }) => {
  const context = await browser.newContext({ serviceWorkers: 'block', baseURL: 'http://localhost:4199' });
  const page = await context.newPage();
  await page.clock.install();
  let hang = true;
  await page.route(/plan\.worker/, (route) => {
    const first = hang;
    hang = false;
    return first
      ? route.fulfill({ contentType: 'text/javascript', body: 'onmessage = () => { for (;;); };' })
      : route.continue();
  });
  await page.goto('./');
  await page.getByRole('button', { name: 'Small house' }).click();
  await page.getByText(/^Planning: 0 of/).waitFor();
  await page.clock.fastForward(181_000);
  await planned(page);
  const worker = page.workers()[0]!;
  await Promise.all([worker.waitForEvent('close'), worker.evaluate(() => self.close()).catch(() => undefined)]);
  await page.getByLabel('From left end').fill('90');
  await page.getByLabel('From left end').press('Enter');
  await page.getByText(/^Planning: /).waitFor();
  await planned(page);
  await expect(page.getByRole('alert')).toHaveCount(0);
  await context.close();
});

test('a newer version waits until the person says so, and takes nothing away', async ({ page }) => {
  let next = false;
  const server = await serveBuild((file, text) => {
    if (!next) return text;
    if (file === 'sw.js') return text.replace(/'backboard-\w+'/, "'backboard-next'");
    return file === 'index.html' ? text.replace('<html ', '<html data-next ') : text;
  });
  await page.goto(server.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  const session = await page.context().newCDPSession(page);
  const { installabilityErrors: cannot } = await session.send('Page.getInstallabilityErrors');
  expect(cannot.map((e) => e.errorId).filter((id) => id !== 'in-incognito')).toEqual([]); // as every test's window is
  expect(await (await page.request.get(`${server.url}licenses.txt`)).text()).toMatch(/react-dom .*three .*zod /s);
  await newJob(page);
  next = true;
  await page.reload();
  const update = page.getByText('A new version of the program is ready.');
  await expect(update).toBeVisible();
  await expect(page.locator('html[data-next]')).toHaveCount(0);
  await rename(page, 'before changing over');
  await page.getByRole('button', { name: 'Change over' }).click();
  await expect(page.locator('html[data-next]')).toHaveCount(1);
  await titled(page, 'before changing over');
  await server.stop();
});

const seedThousand = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('backboard');
        opening.onsuccess = () => {
          const work = opening.result.transaction(['jobs', 'texts'], 'readwrite');
          for (let i = 0; i < 1000; i++) {
            const key = `k${i}`;
            const title = `Invented street ${i}`;
            const kept = { keptAt: '2026-01-01T00:00:00.000Z', version: 1, place: 'jobs' };
            work.objectStore('jobs').put({ key, job: key, title, find: title.toLowerCase(), ...kept });
            work.objectStore('texts').put({ key, text: '{}' });
          }
          work.oncomplete = () => resolve(opening.result.close());
        };
      }),
  );

test('a thousand jobs: found, put away, brought back, duplicated; states gone back to; a file dragged in', async ({
  page,
}) => {
  await page.goto('./');
  await newJob(page);
  await seedThousand(page);
  await rename(page, 'The open one');
  await keptNow(page);
  const opening = Date.now();
  await openJobs(page);
  const list = jobs(page).getByRole('region', { name: 'Kept in this browser' });
  await expect(list.getByRole('listitem')).toHaveCount(1001);
  const finding = Date.now();
  await list.getByLabel('Find').fill('street 77');
  await expect(list.getByRole('listitem')).toHaveCount(19);
  outcome('list', { openMs: finding - opening, findMs: Date.now() - finding });
  await list.getByLabel('Find').fill('street 777');
  await list.getByRole('button', { name: /^More/ }).click();
  await list.getByRole('button', { name: 'To the bin' }).click();
  await expect(list.getByText('No job here has')).toBeVisible();
  await list.getByRole('button', { name: 'Bin (1)' }).click();
  await list.getByRole('button', { name: /^More/ }).click();
  await list.getByRole('button', { name: 'Restore' }).click();
  await list.getByRole('button', { name: /^Jobs \(/ }).click();
  await list.getByLabel('Find').fill('open one');
  await list.getByRole('button', { name: /^More/ }).click();
  await list.getByRole('button', { name: 'Duplicate' }).click();
  await expect(list.getByRole('button', { name: /^Copy of The open one/ })).toBeVisible();

  await jobs(page).getByText('Versions', { exact: true }).click();
  await jobs(page).getByLabel('Name this state').fill('as it was');
  await jobs(page).getByRole('button', { name: 'Put by' }).click();
  await page.getByLabel('Title of this job').fill('Something else');
  await page.getByLabel('Title of this job').press('Enter');
  await jobs(page).getByRole('button', { name: 'Go back to it as it was' }).click();
  await expect(page.getByLabel('Title of this job')).toHaveValue('The open one');
  await jobs(page).getByRole('button', { name: 'Close' }).click();

  const data = await page.evaluateHandle((text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], 'dragged.job.json', { type: 'application/json' }));
    return carried;
  }, demoText('small-house'));
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await expect(page.getByText('Let go to open the job file')).toBeVisible();
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  await titled(page, 'A small house: nine circuits, a worn-out panel in a good spot');
});
