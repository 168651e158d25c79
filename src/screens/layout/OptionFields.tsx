import type { ReactNode } from 'react';
import { clampTo } from '../../drawings/hold';
import { faceOf, wallFaces } from '../../job/site';
import { formatFeetInches } from '../../units/length';
import { layoutWords as say } from '../../words/en/layout';
import column from '../column.module.css';
import { LengthField } from '../parts/LengthField';
import { wallName } from '../parts/names';
import { type OptionView, useJob } from '../selected';
import { CanFields } from './CanFields';
import { ChoiceField } from './ChoiceField';
import css from './layout.module.css';
import { OptionEnds } from './OptionEnds';
import { PinList } from './PinList';
import { Refine } from './Refine';
import { ReplacesFields } from './ReplacesFields';
import { TextField } from './TextField';
import { useTryEdit } from './useOptionEdit';

interface Props {
  readonly selected: OptionView;
  /** Making options, where the tool row has no room for it. */
  readonly tools: ReactNode;
}

/** The option shown: its name, where its panel hangs, what it replaces, what is pinned. */
export const OptionFields = ({ selected, tools }: Props) => {
  const job = useJob();
  const tryEdit = useTryEdit();
  const { option } = selected;
  const { on, size } = option.enclosure;
  const faces = wallFaces(job.site, 'after');
  const move = (to: Partial<typeof on>): string | null =>
    tryEdit({ edit: 'move panel', option: option.id, on: { ...on, ...to } });
  const toWall = (id: string): void => {
    const face = faces.find((f) => f.id === id);
    if (face) move({ wall: face.wall, face: face.face, left: clampTo(face.length, size.width, on.left) });
  };
  const here = faceOf(faces, on)?.id ?? '';
  return (
    <section className={column.section} aria-labelledby="panel-title" key={option.id}>
      <h2 id="panel-title" className={css.heading}>
        {say.panelHeading} <small>{say.panelHow}</small>
      </h2>
      <div className={css.one}>
        <ChoiceField
          label={say.wall}
          value={here}
          choices={faces.map((f) => ({
            value: f.id,
            say: say.wallFace({ wall: wallName(f), length: formatFeetInches(f.length) }),
          }))}
          onSet={toWall}
        />
      </div>
      <div className={css.two}>
        <LengthField label={say.fromLeft} inches={on.left} onSet={(left) => move({ left })} />
        <LengthField label={say.bottom} inches={on.bottom} onSet={(bottom) => move({ bottom })} />
      </div>
      <Refine option={option} />
      <details className={css.more}>
        <summary>
          {say.moreOfOption}
          {option.pins.length > 0 && <b>{say.pinned({ count: option.pins.length })}</b>}
        </summary>
        <TextField
          label={say.name}
          value={option.title}
          onSet={(title) => tryEdit({ edit: 'rename', option: option.id, title })}
        />
        <h3 className={css.sub}>{say.moreOfPanel}</h3>
        <CanFields option={option} />
        <h3 className={css.sub}>{say.replacesHeading}</h3>
        <ReplacesFields option={option} />
        <h3 className={css.sub}>{say.pinsHeading}</h3>
        <PinList option={option} plan={selected.plan} />
        <OptionEnds option={option} />
      </details>
      {tools && <div className={css.tools}>{tools}</div>}
    </section>
  );
};
