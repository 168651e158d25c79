import type { OrderLine } from '../facts/result';

/** As a supply counter walks its aisles. */
export const ORDER_GROUPS = ['panel', 'breakers', 'cable', 'boxes', 'running', 'other'] as const;
export type OrderGroup = (typeof ORDER_GROUPS)[number];

const FAMILIES: Readonly<Record<OrderGroup, RegExp>> = {
  panel:
    /^(panel|main|service disconnect|finish|trim|electrode):|^(board|standoff|spd|hub|tidy board|ground bar|filler plate|handle tie)$/,
  breakers: /^(breaker|feeder breaker|connected):/,
  cable: /^cable:/,
  boxes: /^(box|splice|connector):|^(splice can|knockout seal)$/,
  running: /^(sleeve|nipple|wireway):|^(staple|plate|running board|fire stop)$/,
  other: /^/,
};
/** Lines of an order by group, in their own order, with their places in the result; no empty group. */
export const orderGroups = (
  order: readonly OrderLine[],
): { readonly group: OrderGroup; readonly lines: readonly { readonly line: OrderLine; readonly at: number }[] }[] => {
  const placed = order.map((line, at) => ({ line, at }));
  const groupOf = (item: string) => ORDER_GROUPS.find((group) => FAMILIES[group].test(item));
  return ORDER_GROUPS.map((group) => ({
    group,
    lines: placed.filter(({ line }) => groupOf(line.item) === group),
  })).filter(({ lines }) => lines.length > 0);
};
