import type { ReactNode } from 'react';
import { LINE_HEIGHT, type Settled } from '../drawings/settle';
import type { Effect } from '../facts/result';
import css from './scene.module.css';

interface Props {
  readonly settled: Settled;
  readonly size: { readonly width: number; readonly height: number };
  readonly note: number | null;
  /** The mark of a finding around the origin, as the other drawings paint it. */
  readonly paintMark: (effect: Effect, number: number) => ReactNode;
}

/** Names, counts and keys over the picture, crisp at any density. */
export const Lettering = ({ settled, size, note, paintMark }: Props) => (
  <svg className={css.lettering} width={size.width} height={size.height} aria-hidden="true">
    {[...settled.labels, ...settled.marks].map(({ of, leader }) =>
      leader === null ? null : (
        <line
          key={`${of.item} ${of.id}`}
          className={css.leader}
          x1={leader[0][0]}
          y1={leader[0][1]}
          x2={leader[1][0]}
          y2={leader[1][1]}
        />
      ),
    )}
    {settled.labels.map(({ of }) =>
      of.lines[0]?.lettering === 'figure' && of.lead ? (
        <path key={of.id} className={css.slash} d={`M${of.lead[0] - 4} ${of.lead[1] + 4.5}l8 -9`} />
      ) : null,
    )}
    {settled.labels.map(({ of, x, y }) => {
      const line = of.lines[0]!;
      return (
        <text
          key={of.id}
          x={x}
          y={y + line.size * (LINE_HEIGHT / 2 - 0.36)}
          fontSize={line.size}
          textAnchor="middle"
          data-tone={line.tone}
        >
          {line.say}
        </text>
      );
    })}
    {settled.marks.map(({ of, x, y }) => (
      <g key={of.number} transform={`translate(${x} ${y})`}>
        {note === of.number && <circle r={15} className={css.singled} />}
        {paintMark(of.effect, of.number)}
      </g>
    ))}
  </svg>
);
