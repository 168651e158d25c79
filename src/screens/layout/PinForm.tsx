import { useState } from 'react';
import { bounds } from '../../geometry/polygon';
import { freshId } from '../../job/newOption';
import type { Option, Pin } from '../../job/schema';
import { visibleRun } from '../../job/site';
import type { Id, In, Pt3 } from '../../units/types';
import { pinWords as say } from '../../words/en/pins';
import { LengthField } from '../parts/LengthField';
import { homeRunTag } from '../parts/names';
import { useJob } from '../selected';
import { useJobState } from '../session';
import { ChoiceField } from './ChoiceField';
import css from './layout.module.css';
import { optionPath, useTryEdit } from './useOptionEdit';

type Kind = keyof typeof say.kinds;
const KINDS = (Object.keys(say.kinds) as Kind[]).map((value) => ({ value, say: say.kinds[value] }));

/** A region kept free begins this large, from the floor up. */
const REGION_IN = 24;
const REGION_TOP_IN = 96;

interface Typed {
  readonly at: Pt3;
  readonly size: readonly [width: In, depth: In];
  readonly toZ: In;
}

/** The pin that is typed, or why it is none yet. */
const pinOf = (kind: Kind, id: Id, runs: readonly Id[], { at, size, toZ }: Typed): Pin | string => {
  const [x, y, z] = at;
  const [w, d] = size;
  switch (kind) {
    case 'keep out':
      return {
        id,
        pin: 'keep out',
        outline: [
          [x, y],
          [x + w, y],
          [x + w, y + d],
          [x, y + d],
        ],
        fromZ: z,
        toZ,
      };
    case 'through':
      return runs[0] === undefined ? say.noRuns : { id, pin: 'through', homeRun: runs[0], points: [at] };
    case 'splice at':
      return runs.length === 0 ? say.noRuns : { id, pin: 'splice at', homeRuns: [...runs], at };
    case 'row':
      return runs.length < 2 ? say.oneRow : { id, pin: 'row', homeRuns: [...runs] };
  }
};

/** Settles something against the program's own answer by figures: a place, a region, a row. */
export const PinForm = ({ option }: { readonly option: Option }) => {
  const job = useJob();
  const tryEdit = useTryEdit();
  const singled = useJobState((s) => s.homeRun);
  const [kind, setKind] = useState<Kind>('splice at');
  const [picked, setPicked] = useState<readonly Id[]>([]);
  const [typed, setTyped] = useState<Typed | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const { minX, minY } = bounds(job.site.outline.map((c) => c.at));
  const runs = picked.length > 0 || singled === null ? picked : [singled];
  const start = visibleRun(job, runs[0] ?? '')?.path[0] ?? ([minX, minY, 0] as const);
  const now: Typed = typed ?? {
    at: kind === 'keep out' ? [start[0], start[1], 0] : start,
    size: [REGION_IN, REGION_IN],
    toZ: REGION_TOP_IN,
  };
  const set = (to: Partial<Typed>): null => {
    setTyped({ ...now, ...to });
    return null;
  };
  const [x, y, z] = now.at;
  const list = optionPath(job, option, 'pins');
  const place = (): void => {
    const through = option.pins.find((p) => kind === 'through' && p.pin === 'through' && p.homeRun === runs[0]);
    if (through?.pin === 'through') {
      const points = [...through.points, now.at];
      setRefusal(tryEdit({ edit: 'set field', list, id: through.id, field: '/points', value: points }));
      return;
    }
    const id = freshId(
      'pin',
      option.pins.map((p) => p.id),
    );
    const pin = pinOf(kind, id, runs, now);
    const refused = typeof pin === 'string' ? pin : tryEdit({ edit: 'add record', list, record: pin, before: null });
    setRefusal(refused);
    if (refused === null) setTyped(null);
  };
  const several = kind === 'splice at' || kind === 'row';
  const pick = (id: Id): void =>
    setPicked(several ? (runs.includes(id) ? runs.filter((r) => r !== id) : [...runs, id]) : [id]);
  return (
    <div className={css.one}>
      <ChoiceField label={say.kind} value={kind} choices={KINDS} onSet={setKind} />
      {kind !== 'keep out' && (
        <fieldset className={css.runs}>
          <legend>{several ? say.homeRuns : say.homeRun}</legend>
          {job.homeRuns.map((h) => (
            <label key={h.id}>
              <input
                type={several ? 'checkbox' : 'radio'}
                name="pinned home run"
                checked={runs.includes(h.id)}
                onChange={() => pick(h.id)}
              />
              {homeRunTag(job, h.id)}
            </label>
          ))}
        </fieldset>
      )}
      {kind !== 'row' && (
        <div className={css.two}>
          <LengthField label={say.x} inches={x - minX} onSet={(v) => set({ at: [minX + v, y, z] })} />
          <LengthField label={say.y} inches={y - minY} onSet={(v) => set({ at: [x, minY + v, z] })} />
          {kind === 'keep out' && (
            <>
              <LengthField label={say.width} inches={now.size[0]} onSet={(v) => set({ size: [v, now.size[1]] })} />
              <LengthField label={say.depth} inches={now.size[1]} onSet={(v) => set({ size: [now.size[0], v] })} />
            </>
          )}
          <LengthField
            label={kind === 'keep out' ? say.fromZ : say.z}
            inches={z}
            onSet={(v) => set({ at: [x, y, v] })}
          />
          {kind === 'keep out' && <LengthField label={say.toZ} inches={now.toZ} onSet={(toZ) => set({ toZ })} />}
        </div>
      )}
      {kind === 'through' && <p className={css.quiet}>{say.morePoints}</p>}
      {refusal !== null && (
        <p className={css.quiet} role="alert">
          {refusal}
        </p>
      )}
      <div className={css.pin}>
        <button type="button" onClick={place}>
          {say.place}
        </button>
      </div>
    </div>
  );
};
