import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import type { Plan } from '../../src/facts/result';
import { chooseOption, DEMOS, type DemoName, demoJob, planned, resultOf } from './support';

/** World meters, y up, of what is drawn: read off the scene graph the page shows with `?test`. */
type Meters = readonly [number, number, number];
const INCH_M = 0.0254; // exact: international yard and pound agreement, 1959
/** Back to the house: inches, x right, y up the sheet, z up. */
const inches = ([x, y, z]: Meters): number[] => [x / INCH_M, -z / INCH_M, y / INCH_M];
const WITHIN_IN = 1 / 16;

const openScene = async (page: Page, name: DemoName, option: string): Promise<Plan> => {
  const job = demoJob(name);
  await page.goto('./?quality=low&test#layout');
  await page.getByRole('button', { name: DEMOS[name] }).click();
  await planned(page);
  await page.evaluate(() => {
    location.hash = 'layout';
  });
  await chooseOption(page, job.options.find((o) => o.id === option)!.title);
  await page.getByRole('button', { name: '3-D', exact: true }).click();
  await page.waitForFunction(() => (window.__scene?.frames() ?? 0) > 0);
  // the models have come and are drawn
  await page.waitForFunction(() =>
    window.__scene?.scene.getObjectByName('things') ? window.__scene.frames() > 1 : false,
  );
  return resultOf(job).plans.find((p) => p.option === option)!;
};

/** Lowest and highest corner of a mesh's own geometry in the world. */
const extentOf = (page: Page, name: string): Promise<{ low: Meters; high: Meters } | null> =>
  page.evaluate((id) => {
    const mesh = window.__scene?.scene.getObjectByName(id) as import('three').Mesh | undefined;
    const position = mesh?.geometry?.getAttribute('position');
    if (!mesh || !position) return null;
    mesh.updateWorldMatrix(true, false);
    const m = mesh.matrixWorld.elements;
    const low = [Infinity, Infinity, Infinity];
    const high = [-Infinity, -Infinity, -Infinity];
    for (let i = 0; i < position.count; i++) {
      const p = [position.getX(i), position.getY(i), position.getZ(i)] as const;
      for (let k = 0; k < 3; k++) {
        const at = m[k]! * p[0] + m[k + 4]! * p[1] + m[k + 8]! * p[2] + m[k + 12]!;
        low[k] = Math.min(low[k]!, at);
        high[k] = Math.max(high[k]!, at);
      }
    }
    return { low: low as unknown as Meters, high: high as unknown as Meters };
  }, name);

/** Middle of the first and of the last ring of every tube of a home run's new course, in the order they are laid. */
const endsOf = (page: Page, homeRun: string): Promise<Meters[][]> =>
  page.evaluate((id) => {
    const mesh = window.__scene?.scene.getObjectByName('cables') as import('three').Mesh;
    const position = mesh.geometry.getAttribute('position');
    const m = mesh.matrixWorld.elements;
    const SIDES = 5; // of the coarse picture
    const middle = (first: number): Meters => {
      const sum = [0, 0, 0];
      for (let i = first; i < first + SIDES; i++) {
        const p = [position.getX(i), position.getY(i), position.getZ(i)] as const;
        for (let k = 0; k < 3; k++)
          sum[k]! += (m[k]! * p[0] + m[k + 4]! * p[1] + m[k + 8]! * p[2] + m[k + 12]!) / SIDES;
      }
      return sum as unknown as Meters;
    };
    return mesh.children
      .filter((c) => c.name === `${id} new` || c.name === `${id} drawn back`)
      .map(({ userData: { start, count } }) => [middle(start), middle(start + count - SIDES)]);
  }, homeRun);

const near = (got: readonly number[], want: readonly number[], what: string): void => {
  got.forEach((n, k) => {
    expect(Math.abs(n - want[k]!), `${what} ${'xyz'[k]}: ${n} for ${want[k]}`).toBeLessThan(WITHIN_IN);
  });
};

