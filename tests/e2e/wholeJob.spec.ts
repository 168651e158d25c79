import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, type Page, test } from '@playwright/test';
import type { Result } from '../../src/facts/result';
import { figure, figures, goTo, planned, savedFile } from './support';
import { drawJoists, drawOldWork, panel, put, tool } from './surveying';
import { misread, valueAt } from './written';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
/** Number, name, breaker, poles, cable, group, what it serves, protection today. */
const SIX = [
  '1\tKitchen counter\t20\t1\t12/2 w/G\tcables\tkitchen\tGFCI',
  '2\tBedrooms\t15\t1\t14/2 w/G\tcables\tbedroom\tnone',
  '3-5\tRange\t50\t2\t6/3 w/G\tcables\tkitchen\tnone',
  '4\tBath\t20\t1\t12/2 w/G\tcables\tbath\tGFCI',
  '6\tLiving room\t15\t1\t14/2 w/G\tcables\tliving\tnone',
  '7\tFurnace\t15\t1\t14/2 w/G\tcables\tmechanical\tnone',
].join('\r\n');

/** What the command line says of a job file: a process of its own, nothing shared with the page. */
const commandLine = async (file: string): Promise<Result> => {
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', 'bin/plan.ts', file, '--json'], {
    cwd: ROOT,
    maxBuffer: 1 << 28,
  });
  return JSON.parse(stdout) as Result;
};

const survey = async (page: Page): Promise<void> => {
  await tool(page, 'Rectangle');
  await put(page, 'Across', `20'`);
  await put(page, 'Up the sheet', `14'`);
  await panel(page, 'Rectangle').getByRole('button', { name: 'Draw the room' }).click();

  await drawJoists(page);
  await drawOldWork(page);
};

const pasteSix = async (page: Page): Promise<void> => {
  await page
    .getByRole('link', { name: 'Circuits', exact: true })
    .or(page.getByRole('button', { name: 'Circuits', exact: true }))
    .first()
    .click();
  const grid = page.getByRole('grid', { name: 'Circuits and home runs' });
  await page.evaluate((text) => navigator.clipboard.writeText(text), SIX);
  await grid.getByRole('row').nth(1).getByRole('gridcell').first().click();
  await page.keyboard.press('Control+v');
  await expect(page.getByText('6 circuits on 6 cables')).toBeVisible();
};

const relocate = async (page: Page): Promise<void> => {
  await goTo(page, 'Lay out');
  await page.getByRole('button', { name: 'Relocate here' }).click();
  await planned(page);
  const handle = page.getByRole('region', { name: /^Plan of/ }).getByRole('slider');
  const box = (await handle.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let k = 1; k <= 8; k++) await page.mouse.move(x + 20 * k, y);
  await page.mouse.up();
  await planned(page);
  await expect(page.locator('[data-stale]')).toHaveCount(0);
};

test('from an empty job to price and cut list: what the sheets show is what the command line says of the saved file', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('./');
  await page.getByRole('button', { name: 'New job' }).click();
  await planned(page);
  await goTo(page, 'Check');
  await page.getByLabel('Code year', { exact: true }).selectOption('2023');
  await goTo(page, 'Survey');
  await survey(page);
  await pasteSix(page);
  await relocate(page);

  const folder = mkdtempSync(join(tmpdir(), 'backboard-'));
  const file = join(folder, 'drawn.job.json');
  await (await savedFile(page)).saveAs(file);
  const result = await commandLine(file).finally(() => rmSync(folder, { recursive: true }));
  const [plan] = result.plans;
  expect(result.plans).toHaveLength(1);
  // a job that proves something: cables are extended, some past 6 ft, and cable is cut
  expect(plan!.runs).toHaveLength(6);
  expect(plan!.tally.afciAdded).toBeGreaterThan(0);
  expect(plan!.cuts.flatMap((c) => c.coils.flatMap((coil) => coil.pieces)).length).toBeGreaterThan(0);

  const seen = new Set<string>();
  const agree = async (): Promise<void> => {
    const shown = await figures(page);
    expect(shown.flatMap(({ path, text }) => misread(path, text, valueAt(result, path)) ?? [])).toEqual([]);
    for (const { path } of shown) seen.add(path);
  };
  await expect(figure(page, 'plans/0/tally/afciAdded')).toHaveText(String(plan!.tally.afciAdded));
  await agree();
  await goTo(page, 'Price');
  await agree();
  await goTo(page, 'Closeout');
  await page.getByRole('button', { name: 'Cuts and order', exact: true }).click();
  await page.getByRole('region', { name: 'Cuts and order', exact: true }).waitFor();
  await agree();

  const promised = [
    ...['afciAdded', 'lowCents', 'highCents', 'likelyCents', 'crewHours', 'outageHours'].map((key) => `tally/${key}`),
    ...plan!.price.lines.map((_, k) => `price/lines/${k}/likelyCents`),
    ...plan!.cuts.flatMap((cut, c) =>
      cut.coils.flatMap((coil, k) => coil.pieces.map((_, p) => `cuts/${c}/coils/${k}/pieces/${p}/length`)),
    ),
    ...plan!.order.map((_, k) => `order/${k}/quantity`),
  ];
  expect(promised.filter((path) => !seen.has(`plans/0/${path}`))).toEqual([]);
});
