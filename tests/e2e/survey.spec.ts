import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { blankJob } from '../../src/job/blankJob';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { goTo, openDemo, planned, savedFile } from './support';
import { surveyedJob } from './surveyExpected';
import { choose, drawJoists, drawOldWork, panel, plan, put, thing, tool } from './surveying';

const saved = async (page: Page): Promise<Job> => {
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  if (!opened.ok) throw new Error(opened.error.error.say);
  return opened.value.job;
};
test('from an empty job: room, door, joists, washer, old panel, cables; saved, and undone back to empty', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'New job' }).click();
  await planned(page);
  const empty = await saved(page);
  expect(empty).toEqual(blankJob({ id: empty.id, on: empty.changedOn }));

  await tool(page, 'Walls, one by one');
  for (const [i, length] of [`14'`, '20 ft', '168', `20' 0 1/2"`].entries()) {
    await page.getByLabel(`Length of wall ${i + 1}`).fill(length);
    await page.getByRole('button', { name: 'Set, next wall' }).click();
  }
  const walls = panel(page, 'Walls, one by one');
  await expect(walls.getByRole('status')).toContainText('Closing error 1/2″');
  await put(page, 'Length of wall 4', `10'`);
  await expect(walls.getByRole('status')).toContainText('More than a measuring error');
  await expect(walls.getByRole('button', { name: /draw the room/i })).toHaveCount(0);
  await put(page, 'Length of wall 4', `20'`);
  await walls.getByRole('button', { name: 'Draw the room' }).click();

  await thing(page, 'west');
  await put(page, 'Thickness', '8');
  await choose(page, 'Now, built as', 'poured');

  await tool(page, 'Doors, windows');
  await choose(page, 'Wall', 'south');
  await put(page, 'From left end', `2'`);
  await page.getByRole('button', { name: 'Add door' }).click();
  await choose(page, 'Hinge, facing it', 'left');
  await choose(page, 'Swings to the', 'front (room)');

  await drawJoists(page);

  // placed by the pointer, set by number, then dragged against the wall
  await tool(page, 'Things in the way');
  await panel(page, 'Things in the way').getByRole('button', { name: 'washer' }).click();
  await plan(page).click();
  await put(page, 'x, across', '100');
  await put(page, 'y, up the sheet', '100');
  await put(page, 'Moves for', '$250');
  const box = await plan(page)
    .locator('[data-body]')
    .evaluate((path: SVGPathElement) => {
      const { x, y, width, height } = path.getBBox();
      const on = path.ownerSVGElement!.getBoundingClientRect();
      return { x: on.left + x + width / 2, y: on.top + y + height / 2, scale: height / 28 };
    });
  await page.mouse.move(box.x, box.y);
  await page.mouse.down();
  await page.mouse.move(box.x, box.y - 20 * box.scale);
  await page.mouse.move(box.x, box.y - 40 * box.scale + 3);
  await page.mouse.up();
  await expect(page.getByLabel('y, up the sheet')).toHaveValue(`11'-8"`);
  await expect(page.getByRole('button', { name: /^Undo Change place of washer/ })).toBeVisible();

  await drawOldWork(page);

  const job = await saved(page);
  expect(job).toEqual(surveyedJob({ id: job.id, on: job.changedOn }));

  const undo = page.getByRole('button', { name: /^Undo/ });
  for (let k = 0; k < 60 && (await undo.isEnabled()); k++) await undo.click();
  expect(await saved(page)).toEqual(empty);
});

test('what cannot do without a thing is named before it goes; unknown leads to its field; no violation', async ({
  page,
}) => {
  await openDemo(page, 'small-house');
  await goTo(page, 'Survey');
  await thing(page, 'old');
  await page.getByRole('button', { name: 'Remove', exact: true }).click();
  const question = page.getByRole('alertdialog');
  await expect(question).toContainText('cable group g bay');
  await question.getByRole('button', { name: 'Keep it' }).click();
  await page.getByLabel('Bus rating', { exact: true }).fill('a hundred');
  await page.getByLabel('Bus rating', { exact: true }).press('Enter');
  await expect(page.getByText('“a hundred” is not read as a number')).toBeVisible();
  await expect(page.getByLabel('Bus rating', { exact: true })).toHaveValue('a hundred');
  await page.getByRole('button', { name: 'Bus rating: not known' }).click();
  await expect(page.getByLabel('Bus rating', { exact: true })).toHaveValue('not known');
  const unknown = page.getByRole('region', { name: /Still unknown/ });
  await unknown.getByRole('button', { name: /Show all/ }).click();
  await unknown
    .getByRole('button', { name: /^1?\s*.*Feeder/ })
    .first()
    .click();
  await expect(page.getByRole('region', { name: 'Selected: Feeder' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);

  const sideways = () =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await tool(page, 'House, feeder');
  for (const [width, text] of [
    [1440, '200%'],
    [820, '100%'],
    [320, '100%'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, text);
    expect(await sideways(), `at ${width}, text ${text}`).toBeLessThanOrEqual(0);
  }
});
