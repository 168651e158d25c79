import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openJob } from '../../src/job/parse';
import { goTo, openDemo, planned, savedFile } from './support';

test('the question sheet: an answer waits for a name, then changes findings that quote it; it prints, and all rules are told', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  await openDemo(page, 'washer');
  await goTo(page, 'Check');
  await page.getByRole('button', { name: 'Questions' }).click();
  const sheet = page.getByRole('region', { name: 'Questions for the inspector' });
  const surge = sheet.getByLabel('Surge protection');
  await surge.selectOption('not asked for');
  await expect(sheet.getByRole('alert')).toContainText('who answered');
  await expect(surge).toHaveValue('no'); // what was chosen is kept
  await sheet.getByLabel('On', { exact: true }).fill('2026-03-02');
  await sheet.getByLabel('Answered by').fill('R. Tester');
  await sheet.getByLabel('Answered by').press('Enter');
  await planned(page);
  await expect(sheet.getByText('R. Tester, 2026-03-02')).toBeVisible();
  await expect(sheet.getByText('One finding quotes the answer.')).toBeVisible();
  await expect(page.getByRole('button', { name: /Undo.*Inspector’s answer: Surge protection/ })).toBeVisible();
  const height = sheet.getByLabel('Highest handle, inches');
  await height.fill('tall');
  await height.press('Enter');
  await expect(sheet.getByText('“tall” is not a number of inches. Kept as typed.')).toBeVisible();
  await expect(height).toHaveValue('tall');

  await sheet.getByRole('button', { name: 'Print the sheet' }).click();
  await expect(page.locator('html[data-printed]')).toBeAttached();
  await page.emulateMedia({ media: 'print' });
  const paper = page
    .locator('body > div')
    .filter({ has: page.getByRole('heading', { level: 1 }) })
    .last();
  await expect(
    paper.getByRole('row', { name: /surge protective device.*not asked for.*R. Tester.*2026-03-02/i }),
  ).toBeVisible();
  await page.emulateMedia({ media: null });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  expect(opened.ok && opened.value.job.code).toMatchObject({
    amendments: { spdInsideHouse: 'no' },
    saidBy: { spdInsideHouse: { by: 'R. Tester', on: '2026-03-02' } },
  });

  await page.getByRole('button', { name: 'Coverage' }).click();
  const coverage = page.getByRole('region', { name: 'What is checked, and what is not' });
  await expect(coverage.getByText('AFCI-EXT', { exact: true })).toBeVisible();
  await coverage.getByLabel('Show').selectOption('not checked');
  const rules = coverage.getByRole('listitem').filter({ hasText: '2026' });
  expect(await rules.count()).toBeGreaterThan(0);
  for (const text of await rules.allTextContents()) expect(text).toMatch(/not checked\. \S+ \S+/);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
