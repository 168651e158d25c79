import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Place } from '../../facts/result';
import { placeKey } from '../../plan/map/rank';
import type { Pt } from '../../units/types';
import { mapWords as say } from '../../words/en/map';
import type { Projection } from '../drawing/projection';
import { useJob } from '../selected';
import { useActions } from '../session';
import css from './map.module.css';
import { placeName, placeSays } from './placeSays';
import type { ShownMap } from './useMap';
import { useTakePlace } from './useTakePlace';

interface Props {
  readonly shown: ShownMap;
  /** Places in the order of the drawing. */
  readonly order: readonly Place[];
  readonly on: Projection;
  /** Where a place is marked in the drawing. */
  readonly pointOf: (place: Place) => Pt | null;
  /** The place nearest to a point of the drawing. */
  readonly nearest: (p: Pt) => Place | null;
}

const SIDE = 28;
const MOVED_PX = 6;

/** The place looked at: moved along the walls by the arrow keys or the hand, made an option by Enter or by dropping it. */
export const PlaceCursor = ({ shown, order, on, pointOf, nearest }: Props) => {
  const job = useJob();
  const { lookAtPlace } = useActions();
  const take = useTakePlace();
  const from = useRef<{ readonly x: number; readonly y: number; moved: boolean } | null>(null);
  const { best } = shown.model;
  const place = shown.at ?? best ?? order.find((p) => p.clear) ?? order[0];
  const at = place && pointOf(place);
  if (!place || !at) return null;
  const [x, y] = on.to(at);
  const i = order.findIndex((p) => placeKey(p) === placeKey(place));

  const keyed = (event: KeyboardEvent): void => {
    const to: Record<string, number> = {
      ArrowRight: i + 1,
      ArrowUp: i + 1,
      ArrowLeft: i - 1,
      ArrowDown: i - 1,
      PageUp: i + 8,
      PageDown: i - 8,
      Home: 0,
      End: order.length - 1,
    };
    const next = to[event.key];
    if (event.key === 'Enter' && place.clear) take(place);
    else if (event.key === 'Escape') lookAtPlace(null);
    else if (next === undefined) return;
    else {
      const one = order[Math.max(0, Math.min(order.length - 1, next))];
      if (one) lookAtPlace(placeKey(one));
    }
    event.preventDefault();
  };
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return;
    event.preventDefault();
    event.currentTarget.focus();
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { x: event.clientX, y: event.clientY, moved: false };
    lookAtPlace(placeKey(place));
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const paper = event.currentTarget.parentElement?.getBoundingClientRect();
    const start = from.current;
    if (!start || !paper) return;
    if (!start.moved && Math.hypot(event.clientX - start.x, event.clientY - start.y) < MOVED_PX) return;
    start.moved = true;
    const near = nearest(on.from([event.clientX - paper.left, event.clientY - paper.top]));
    if (near) lookAtPlace(placeKey(near));
  };
  const up = (): void => {
    const moved = from.current?.moved;
    from.current = null;
    if (moved && place.clear) take(place);
  };
  return (
    <div
      role="slider"
      tabIndex={0}
      className={css.cursor}
      data-clear={place.clear}
      style={{ left: x - SIDE / 2, top: y - SIDE / 2, width: SIDE, height: SIDE }}
      title={say.how}
      aria-label={say.cursor}
      aria-valuemin={1}
      aria-valuemax={Math.max(1, order.length)}
      aria-valuenow={i + 1}
      aria-valuetext={[placeName(place), ...placeSays(job, place)].join('; ')}
      onKeyDown={keyed}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={() => {
        from.current = null;
      }}
    />
  );
};
