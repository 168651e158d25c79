import { type FormEvent, useState } from 'react';
import { distance } from '../../geometry/vector';
import type { Id, In } from '../../units/types';
import { surveyWords as say } from '../../words/en/survey';
import { useJob } from '../selected';
import { length } from './fields/spec';
import { TypedField } from './fields/TypedField';
import { freshId } from './ref';
import { useSheet } from './sheetState';
import css from './survey.module.css';
import { useChange } from './useChange';

const LENGTH = length('', say.length);
const AT = length('', say.split);

/** What only walls have: a length that can be typed, splitting, and joining with the next. */
export const WallExtras = ({ wall, list }: { readonly wall: Id; readonly list: string }) => {
  const { site } = useJob();
  const job = useJob();
  const change = useChange();
  const { set } = useSheet();
  const i = site.outline.findIndex((c) => c.id === wall);
  const partition = site.partitions.find((p) => p.id === wall);
  const next = site.outline[(i + 1) % site.outline.length];
  const long: In | undefined =
    i >= 0 ? distance(site.outline[i]!.at, next!.at) : partition && distance(partition.from, partition.to);
  const [at, setAt] = useState<In | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  if (long === undefined) return null;
  const place = at ?? Math.round(long / 2);
  const split = (e: FormEvent): void => {
    e.preventDefault();
    const id = freshId(job, list, wall);
    const reason = change({ edit: 'split wall', wall, at: place, id });
    setRefusal(reason);
    if (reason === null) set({ selected: { list, id } });
  };
  return (
    <>
      <TypedField
        spec={LENGTH}
        value={Math.round(long * 64) / 64}
        onSet={(value) => change({ edit: 'wall length', wall, length: value as In })}
      />
      <form className={css.pair} onSubmit={split} noValidate>
        <TypedField
          spec={AT}
          value={place}
          onSet={(value) => {
            setAt(value as In);
            return null;
          }}
        />
        <button type="submit" className={css.quiet}>
          {say.splitDo}
        </button>
      </form>
      {i >= 0 && (
        <button type="button" className={css.quiet} onClick={() => setRefusal(change({ edit: 'join walls', wall }))}>
          {say.join}
        </button>
      )}
      {refusal !== null && (
        <p role="alert" className={css.why}>
          {refusal}
        </p>
      )}
    </>
  );
};
