import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { openJob } from '../../src/job/parse';
import { chooseOption, demoText, openDemo, planned, savedFile } from './support';

const give = (page: Page, name: string, text: string): Promise<void> =>
  page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

const good = demoText('washer');
const BAD: readonly [what: string, text: string, place: string | null, say: RegExp][] = [
  ['truncated', good.slice(0, 5000), null, /Not JSON: line \d+, column \d+/],
  ['not a job', '{"format":"something","schema":1}', '/format', /Expected "format": "backboard-job"/],
  ['of a newer version', good.replace('"schema": 1', '"schema": 9'), '/schema', /reads up to schema 1/],
  ['with a wrong value', good.replace('"poles": 1', '"poles": 3'), '/circuits/0/poles', /Expected 1 or 2, found 3/],
  [
    'with a name that leads nowhere',
    good.replace('"wall": "north-laundry"', '"wall": "nowhere"'),
    '/on/wall',
    /no wall/,
  ],
];

for (const [what, text, place, say] of BAD)
  test(`a file that is ${what} is refused with its place, and the open job stays`, async ({ page }) => {
    await openDemo(page, 'small-house');
    await give(page, 'bad.job.json', text);
    const alert = page.getByRole('alert');
    await expect(alert).toContainText('bad.job.json was not opened.');
    await expect(alert).toContainText(say);
    if (place !== null) await expect(alert.locator('code')).toContainText(place);
    await expect(alert).toContainText('The job that is open is unchanged.');
    await expect(page.getByTitle('A small house: nine circuits, a worn-out panel in a good spot')).toBeVisible();
    await alert.getByRole('button', { name: 'Close' }).click();
    await expect(alert).toHaveCount(0);
  });

test('a bad file on the empty sheet is refused and the sheet stays', async ({ page }) => {
  await page.goto('./');
  await give(page, 'notes.txt', 'hello');
  await expect(page.getByRole('alert')).toContainText('notes.txt was not opened.');
  await expect(page.getByRole('button', { name: 'Open a job file' })).toBeVisible();
});

test('saved to a file and opened again, it is the same job with the edit in it', async ({ page, browser }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, 'To the east wall, with a new disconnect outdoors');
  await page.getByLabel('From left end').fill('90 1/2');
  await page.getByLabel('From left end').press('Enter');
  const download = await savedFile(page);
  expect(download.suggestedFilename()).toBe('demo-small-house.job.json');
  const text = readFileSync(await download.path(), 'utf8');
  const opened = openJob(text);
  expect(opened.ok && opened.value.repairs).toEqual([]);
  expect(opened.ok && opened.value.job.options.find((o) => o.id === 'relocate-a')?.enclosure.on.left).toBe(90.5);

  const elsewhere = await browser.newContext();
  const other = await elsewhere.newPage();
  await other.goto('http://localhost:4199/');
  await give(other, download.suggestedFilename(), text);
  await planned(other);
  await chooseOption(other, 'To the east wall, with a new disconnect outdoors');
  await expect(other.getByLabel('From left end')).toHaveValue(`7'-6 1/2"`);
  await elsewhere.close();
});

test('jobs opened one after the other are all kept, and each opens again', async ({ page }) => {
  await openDemo(page, 'small-house');
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Two panels behind a washer' }).click();
  await planned(page);
  await page.getByText(/^kept here/).waitFor();
  await page.getByRole('button', { name: 'Jobs' }).click();
  const kept = page.getByRole('dialog').getByRole('button', { name: /A small house: nine circuits.*\d{4}-\d\d-\d\d/ });
  await kept.click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByText('NEC 2017')).toBeVisible();
});
