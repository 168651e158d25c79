import {
  type PointerEvent,
  type ReactNode,
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Drawing } from '../../drawings/items';
import type { Bounds } from '../../geometry/polygon';
import type { Pt } from '../../units/types';
import { layoutWords as say } from '../../words/en/layout';
import type { Projection } from '../drawing/projection';
import parts from '../parts/parts.module.css';
import css from './layout.module.css';
import { PaintDrawing } from './PaintDrawing';
import { useSize } from './useSize';
import { type Fit, fitScale, type Margin, paperAt, zoomed } from './viewport';

interface Props {
  readonly drawing: Drawing;
  /** 1, 2 …: the number of the view on its sheet. */
  readonly number: number;
  readonly title: string;
  readonly name: string;
  readonly alt: string;
  readonly fit: Fit;
  readonly margin: Margin;
  /** What stands in the middle where not all of it is seen, and when it is asked for. */
  readonly focus: Pt | null;
  /** Changes when the focus is to be brought to the middle again. */
  readonly focusKey: string;
  /** A part of the drawing to be looked at closely, inches; null = nothing of it in particular. */
  readonly frame?: Bounds | null;
  readonly note: number | null;
  readonly onMark: (number: number) => void;
  readonly onThing: (id: string) => void;
  /** A mouse over the drawing, in its inches; null where it left. */
  readonly onHover?: (p: Pt | null, pixel: number) => void;
  /** Pointed at where nothing else is, with the inches of a pixel. */
  readonly onTap?: (p: Pt, pixel: number) => void;
  /** Beside the title: what the lines mean, what is singled out. */
  readonly beside?: ReactNode;
  /** What lies over the drawing and can be taken hold of. */
  readonly over: (on: Projection) => ReactNode;
}

const STEP = 1.3;
const WHEEL = 0.0016;
const MOVED_PX = 4;
/** How close a framed part is looked at: not closer than this, with so much around it. */
const MOST_CLOSE = 5;
const AROUND_PX = 56;
const LEAST_FRAME_IN = 48;

