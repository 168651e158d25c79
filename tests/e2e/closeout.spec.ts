import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { readCsv } from '../../src/documents/csv';
import { chooseOption, demoJob, figures, goTo, openDemo, planned, resultOf } from './support';
import { misread, valueAt } from './written';

const TITLE = 'To the east wall, with a new disconnect outdoors';
const job = demoJob('small-house');
const result = resultOf(job);
const at = result.plans.findIndex((p) => p.option === job.options.find((o) => o.title === TITLE)!.id);
const plan = result.plans[at]!;

test('every list of the closeout is the plan’s, on screen and on paper; CSV files too', async ({ page }) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, TITLE);
  await goTo(page, 'Closeout');
  const seen = new Set<string>();
  for (const part of ['Crew', 'Cuts and order', 'Boxes', 'Directory']) {
    await page.getByRole('button', { name: part, exact: true }).click();
    await page.getByRole('region', { name: part, exact: true }).waitFor();
    const shown = await figures(page);
    expect(shown.flatMap(({ path, text }) => misread(path, text, valueAt(result, path)) ?? [])).toEqual([]);
    for (const { path } of shown) seen.add(path);
  }
  const promised = [
    ...plan.runs.map((_, i) => `runs/${i}/way`),
    ...plan.runs.flatMap((r, i) => (r.newCable ? [`runs/${i}/cutLength`, `runs/${i}/codeLength`] : [])),
    ...plan.cuts.flatMap((cut, c) =>
      cut.coils.flatMap((coil, k) => coil.pieces.map((_, p) => `cuts/${c}/coils/${k}/pieces/${p}/length`)),
    ),
    ...plan.order.map((_, i) => `order/${i}/quantity`),
    ...plan.boxes.map((_, i) => `boxes/${i}/fillIn3`),
    ...plan.directory.map((_, i) => `directory/${i}/text`),
    ...plan.time.byTask.map((_, i) => `time/byTask/${i}/hours`),
  ];
  expect(promised.filter((path) => !seen.has(`plans/${at}/${path}`))).toEqual([]);

  await page.getByRole('button', { name: 'Cuts and order', exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Cut list, CSV' }).click(),
  ]);
  const read = readCsv(readFileSync(await download.path(), 'utf8'), ',');
  const lines = read.ok ? read.value.slice(1) : [];
  expect(lines.map((l) => [l[0], Number(l[3]), l[4], Number(l[6]), Number(l[8])])).toEqual(
    plan.cuts.flatMap((cut) =>
      cut.coils.flatMap((c) => c.pieces.map((p) => [cut.cable, c.length, p.homeRun, p.length, c.left])),
    ),
  );
  expect(lines.length).toBeGreaterThan(3);
});

test('the papers print: letter pages with every home run, the cautions, signs that read, page numbers', async ({
  page,
}) => {
  await openDemo(page, 'small-house');
  await chooseOption(page, TITLE);
  await goTo(page, 'Closeout');
  await page.emulateMedia({ media: 'print' });
  const papers = page.locator('.print-paper');
  await expect(papers).toBeVisible();
  await expect(page.locator('#app')).toBeHidden();
  await expect(papers).toContainText('line-side conductors stay live');
  await expect(papers).toContainText('Ω');
  for (const run of plan.runs)
    expect(await papers.locator(`[data-figure="plans/${at}/runs/${plan.runs.indexOf(run)}/way"]`).count()).toBe(1);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const text = pdf.toString('latin1');
  expect(text.startsWith('%PDF')).toBe(true);
  // 8.5 by 11 in at 72 points
  const boxes = [...text.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map((m) => [m[1], m[2]]);
  expect(boxes.length).toBeGreaterThanOrEqual(5);
  for (const box of boxes) expect(box.map(Number)).toEqual([612, 792]);
  expect(pdf.length).toBeGreaterThan(40_000);
});

test('an alternate is taken and left by name, and the price follows the engine', async ({ page }) => {
  await openDemo(page, 'small-house');
  await goTo(page, 'Price');
  const box = page.getByRole('checkbox', { name: /surge protective device/i });
  await box.check();
  await expect(page.getByRole('button', { name: 'Undo Take surge protective device' })).toBeVisible();
  await planned(page);
  const taken = resultOf({ ...job, alternates: [{ id: 'spd', taken: true }] });
  for (const { path, text } of await figures(page)) expect(misread(path, text, valueAt(taken, path))).toBeNull();
  await box.uncheck();
  await planned(page);
  expect(await page.getByRole('button', { name: 'Undo Leave surge protective device' }).count()).toBe(1);
});
