import { type FormEvent, useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { useActions } from '../../session';
import { length } from '../fields/spec';
import { TypedField } from '../fields/TypedField';
import { useSheet } from '../sheetState';
import { namedWalls, rectangle } from '../traverse';
import css from './panels.module.css';

const ACROSS = length('', say.across);
const UP = length('', say.upSheet);

/** A room of four walls from two lengths. */
export const RectanglePanel = () => {
  const { set } = useSheet();
  const { edit } = useActions();
  const [width, setWidth] = useState(240);
  const [depth, setDepth] = useState(144);
  const keep = (to: (inches: number) => void) => (value: unknown) => {
    if ((value as number) <= 0) return say.notPositive;
    to(value as number);
    return null;
  };
  const draw = (e: FormEvent): void => {
    e.preventDefault();
    if (edit({ edit: 'draw room', walls: namedWalls(rectangle(width, depth)) }))
      set({ tool: 'select', selected: null });
  };
  return (
    <form className={css.narrow} onSubmit={draw} noValidate>
      <TypedField spec={ACROSS} value={width} onSet={keep(setWidth)} />
      <TypedField spec={UP} value={depth} onSet={keep(setDepth)} />
      <p>
        <small>{say.understood}</small>
      </p>
      <button type="submit" className={parts.button}>
        {say.drawIt}
      </button>
    </form>
  );
};
