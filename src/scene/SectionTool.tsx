import { formatFeetInches } from '../units/length';
import type { In } from '../units/types';
import { sceneWords } from '../words/en/scene';
import css from './scene.module.css';
import { AXES, type Axis, type Section, startOf } from './section';

const say = sceneWords.section;

const placeOf = ({ axis, at }: Section): string => {
  const length = formatFeetInches(Math.abs(at), 1);
  if (axis === 'across' && at < 0) return say.from.acrossLeft({ length });
  return say.from[axis]({ length: axis === 'across' ? length : formatFeetInches(at, 1) });
};

interface Props {
  readonly section: Section;
  readonly range: readonly [In, In];
  readonly onSection: (section: Section) => void;
}
/** Which way the view is cut, and where. */
export const SectionTool = ({ section, range, onSection }: Props) => (
  <fieldset className={css.section}>
    <legend>{say.title}</legend>
    <div className={css.axes}>
      {AXES.map((axis: Axis) => (
        <label key={axis}>
          <input
            type="radio"
            name="section"
            checked={section.axis === axis}
            onChange={() => onSection({ axis, at: startOf(axis) })}
          />
          <span>{say[axis]}</span>
        </label>
      ))}
    </div>
    <input
      type="range"
      aria-label={say.title}
      aria-valuetext={placeOf(section)}
      min={range[0]}
      max={range[1]}
      step={1}
      value={section.at}
      onChange={(event) => onSection({ ...section, at: Number(event.target.value) })}
    />
    <output>{placeOf(section)}</output>
  </fieldset>
);
