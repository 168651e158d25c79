import type { Arc, Fill, Line, Sign, Stroke } from '../../drawings/items';
import type { Paper } from '../../drawings/paper';
import type { Pt } from '../../units/types';
import css from './drawing.module.css';
import { besideOf, pathData } from './projection';

const HATCHED: Partial<Record<Fill, string>> = {
  concrete: 'url(#h-concrete)',
  block: 'url(#h-block)',
  stud: 'url(#h-stud)',
  ply: 'url(#h-ply)',
  'wood end': 'url(#h-wood-end)',
  barred: 'url(#h-bar)',
  zone: 'url(#h-zone)',
  intrusion: 'url(#h-intrusion)',
  'not measured': 'url(#h-verify)',
  paper: 'var(--paper)',
  appliance: 'var(--m-appliance)',
  ink: 'var(--ink)',
  new: 'var(--new)',
};
const fillOf = (fill: Fill | null): string => (fill === null ? 'none' : (HATCHED[fill] ?? 'none'));

const strokeClass = (s: Stroke | null): string =>
  s === null
    ? css.bare!
    : [css[`w-${s.weight}`], css[`t-${s.tone}`], s.dash === null ? '' : css[`d-${s.dash}`]].join(' ');

export const PaintLine = ({ line, on }: { readonly line: Line; readonly on: Paper }) => (
  <path
    data-id={line.id}
    data-layer={line.layer}
    d={pathData(besideOf(line.points.map(on.to), line.beside), line.closed)}
    className={strokeClass(line.stroke)}
    fill={fillOf(line.fill)}
  />
);

export const PaintArc = ({ arc, on }: { readonly arc: Arc; readonly on: Paper }) => {
  const [x, y] = on.to(arc.center);
  const r = arc.radius * on.scale;
  if (arc.to - arc.from >= 360)
    return <circle cx={x} cy={y} r={r} className={strokeClass(arc.stroke)} fill={fillOf(arc.fill)} />;
  const end = (degrees: number): Pt => {
    const a = (degrees * Math.PI) / 180;
    return [x + Math.cos(a) * r, y - Math.sin(a) * r];
  };
  const [a, b] = [end(arc.from), end(arc.to)];
  const large = arc.to - arc.from > 180 ? 1 : 0;
  return (
    <path
      d={`M${a[0]} ${a[1]}A${r} ${r} 0 ${large} 0 ${b[0]} ${b[1]}`}
      className={strokeClass(arc.stroke)}
      fill={fillOf(arc.fill)}
    />
  );
};

const BOX = 5;
const SLASH = 6;
const INTO = 3.2;
const LIMIT = 11;
export const PaintSign = ({ sign, on }: { readonly sign: Sign; readonly on: Paper }) => {
  const [x, y] = on.to(sign.at);
  switch (sign.sign) {
    case 'splice box':
      return <rect data-id={sign.id} x={x - BOX} y={y - BOX} width={2 * BOX} height={2 * BOX} className={css.box} />;
    case 'limit': {
      const a = ((-sign.turn - 90) * Math.PI) / 180;
      const [dx, dy] = [Math.cos(a) * LIMIT, Math.sin(a) * LIMIT];
      return <line x1={x - dx} y1={y - dy} x2={x + dx} y2={y + dy} className={css.limit} />;
    }
    case 'into the room':
      return <circle cx={x} cy={y} r={INTO} className={css.intoRoom} />;
    case 'from above':
      return (
        <>
          <circle cx={x} cy={y} r={4} className={css.fromAbove} />
          <circle cx={x} cy={y} r={1.4} className={css.dot} />
        </>
      );
    case 'slash': {
      const a = ((-sign.turn - 50) * Math.PI) / 180;
      const [dx, dy] = [Math.cos(a) * SLASH, Math.sin(a) * SLASH];
      return <line x1={x - dx} y1={y - dy} x2={x + dx} y2={y + dy} className={css.slash} />;
    }
  }
};
