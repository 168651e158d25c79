import type { Pt } from '../../../units/types';
import { surveyWords as say } from '../../../words/en/survey';
import { lengthText } from '../../parts/lengthParts';
import parts from '../../parts/parts.module.css';
import { useActions } from '../../session';
import { useSheet } from '../sheetState';
import { type Closing as Closed, closedStraight, closing, lengthsOf, namedWalls, spread, wentLeft } from '../traverse';
import css from './panels.module.css';

const feet = (inches: number) => lengthText(Math.abs(inches));

const Says = ({ state, gap, miss, limit }: Closed) => {
  if (state === 'open') return <p>{say.openYet}</p>;
  if (state === 'closed') return <p>{say.closes}</p>;
  return (
    <>
      <p className={css.miss}>
        <span>{say.misses}</span> <b>{feet(miss)}</b>{' '}
        <small>{say.missesBy({ x: feet(gap[0]), y: feet(gap[1]) })}</small>
      </p>
      <p>{state === 'small' ? say.canSpread({ limit: feet(limit) }) : say.tooFar({ limit: feet(limit) })}</p>
    </>
  );
};

/** Whether the walls come round to where they started, by how much not, and what can be done about it. */
export const Closing = () => {
  const { now, set } = useSheet();
  const { edit } = useActions();
  const { legs } = now;
  const closed = closing(legs);
  const draw = (corners: readonly Pt[]): void => {
    if (edit({ edit: 'draw room', walls: namedWalls(corners) })) set({ legs: [], tool: 'select', selected: null });
  };
  const corners = closed.state === 'large' || closed.state === 'open' ? closedStraight(legs) : spread(legs);
  const before = legs.map((l) => l.length);
  const after = lengthsOf(corners);
  const changed =
    closed.state === 'small'
      ? before.flatMap((b, i) => (Math.abs(b - after[i]!) < 1 / 64 ? [] : [{ n: i + 1, from: b, to: after[i]! }]))
      : [];
  const left = legs.length >= 3 && wentLeft(corners);
  return (
    <div className={css.closing} role="status">
      <Says {...closed} />
      {changed.length > 0 && (
        <p>
          <small>{changed.map((c) => say.becomes({ n: c.n, from: feet(c.from), to: feet(c.to) })).join(' · ')}</small>
        </p>
      )}
      {left ? (
        <>
          <p>{say.wentLeft}</p>
          <button
            type="button"
            className={parts.button}
            onClick={() => set({ legs: legs.map((l) => ({ ...l, turn: -l.turn })) })}
          >
            {say.turnAll}
          </button>
        </>
      ) : (
        <div className={css.buttons}>
          {(closed.state === 'closed' || closed.state === 'small') && (
            <button type="button" className={parts.go} onClick={() => draw(corners)}>
              {closed.state === 'closed' ? say.drawIt : say.spreadIt}
            </button>
          )}
          {(closed.state === 'large' || (closed.state === 'open' && legs.length === 2)) && (
            <button type="button" className={parts.button} onClick={() => draw(corners)}>
              {say.closeStraight({ length: feet(closed.miss) })}
            </button>
          )}
        </div>
      )}
    </div>
  );
};