/** A drawing that can be panned and zoomed: by wheel, pinch, dragging the paper, keys and buttons. */
export const DrawingPane = (props: Props) => {
  const {
    drawing,
    number,
    title,
    name,
    alt,
    fit,
    margin,
    focus,
    focusKey,
    frame = null,
    note,
    onMark,
    onThing,
    onHover,
    onTap,
    beside,
    over,
  } = props;
  const ref = useRef<HTMLElement>(null);
  const size = useSize(ref);
  const [zoom, setZoom] = useState(1);
  const [seen, setSeen] = useState<Fit>(fit);
  const { minX, minY, maxX, maxY } = drawing.extent;
  const ready = size.width > 0 && size.height > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: of a drawing only its extent lays it on the paper
  const on = useMemo(
    () => (ready ? paperAt(drawing, size, margin, zoomed(fitScale(drawing, size, margin, seen), zoom)) : null),
    [minX, minY, maxX, maxY, size, margin, zoom, seen, ready],
  );
  /** The point of the drawing that is to stand at a place of the pane once it is painted. */
  const hold = useRef<{ readonly p: Pt; readonly x: number; readonly y: number } | null>(null);

  const zoomAt = useCallback(
    (by: number, clientX?: number, clientY?: number): void => {
      const pane = ref.current;
      if (!pane || !on) return;
      const box = pane.getBoundingClientRect();
      const x = clientX === undefined ? pane.clientWidth / 2 : clientX - box.left;
      const y = clientY === undefined ? pane.clientHeight / 2 : clientY - box.top;
      hold.current = { p: on.from([pane.scrollLeft + x, pane.scrollTop + y]), x, y };
      setZoom((z) => {
        const base = on.scale / z;
        return zoomed(base * z, by) / base;
      });
    },
    [on],
  );
  const fitTo = (to: Fit): void => {
    if (focus && ref.current)
      hold.current = { p: focus, x: ref.current.clientWidth / 2, y: ref.current.clientHeight / 2 };
    setSeen(to);
    setZoom(1);
  };

  useLayoutEffect(() => {
    const pane = ref.current;
    if (!pane || !on || !hold.current) return;
    const { p, x, y } = hold.current;
    const [px, py] = on.to(p);
    pane.scrollTo(px - x, py - y);
    hold.current = null;
  }, [on]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for by its key, not by every move of the panel
  useLayoutEffect(() => {
    const pane = ref.current;
    if (!pane || !on || !focus) return;
    const [x, y] = on.to(focus);
    pane.scrollTo(x - pane.clientWidth / 2, y - pane.clientHeight / 2);
  }, [focusKey, on === null, size]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a frame is looked at when it becomes another one
  useLayoutEffect(() => {
    const pane = ref.current;
    if (!pane || !on || !frame) return;
    const fits = fitScale(drawing, size, margin, seen);
    const close = Math.min(
      MOST_CLOSE,
      (size.width - 2 * AROUND_PX) / Math.max(frame.maxX - frame.minX, LEAST_FRAME_IN),
      (size.height - 2 * AROUND_PX) / Math.max(frame.maxY - frame.minY, LEAST_FRAME_IN),
    );
    const p: Pt = [(frame.minX + frame.maxX) / 2, (frame.minY + frame.maxY) / 2];
    hold.current = { p, x: pane.clientWidth / 2, y: pane.clientHeight / 2 };
    const next = Math.max(1, close / fits);
    if (next === zoom) {
      const [x, y] = on.to(p);
      pane.scrollTo(x - pane.clientWidth / 2, y - pane.clientHeight / 2);
      hold.current = null;
    } else setZoom(next);
  }, [frame?.minX, frame?.minY, frame?.maxX, frame?.maxY, ready]);

  useEffect(() => {
    const pane = ref.current;
    if (!pane) return;
    const wheel = (event: WheelEvent): void => {
      const pageScrolls = document.documentElement.scrollHeight > document.documentElement.clientHeight + 1;
      if (event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY)) return;
      if (!event.ctrlKey && pageScrolls) return;
      event.preventDefault();
      zoomAt(Math.exp(-event.deltaY * (event.ctrlKey ? 6 : 1) * WHEEL), event.clientX, event.clientY);
    };
    let apart = 0;
    const spread = (event: TouchEvent): number => {
      const [a, b] = [event.touches[0], event.touches[1]];
      return a && b ? Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY) : 0;
    };
    const touch = (event: TouchEvent): void => {
      const now = spread(event);
      if (now === 0) {
        apart = 0;
        return;
      }
      event.preventDefault();
      const [a, b] = [event.touches[0]!, event.touches[1]!];
      if (apart > 0) zoomAt(now / apart, (a.clientX + b.clientX) / 2, (a.clientY + b.clientY) / 2);
      apart = now;
    };
    pane.addEventListener('wheel', wheel, { passive: false });
    pane.addEventListener('touchmove', touch, { passive: false });
    return () => {
      pane.removeEventListener('wheel', wheel);
      pane.removeEventListener('touchmove', touch);
    };
  }, [zoomAt]);

  const paperPoint = (event: PointerEvent<HTMLElement>): Pt => {
    const box = event.currentTarget.getBoundingClientRect();
    const { scrollLeft, scrollTop } = event.currentTarget;
    return [event.clientX - box.left + scrollLeft, event.clientY - box.top + scrollTop];
  };
  const pan = useRef<{ x: number; y: number; left: number; top: number; moved: boolean } | null>(null);
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.pointerType === 'touch' || event.button !== 0 || event.defaultPrevented) return;
    const { scrollLeft: left, scrollTop: top } = event.currentTarget;
    pan.current = { x: event.clientX, y: event.clientY, left, top, moved: false };
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const from = pan.current;
    if (onHover && on && event.pointerType === 'mouse' && event.buttons === 0)
      onHover(on.from(paperPoint(event)), 1 / on.scale);
    if (!from || (event.buttons & 1) === 0) return;
    const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
    if (!from.moved && Math.hypot(dx, dy) < MOVED_PX) return;
    if (!from.moved) event.currentTarget.setPointerCapture(event.pointerId);
    from.moved = true;
    event.currentTarget.scrollTo(from.left - dx, from.top - dy);
  };
  const up = (event: PointerEvent<HTMLElement>): void => {
    const moved = pan.current?.moved;
    pan.current = null;
    if (moved || !(event.target instanceof Element)) return;
    const mark = event.target.closest<SVGElement>('[data-mark]')?.dataset.mark;
    const thing = event.target.closest<SVGElement>('[data-id]')?.dataset.id;
    if (mark !== undefined) onMark(Number(mark));
    else if (thing !== undefined && !onTap) onThing(thing);
    else if (on && onTap) {
      onTap(on.from(paperPoint(event)), 1 / on.scale);
      if (thing !== undefined) onThing(thing);
    }
  };
  const keys: Readonly<Record<string, () => void>> = {
    '+': () => zoomAt(STEP),
    '=': () => zoomAt(STEP),
    '-': () => zoomAt(1 / STEP),
    '0': () => fitTo(fit),
  };
  return (
    <div className={css.pane}>
      <div className={css.paneHead}>
        <h2 className={css.paneTitle}>
          <span aria-hidden="true">{number}</span>
          {title}
        </h2>
        {beside}
        <div className={css.paneTools}>
          <button type="button" className={parts.tool} onClick={() => zoomAt(1 / STEP)}>
            {say.farther}
          </button>
          <button type="button" className={parts.tool} onClick={() => zoomAt(STEP)}>
            {say.closer}
          </button>
          <button type="button" className={parts.tool} onClick={() => fitTo('whole')}>
            {say.whole}
          </button>
          {fit === 'height' && (
            <button type="button" className={parts.tool} onClick={() => fitTo('height')}>
              {say.toPanel}
            </button>
          )}
        </div>
      </div>
      <section
        ref={ref}
        className={css.view}
        aria-label={name}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls and zooms by keys
        tabIndex={0}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerLeave={() => onHover?.(null, 1)}
        onKeyDown={(event) => {
          const run = event.target === event.currentTarget ? keys[event.key] : undefined;
          if (!run || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          run();
        }}
      >
        {on && (
          <div className={css.paper} style={{ width: on.width, height: on.height }}>
            <PaintDrawing drawing={drawing} on={on} alt={alt} note={note} />
            {over(on)}
          </div>
        )}
      </section>
    </div>
  );
};
