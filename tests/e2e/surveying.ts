import type { Page } from '@playwright/test';

/** What a hand does on the survey sheet: takes a tool, fills a field, points at a thing. */
export const tool = (page: Page, name: string): Promise<void> =>
  page.getByRole('region', { name: 'Draw', exact: true }).getByRole('button', { name }).click();
export const panel = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
export const put = async (page: Page, label: string, text: string): Promise<void> => {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Tab');
};
export const choose = async (page: Page, label: string, word: string): Promise<void> => {
  await page.getByLabel(label, { exact: true }).selectOption({ label: word });
};
export const plan = (page: Page) => page.getByRole('img', { name: /as surveyed/ });
export const thing = (page: Page, name: string): Promise<void> =>
  page.getByRole('region', { name: 'Everything in the survey' }).getByRole('button', { name }).click();
