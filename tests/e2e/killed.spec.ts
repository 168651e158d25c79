import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, expect, type Page, test } from '@playwright/test';
// @ts-expect-error plain script without types
import { CHROMIUM_ARGS, findBrowser } from '../../scripts/browser.mjs';
import { openJob } from '../../src/job/parse';
import { cases } from '../support/effort';
import { outcome } from '../support/outcome';
import { random } from '../support/random';
import { browserOn, killAtOnce } from './killing';
import { DEMOS } from './support';

/**
 * The browser's processes are killed while the job's title is changed over and over, each time a higher number. What a
 * person had been told is kept must be there afterwards, and all but the last second in any case.
 */
const KILLS = cases(1, 30);
const LOST_AT_MOST_MS = 1000;

const open = async (profile: string): Promise<{ context: BrowserContext; page: Page }> => {
  const options = { executablePath: findBrowser() as string, args: CHROMIUM_ARGS as string[] };
  const context = await chromium.launchPersistentContext(profile, { ...options, baseURL: 'http://localhost:4199' });
  return { context, page: context.pages()[0] ?? (await context.newPage()) };
};
/** In the page: changes the title every few hundredths of a second, and tells of every change and every "kept here". */
const editOnAndOn = ({ from, pause }: { from: number; pause: number }): void => {
  const said = (window as unknown as { said: (what: string, number: number, at: number) => void }).said;
  const status = [...document.querySelectorAll('[role=status]')];
  const field = document.querySelector<HTMLInputElement>('dialog input[type=text]')!;
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
  const shown = (): number => Number(document.querySelector<HTMLElement>('footer dd[title]')?.title);
  new MutationObserver(() => {
    if (status.some((s) => s.textContent?.startsWith('kept here'))) said('kept', shown(), Date.now());
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
  let number = from;
  const edit = (): void => {
    number += 1;
    set.call(field, String(number));
    field.dispatchEvent(new Event('input', { bubbles: true }));
    setTimeout(() => {
      field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      said('made', number, Date.now());
      setTimeout(edit, pause * (0.5 + Math.random()));
    }, 5);
  };
  edit();
};
const textsKept = (page: Page): Promise<string[]> =>
  page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open('backboard');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction('texts').objectStore('texts').getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve(all.result.map(({ text }: { text: string }) => text));
          };
        };
      }),
  );

test(`killed ${KILLS} time(s) while editing: nothing told as kept is lost, at most the last second, no job spoiled`, async () => {
  test.setTimeout(60_000 + KILLS * 20_000);
  const profile = mkdtempSync(join(tmpdir(), 'killed-'));
  const r = random(9);
  const lostMs: number[] = [];
  let [kept, made, insideSave] = [0, 0, 0];
  let { context, page } = await open(profile);
  try {
    await page.goto('./');
    await page.getByRole('button', { name: DEMOS['small-house'] }).click();
    await page.getByText(/^kept here/).waitFor({ state: 'attached' });
    for (let kill = 1; kill <= KILLS; kill++) {
      let acknowledged = 0;
      const edits: { number: number; at: number }[] = [];
      let lastEdit = (): void => undefined;
      const aimed = kill % 2 === 1;
      const due = new Promise<void>((resolve) => {
        lastEdit = resolve;
      });
      const wanted = r.int(3, 25);
      await page.exposeFunction('said', (what: string, number: number, at: number) => {
        if (what === 'kept') acknowledged = Math.max(acknowledged, number || 0);
        else edits.push({ number, at });
        if (edits.length >= wanted) lastEdit();
      });
      await page.evaluate(editOnAndOn, { from: kill * 1000, pause: aimed ? 400 : r.int(10, 150) });
      await due;
      const pids = browserOn(profile);
      expect(pids.length).toBeGreaterThan(2);
      // aimed: into the writing of an edit, which begins at once; or a random moment
      const wait = aimed ? r.int(0, 30) : r.int(0, 600);
      if (aimed) {
        const before = edits.length;
        await expect.poll(() => edits.length, { intervals: [2] }).toBeGreaterThan(before);
      }
      await new Promise((resolve) => setTimeout(resolve, wait));
      const killedAt = Date.now();
      const gone = new Promise((resolve) => context.once('close', resolve));
      killAtOnce(pids);
      await gone;

      ({ context, page } = await open(profile));
      await page.goto('./');
      const cell = page.locator('footer dd[title]').first();
      await cell.waitFor();
      const there = Number(await cell.getAttribute('title'));
      await expect(page.getByRole('alert')).toHaveCount(0);
      for (const text of await textsKept(page))
        expect(openJob(text)).toMatchObject({ ok: true, value: { repairs: [] } });
      const firstLost = edits.find((e) => e.number > there);
      lostMs.push(firstLost ? killedAt - firstLost.at : 0);
      expect(there, `kill ${kill}: told as kept`).toBeGreaterThanOrEqual(acknowledged);
      expect(lostMs.at(-1), `kill ${kill}: ms of work lost`).toBeLessThanOrEqual(LOST_AT_MOST_MS);
      made += edits.length;
      kept += acknowledged > 0 ? 1 : 0;
      if (aimed) insideSave++;
    }
    expect(kept).toBeGreaterThan(0); // something had been told as kept
    const worst = Math.max(...lostMs);
    outcome('killed', { kills: KILLS, aimedAtSaves: insideSave, edits: made, runsWithKept: kept, worstLostMs: worst });
  } finally {
    killAtOnce(browserOn(profile));
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
