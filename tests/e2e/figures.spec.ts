import { expect, test } from '@playwright/test';
import { chooseOption, type DemoName, demoJob, figures, goTo, openDemo, resultOf, SHEETS } from './support';
import { misread, valueAt } from './written';

test('the reader of figures catches a wrong one', () => {
  expect(misread('a/lowCents', '$1,235', 123_450)).toBeNull();
  expect(misread('a/lowCents', '$1,236', 123_450)).not.toBeNull();
  expect(misread('a/codeLength', '10′-7 7⁄16″', 127.4375)).toBeNull();
  expect(misread('a/codeLength', '10′-7 1⁄2″', 127.4375)).not.toBeNull();
  expect(misread('a/stops', '1', 0)).not.toBeNull();
  expect(misread('a/measured', '2′-10″', 34)).toBeNull();
  expect(misread('a/measured', '2′-10″', 35)).not.toBeNull();
  expect(misread('a/measured', '15 %', 0.1479)).toBeNull();
  expect(misread('a/measured', '15 %', 0.2)).not.toBeNull();
  expect(misread('a/nothing', '0', undefined)).not.toBeNull();
});

for (const name of ['washer', 'small-house', 'l-shaped'] as const satisfies readonly DemoName[])
  test(`${name}: every figure on the screen is the one in the result`, async ({ page }) => {
    test.setTimeout(180_000);
    const job = demoJob(name);
    const result = resultOf(job);
    await openDemo(page, name);
    const seen = new Set<string>();
    for (const plan of result.plans) {
      await chooseOption(page, job.options.find((o) => o.id === plan.option)!.title);
      for (const sheet of SHEETS) {
        await goTo(page, sheet);
        const shown = await figures(page);
        expect(shown.flatMap(({ path, text }) => misread(path, text, valueAt(result, path)) ?? [])).toEqual([]);
        for (const { path } of shown) seen.add(path);
      }
    }
    // nothing of what the page promises is left out: tally, advice, cuts, order, runs, lines, findings of every option
    const promised = result.plans.flatMap((plan, i) => [
      ...Object.keys(plan.tally).map((key) => `plans/${i}/tally/${key}`),
      ...plan.cuts.flatMap((cut, c) => cut.coils.map((_, k) => `plans/${i}/cuts/${c}/coils/${k}/length`)),
      ...plan.order.map((_, k) => `plans/${i}/order/${k}/quantity`),
      ...plan.runs.map((_, k) => `plans/${i}/runs/${k}/way`),
      ...plan.price.lines.map((_, k) => `plans/${i}/price/lines/${k}/likelyCents`),
      ...plan.findings.flatMap((f, k) => (f.effect === null ? [`plans/${i}/findings/${k}/say`] : [])),
    ]);
    expect([...promised, 'advice/say'].filter((path) => !seen.has(path))).toEqual([]);
    expect(result.notCovered.map((_, i) => `notCovered/${i}/why`).filter((path) => !seen.has(path))).toEqual([]);
  });

test('every finding that does something can be read: keyed rows, those folded away, those behind one key', async ({
  page,
}) => {
  const job = demoJob('washer');
  const result = resultOf(job);
  await openDemo(page, 'washer');
  await chooseOption(page, job.options.find((o) => o.id === 'relocate-b')!.title);
  const at = result.plans.findIndex((p) => p.option === 'relocate-b');
  const column = page.getByRole('region', { name: 'Findings', exact: true });
  await column.getByRole('button', { name: /\d+ notes?$/ }).click();
  const seen = new Set<string>();
  const heads = column.getByRole('listitem').getByRole('button');
  for (let k = 0; k < (await heads.count()); k++) {
    await heads.nth(k).click();
    for (const { path, text } of await figures(page)) {
      expect(misread(path, text, valueAt(result, path))).toBeNull();
      seen.add(path);
    }
  }
  const expected = result.plans[at]!.findings.flatMap((f, i) =>
    f.effect === null ? [] : [`plans/${at}/findings/${i}/say`],
  );
  expect(expected.length).toBeGreaterThan(20);
  expect(expected.filter((path) => !seen.has(path))).toEqual([]);
});

test('zero stops is said as what it is, and stops are counted with their mark', async ({ page }) => {
  const job = demoJob('washer');
  const result = resultOf(job);
  await openDemo(page, 'washer');
  for (const plan of result.plans) {
    await chooseOption(page, job.options.find((o) => o.id === plan.option)!.title);
    const clear = page.getByText('No conflict found in the checks made.', { exact: true });
    await expect(clear).toHaveCount(plan.tally.stops === 0 ? 1 : 0);
  }
  await expect(page.locator('body')).not.toContainText(/\blegal\b|compliant/i);
});
