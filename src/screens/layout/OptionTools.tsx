import { placesOn } from '../../drawings/clearPlaces';
import { freshId, newOption } from '../../job/newOption';
import type { Job, OnWall, Option } from '../../job/schema';
import { faceOf, wallFaces } from '../../job/site';
import { byId } from '../../units/order';
import { layoutWords as say } from '../../words/en/layout';
import parts from '../parts/parts.module.css';
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

/** New options: where the old panel hangs, or elsewhere on its wall to be dragged on; a second one from the one shown. */
export const OptionTools = () => {
  const job = useJob();
  const selected = useSelected();
  const { edit, choose } = useActions();
  const [old] = byId(job.enclosures);
  if (!old) return <p className={parts.empty}>{say.noPanelYet}</p>;
  const like = selected?.option ?? null;
  const add = (option: Option): void => {
    if (edit({ edit: 'add option', option })) choose(option.id);
  };
  const inPlace = (): void => add(newOption(job, { kind: 'in place', title: say.newInPlace, on: old.on, like }));
  const relocate = (): void => {
    const start = newOption(job, { kind: 'relocate', title: say.newRelocate, on: like?.enclosure.on ?? old.on, like });
    add({ ...start, enclosure: { ...start.enclosure, on: clearNear(job, start) } });
  };
  const duplicate = (): void => {
    if (!like) return;
    const id = freshId(
      'option',
      job.options.map((o) => o.id),
    );
    const panels = [...job.enclosures, ...job.options.map((o) => o.enclosure)].map((e) => e.id);
    const title = say.copyOf({ title: like.title });
    if (edit({ edit: 'copy option', option: like.id, id, panel: freshId('new', panels), title })) choose(id);
  };
  return (
    <>
      <button type="button" className={parts.tool} onClick={inPlace}>
        {say.toolInPlace}
      </button>
      <button type="button" className={parts.tool} onClick={relocate}>
        {say.toolRelocate}
      </button>
      {like && (
        <button type="button" className={parts.tool} onClick={duplicate}>
          {say.toolDuplicate}
        </button>
      )}
    </>
  );
};
