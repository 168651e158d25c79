import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { applyEdit } from '../../src/job/applyEdit';
import { openJob } from '../../src/job/parse';
import { chooseOption, demoJob, figures, goTo, openDemo, planned, resultOf, savedFile } from './support';
import { misread, valueAt } from './written';

const EAST = 'To the east wall, with a new disconnect outdoors';

test('a finding chosen is framed in the drawing and told in full, with its section in every code year', async ({
  page,
}) => {
  const job = demoJob('small-house');
  const result = resultOf(job);
  await openDemo(page, 'small-house');
  await chooseOption(page, EAST);
  await goTo(page, 'Check');
  const at = result.plans.findIndex((p) => p.option === 'relocate-a');
  const count = result.plans[at]!.findings.filter((f) => f.effect === 'verify in field').length;
  await page.getByRole('button', { name: new RegExp(`${count}.*verify`) }).click();
  const detail = page.getByRole('region', { name: 'The finding' });
  await expect(detail.getByText('Verify in field', { exact: true })).toBeVisible();
  await expect(detail.getByRole('row', { name: /NEC 2026/ })).toBeVisible();
  // every finding in turn: figures as in the result
  const seen = new Set<string>();
  await page
    .getByRole('button', { name: /stops|extra work/ })
    .and(page.locator(':enabled'))
    .first()
    .click();
  for (;;) {
    for (const { path, text } of await figures(page)) {
      expect(misread(path, text, valueAt(result, path))).toBeNull();
      seen.add(path);
    }
    const next = detail.getByRole('button', { name: 'Next' });
    if (await next.isDisabled()) break;
    await next.click();
  }
  const open = result.plans[at]!.findings.flatMap((f, i) =>
    f.effect === null ? [] : [`plans/${at}/findings/${i}/say`],
  );
  expect(open.filter((path) => !seen.has(path))).toEqual([]);
});

test('what was seen on site is recorded in the job and settles the finding; it can be taken back', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, EAST);
  await goTo(page, 'Check');
  await page.getByRole('button', { name: /verify/ }).click();
  const detail = page.getByRole('region', { name: 'The finding' });
  const confirm = detail.getByText('Looked at on site').first();
  const next = detail.getByRole('button', { name: 'Next' });
  while ((await confirm.count()) === 0) await next.click();
  const rule = ((await detail.locator('small').first().textContent()) ?? '').split(' ')[0]!;
  await confirm.click();
  await detail.getByLabel('Who').first().fill('');
  await detail.getByRole('button', { name: 'Record it' }).first().click();
  await expect(detail.getByRole('alert')).toContainText('who looked');
  await detail.getByLabel('Who').first().fill('R. Tester');
  await detail.getByLabel('When').first().fill('2026-03-02');
  await detail.getByLabel('Note').first().fill('seen with the cover off');
  await detail.getByRole('button', { name: 'Record it' }).first().click();
  await planned(page);
  const recorded = page.getByRole('listitem').filter({ hasText: 'R. Tester, 2026-03-02' });
  await expect(recorded.first()).toBeVisible();
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  expect(opened.ok && opened.value.job.answers).toMatchObject([
    { rule, answer: 'yes', by: 'R. Tester', on: '2026-03-02', note: 'seen with the cover off' },
  ]);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.getByText('Nothing has been recorded yet.')).toBeVisible();
});

test('another code year plans the job anew; what is not read is said and kept; a pocket calculation shows its answer', async ({
  page,
}) => {
  const job = demoJob('small-house');
  await openDemo(page, 'small-house');
  await chooseOption(page, EAST);
  await goTo(page, 'Check');
  await page.getByLabel('Code year', { exact: true }).selectOption('2026');
  await planned(page);
  const changed = applyEdit(job, { edit: 'set value', path: '/code/edition', value: 2026 });
  if (!changed.ok) throw new Error(changed.error.error.say);
  const result = resultOf(changed.value);
  await expect(page.locator('[data-stale]')).toHaveCount(0);
  for (const { path, text } of await figures(page)) expect(misread(path, text, valueAt(result, path))).toBeNull();

  // pocket calculation: 3 conductors of 14 and 3 of 12, clamps, one ground of 12: NEC 314.16(B), Table 314.16(B), 2.00 and 2.25 in³
  const box = page.getByLabel('Conductors, as in 4 x 14, 2 x 12');
  await box.fill('three of each');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByRole('alert')).toContainText('“three of each” is not read');
  await expect(box).toHaveValue('three of each');
  await box.fill('3 x 14, 3 x 12');
  await page.getByLabel('Equipment grounds').fill('1 x 12');
  await page.getByLabel('Clamps inside').selectOption('true');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // 3 × 2.00 + 3 × 2.25 + 2.25 + 2.25 = 17.25
  await expect(page.getByRole('status', { name: 'Answer' })).toContainText('17.25 in³');
  // on paper it stands alone, with what was given
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print it' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Box fill', level: 1 })).toBeVisible();
  await expect(page.getByText('3 x 14, 3 x 12', { exact: true })).toBeVisible();
});
