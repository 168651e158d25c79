import { expect, test } from 'vitest';
import { basement } from '../../bench/basement';
import { applyEdit } from '../../src/job/applyEdit';
import { openJob } from '../../src/job/parse';
import { withoutPictures } from '../../src/job/pictures';
import { saveJob } from '../../src/job/save';
import type { Job } from '../../src/job/schema';
import { planSteps } from '../../src/plan/planJob';
import { outcome } from '../support/outcome';

/** What the largest job asks of the program. Figures are put down, not judged; what must hold is that it all works. */
const CIRCUITS = 200;
const OPTIONS = 12;
const PHOTOS = 60;
const PICTURE_BYTES = 200_000;

const large = (): Job => {
  const job = basement(CIRCUITS);
  const [first] = job.options;
  const options = Array.from({ length: OPTIONS }, (_, i) => ({
    ...first!,
    id: `o${String(i).padStart(2, '0')}`,
    title: `Option ${i + 1}`,
    enclosure: {
      ...first!.enclosure,
      id: `panel ${i}`,
      on: { ...first!.enclosure.on, left: first!.enclosure.on.left + 12 * i },
    },
  }));
  const photos = Array.from({ length: PHOTOS }, (_, i) => ({
    id: `photo ${i}`,
    pinnedTo: job.homeRuns[i]!.id,
    takenOn: '2026-01-01',
    type: 'image/jpeg' as const,
    widthPx: 1600,
    heightPx: 1200,
    data: 'A'.repeat(PICTURE_BYTES),
  }));
  return { ...job, options, photos };
};
const timed = <T>(run: () => T): readonly [T, number] => {
  const started = performance.now();
  const value = run();
  return [value, Math.round(performance.now() - started)];
};

// the planner takes its time over it: only in the long run
test.runIf(process.env.EFFORT === 'hard')(
  `a job of ${CIRCUITS} circuits, ${OPTIONS} options and ${PHOTOS} photos`,
  () => {
    const text = saveJob(large());
    const [opened, openMs] = timed(() => openJob(text));
    if (!opened.ok) throw new Error(opened.error.error.say);
    let { job } = opened.value;
    const edits: number[] = [];
    for (let i = 0; i < 11; i++) {
      const [edited, ms] = timed(() => applyEdit(job, { edit: 'rename', option: null, title: `edit ${i}` }));
      if (!edited.ok) throw new Error(edited.error.error.say);
      job = edited.value;
      edits.push(ms);
    }
    const [, keepMs] = timed(() => saveJob(withoutPictures(job)));
    const steps = planSteps(withoutPictures(job));
    const [first, firstMs] = timed(() => steps.next()); // one option; the others take as long each
    expect(first.done).toBe(false);
    outcome('large', {
      fileMb: Number((text.length / 1e6).toFixed(1)),
      openMs,
      editMs: edits.sort((a, b) => a - b)[5],
      keepMs,
      firstOptionS: Number((firstMs / 1000).toFixed(1)),
    });
  },
);
