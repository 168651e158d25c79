import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { readCsv } from '../../src/documents/csv';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { groupedJob } from '../unit/grid/support';
import { demoJob, figures, openDemo, planned, resultOf, savedFile } from './support';
import { misread, valueAt } from './written';

const SIX = [
  '1\tKitchen counter\t20\t1\t12/2 w/G',
  '2\tBedrooms\t15\t1\t14/2 w/G',
  '3-5\tRange\t50\t2\t6/3 w/G',
  '4\tBath\t20\t1\t12/2 w/G',
  '6\tLiving room\t15\t1\t14/2 w/G',
  '7\tFurnace\t15\t1\t14/2',
].join('\r\n');

/** A job with a room, an old panel, one cable group and one option; not one circuit. */
const emptyJob = (): Job => {
  const job = groupedJob();
  const option = demoJob('washer').options[0]!;
  return {
    ...job,
    title: 'Nothing entered yet',
    options: [
      {
        ...option,
        pins: [],
        moves: [],
        replaces: [{ enclosure: 'old', becomes: 'removed' }],
        enclosure: { ...option.enclosure, on: { wall: 'north', face: 'front', left: 120, bottom: 48 } },
      },
    ],
  };
};
const openFile = async (page: Page, job: Job): Promise<void> => {
  await page.goto('./');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a job file' }).click(),
  ]);
  await chooser.setFiles({
    name: 'j.job.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(job)),
  });
  await planned(page);
};
const toGrid = async (page: Page): Promise<Locator> => {
  await page.evaluate(() => {
    location.hash = '#survey/circuits';
  });
  const grid = page.getByRole('grid', { name: 'Circuits and home runs' });
  await grid.waitFor();
  return grid;
};
/** By row and column, from 0; a row's head is no cell. */
const cell = (grid: Locator, row: number, column: number): Locator =>
  grid
    .getByRole('row')
    .nth(row + 1)
    .getByRole('gridcell')
    .nth(column);
const jobNow = async (page: Page): Promise<Job> => {
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  if (!opened.ok) throw new Error(opened.error.error.say);
  return opened.value.job;
};

test('six circuits pasted into an empty job are one step, planned, and as the engine says', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openFile(page, emptyJob());
  const grid = await toGrid(page);
  await page.evaluate((text) => navigator.clipboard.writeText(text), SIX);
  await cell(grid, 0, 0).click();
  await page.keyboard.press('Control+v');
  await expect(page.getByText('6 circuits on 6 cables')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo Paste 6 rows' })).toBeVisible();
  await expect(cell(grid, 2, 4)).toHaveText('6/3 w/G');
  await planned(page);
  const job = await jobNow(page);
  expect(job.homeRuns.map((h) => h.cable.size)).toEqual(['12', '14', '6', '12', '14', '14']);
  const result = resultOf(job);
  expect(result.plans[0]!.runs).toHaveLength(6);
  await page.evaluate(() => {
    location.hash = '#closeout/crew';
  });
  await page.getByRole('region', { name: 'Crew' }).waitFor();
  await planned(page);
  const shown = await figures(page);
  expect(shown.filter(({ path }) => /runs\/\d+\/way$/.test(path)).length).toBeGreaterThanOrEqual(6);
  expect(shown.flatMap(({ path, text }) => misread(path, text, valueAt(result, path)) ?? [])).toEqual([]);
  await toGrid(page);
  await page.getByRole('button', { name: 'Undo Paste 6 rows' }).click();
  await expect(page.getByText('0 circuits on 0 cables')).toBeVisible();
});

test('keys: type, Enter, F2, Escape, Tab, fill down, copy, cut, delete; a bad cell keeps its text', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openDemo(page, 'small-house');
  const grid = await toGrid(page);
  await cell(grid, 0, 1).click();
  await page.keyboard.type('Counter');
  await page.keyboard.press('Enter');
  await expect(cell(grid, 0, 1)).toHaveText('Counter');
  await expect(cell(grid, 1, 1)).toBeFocused();
  await page.keyboard.press('F2');
  await page.keyboard.type(' and more');
  await page.keyboard.press('Escape');
  await expect(cell(grid, 1, 1)).toHaveText('Kitchen counter right');
  await page.keyboard.press('Tab');
  await page.keyboard.type('lots');
  await page.keyboard.press('Tab');
  await expect(cell(grid, 1, 2)).toHaveAttribute('aria-invalid', 'true');
  await expect(cell(grid, 1, 2)).toHaveText('lots');
  await expect(page.getByText('Row 2, Amps: “lots” is no number.')).toBeVisible();
  expect((await jobNow(page)).circuits[1]!.amps).toBe(20);
  await page.getByRole('button', { name: 'Put back what the job has' }).click();
  await expect(cell(grid, 1, 2)).toHaveText('20');
  // fill down: the first row's amps into the three below
  await cell(grid, 0, 2).click();
  await page.keyboard.type('25');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowUp');
  for (let k = 0; k < 3; k++) await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Control+d');
  await expect(cell(grid, 3, 2)).toHaveText('25');
  await expect(page.getByRole('button', { name: 'Undo Fill down 3 rows' })).toBeVisible();
  await page.keyboard.press('Control+c');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(['25', '25', '25', '25'].join('\r\n'));
  await page.keyboard.press('Delete');
  await expect(cell(grid, 2, 2)).toHaveText('not known');
  await expect(page.getByRole('button', { name: 'Undo Clear 4 cells' })).toBeVisible();
  // a keyboard is not caught: past the last column Tab leaves
  await page.keyboard.press('End');
  await page.keyboard.press('Tab');
  await expect(grid.locator(':focus')).toHaveCount(0);
  const found = await new AxeBuilder({ page }).analyze();
  expect(found.violations.map((v) => v.id)).toEqual([]);
});

test('CSV out and in: the file is the grid, a file with faults is told by line and column', async ({ page }) => {
  await openDemo(page, 'small-house');
  const grid = await toGrid(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save CSV' }).click(),
  ]);
  const rows = readCsv(readFileSync(await download.path(), 'utf8'), ',');
  expect(rows.ok && rows.value.length).toBe((await grid.getByRole('row').count()) - 1);
  await page.getByLabel('Read CSV').setInputFiles({
    name: 'mine.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('Ckt;Description;Amps;Color\r\n91;Sauna;40;red\r\n92;=1+1;much;blue\r\n'),
  });
  await expect(page.getByText('mine.csv: 2 rows read.')).toBeVisible();
  await expect(page.getByText('Row 3, Amps: “much” is no number.')).toBeVisible();
  await expect(page.getByText('The column “Color” is not known here and was left out.')).toBeVisible();
  const job = await jobNow(page);
  expect(job.circuits.slice(-2).map((c) => [c.number, c.label, c.amps])).toEqual([
    ['91', 'Sauna', 40],
    ['92', '=1+1', 'unknown'],
  ]);
});

test('on a phone a row is a form with large targets', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page, 'small-house');
  await page.evaluate(() => {
    location.hash = '#survey/circuits';
  });
  await page.getByRole('button', { name: 'Open circuit 3' }).click();
  await page.getByLabel('Amps').fill('30');
  await page.getByLabel('Amps').press('Enter');
  await page.getByLabel('Poles').selectOption('2');
  for (const input of await page.getByRole('form').getByRole('textbox').all())
    expect((await input.boundingBox())!.height).toBeGreaterThanOrEqual(44);
  expect((await jobNow(page)).circuits.find((c) => c.number === '3')).toMatchObject({ amps: 30, poles: 2, volts: 240 });
});
