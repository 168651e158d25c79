import type { StoreApi } from 'zustand/vanilla';
import { applyEdit } from '../job/applyEdit';
import type { Edit } from '../job/edit';
import { withoutPictures } from '../job/pictures';
import type { OnWall } from '../job/schema';
import type { Id } from '../units/types';
import type { JobState } from './jobState';
import type { Ports } from './ports';

const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

/**
 * The new panel of an option while it is dragged: where it is held, and the latest live plan for about there. One
 * question at a time goes to the planner; when it answers, the place held by then is asked about, those between are
 * not. Nothing is changed in the job until the panel is let go.
 */
export const makeDragging = (store: StoreApi<JobState>, planner: Ports['live'], edit: (edit: Edit) => boolean) => {
  let asking = false;

  const ask = async (): Promise<void> => {
    const { live, history } = store.getState();
    if (asking || !live || !history || live.planned === live.on) return;
    const { option, on } = live;
    const moved = applyEdit(history.now, { edit: 'move panel', option, on });
    if (!moved.ok) {
      store.setState({ live: { ...live, say: moved.error.error.say } });
      return;
    }
    asking = true;
    try {
      const plan = await planner.plan(withoutPictures(moved.value), option);
      const held = store.getState().live;
      if (held?.option === option) store.setState({ live: { ...held, plan, planned: on, say: null } });
    } catch (reason) {
      const held = store.getState().live;
      if (held) store.setState({ live: { ...held, planned: held.on, say: message(reason) } });
    } finally {
      asking = false;
    }
    await ask();
  };

  return {
    drag(option: Id, on: OnWall): void {
      const { live } = store.getState();
      const same = live?.option === option && live.droppedAt === null ? live : null;
      store.setState({
        live: { option, on, plan: same?.plan ?? null, planned: same?.planned ?? null, say: null, droppedAt: null },
      });
      void ask();
    },
    /** The place held becomes the panel's; its live plan is shown until the final one is there. */
    drop(): void {
      const { live } = store.getState();
      if (!live || live.droppedAt !== null) return;
      const done = edit({ edit: 'move panel', option: live.option, on: live.on });
      const now = store.getState();
      // a place that was left and come back to changes nothing, and there is nothing to wait for
      const waits = done && now.planning.phase === 'working';
      store.setState({ live: waits ? { ...live, droppedAt: now.revision } : null });
    },
    letGo(): void {
      store.setState({ live: null });
    },
  };
};
