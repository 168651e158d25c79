import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openJob } from '../../src/job/parse';
import { chooseOption, goTo, openDemo, savedFile } from './support';

test('where it can go: seen on the drawings, stopped, gone through by keys, and made an option', async ({ page }) => {
  await openDemo(page, 'small-house');
  await goTo(page, 'Lay out');
  await chooseOption(page, 'To the east wall, with a new disconnect outdoors');
  await page.getByRole('button', { name: 'Where it can go' }).click();
  const bar = page.getByRole('region', { name: 'Where it can go' });
  await expect(bar).toContainText(/\d+ of \d+ places planned/);
  await bar.getByRole('button', { name: 'Stop' }).click();
  await expect(bar).toContainText(/Stopped after \d+ of \d+ places/);

  const walls = page.getByRole('region', { name: /^Wall drawing of/ });
  expect(await walls.locator('[data-id^="place "]').count()).toBeGreaterThan(100);
  expect(await walls.locator('[data-id="barred place"]').count()).toBeGreaterThan(0);
  expect(
    await page
      .getByRole('region', { name: /^Plan of/ })
      .locator('[data-id^="place "]')
      .count(),
  ).toBeGreaterThan(20);

  const cursor = walls.getByRole('slider', { name: 'Place along the walls' });
  await cursor.focus();
  await page.keyboard.press('Home');
  await expect(cursor).toHaveAttribute('aria-valuenow', '1');
  const said = (await cursor.getAttribute('aria-valuetext'))!;
  await expect(bar).toContainText(said.split(';')[0]!);
  // over the door it is barred, and says by which rule and what is there
  for (let i = 0; i < 90 && (await cursor.getAttribute('data-clear')) === 'true'; i++)
    await page.keyboard.press('ArrowRight');
  await expect(cursor).toHaveAttribute('aria-valuetext', /Barred by DEDICATED.*a door/);
  await expect(bar).toContainText('Barred by DEDICATED');
  const axe = await new AxeBuilder({ page }).analyze();
  expect(axe.violations.map((v) => v.id)).toEqual([]);

  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await expect(bar).toHaveCount(0);
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  const made = opened.ok ? opened.value.job.options.find((o) => o.title.includes(', at ')) : undefined;
  expect(made).toMatchObject({ kind: 'relocate', enclosure: { on: { left: 0 } } });
});