test('panels, boxes and cable ends stand in the 3-D view where the plan has them; idle it draws nothing', async ({
  page,
}) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto('./');
  await page.getByRole('button', { name: DEMOS.washer }).waitFor();
  expect(
    fetched.filter((url) => /SceneView|\.glb$/.test(url)),
    'the first sheet does without the 3-D code',
  ).toEqual([]);

  const plan = await openScene(page, 'washer', 'relocate-b');
  // the flush panel in the new wall: front in its room face at 180 + 4-1/2 / 2, 120 from its left end, 36 up
  const panel = await extentOf(page, 'new-b');
  near(inches([panel!.low[0], panel!.low[1], panel!.high[2]]), [178.375, 120, 36], 'new panel, low');
  near(inches([panel!.high[0], panel!.high[1], panel!.low[2]]), [182.25, 134.5, 72], 'new panel, high');
  const old = await extentOf(page, 'old-1');
  near(inches([old!.low[0], old!.low[1], old!.high[2]]), [30, 164.125, 48], 'old panel, low');
  near(inches([old!.high[0], old!.high[1], old!.low[2]]), [44.5, 168, 72], 'old panel, high');

  const boxes = plan.boxes.filter((b) => b.on === 'joist' || b.on === 'wall');
  expect(boxes.length).toBeGreaterThan(1);
  for (const box of boxes) {
    const { low, high } = (await extentOf(page, box.id))!;
    const [a, b] = [inches(low), inches(high)];
    // on the north wall, y = 168, a box has its back at its point; elsewhere its middle is there
    const onWall = box.at[1] === 168;
    near(
      [(a[0]! + b[0]!) / 2, onWall ? Math.max(a[1]!, b[1]!) : (a[1]! + b[1]!) / 2, (a[2]! + b[2]!) / 2],
      box.at,
      box.id,
    );
  }

  const runs = plan.runs.filter((r) => r.legs.length > 0);
  expect(runs.length).toBeGreaterThan(20);
  for (const run of runs) {
    const ends = await endsOf(page, run.homeRun);
    near(inches(ends[0]![0]!), run.legs[0]!.from, `${run.homeRun} begins`);
    near(inches(ends.at(-1)![1]!), run.legs.at(-1)!.to, `${run.homeRun} ends`);
  }

  const { violations } = await new AxeBuilder({ page }).include('section[aria-label^="3-D view"]').analyze();
  expect(violations).toEqual([]);

  // an idle view draws no pictures, and a picture takes few calls
  await page.waitForTimeout(300);
  const before = await page.evaluate(() => window.__scene!.frames());
  await page.waitForTimeout(1000);
  expect(await page.evaluate(() => window.__scene!.frames())).toBe(before);
  expect(await page.evaluate(() => window.__scene!.calls())).toBeLessThanOrEqual(60);
  expect(fetched.map((url) => new URL(url).origin).every((o) => o === new URL(page.url()).origin)).toBe(true);
  expect(fetched.some((url) => url.endsWith('/models/washer.glb'))).toBe(true);
});

