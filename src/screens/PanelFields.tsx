import { applyEdit } from '../job/applyEdit';
import type { Edit } from '../job/edit';
import type { OnWall } from '../job/schema';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { Field } from './parts/Field';
import { LengthField } from './parts/LengthField';
import { wallName } from './parts/names';
import { useJob, useSelected } from './selected';
import { useActions } from './session';

/** The new panel of the selected option; its place along the wall and its height can be typed. */
export const PanelFields = () => {
  const job = useJob();
  const selected = useSelected();
  const { edit } = useActions();
  if (!selected) return null;
  const { option } = selected;
  const { on } = option.enclosure;
  const move = (to: Partial<OnWall>): string | null => {
    const change: Edit = { edit: 'move panel', option: option.id, on: { ...on, ...to } };
    const tried = applyEdit(job, change);
    if (!tried.ok) return tried.error.error.say;
    edit(change);
    return null;
  };
  return (
    <section className={css.section} aria-labelledby="panel-title">
      <h2 id="panel-title" className={css.heading}>
        {say.panelTitle}
      </h2>
      <p className={css.what} title={option.title}>
        {option.title}
      </p>
      <div key={option.id}>
        <Field label={say.panelWall}>{wallName(on)}</Field>
        <LengthField label={say.panelOffset} inches={on.left} onSet={(left) => move({ left })} />
        <LengthField label={say.panelBottom} inches={on.bottom} onSet={(bottom) => move({ bottom })} />
      </div>
    </section>
  );
};
