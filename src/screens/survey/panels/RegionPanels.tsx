import { roomOutline } from '../../../job/site';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { useJob } from '../../selected';
import { newArea, newFraming } from '../placing';
import { useAdd } from '../useAdd';
import { useTaken } from '../useTaken';
import css from './panels.module.css';

/** What a part of the room is used for: of the whole room at once, or by its corners. */
export const AreaPanel = () => {
  const job = useJob();
  const add = useAdd();
  const { start } = useTaken();
  return (
    <div className={css.buttons}>
      <button
        type="button"
        className={parts.button}
        onClick={() => add('/site/areas', newArea(job, roomOutline(job.site)))}
      >
        {say.wholeRoom}
      </button>
      <button type="button" className={parts.button} onClick={() => start('area')}>
        {say.byCorners}
      </button>
    </div>
  );
};

/** Joists of the whole room or a part, and bays with something in them. */
export const FramingPanel = () => {
  const job = useJob();
  const add = useAdd();
  const { start } = useTaken();
  return (
    <div className={css.buttons}>
      <button type="button" className={parts.button} onClick={() => add('/site/framing', newFraming(job, null))}>
        {say.joistsWhole}
      </button>
      <button type="button" className={parts.button} onClick={() => start('framing')}>
        {say.joistsPart}
      </button>
      <button type="button" className={parts.button} onClick={() => start('bay')}>
        {say.addBay}
      </button>
    </div>
  );
};

/** A partition by its two ends. */
export const PartitionPanel = () => {
  const { start } = useTaken();
  return (
    <button type="button" className={parts.button} onClick={() => start('partition')}>
      {say.drawPartition}
    </button>
  );
};
