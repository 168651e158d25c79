import { expect, test } from '@playwright/test';
import { serveBuild } from './staticServer';
import { chooseOption, DEMOS, planned } from './support';

test('after the first load everything works with the server gone: reload, another demo, an edit, the planner', async ({
  page,
}) => {
  const server = await serveBuild();
  await page.goto(server.url);
  await page.getByRole('button', { name: DEMOS['small-house'] }).click();
  await planned(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await server.stop();
  await expect(fetch(server.url)).rejects.toThrow(); // it is gone

  await page.reload();
  await planned(page);
  await expect(page.getByText('NEC 2017')).toBeVisible();
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page.getByRole('dialog').getByRole('button', { name: DEMOS.washer }).click();
  await planned(page);
  await chooseOption(page, 'Same wall, clear of the washer');
  await page.getByLabel('From left end').fill('90');
  await page.getByLabel('From left end').press('Enter');
  await planned(page);
  await expect(page.getByLabel('From left end')).toHaveValue(`7'-6"`);
  expect(await page.evaluate(() => document.fonts.check('12px "Sheet Letters"'))).toBe(true);
});
