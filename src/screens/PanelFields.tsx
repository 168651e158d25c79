import { applyEdit } from '../job/applyEdit';
import type { Edit } from '../job/edit';
import { isKnown } from '../units/types';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { Field } from './parts/Field';
import { Length } from './parts/Length';
import { LengthField } from './parts/LengthField';
import { useJob, useSelected } from './selected';
import { useActions } from './session';

/** The new panel of the selected option; its place along the wall can be typed. */
export const PanelFields = () => {
  const job = useJob();
  const selected = useSelected();
  const { edit } = useActions();
  if (!selected) return null;
  const { option } = selected;
  const { on, size, upright, mainAt, spaces, mount } = option.enclosure;
  const move = (left: number): string | null => {
    const change: Edit = { edit: 'move panel', option: option.id, on: { ...on, left } };
    const tried = applyEdit(job, change);
    if (!tried.ok) return tried.error.error.say;
    edit(change);
    return null;
  };
  return (
    <section className={css.section} aria-labelledby="panel-title">
      <h2 id="panel-title" className={css.heading}>
        {say.panelTitle} <small>{option.title}</small>
      </h2>
      <div className={css.fields}>
        <div className={css.wide}>
          <Field label={say.panelWall}>{say.wallFace({ wall: on.wall, face: on.face })}</Field>
        </div>
        <LengthField key={option.id} label={say.panelOffset} inches={on.left} onSet={move} />
        <Field label={say.panelBottom}>
          <Length inches={on.bottom} />
        </Field>
        <Field label={say.panelCan}>
          <Length inches={size.width} /> × <Length inches={size.height} />
        </Field>
        <Field label={say.panelSpaces}>{isKnown(spaces) ? spaces : say.notKnown}</Field>
        <Field label={say.panelMain}>{say.mainAt({ upright, mainAt })}</Field>
        <Field label={say.panelMount}>{mount}</Field>
      </div>
    </section>
  );
};
