import { memo } from 'react';
import type { Drawing } from '../../drawings/items';
import { PaintDimension } from './PaintDimension';
import { PaintArc, PaintLine, PaintSign } from './paint';
import type { Projection } from './projection';

/** Lines, signs and dimensions of a drawing, without lettering. */
export const PaintLines = memo(({ drawing, on }: { drawing: Pick<Drawing, 'items'>; on: Projection }) =>
  drawing.items.map((item, i) => {
    const key = `${i} ${item.id}`;
    switch (item.item) {
      case 'line':
        return <PaintLine key={key} line={item} on={on} />;
      case 'arc':
        return <PaintArc key={key} arc={item} on={on} />;
      case 'sign':
        return <PaintSign key={key} sign={item} on={on} />;
      case 'dimension':
        return <PaintDimension key={key} dimension={item} on={on} />;
      default:
        return null;
    }
  }),
);
