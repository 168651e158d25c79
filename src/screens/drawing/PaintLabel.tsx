import type { Label } from '../../drawings/items';
import { LINE_HEIGHT, type Placed } from '../../drawings/settle';
import css from './drawing.module.css';

/** Lettering where it was settled, with a halo of paper. */
export const PaintLabel = ({ set }: { readonly set: Placed<Label> }) => {
  const { lines } = set.of;
  const whole = lines.reduce((n, l) => n + l.size * LINE_HEIGHT, 0);
  let y = set.y - whole / 2;
  return (
    <text className={css.lettering} textAnchor="middle">
      {lines.map((line) => {
        y += line.size * LINE_HEIGHT;
        return (
          <tspan
            key={line.say}
            x={set.x}
            y={y - line.size * 0.36}
            fontSize={line.size}
            className={`${css[line.lettering]} ${css[`f-${line.tone}`]}`}
          >
            {line.say}
          </tspan>
        );
      })}
    </text>
  );
};
