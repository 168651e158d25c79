import { type PointerEvent, useRef, useState } from 'react';
import { applyEdit } from '../../../job/applyEdit';
import type { Edit } from '../../../job/edit';
import type { Job } from '../../../job/schema';
import type { In, Pt } from '../../../units/types';
import { type Projection, pointerOn } from '../../drawing/projection';
import { useJob } from '../../selected';
import { useActions } from '../../session';
import { dragBody, dragGrip } from '../drag';
import { hitsAt } from '../hit';
import { type Ref, sameRef } from '../ref';
import { useSheet } from '../sheetState';

/** How near counts as on it, points of the paper: a mouse, a finger. */
const NEAR = { mouse: 8, touch: 16 } as const;
/** Below this a press is a tap, points of the paper. */
const TAP = 4;

interface Drag {
  readonly of: Ref;
  readonly grip: string | null;
  readonly from: Pt;
  readonly to: Pt;
  readonly within: In;
  /** The drawing does not change its scale under the hand. */
  readonly on: Projection;
}

/** A finger on what is selected drags it instead of the page: the style `touch-action` does not reach into an SVG. */
const keepFromScrolling = (svg: SVGSVGElement | null) => {
  const start = (e: TouchEvent): void => {
    if ((e.target as Element).closest('[data-grip], [data-body]')) e.preventDefault();
  };
  svg?.addEventListener('touchstart', start, { passive: false });
  return () => svg?.removeEventListener('touchstart', start);
};

const editOf = (job: Job, d: Drag): Edit | null =>
  d.grip === null ? dragBody(job, d.of, d.from, d.to, d.within) : dragGrip(job, d.of, d.grip, d.to, d.within);

/**
 * The pointer on the plan. A tap places what the tool is for, or selects what lies under it, one below the other on
 * repeated taps. What is selected is dragged; a mouse selects and drags in one go. Nothing is changed until it is let go.
 */
export const usePointer = (on: Projection | null, place: ((at: Pt, within: In) => void) | null) => {
  const job = useJob();
  const { now, set } = useSheet();
  const { edit } = useActions();
  const [drag, setDrag] = useState<Drag | null>(null);
  const before = useRef<Ref | null>(null);
  const moved = useRef(false);

  const at = (e: PointerEvent<SVGSVGElement> | React.MouseEvent<SVGSVGElement>, by: Projection): Pt =>
    by.from(pointerOn(e.currentTarget, e));
  const nearOf = (type: string, by: Projection): In => (type === 'mouse' ? NEAR.mouse : NEAR.touch) / by.scale;

  const down = (e: PointerEvent<SVGSVGElement>): void => {
    moved.current = false;
    before.current = now.selected;
    if (!on || e.button !== 0 || place) return;
    const from = at(e, on);
    const within = nearOf(e.pointerType, on);
    const target = e.target as Element;
    const grip = target.closest('[data-grip]')?.getAttribute('data-grip') ?? null;
    const hits = hitsAt(job, from, within);
    const of =
      now.selected && (grip !== null || target.closest('[data-body]') || hits.some((h) => sameRef(h, now.selected)))
        ? now.selected
        : e.pointerType === 'mouse'
          ? (hits[0] ?? null)
          : null;
    if (!of) return;
    if (!sameRef(of, now.selected)) set({ selected: of });
    if (e.pointerType !== 'mouse' && grip === null && !target.closest('[data-body]')) return;
    e.currentTarget.setPointerCapture(e.pointerId);
    setDrag({ of, grip, from, to: from, within, on });
  };
  const move = (e: PointerEvent<SVGSVGElement>): void => {
    if (!drag) return;
    const to = at(e, drag.on);
    if (Math.hypot(to[0] - drag.from[0], to[1] - drag.from[1]) * drag.on.scale > TAP) moved.current = true;
    if (moved.current) setDrag({ ...drag, to });
  };
  /** What lies under a place; the next one below on another tap. */
  const select = (p: Pt, within: In): void => {
    const hits = hitsAt(job, p, within);
    const found = hits.findIndex((h) => sameRef(h, before.current));
    set({ selected: hits[(found + 1) % Math.max(1, hits.length)] ?? null });
  };
  const up = (e: PointerEvent<SVGSVGElement>): void => {
    const change = drag && moved.current ? editOf(job, drag) : null;
    setDrag(null);
    if (change) edit(change);
    // a finger that was kept from scrolling gives no click
    else if (drag && drag.grip === null && e.pointerType !== 'mouse') select(drag.from, drag.within);
  };
  const click = (e: React.MouseEvent<SVGSVGElement>): void => {
    if (!on || moved.current) return;
    const type = (e.nativeEvent as globalThis.PointerEvent).pointerType ?? 'mouse';
    const within = nearOf(type, on);
    const p = at(e, on);
    if (place) place(p, within);
    else if (!(e.target as Element).closest('[data-grip]')) select(p, within);
  };

  const change = drag && moved.current ? editOf(job, drag) : null;
  const tried = change ? applyEdit(job, change) : null;
  return {
    /** The job as it would be if the hand let go here. */
    shown: tried?.ok ? tried.value : job,
    held: drag?.on ?? null,
    handlers: {
      ref: keepFromScrolling,
      onPointerDown: down,
      onPointerMove: move,
      onPointerUp: up,
      onPointerCancel: () => setDrag(null),
      onClick: click,
    },
  };
};
