import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { bookCsv } from '../../src/documents/bookCsv';
import { defaultBook } from '../../src/pricing/defaultBook';
import { demoJob, figures, openDemo, resultOf } from './support';
import { misread, valueAt } from './written';

const PARTS = ['Range', 'Compare', 'Day', 'Price book'] as const;

test('every part of the price sheet: its figures are those of the result; keyboard reaches the parts', async ({
  page,
}) => {
  const result = resultOf(demoJob('small-house'));
  await openDemo(page, 'small-house');
  await page.keyboard.press('4');
  for (const name of PARTS) {
    await page.getByRole('button', { name, exact: true }).press('Enter');
    await expect(page.getByRole('button', { name, exact: true })).toHaveAttribute('aria-pressed', 'true');
    const shown = await figures(page);
    expect(shown.flatMap(({ path, text }) => misread(path, text, valueAt(result, path)) ?? [])).toEqual([]);
    if (name === 'Range') expect(shown.filter(({ path }) => path.includes('unitChanges')).length).toBeGreaterThan(5);
    if (name === 'Compare') expect(shown.filter(({ path }) => path.includes('/rows/')).length).toBeGreaterThan(5);
  }
});

test('a price is typed in the book: wrong ones stay with why, a right one moves the price and can be undone', async ({
  page,
}) => {
  await openDemo(page, 'small-house');
  await page.keyboard.press('4');
  await page.getByRole('button', { name: 'Price book', exact: true }).click();
  const hour = page.getByRole('textbox', { name: /^Labor-hour at cost/ });
  for (const [typed, why] of [
    ['-4', /too little/],
    ['lots', /no number/],
    ['9999', /too much/],
    ['', /nothing is entered/],
  ] as const) {
    await hour.fill(typed);
    await hour.press('Enter');
    await expect(page.getByRole('alert')).toHaveText(why);
    await expect(hour).toHaveValue(typed);
  }
  await hour.fill('78');
  await hour.press('Enter');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(page.getByText('kept in this job', { exact: false })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Undo/ })).toContainText('Labor-hour');

  const file = bookCsv({ ...defaultBook, id: 'own' }).replace('material,spd,each,,96,', 'material,spd,each,,-96,');
  await page
    .locator('input[type=file][accept*=csv]')
    .setInputFiles({ name: 'b.csv', mimeType: 'text/csv', buffer: Buffer.from(file) });
  await expect(page.getByRole('alert')).toContainText(/Line \d+, likely: -96 is too little/);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).click(),
  ]);
  expect(readFileSync(await saved.path(), 'utf8')).toContain('rate,labor-hour,$,,78,');
});

test('a book kept on this machine is offered to a job that keeps an older one', async ({ page }) => {
  await openDemo(page, 'small-house');
  await page.keyboard.press('4');
  await page.getByRole('button', { name: 'Price book', exact: true }).click();
  const dated = page.getByRole('textbox', { name: 'Dated' });
  await dated.fill('2027-02-01');
  await dated.press('Enter');
  await dated.fill('2027-03-01');
  await dated.press('Enter');
  await page.getByRole('button', { name: 'Keep this book for other jobs' }).click();
  await dated.fill('2026-05-01');
  await dated.press('Enter');
  await page.getByRole('button', { name: 'Options', exact: true }).click();
  await expect(page.getByText(/keeps its book “own” of 2026-05-01.*2027-03-01/)).toBeVisible();
  await page.getByRole('button', { name: 'Price with it' }).click();
  await expect(page.getByText(/keeps its book/)).toHaveCount(0);
  await expect(page.getByRole('button', { name: /^Undo/ })).toContainText('2027-03-01');
});
