import { useState } from 'react';
import { readLengths, truckAfter, withLengths } from '../../documents/truck';
import type { Plan } from '../../facts/result';
import { readTruck, truckText } from '../../job/own';
import type { Job } from '../../job/schema';
import { formatFeetInches } from '../../units/length';
import { truckWords as say } from '../../words/en/truck';
import parts from '../parts/parts.module.css';
import { useJob, useStale } from '../selected';
import { useActions, useHost } from '../session';
import css from './truck.module.css';

/** Lengths in the truck: typed, taken from the last job, and handed on to the next. */
export const Truck = ({ plan }: { readonly plan: Plan }) => {
  const job = useJob();
  const host = useHost();
  const stale = useStale();
  const { edit } = useActions();
  const [said, setSaid] = useState<string | null>(null);
  const [kept, setKept] = useState(() => readTruck(host.ownText('truck')));
  const [fresh, setFresh] = useState('');
  const write = (stock: Job['stock'], name: string): void => {
    edit({ edit: 'set values', name, values: [{ path: '/stock', value: stock }] });
    setSaid(null);
  };
  const take = (cable: string, text: string): string | null => {
    const lengths = readLengths(text);
    if (!lengths.ok) return say.noLength({ found: lengths.error });
    write(withLengths(job.stock, cable, lengths.value), say.edit({ cable }));
    return null;
  };
  const handOn = (): void => {
    const after = truckAfter(job.stock, plan.cuts);
    const fits = host.keepOwnText('truck', truckText(after));
    if (fits) setKept(after);
    setSaid(fits ? say.handedOn({ count: after.reduce((n, s) => n + s.lengths.length, 0) }) : say.noRoom);
  };
  const cables = [...new Set([...job.stock.map((s) => s.cable), ...(fresh === '' ? [] : [fresh])])];
  const others = plan.cuts.map((c) => c.cable).filter((cable) => !cables.includes(cable));
  return (
    <section className={css.truck} aria-label={say.title}>
      <h3>{say.title}</h3>
      <p>{say.note}</p>
      {cables.map((cable) => (
        <Lengths
          key={cable}
          cable={cable.replace(/^cable:/, '')}
          lengths={job.stock.find((s) => s.cable === cable)?.lengths ?? []}
          take={(text) => take(cable, text)}
        />
      ))}
      <div className={css.bar}>
        {others.length > 0 && (
          <label className={css.add}>
            <span>{say.add}</span>
            <select value="" onChange={(e) => setFresh(e.target.value)}>
              <option value="">{say.choose}</option>
              {others.map((cable) => (
                <option key={cable}>{cable}</option>
              ))}
            </select>
          </label>
        )}
        {kept !== null && (
          <button type="button" className={parts.button} onClick={() => write(kept, say.taken)}>
            {say.takeKept}
          </button>
        )}
        <button type="button" className={parts.button} disabled={stale} onClick={handOn}>
          {say.handOn}
        </button>
      </div>
      {said !== null && <p role="status">{said}</p>}
    </section>
  );
};

const Lengths = ({
  cable,
  lengths,
  take,
}: {
  readonly cable: string;
  readonly lengths: readonly number[];
  readonly take: (text: string) => string | null;
}) => {
  const text = lengths.map((l) => formatFeetInches(l)).join(', ');
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const finish = (): void => {
    if (typed === null) return;
    const why = typed === text ? null : take(typed);
    setWrong(why);
    if (why === null) setTyped(null);
  };
  return (
    <label className={css.row}>
      <b>{cable}</b>
      <input
        value={typed ?? text}
        placeholder={say.example}
        spellCheck={false}
        aria-invalid={wrong !== null || undefined}
        onChange={(e) => setTyped(e.target.value)}
        onBlur={finish}
        onKeyDown={(e) => {
          e.stopPropagation();
          if (e.key === 'Enter') finish();
        }}
      />
      {wrong !== null && <span role="alert">{wrong}</span>}
    </label>
  );
};
