import type { Mills } from '../units/money';
import type { Id } from '../units/types';

/**
 * One piece of work, counted: what F4 parts hand to pricing. `item` names what is done once per `quantity`:
 *   'cable:<trade name>' ft cut · 'pull' one new cable · 'pull ft' ft of route · 'hole' · 'staple' · 'plate' ·
 *   'running board' ft · 'sleeve' ft · 'patch' ft of drywall strip opened and closed · 'lift tile' ft ·
 *   'reuse' one cable drawn back · 'box:<size>' hung with its cover · 'splice' per two insulated conductors joined ·
 *   'connector:<trade size>' one cable entry · 'splice spot' one place with boxes · 'new home run' one fished cable
 * and, added by plan/: 'panel:<spaces>' · 'breaker:…' · 'spd' · 'ground bar' · 'land 1p' … (see docs/price-book.md).
 */
export interface Work {
  readonly item: string;
  readonly quantity: number;
  readonly homeRuns: readonly Id[];
  /** The rule that requires it, or null. */
  readonly rule: string | null;
  readonly alternate: Id | null;
}
/** Direct cost (material + likely labor, before overhead, profit and tax) of one unit of an item, whole mills; undefined = not in the price book. */
export type UnitMills = (item: string) => Mills | undefined;
