import { useState } from 'react';
import type { Tails } from '../../../job/schema';
import type { In, U } from '../../../units/types';
import css from './fields.module.css';
import { TAILS } from './oldWork';
import { TypedField } from './TypedField';

const KEYS = ['hot', 'neutral', 'ground'] as const;
type Typed = Partial<Record<(typeof KEYS)[number], In>>;

/** Free conductor in the old panel. The job knows all three or none: two that are typed wait here for the third. */
export const TailsField = ({
  tails,
  onSet,
}: {
  readonly tails: U<Tails>;
  readonly onSet: (tails: U<Tails>) => string | null;
}) => {
  const [typed, setTyped] = useState<Typed>({});
  const now: Typed = tails === 'unknown' ? typed : tails;
  const put = (key: (typeof KEYS)[number], value: unknown): string | null => {
    if (value === 'unknown') {
      setTyped({});
      return onSet('unknown');
    }
    const next: Typed = { ...now, [key]: value as In };
    const { hot, neutral, ground } = next;
    setTyped(next);
    return hot === undefined || neutral === undefined || ground === undefined ? null : onSet({ hot, neutral, ground });
  };
  return (
    <div className={css.grid}>
      {TAILS.map((spec, i) => (
        <TypedField
          key={spec.field}
          spec={{ ...spec, unknown: true }}
          value={now[KEYS[i]!] ?? 'unknown'}
          onSet={(value) => put(KEYS[i]!, value)}
        />
      ))}
    </div>
  );
};
