import { useCallback, useId, useState } from 'react';
import type { CalcName, CalcOutput } from '../../../calculations/types';
import { runCalc } from '../../../plan/calc';
import { isKnown } from '../../../units/types';
import { pocketWords as say } from '../../../words/en/pocket';
import { screenWords } from '../../../words/en/screens';
import parts from '../../parts/parts.module.css';
import { useJob, useSelected } from '../../selected';
import { POCKET, POCKET_NAMES, UNASKED } from './all';
import type { PocketField } from './fields';
import { OptionWorked } from './OptionWorked';
import { PocketAnswer } from './PocketAnswer';
import { PocketInput } from './PocketInput';
import { PocketPaper } from './PocketPaper';
import css from './pocket.module.css';
import { labelOfPath, readFields } from './readFields';
import { spoken } from './shown';

type Typed = Readonly<Record<string, string>>;
type Said = { readonly answer: CalcOutput } | { readonly fault: string } | null;

const workOut = (name: CalcName, fields: readonly PocketField[], typed: Typed): Said => {
  const read = readFields(fields, typed, UNASKED[name]);
  if ('fault' in read) return read;
  const done = runCalc(name, read.json);
  if (done.ok) return { answer: done.value };
  const { path, say: text } = done.error.error;
  return { fault: say.notReadAt({ label: labelOfPath(fields, path), say: text }) };
};
const asShown = (field: PocketField, value: string): string =>
  field.kind === 'choice'
    ? spoken(field.choices.find((c) => String(c) === value) ?? null, field)
    : value.trim() === ''
      ? say.none
      : value.replaceAll('\n', '; ');

/** The calculations the rules use, one at a time, with what was typed kept by calculation and every step shown. */
export const Pocket = () => {
  const [name, setName] = useState<CalcName>('box-fill');
  const [typed, setTyped] = useState<Readonly<Partial<Record<CalcName, Typed>>>>({});
  const [said, setSaid] = useState<Said>(null);
  const [printing, setPrinting] = useState(false);
  const printed = useCallback(() => setPrinting(false), []);
  const id = useId();
  const job = useJob();
  const selected = useSelected();
  const { edition } = job.code;
  const fields = POCKET[name].map((f) =>
    f.key === 'edition' && isKnown(edition) ? { ...f, start: String(edition) } : f,
  );
  const own = typed[name] ?? {};
  const standing = (field: PocketField): string => own[field.key] ?? field.start;
  const type = (key: string, value: string): void => {
    setTyped({ ...typed, [name]: { ...own, [key]: value } });
    setSaid(null);
  };
  return (
    <>
      {selected && <OptionWorked view={selected} />}
      <section className={css.pocket}>
        <h3>{say.title}</h3>
        <form
          className={css.form}
          onSubmit={(event) => {
            event.preventDefault();
            setSaid(workOut(name, fields, own));
          }}
        >
          <div className={css.tall}>
            <label htmlFor={`${id}-name`}>{say.choose}</label>
            <select
              id={`${id}-name`}
              value={name}
              onChange={(e) => {
                setName(e.target.value as CalcName);
                setSaid(null);
              }}
            >
              {POCKET_NAMES.map((n) => (
                <option key={n} value={n}>
                  {say.names[n]}
                </option>
              ))}
            </select>
          </div>
          {fields.map((f) => (
            <PocketInput
              key={`${name} ${f.key}`}
              id={`${id}-${f.key}`}
              field={f}
              value={standing(f)}
              onType={(value) => type(f.key, value)}
            />
          ))}
          <button type="submit" className={parts.button}>
            {say.work}
          </button>
        </form>
        {said && 'fault' in said && (
          <p role="alert" className={css.refusal}>
            {said.fault}
          </p>
        )}
        {said && 'answer' in said && (
          <>
            <div role="status" aria-label={say.answer}>
              <PocketAnswer answer={said.answer} />
            </div>
            <button type="button" className={parts.button} onClick={() => setPrinting(true)}>
              {say.print}
            </button>
            {printing && (
              <PocketPaper
                title={say.names[name]}
                job={job.title || screenWords.untitled}
                given={fields.map((f) => [say.fields[f.label], asShown(f, standing(f))] as const)}
                answer={said.answer}
                onPrinted={printed}
              />
            )}
          </>
        )}
      </section>
    </>
  );
};
