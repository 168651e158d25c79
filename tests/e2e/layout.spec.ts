import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { canOutline } from '../../src/drawings/oldWork';
import { type Unrolled, unroll } from '../../src/drawings/unroll';
import type { Plan } from '../../src/facts/result';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import { chooseOption, type DemoName, demoJob, figure, goTo, openDemo, planned, savedFile, tallyOf } from './support';
import { misread } from './written';

const A = 'Same wall, clear of the washer';
const handles = (page: Page) => page.getByRole('slider');
const plan = (page: Page) => page.getByRole('region', { name: /^Plan of/ });
const walls = (page: Page) => page.getByRole('region', { name: /^Wall drawing of/ });
const offset = (page: Page) => page.getByLabel('From left end');

/** Takes hold of the panel in one of the drawings and drags it by so many pixels, without letting go. */
const dragBy = async (page: Page, view: ReturnType<typeof plan>, dx: number, dy = 0): Promise<void> => {
  const box = (await view.getByRole('slider').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let k = 1; k <= 8; k++) await page.mouse.move(x + (dx * k) / 8, y + (dy * k) / 8);
};
const jobOf = async (page: Page): Promise<Job> => {
  const opened = openJob(readFileSync(await (await savedFile(page)).path(), 'utf8'));
  if (!opened.ok) throw new Error(opened.error.error.say);
  return opened.value.job;
};

test('dragged from clear to barred and back it says why it stops; let go, price and AFCI count are the saved file’s', async ({
  page,
}) => {
  await openDemo(page, 'washer');
  await goTo(page, 'Lay out');
  await chooseOption(page, A);
  const says = page.getByRole('status').filter({ hasText: 'north laundry' });
  await dragBy(page, plan(page), -60);
  await expect(says).toContainText('against: washer');
  await expect(figure(page, 'plans/1/tally/stops')).not.toHaveText('0');
  await expect(plan(page).locator('[data-id="in the way: washer"]').first()).toBeAttached();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(offset(page)).toHaveValue(`6'-4"`);
  await expect(figure(page, 'plans/1/tally/stops')).toHaveText('0');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();

  for (const view of [plan(page), walls(page)]) {
    await dragBy(page, view, 36);
    await expect(says).toContainText(/about \$/); // quick figures while it is held
    await page.mouse.up();
  }
  await planned(page);
  await expect(page.locator('[data-stale]')).toHaveCount(0);
  const job = await jobOf(page);
  const { left } = job.options.find((o) => o.id === 'relocate-a')!.enclosure.on;
  expect(left).toBeGreaterThan(90);
  const tally = tallyOf(job, 'relocate-a');
  expect(tally.likelyCents).not.toBe(tallyOf(demoJob('washer'), 'relocate-a').likelyCents);
  for (const key of ['lowCents', 'highCents', 'afciAdded', 'stops'] as const) {
    const path = `plans/1/tally/${key}`;
    expect(misread(path, (await figure(page, path).textContent()) ?? '', tally[key])).toBeNull();
  }
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeEnabled();
});

test('arrow keys move the panel by 1 in, with Shift by 1/4 in; in the wall drawing up and down too', async ({
  page,
}) => {
  await openDemo(page, 'small-house');
  await goTo(page, 'Lay out');
  await chooseOption(page, 'To the east wall, with a new disconnect outdoors');
  const [inPlan, onWall] = [handles(page).first(), handles(page).last()];
  await inPlan.focus();
  await page.keyboard.press('ArrowRight');
  await expect(offset(page)).toHaveValue(`5'-3"`);
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(offset(page)).toHaveValue(`5'-2 3/4"`);
  await onWall.focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByLabel('Bottom AFF')).toHaveValue(`3'-8"`);
  await expect(onWall).toHaveAttribute('aria-valuetext', /5'-2 3\/4" from the left end of the east/);
  await planned(page);
});

