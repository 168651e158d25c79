import { freshId } from '../../job/newOption';
import { layoutWords as say } from '../../words/en/layout';
import { mapWords } from '../../words/en/map';
import parts from '../parts/parts.module.css';
import { useJob, useSelected } from '../selected';
import { useActions, useJobState } from '../session';
import { useNewOption } from './useNewOption';

/** New options beside the one shown; a second answer to start from that one. */
export const OptionTools = () => {
  const job = useJob();
  const like = useSelected()?.option ?? null;
  const { edit, choose, showMap, hideMap } = useActions();
  const mapped = useJobState((s) => s.map !== null);
  const start = useNewOption();
  if (!start) return <p className={parts.empty}>{say.noPanelYet}</p>;
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
      <button type="button" className={parts.tool} onClick={start.inPlace}>
        {say.toolInPlace}
      </button>
      <button type="button" className={parts.tool} onClick={start.relocate}>
        {say.toolRelocate}
      </button>
      {like && (
        <>
          <button type="button" className={parts.tool} onClick={duplicate}>
            {say.toolDuplicate}
          </button>
          <button
            type="button"
            className={parts.tool}
            aria-pressed={mapped}
            onClick={() => (mapped ? hideMap() : showMap(like.id))}
          >
            {mapWords.tool}
          </button>
        </>
      )}
    </>
  );
};
