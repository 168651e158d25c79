import { newOption } from '../../job/newOption';
import type { Job, OnWall, Option } from '../../job/schema';
import { faceOf, wallFaces } from '../../job/site';
import { placesOn } from '../../plan/map/clearPlaces';
import { byId } from '../../units/order';
import { layoutWords as say } from '../../words/en/layout';
import { useJob, useSelected } from '../selected';
import { useActions } from '../session';

/** The clear place nearest to where the option's panel hangs, on the same wall; where it hangs when there is none. */
const clearNear = (job: Job, option: Option): OnWall => {
  const { on } = option.enclosure;
  const face = faceOf(wallFaces(job.site, 'after'), on);
  const clear = face ? placesOn(job, option, face).clear : [];
  const lefts = clear.map(([from, to]) => Math.min(to, Math.max(from, on.left)));
  const near = lefts.reduce<number | null>(
    (best, left) => (best === null || Math.abs(left - on.left) < Math.abs(best - on.left) ? left : best),
    null,
  );
  return { ...on, left: near === null ? on.left : Math.round(near * 64) / 64 };
};

/** Adds an option and shows it: where the old panel hangs, or elsewhere on its wall. Null while there is no old panel. */
export const useNewOption = (): { readonly inPlace: () => void; readonly relocate: () => void } | null => {
  const job = useJob();
  const like = useSelected()?.option ?? null;
  const { edit, choose } = useActions();
  const [old] = byId(job.enclosures);
  if (!old) return null;
  const add = (option: Option): void => {
    if (edit({ edit: 'add option', option })) choose(option.id);
  };
  return {
    inPlace: () => add(newOption(job, { kind: 'in place', title: say.newInPlace, on: old.on, like })),
    relocate: () => {
      const start = newOption(job, {
        kind: 'relocate',
        title: say.newRelocate,
        on: like?.enclosure.on ?? old.on,
        like,
      });
      add({ ...start, enclosure: { ...start.enclosure, on: clearNear(job, start) } });
    },
  };
};
