import { expect, type Page, test } from '@playwright/test';
import { applyEdit } from '../../src/job/applyEdit';
import type { Job } from '../../src/job/schema';
import { chooseOption, demoJob, figure, figures, goTo, openDemo, planned, resultOf, tallyOf } from './support';
import { misread, valueAt } from './written';

const TITLE = 'Same wall, clear of the washer';
/** The quickest demo to plan: for what does not hang on the figures. */
const SMALL = 'To the east wall, with a new disconnect outdoors';
const offset = (page: Page) => page.getByLabel('From left end');
const type = async (page: Page, text: string): Promise<void> => {
  await offset(page).fill(text);
  await offset(page).press('Enter');
};
const movedTo = (job: Job, left: number): Job => {
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const moved = applyEdit(job, { edit: 'move panel', option: option.id, on: { ...option.enclosure.on, left } });
  if (!moved.ok) throw new Error(moved.error.error.say);
  return moved.value;
};
const shownAs = async (page: Page, job: Job): Promise<void> => {
  const result = resultOf(job);
  for (const { path, text } of await figures(page)) expect(misread(path, text, valueAt(result, path))).toBeNull();
};

/** The tally of the moved option alone. */
const tallyShownAs = async (page: Page, job: Job): Promise<void> => {
  const tally = tallyOf(job, 'relocate-a');
  const shown = (await figures(page)).filter(({ path }) => path.startsWith('plans/1/tally/'));
  expect(shown.length).toBeGreaterThan(5);
  for (const { path, text } of shown)
    expect(misread(path, text, valueAt({ plans: [null, { tally }] }, path))).toBeNull();
};

test('typing the offset moves the panel: figures, drawing and advice follow; undo and redo by name', async ({
  page,
}) => {
  const job = demoJob('washer');
  const before = resultOf(job);
  const moved = movedTo(job, 140);
  const after = resultOf(moved);
  const at = before.plans.findIndex((p) => p.option === 'relocate-a');
  expect(after.plans[at]!.tally.likelyCents).not.toBe(before.plans[at]!.tally.likelyCents);

  await openDemo(page, 'washer');
  await chooseOption(page, TITLE);
  await expect(offset(page)).toHaveValue(`6'-4"`);
  await type(page, `11' 8"`);
  await planned(page);
  await expect(offset(page)).toHaveValue(`11'-8"`);
  await shownAs(page, moved);
  await expect(page.getByRole('img', { name: /room from above/ })).toContainText('11′-8″');

  await page.getByRole('button', { name: /^Undo .*clear of the washer/ }).click();
  await expect(offset(page)).toHaveValue(`6'-4"`);
  await shownAs(page, job);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.getByRole('button', { name: /^Redo .*clear of the washer/ }).click();
  await expect(offset(page)).toHaveValue(`11'-8"`);
  await shownAs(page, moved);
});

test('figures from before an edit are shown as such until the new ones are there', async ({ page }) => {
  await openDemo(page, 'washer');
  await chooseOption(page, TITLE);
  await page.evaluate(() => {
    const seen: boolean[] = [];
    Object.assign(window, { seenStale: seen });
    new MutationObserver(() => seen.push(document.querySelector('[data-stale]') !== null)).observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
    });
  });
  await type(page, '90');
  await planned(page);
  expect(await page.evaluate(() => (window as unknown as { seenStale: boolean[] }).seenStale.includes(true))).toBe(
    true,
  );
  await expect(page.locator('[data-stale]')).toHaveCount(0);
});

test('a length that is none, or that does not fit the wall, is kept as typed with the reason', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, SMALL);
  for (const [typed, reason] of [
    ['six feet', /not read as a length/],
    ['99 ft', /along a wall face that is/],
  ] as const) {
    await type(page, typed);
    await expect(offset(page)).toHaveValue(typed);
    await expect(offset(page)).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByText(reason)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  }
  await offset(page).press('Escape');
  await expect(offset(page)).toHaveValue(`5'-2"`);
});

test('edits in quick succession: the last one is the one planned', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, SMALL);
  for (const left of ['100', '110', '120', '90']) await type(page, left);
  await planned(page);
  await tallyShownAs(page, movedTo(movedTo(movedTo(movedTo(demoJob('small-house'), 100), 110), 120), 90));
});

test('the job is kept by itself within a second and opens again after a reload', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, SMALL);
  await type(page, '90');
  await expect(page.getByText(/^kept here/)).toBeVisible({ timeout: 1500 });
  await page.waitForTimeout(600); // the wait for further key strokes is over by then
  await page.reload();
  await planned(page);
  await chooseOption(page, SMALL);
  await expect(offset(page)).toHaveValue(`7'-6"`);
  await tallyShownAs(page, movedTo(demoJob('small-house'), 90));
});

test('a tab left at once after an edit still keeps it', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, SMALL);
  await type(page, '90');
  await page.reload();
  await planned(page);
  await chooseOption(page, SMALL);
  await expect(offset(page)).toHaveValue(`7'-6"`);
});

test('a home run is singled out in the drawing from its list, and released', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, SMALL);
  const plan = page.getByRole('img', { name: /room from above/ });
  const singled = plan.locator('path[data-layer="marks"]');
  await expect(singled).toHaveCount(0);
  await page.getByRole('button', { name: '4a', exact: true }).click();
  await expect(singled).not.toHaveCount(0);
  await page.getByRole('button', { name: /4a singled out/ }).click();
  await expect(singled).toHaveCount(0);
  await goTo(page, 'Price');
  await expect(figure(page, 'advice/say')).toBeVisible();
});
