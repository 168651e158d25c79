import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { chooseOption, goTo, openDemo, planned, SHEETS } from './support';

const violations = async (page: Page): Promise<string[]> => {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`);
};

test('the finder of violations finds one', async ({ page }) => {
  await page.goto('./');
  await page.evaluate(() => document.body.append(document.createElement('button')));
  expect(await violations(page)).toEqual([expect.stringContaining('button-name')]);
});

for (const theme of ['light', 'dark'] as const)
  for (const [width, height] of [
    [1440, 900],
    [820, 1180],
    [390, 844],
  ] as const)
    test(`no violation at ${width} × ${height}, ${theme}`, async ({ browser }) => {
      test.setTimeout(120_000);
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: theme,
        hasTouch: width < 900,
        baseURL: 'http://localhost:4199',
      });
      const page = await context.newPage();
      await page.goto('./');
      expect(await violations(page)).toEqual([]);
      // the larger job once a theme; what is on the screen is the same
      const large = width === 1440;
      await openDemo(page, large ? 'washer' : 'small-house');
      await chooseOption(
        page,
        large ? 'Flush in the new wall, room side' : 'To the east wall, with a new disconnect outdoors',
      );
      await page
        .getByRole('region', { name: 'Findings', exact: true })
        .getByRole('listitem')
        .getByRole('button')
        .first()
        .click();
      for (const sheet of SHEETS) {
        await goTo(page, sheet);
        expect(await violations(page), sheet).toEqual([]);
      }
      await goTo(page, 'Lay out');
      await page.getByRole('button', { name: 'Closer' }).first().click();
      await page.getByRole('button', { name: 'Jobs' }).click();
      expect(await violations(page)).toEqual([]);
      await context.close();
    });

const sizes = [
  [1440, 900],
  [1200, 700],
  [820, 1180],
  [390, 844],
  [320, 640],
] as const;
test('nothing sticks out or is cut off at any of the sizes', async ({ page }) => {
  await openDemo(page, 'washer');
  for (const [width, height] of sizes) {
    await page.setViewportSize({ width, height });
    for (const option of ['Same wall, clear of the washer', 'Flush in the new wall, room side']) {
      await chooseOption(page, option);
      await page.waitForTimeout(100); // the drawing is fitted after its space is measured
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(wide, `sideways at ${width}`).toBeLessThanOrEqual(0);
      // lettering of the drawing lies on its paper
      const out = await page.getByRole('img', { name: /room from above/ }).evaluate((svg) => {
        const paper = svg.getBoundingClientRect();
        return [...svg.querySelectorAll('text')]
          .filter((t) => {
            const b = t.getBoundingClientRect();
            return (
              b.left < paper.left - 1 ||
              b.right > paper.right + 1 ||
              b.top < paper.top - 1 ||
              b.bottom > paper.bottom + 1
            );
          })
          .map((t) => t.textContent);
      });
      expect(out, `lettering at ${width}`).toEqual([]);
      // figures of the tally are whole
      const cut = await page
        .locator('[aria-label=Tally] dd')
        .evaluateAll((cells) => cells.filter((c) => c.scrollWidth > c.clientWidth + 1).map((c) => c.textContent));
      expect(cut, `tally at ${width}`).toEqual([]);
    }
  }
});

test('text twice as large still fits', async ({ page }) => {
  await openDemo(page, 'washer');
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBeLessThanOrEqual(0);
  await expect(page.getByLabel('From left end')).toBeVisible();
});

test('keyboard alone: open a demo, choose an option, move the panel, undo, read a list', async ({ page }) => {
  await page.goto('./');
  const tabTo = async (name: RegExp): Promise<void> => {
    for (let k = 0; k < 60; k++) {
      await page.keyboard.press('Tab');
      const focused = await page.evaluate(() => {
        const e = document.activeElement;
        // the page itself holds every text and no focus
        return e === null || e === document.body
          ? ''
          : (e.getAttribute('aria-label') ?? (e as HTMLInputElement).labels?.[0]?.textContent ?? e.textContent ?? '');
      });
      if (name.test(focused)) return;
    }
    throw new Error(`No way by Tab to ${name}`);
  };
  await tabTo(/Two panels behind a washer/);
  await page.keyboard.press('Enter');
  await planned(page);
  await tabTo(/left panel hangs/);
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Same wall, clear of the washer' })).toBeChecked();
  await tabTo(/From left end/);
  await page.keyboard.type('90');
  await page.keyboard.press('Enter');
  await planned(page);
  await expect(page.getByLabel('From left end')).toHaveValue(`7'-6"`);
  await page.getByRole('link', { name: /Survey/ }).focus(); // a digit typed in a field would be the field's
  await page.keyboard.press('4');
  await expect(page.getByRole('link', { name: /Price/ })).toHaveAttribute('aria-current', 'page');
  await expect(page.getByRole('table', { name: 'Options' })).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('From left end')).toHaveValue(`6'-4"`);
});

test('on a phone a demo is read from its top wherever one was, and a trade word tells what it means', async ({
  browser,
}) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    baseURL: 'http://localhost:4199',
  });
  const page = await context.newPage();
  await page.goto('./');
  const word = page.getByRole('button', { name: 'home run', exact: true });
  await expect(word).toHaveAccessibleDescription(/cable of a circuit between the panel and the first box/);
  await word.click();
  await expect(page.getByRole('note')).toContainText('Home run');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('note')).toHaveCount(0);

  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  expect(await page.evaluate(() => scrollY)).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'Small house' }).evaluate((button) => (button as HTMLElement).click());
  await planned(page);
  expect(await page.evaluate(() => scrollY)).toBe(0);
  await context.close();
});
