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

/** Sawn joists of the whole room, up the sheet. */
export const drawJoists = async (page: Page): Promise<void> => {
  await tool(page, 'Joists, bays');
  await page.getByRole('button', { name: 'Joists of the whole room' }).click();
  await choose(page, 'Direction', 'up the sheet');
  await put(page, 'Spacing', '16');
  await put(page, 'First joist from origin', '8');
  await put(page, 'Joist depth', '9 1/4');
  await choose(page, 'Kind', 'sawn');
  await put(page, 'Underside AFF', `7' 6"`);
};
/** An old panel on the north wall with one group of cables along it. */
export const drawOldWork = async (page: Page): Promise<void> => {
  await tool(page, 'Old panels');
  await choose(page, 'Wall', 'north');
  await put(page, 'From left end', `5'`);
  await page.getByRole('button', { name: 'Add old panel' }).click();
  await choose(page, 'Role', 'feeder-fed');
  await put(page, 'Bus rating', '100');

  await tool(page, 'Cables');
  await page.getByRole('button', { name: 'Start a group at the old panel' }).click();
  for (const [x, y, z] of [
    ['67.25', `14'`, `7' 4"`],
    ['200', `14'`, '88'],
  ] as const) {
    await put(page, 'x, across', x);
    await put(page, 'y, up', y);
    await put(page, 'z, height', z);
    await page.getByRole('button', { name: 'Add this point' }).click();
  }
  await page.getByRole('button', { name: 'Finish the run' }).click();
  await put(page, 'Pivot, last staple', `2' 6"`);
  await page.getByRole('button', { name: 'Add a stretch' }).click();
  await put(page, 'to', '100');
  for (const [label, text] of [
    ['Tail, hot', '20'],
    ['Tail, neutral', '22'],
    ['Tail, ground', '18 1/2'],
  ] as const)
    await put(page, label, text);
};
