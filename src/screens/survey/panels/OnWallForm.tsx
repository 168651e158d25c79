import { type FormEvent, type ReactNode, useState } from 'react';
import type { In } from '../../../units/types';
import { surveyWords as say } from '../../../words/en/survey';
import { wallName } from '../../parts/names';
import parts from '../../parts/parts.module.css';
import { ChoiceField } from '../fields/ChoiceField';
import { length } from '../fields/spec';
import { TypedField } from '../fields/TypedField';
import { useFaces } from '../useFaces';
import css from './panels.module.css';

interface Props {
  readonly what: string;
  readonly width: In;
  readonly children?: ReactNode;
  readonly onAdd: (on: { readonly wall: string; readonly face: 'front' | 'back'; readonly left: In }) => void;
}

/** A thing hung on a wall by typing: the wall, and how far from its left end as one faces it. */
export const OnWallForm = ({ what, width, children, onAdd }: Props) => {
  const faces = useFaces();
  const [face, setFace] = useState(faces[0]?.id ?? '');
  const [left, setLeft] = useState<In>(12);
  const at = faces.find((f) => f.id === face) ?? faces[0];
  const add = (e: FormEvent): void => {
    e.preventDefault();
    if (at) onAdd({ wall: at.wall, face: at.face, left });
  };
  return (
    <form className={css.narrow} onSubmit={add} noValidate>
      {children}
      <ChoiceField
        spec={{ label: say.onWall, unknown: false }}
        of={faces.map((f) => ({ value: f.id, say: wallName(f) }))}
        value={at?.id ?? ''}
        onSet={(value) => {
          setFace(value as string);
          return null;
        }}
      />
      <TypedField
        spec={length('', say.fromLeft)}
        value={left}
        onSet={(value) => {
          const most = (at?.length ?? 0) - width;
          if ((value as number) < 0 || (value as number) > most)
            return say.offTheWall({ typed: value as number, most });
          setLeft(value as number);
          return null;
        }}
      />
      <button type="submit" className={parts.button}>
        {say.addIt({ what })}
      </button>
    </form>
  );
};