test('one selection: from the list into the picture and back; keys turn it; a lost picture comes again', async ({
  page,
}) => {
  const plan = await openScene(page, 'small-house', 'relocate-a');
  const inked = () =>
    page.evaluate(() => {
      const mesh = window.__scene!.scene.getObjectByName('cables') as import('three').Mesh;
      const lay = mesh.geometry.getAttribute('lay');
      return mesh.children.filter((c) => lay.getX(c.userData.start) === 0).map((c) => c.name.split(' ')[0]);
    });
  expect(await inked()).toEqual([]);
  const listed = page.getByRole('table', { name: 'Home runs' }).locator('tbody th button');
  await listed.first().click();
  await expect.poll(async () => new Set(await inked())).toEqual(new Set([plan.runs[0]!.homeRun]));

  // pointing at a cable in the picture singles out a home run in the list
  const picture = page.getByRole('application');
  await picture.press('Escape');
  await expect.poll(inked).toEqual([]);
  await picture.scrollIntoViewIfNeeded();
  const at = await page.evaluate(() => {
    const { scene, camera } = window.__scene!;
    const mesh = scene.getObjectByName('cables') as import('three').Mesh;
    const core = mesh.geometry.getAttribute('core');
    // the longest straight piece of new cable, between two rings: no box hangs at its middle
    let best = { far: 0, i: 0 };
    for (const { name, userData } of mesh.children.filter((c) => c.name.endsWith(' new'))) {
      if (name === 'feeder new') continue;
      for (let i: number = userData.start; i + 5 < userData.start + userData.count; i += 5) {
        const far = Math.hypot(
          core.getX(i + 5) - core.getX(i),
          core.getY(i + 5) - core.getY(i),
          core.getZ(i + 5) - core.getZ(i),
        );
        if (far > best.far) best = { far, i };
      }
    }
    const v = camera.position.clone();
    const mid = (get: (i: number) => number) => (get(best.i) + get(best.i + 5)) / 2;
    v.set(
      mid((i) => core.getX(i)),
      mid((i) => core.getY(i)),
      mid((i) => core.getZ(i)),
    )
      .applyMatrix4(mesh.matrixWorld)
      .project(camera);
    const box = document.querySelector('[role="application"]')!.getBoundingClientRect();
    return [box.left + ((v.x + 1) / 2) * box.width, box.top + ((1 - v.y) / 2) * box.height] as const;
  });
  await page.mouse.click(at[0], at[1]);
  await expect.poll(async () => (await inked()).length).toBeGreaterThan(0);
  const [picked] = await inked();
  const nth = plan.runs.findIndex((r) => r.homeRun === picked);
  await expect(listed.nth(nth)).toHaveAttribute('aria-pressed', 'true');

  const eye = () => page.evaluate(() => window.__scene!.camera.position.toArray().map((n) => Math.round(n * 100)));
  const start = await eye();
  await picture.press('ArrowLeft');
  await expect.poll(eye).not.toEqual(start);
  await picture.press('e');
  await expect(page.getByRole('button', { name: 'Stand in room' })).toHaveAttribute('aria-pressed', 'true');
  // 64 in over the floor
  await expect.poll(async () => (await eye())[1]).toBe(Math.round(64 * INCH_M * 100));
  await picture.press('e');

  await page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('[role="application"] canvas')!;
    const lose = canvas.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
    Object.assign(window, { giveBack: () => lose.restoreContext() });
    lose.loseContext();
  });
  await expect(page.getByText('The 3-D picture is gone for a moment')).toBeVisible();
  const frames = await page.evaluate(() => window.__scene!.frames());
  await page.evaluate(() => (window as unknown as { giveBack: () => void }).giveBack());
  await expect(page.getByText('The 3-D picture is gone for a moment')).toBeHidden();
  await expect.poll(() => page.evaluate(() => window.__scene!.frames())).toBeGreaterThan(frames);

  // the models are kept for use without a network
  const kept = await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    return (await caches.match(new URL('models/water-heater.glb', document.baseURI)))?.ok ?? false;
  });
  expect(kept).toBe(true);
});

test('without WebGL a sentence stands in and everything else works', async ({ page }) => {
  await page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : (real as (...all: unknown[]) => unknown).call(this, kind, ...rest);
    } as typeof real;
  });
  await page.goto('./');
  await page.getByRole('button', { name: DEMOS['small-house'] }).click();
  await planned(page);
  await page.evaluate(() => {
    location.hash = 'layout';
  });
  await page.getByRole('button', { name: '3-D', exact: true }).click();
  await expect(page.getByText('This browser does not offer WebGL 2')).toBeVisible();
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await expect(page.getByRole('region', { name: /^Plan of/ })).toBeVisible();
});
