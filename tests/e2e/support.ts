import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
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
export const showList = (page: Page, name: string): Promise<void> =>
  page.getByRole('tab', { name, exact: true }).click();

/** Every figure on the screen: its path in the result and what is written. */
export const figures = (page: Page): Promise<{ path: string; text: string }[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-figure]')].map((e) => ({
      path: e.dataset.figure ?? '',
      text: e.textContent ?? '',
    })),
  );
export const figure = (page: Page, path: string) => page.locator(`[data-figure="${path}"]`).first();
