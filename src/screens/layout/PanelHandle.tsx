import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Held } from '../../drawings/hold';
import type { OnWall, Option } from '../../job/schema';
import { formatFeetInches } from '../../units/length';
import type { In, Pt } from '../../units/types';
import { layoutWords as say } from '../../words/en/layout';
import { type Projection, pathData } from '../drawing/projection';
import { wallName } from '../parts/names';
import { useActions, useJobState } from '../session';
import css from './layout.module.css';

/** Where a panel that was taken hold of is dragged to. */
export interface HeldTo {
  readonly p: Pt;
  /** Where it was taken hold of, and where it hung then. */
  readonly from: { readonly p: Pt; readonly on: OnWall };
  readonly step: In;
  /** Inches of the drawing a hand trembles. */
  readonly tremble: In;
}

interface Props {
  readonly option: Option;
  readonly on: Projection;
  /** Corners of the panel in the drawing. */
  readonly outline: readonly Pt[];
  /** Length of the wall it hangs on. */
  readonly length: In;
  readonly hold: (to: HeldTo) => Held | null;
  /** Up and down change its height: in the wall drawing. */
  readonly rises: boolean;
  /** Why it is held just there, for whoever shows it. */
  readonly onStop: (stop: string | null) => void;
}

/** Side of what can be taken hold of, px: as large as a finger where there is one. */
const LEAST_PX = 28;
const GRIP = 3.6;
/** Grips of a panel drawn smaller than this stand outside its corners, so that it is still seen. */
const SMALL_PX = 22;
const TREMBLE_PX = 10;

/** The new panel, to be taken hold of: dragged, or moved with the arrow keys. */
export const PanelHandle = ({ option, on, outline, length, hold, rises, onStop }: Props) => {
  const { drag, drop, letGo } = useActions();
  const held = useJobState((s) => s.live !== null && s.live.droppedAt === null);
  const from = useRef<HeldTo['from'] | null>(null);
  const corners = outline.map(on.to);
  const xs = corners.map((p) => p[0]);
  const ys = corners.map((p) => p[1]);
  const [w, h] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  const [x, y] = [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
  const place = option.enclosure.on;
  const apart = Math.min(w, h) < SMALL_PX ? GRIP + 2 : 0;
  const grips = corners.map(([cx, cy]): Pt => [cx + Math.sign(cx - x) * apart, cy + Math.sign(cy - y) * apart]);

  const pointAt = (event: PointerEvent<HTMLElement>): Pt | null => {
    const paper = event.currentTarget.parentElement?.getBoundingClientRect();
    return paper ? on.from([event.clientX - paper.left, event.clientY - paper.top]) : null;
  };
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return;
    event.preventDefault();
    event.currentTarget.focus();
    event.currentTarget.setPointerCapture(event.pointerId);
    const p = pointAt(event);
    from.current = p && { p, on: place };
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const p = from.current && pointAt(event);
    const to =
      p &&
      from.current &&
      hold({ p, from: from.current, step: event.shiftKey ? 0.25 : 1, tremble: TREMBLE_PX / on.scale });
    if (!to) return;
    onStop(to.stop);
    const same = to.on.left === place.left && to.on.bottom === place.bottom && to.on.wall === place.wall;
    if (!same || to.on.face !== place.face) drag(option.id, to.on);
  };
  const up = (): void => {
    from.current = null;
    onStop(null);
    drop();
  };
  const back = (): void => {
    from.current = null;
    onStop(null);
    letGo();
  };
  const nudge = (event: KeyboardEvent<HTMLElement>): void => {
    const step = event.shiftKey ? 0.25 : 1;
    const along: Record<string, number> = { ArrowRight: step, ArrowLeft: -step };
    const high: Record<string, number> = { ArrowUp: step, ArrowDown: -step };
    if (event.key === 'Escape' && held) {
      event.preventDefault();
      back();
      return;
    }
    const by = along[event.key] ?? (rises ? undefined : high[event.key]);
    const up1 = rises ? high[event.key] : undefined;
    if (by === undefined && up1 === undefined) return;
    event.preventDefault();
    const left = Math.max(0, Math.min(length - option.enclosure.size.width, place.left + (by ?? 0)));
    const to: OnWall = { ...place, left, bottom: Math.max(0, place.bottom + (up1 ?? 0)) };
    onStop(left === place.left && by !== undefined ? say.wallEnd : null);
    drag(option.id, to);
  };
  const [bw, bh] = [Math.max(w + 10, LEAST_PX), Math.max(h + 10, LEAST_PX)];
  const text = say.panelAt({
    left: formatFeetInches(place.left),
    bottom: formatFeetInches(place.bottom),
    wall: wallName(place),
  });
  return (
    <>
      <svg className={css.over} width={on.width} height={on.height} aria-hidden="true">
        <path d={pathData(corners, true)} className={held ? css.ghost : css.chosen} />
        {grips.map((p) => (
          <rect
            key={p.join()}
            x={p[0] - GRIP}
            y={p[1] - GRIP}
            width={2 * GRIP}
            height={2 * GRIP}
            className={css.grip}
          />
        ))}
      </svg>
      <div
        role="slider"
        tabIndex={0}
        className={css.handle}
        style={{ left: x - bw / 2, top: y - bh / 2, width: bw, height: bh }}
        title={say.panelHint}
        aria-label={say.panelHandle({ option: option.title })}
        aria-valuemin={0}
        aria-valuemax={Math.max(0, length - option.enclosure.size.width)}
        aria-valuenow={place.left}
        aria-valuetext={text}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={back}
        onKeyDown={nudge}
        onKeyUp={(event) => {
          if (event.key.startsWith('Arrow')) {
            onStop(null);
            drop();
          }
        }}
        onBlur={() => drop()}
      />
    </>
  );
};