/** Everything painted under one of the drawings, its points read back to inches through the screen matrices. */
const readBack = (view: ReturnType<typeof plan>) =>
  view.evaluate((root) => {
    const frame = root.querySelector<SVGGElement>('[data-frame]')!;
    const back = frame.getScreenCTM()!.inverse();
    return [...root.querySelectorAll<SVGGraphicsElement>('[data-id]')].map((e) => {
      const to = e.getScreenCTM()!;
      const d = e.getAttribute('d');
      const box = e.tagName === 'rect' ? (e as unknown as SVGRectElement).getBBox() : null;
      const points = d
        ? d
            .replace(/[MZ]/g, '')
            .split('L')
            .map((p) => p.trim().split(' ').map(Number))
        : box
          ? [[box.x + box.width / 2, box.y + box.height / 2]]
          : [];
      return {
        id: e.dataset.id ?? '',
        layer: e.dataset.layer ?? '',
        points: points.map(([x, y]) => {
          const p = new DOMPoint(x, y).matrixTransform(to).matrixTransform(back);
          return [p.x, p.y] as const;
        }),
      };
    });
  });
type Read = Awaited<ReturnType<typeof readBack>>;

const SIXTEENTH = 1 / 16;
const has = (points: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean =>
  points.some((p) => Math.hypot(p[0] - x, p[1] - y) <= SIXTEENTH);
const pointsOf = (read: Read, wanted: (r: Read[number]) => boolean) => read.filter(wanted).flatMap((r) => r.points);

/** Does a point lie on a line that was drawn? Cables that share a stretch are one line, in which one of them may end. */
const liesOn = (read: Read, wanted: (r: Read[number]) => boolean, [x, y]: readonly [number, number]): boolean =>
  read.filter(wanted).some(({ points }) =>
    points.slice(1).some((b, i) => {
      const a = points[i]!;
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(a[0] + dx * t - x, a[1] + dy * t - y) <= SIXTEENTH;
    }),
  );

/** Where cable ends: the first and last point of every run outside boxes and panel. */
const endsOf = ({ runs }: Plan) =>
  runs.flatMap((run) => {
    const seen = run.legs.filter((l) => l.by !== 'inside box' && l.by !== 'inside panel');
    return seen.length === 0 ? [] : [seen[0]!.from, seen.at(-1)!.to].map((at) => ({ run: run.homeRun, at }));
  });
/** Chainage and distance of a plan point on an unrolled wall, by the wall's ends alone. */
const onWall = ({ face, at }: Unrolled, [x, y]: readonly [number, number]) => {
  const [dx, dy] = [(face.to[0] - face.from[0]) / face.length, (face.to[1] - face.from[1]) / face.length];
  const [px, py] = [x - face.from[0], y - face.from[1]];
  return { x: at + px * dx + py * dy, out: px * dy - py * dx, inside: px * dx + py * dy };
};

for (const [name, id, title] of [
  ['washer', 'relocate-a', A],
  ['l-shaped', 'relocate-b', 'Flush in the slanted wall of the family room'],
] as const satisfies readonly (readonly [DemoName, string, string])[])
  test(`${name}: panel, boxes and cable ends read back from plan and wall drawing are where the plan has them`, async ({
    page,
  }) => {
    const job = demoJob(name);
    const option = job.options.find((o) => o.id === id)!;
    const result = planOption(job, option).plan;
    await openDemo(page, name);
    await goTo(page, 'Lay out');
    await chooseOption(page, title);
    await expect(page.locator('[data-stale]')).toHaveCount(0);

    const seen = await readBack(plan(page));
    const panel = pointsOf(seen, (r) => r.id === option.enclosure.id && r.layer === 'new work');
    for (const corner of canOutline(job, option.enclosure)!) expect(has(panel, corner)).toBe(true);
    const boxes = result.boxes.filter((b) => b.on === 'joist' || b.on === 'wall');
    for (const b of boxes)
      expect(
        has(
          pointsOf(seen, (r) => r.id === b.id),
          [b.at[0], b.at[1]],
        ),
        b.id,
      ).toBe(true);
    for (const { run, at } of endsOf(result)) {
      const of = (r: Read[number]) => r.layer === 'new routes' && r.id.split(' ').includes(run);
      // a run that only rises has no line in plan
      if (seen.some(of)) expect(liesOn(seen, of, [at[0], at[1]]), `${run} at ${at}`).toBe(true);
    }

    const read = await readBack(walls(page));
    const unrolled = unroll(job);
    const wall = unrolled.find((w) => w.face.wall === option.enclosure.on.wall)!;
    const { left, bottom } = option.enclosure.on;
    const { width, height } = option.enclosure.size;
    const can = pointsOf(read, (r) => r.id === option.enclosure.id && r.layer === 'new work');
    for (const x of [left, left + width])
      for (const z of [bottom, bottom + height]) expect(has(can, [wall.at + x, z])).toBe(true);
    const AT = 1; // what hangs on a wall is seen on it, whatever stands before it
    let onWalls = 0;
    for (const b of boxes) {
      const hung = unrolled.filter((w) => {
        const p = onWall(w, [b.at[0], b.at[1]]);
        return Math.abs(p.out) < AT && p.inside > 0 && p.inside < w.face.length;
      });
      if (hung.length === 0) continue;
      onWalls++;
      const points = pointsOf(read, (r) => r.id === b.id);
      expect(
        hung.some((w) => has(points, [onWall(w, [b.at[0], b.at[1]]).x, b.at[2]])),
        b.id,
      ).toBe(true);
    }
    let ends = 0;
    for (const { run, at } of endsOf(result))
      for (const w of unrolled) {
        const p = onWall(w, [at[0], at[1]]);
        if (w.face.partition || Math.abs(p.out) > AT || p.inside < AT || p.inside > w.face.length - AT) continue;
        const of = (r: Read[number]) => r.layer === 'new routes' && r.id.split(' ').includes(run);
        if (!read.some(of)) continue; // leaves the wall at once, straight toward the eye
        ends++;
        expect(liesOn(read, of, [p.x, at[2]]), `${run} at ${at}`).toBe(true);
      }
    expect(ends + onWalls).toBeGreaterThan(0);
  });

test('options are made, renamed, duplicated and deleted; each can be undone', async ({ page }) => {
  await openDemo(page, 'small-house');
  await goTo(page, 'Lay out');
  await page.getByRole('button', { name: 'Relocate here' }).click();
  await expect(page.getByRole('radio')).toHaveCount(3);
  await page.getByText('Name, can, what it replaces, pins').click();
  await page.getByLabel('Name', { exact: true }).fill('Under the window');
  await page.getByLabel('Name', { exact: true }).press('Enter');
  await expect(page.getByRole('radio', { name: /Under the window/ })).toBeChecked();
  await page.getByLabel('Spaces', { exact: true }).fill('many');
  await page.getByLabel('Spaces', { exact: true }).press('Enter');
  await expect(page.getByText('“many” is not a whole number. Kept as typed.')).toBeVisible();
  await page.getByLabel('Spaces', { exact: true }).fill('30');
  await page.getByLabel('Spaces', { exact: true }).press('Enter');
  await page.getByLabel('old panel', { exact: false }).first().selectOption('removed');
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await expect(page.getByRole('radio')).toHaveCount(4);
  await page.getByText('Name, can, what it replaces, pins').click();
  await page.getByRole('button', { name: 'Delete this option' }).click();
  await page.getByRole('button', { name: 'Delete for good?' }).click();
  await expect(page.getByRole('radio')).toHaveCount(3);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('radio')).toHaveCount(4);
  await planned(page);
  const made = (await jobOf(page)).options.find((o) => o.title === 'Under the window')!;
  expect(made.enclosure.spaces).toBe(30);
  expect(made.replaces).toEqual([{ enclosure: 'old', becomes: 'removed' }]);
});
