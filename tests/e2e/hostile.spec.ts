import { expect, test } from '@playwright/test';
import { demoJob, goTo, planned, SHEETS } from './support';

/** Every text a person can type, made into markup, script, style and formula at once: it stays text on every sheet. */
const HOSTILE = `"><img src=x onerror="window.hit=1"><script>window.hit=1</script><style>*{display:none}</style>=1+1`;
const TYPED = new Set(['title', 'label', 'notes', 'note', 'place', 'by', 'finish', 'trim', 'panel']);

const spoiled = (value: unknown, key = ''): unknown => {
  if (typeof value === 'string') return TYPED.has(key) ? HOSTILE : value;
  if (Array.isArray(value)) return value.map((entry) => spoiled(entry));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, spoiled(v, k)]));
};

test('markup, scripts and styles in every typed text are shown as text, on every sheet', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (e) => errors.push(e.message));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (e) => {
      if (e.blockedURI === 'eval') return; // zod asks once whether it may, is told no, and does without
      Object.assign(window, { stopped: `${e.violatedDirective} ${e.blockedURI} ${e.sourceFile} ${e.sample}` });
    });
  });
  await page.goto('./');
  const text = JSON.stringify(spoiled(demoJob('small-house')));
  expect(text.split('onerror').length).toBeGreaterThan(12);
  const file = { name: 'hostile.job.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.locator('input[type=file]').first().setInputFiles(file);
  await planned(page);
  for (const sheet of SHEETS) {
    await goTo(page, sheet);
    const found = await page.evaluate(() => ({
      hit: 'hit' in window,
      stopped: (window as unknown as { stopped?: string }).stopped ?? '',
      injected: document.querySelectorAll('img[src="x"], #app script, #app style').length,
    }));
    expect(found, sheet).toEqual({ hit: false, stopped: '', injected: 0 });
  }
  expect(errors).toEqual([]);
});
