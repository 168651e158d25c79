import { type ClipboardEvent, type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react';
import { gridWords as say } from '../../../words/en/grid';
import { cellText } from './apply';
import { blockOf, cellsAt, cellsUnder, clipboardText, headsOf } from './block';
import { COLUMNS } from './columns';
import { keyDeed } from './keys';
import { type Area, areaOf, blockIn, emptied, filledDown, type Place, spread } from './selection';
import { type Grid, rowName } from './useGrid';

const PAGE = 10;

/** What happens in cells, the same object all along so that rows need not be drawn anew. */
export interface CellEvents {
  press(event: PointerEvent, at: Place): void;
  over(event: PointerEvent, at: Place): void;
  focus(at: Place): void;
  open(at: Place): void;
  pickRow(row: number): void;
  type(text: string): void;
  take(move: { readonly rows: number; readonly columns: number } | null): void;
  leave(): void;
}
export interface Cells {
  readonly active: Place;
  readonly area: Area;
  /** What is being typed into the active cell, null while nothing is. */
  readonly typing: string | null;
  /** Does the grid hold the keyboard? */
  readonly held: boolean;
  readonly on: CellEvents;
  onKeyDown(event: KeyboardEvent): void;
  onCopy(event: ClipboardEvent): void;
  onCut(event: ClipboardEvent): void;
  onPaste(event: ClipboardEvent): void;
  removeSelected(): void;
  letGo(): void;
}

/** Active cell, selected area, typing and clipboard of a grid. */
export const useCells = (grid: Grid): Cells => {
  const [active, setActive] = useState<Place>({ row: 0, column: 0 });
  const [anchor, setAnchor] = useState<Place>({ row: 0, column: 0 });
  const [typing, setTyping] = useState<string | null>(null);
  const [held, setHeld] = useState(false);
  const extent = { rows: grid.rows.length + 1, columns: COLUMNS.length, page: PAGE };
  // rows may have gone since
  const row = Math.min(active.row, grid.rows.length);
  const at: Place = { row, column: active.column };
  const area = areaOf({ ...anchor, row: Math.min(anchor.row, grid.rows.length) }, at);

  const go = (to: Place, extend: boolean): void => {
    setHeld(true);
    setActive(to);
    if (!extend) setAnchor(to);
  };
  const textAt = ({ row: r, column }: Place): string =>
    grid.rows[r] ? cellText(grid.job, grid.bad, grid.rows[r], COLUMNS[column]!.id) : '';
  const take = (text: string): void => {
    const column = COLUMNS[at.column]!.id;
    if (text === textAt(at)) return;
    const name = say.setCell({ column: say.heads[column], row: rowName(grid.rows[at.row]) });
    grid.set([{ row: at.row, column, text }], name);
  };
  const paste = (text: string): void => {
    const block = blockOf(text);
    if (block.length === 0) return;
    const heads = headsOf(block[0]!);
    const laid = heads ? block.slice(1) : spread(block, area);
    const cells = heads ? cellsUnder(heads, laid, area.top) : cellsAt(laid, area.top, area.left);
    const { refused } = grid.set(cells, say.paste({ rows: laid.length }));
    const lines = (heads?.unknown ?? []).map((head) => say.unknownColumn({ head }));
    if (lines.length > 0) grid.tell({ title: say.read({ rows: laid.length }), lines });
    const width = Math.max(...laid.map((cells_) => cells_.length));
    if (heads || refused.length > laid.length * width) return;
    setAnchor({ row: area.top, column: area.left });
    setActive({
      row: Math.min(area.top + laid.length, extent.rows + laid.length) - 1,
      column: Math.min(area.left + width, COLUMNS.length) - 1,
    });
  };
  const copy = (event: ClipboardEvent): boolean => {
    if (typing !== null) return false;
    event.preventDefault();
    event.clipboardData.setData('text/plain', clipboardText(blockIn(grid.job, grid.bad, area)));
    return true;
  };
  const cellCount = (area.bottom - area.top + 1) * (area.right - area.left + 1);

  const live = useRef({ at, typing, go, take, textAt, setTyping });
  live.current = { at, typing, go, take, textAt, setTyping };
  const on = useMemo<CellEvents>(
    () => ({
      press(event, to) {
        if (live.current.typing !== null && to.row === live.current.at.row && to.column === live.current.at.column)
          return;
        const again = to.row === live.current.at.row && to.column === live.current.at.column;
        // a finger has no double click: the second touch of a cell opens it
        if (again && event.pointerType !== 'mouse' && event.currentTarget === document.activeElement) {
          event.preventDefault();
          live.current.setTyping(live.current.textAt(to));
          return;
        }
        live.current.go(to, event.shiftKey);
        if (event.currentTarget.hasPointerCapture(event.pointerId))
          event.currentTarget.releasePointerCapture(event.pointerId);
      },
      over(event, to) {
        if (event.buttons === 1 && event.pointerType === 'mouse' && live.current.typing === null)
          live.current.go(to, true);
      },
      focus(to) {
        const { at: now } = live.current;
        setHeld(true);
        if (to.row !== now.row || to.column !== now.column) live.current.go(to, false);
      },
      open: (to) => live.current.setTyping(live.current.textAt(to)),
      pickRow(row_) {
        setHeld(true);
        setAnchor({ row: row_, column: 0 });
        setActive({ row: row_, column: COLUMNS.length - 1 });
      },
      type: (text) => setTyping(text),
      take(move) {
        const { typing: text, at: from } = live.current;
        if (text === null) return;
        live.current.typing = null; // the blur that follows takes nothing twice
        setTyping(null);
        live.current.take(text);
        if (!move) return;
        live.current.go(
          {
            row: Math.max(0, from.row + move.rows),
            column: Math.max(0, Math.min(COLUMNS.length - 1, from.column + move.columns)),
          },
          false,
        );
      },
      leave() {
        live.current.typing = null;
        setTyping(null);
      },
    }),
    [],
  );

  return {
    active: at,
    area,
    typing,
    held,
    on,
    letGo: () => setHeld(false),
    onKeyDown(event) {
      if (typing !== null) return;
      const deed = keyDeed(event, at, extent);
      if (deed === null) return;
      event.preventDefault();
      switch (deed.deed) {
        case 'go':
          return go(deed.to, deed.extend);
        case 'type':
          return setTyping(deed.text ?? textAt(at));
        case 'clear':
          return grid.clear(emptied(area), say.clear({ cells: cellCount }));
        case 'fill': {
          const cells = filledDown(grid.job, grid.bad, area);
          const rows = new Set(cells.map((c) => c.row)).size;
          if (rows > 0) grid.set(cells, say.fill({ rows }));
          return;
        }
        case 'select all':
          setAnchor({ row: 0, column: 0 });
          return setActive({ row: Math.max(0, grid.rows.length - 1), column: COLUMNS.length - 1 });
        case 'shrink':
          return setAnchor(at);
      }
    },
    onCopy: copy,
    onCut(event) {
      if (copy(event)) grid.clear(emptied(area), say.cut({ cells: cellCount }));
    },
    onPaste(event) {
      const text = event.clipboardData.getData('text/plain');
      if (typing !== null && !/[\t\r\n]/.test(text.trimEnd())) return;
      event.preventDefault();
      if (typing !== null) on.leave();
      paste(text);
    },
    removeSelected() {
      const rows = Array.from({ length: area.bottom - area.top + 1 }, (_, k) => area.top + k);
      grid.remove(rows.filter((r) => r < grid.rows.length));
      setAnchor({ row: area.top, column: at.column });
      setActive({ row: area.top, column: at.column });
    },
  };
};
