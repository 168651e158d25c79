import { screenWords as say } from '../words/en/screens';
import { figurePath, useJob, useSelected } from './selected';
import { useJobState } from './session';
import type { SheetKey } from './sheetKeys';

/** What a sheet still owes: a figure of the result with its path there, and a word; or a word alone. */
interface Owed {
  readonly figure: number | null;
  readonly path: string;
  readonly say: string;
  readonly stops?: boolean;
}
const only = (text: string): Owed => ({ figure: null, path: '', say: text });

export const useOwed = (): Readonly<Record<SheetKey, Owed>> => {
  const job = useJob();
  const result = useJobState((s) => s.answer?.result ?? null);
  const selected = useSelected();
  const plan = selected?.plan ?? null;
  const at = (key: string) => figurePath(selected?.at ?? 0, key);
  const unknown = result?.unknown.length;
  const verify = plan?.findings.filter((f) => f.effect === 'verify in field').length ?? 0;
  const check = (): Owed => {
    if (!plan) return only(say.owed.notPlanned);
    if (plan.tally.stops > 0)
      return { figure: plan.tally.stops, path: at('tally/stops'), say: say.owed.stops, stops: true };
    return only(verify > 0 ? say.owed.verify({ count: verify }) : say.owed.noStops);
  };
  const price = (): Owed => {
    if (!plan) return only(say.owed.notPlanned);
    if (plan.price.complete) return only(say.owed.range);
    return { figure: plan.price.missing.length, path: at('price/missing/length'), say: say.owed.noPrice };
  };
  return {
    // without an option nothing waits for a measure yet, which does not say that all is known
    survey:
      job.options.length === 0
        ? only(say.owed.begin)
        : unknown === undefined
          ? only(say.owed.notPlanned)
          : { figure: unknown, path: 'unknown/length', say: say.owed.unknown },
    layout: only(say.owed.options({ count: job.options.length })),
    check: check(),
    price: price(),
    closeout: only(say.owed.issued({ count: job.issued.length })),
  };
};
