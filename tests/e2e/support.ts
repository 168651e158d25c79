import { readFileSync } from 'node:fs';
import { type Download, expect, type Page } from '@playwright/test';
import type { Result } from '../../src/facts/result';
import { openJob } from '../../src/job/parse';
import type { Job, Tally } from '../../src/job/schema';
import { planJob } from '../../src/plan/planJob';
import { planOption } from '../../src/plan/planOption';

export const DEMOS = {
  washer: 'Two panels behind a washer',
  'l-shaped': 'L-shaped basement, half finished',
  'small-house': 'Small house, worn-out panel',
} as const;
export type DemoName = keyof typeof DEMOS;

export const demoText = (name: DemoName): string =>
  readFileSync(new URL(`../../demo/${name}.job.json`, import.meta.url), 'utf8');
export const demoJob = (name: DemoName): Job => {
  const opened = openJob(demoText(name));
  if (!opened.ok) throw new Error(opened.error.error.say);
  return opened.value.job;
};
/** What the same engine says outside the browser; read back as the JSON it prints. */
export const resultOf = (job: Job): Result => {
  const key = JSON.stringify(job);
  const text = results.get(key) ?? JSON.stringify(planJob(job));
  results.set(key, text);
  return JSON.parse(text) as Result;
};
const results = new Map<string, string>();
/** One option's figures only: much quicker than the whole result with its advice. */
export const tallyOf = (job: Job, id: string): Tally =>
  planOption(job, job.options.find((o) => o.id === id)!).plan.tally;

export const planned = async (page: Page): Promise<void> => {
  await page.getByText('Planned.', { exact: true }).waitFor({ state: 'attached' });
};
export const openDemo = async (page: Page, name: DemoName): Promise<void> => {
  await page.goto('./');
  await page.getByRole('button', { name: DEMOS[name] }).click();
  await planned(page);
};
export const chooseOption = (page: Page, title: string): Promise<void> =>
  page.getByRole('radio', { name: title }).check({ force: true });
export const SHEETS = ['Survey', 'Lay out', 'Check', 'Price', 'Closeout'] as const;
export type SheetName = (typeof SHEETS)[number];
/** By the job string, whose links begin with the sheet's number. */
export const goTo = async (page: Page, sheet: SheetName): Promise<void> => {
  const link = page.getByRole('navigation', { name: 'Sheets' }).getByRole('link', { name: sheet });
  await link.click();
  await expect(link).toHaveAttribute('aria-current', 'page');
};
/** The job as the file the person gets. */
export const savedFile = async (page: Page): Promise<Download> => {
  await page.getByRole('button', { name: 'Jobs' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('dialog').getByRole('button', { name: 'Save job file' }).click(),
  ]);
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  return download;
};

/** Every figure on the screen: its path in the result and what is written. */
export const figures = (page: Page): Promise<{ path: string; text: string }[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-figure]')].map((e) => ({
      path: e.dataset.figure ?? '',
      text: e.textContent ?? '',
    })),
  );
export const figure = (page: Page, path: string) => page.locator(`[data-figure="${path}"]`).first();
