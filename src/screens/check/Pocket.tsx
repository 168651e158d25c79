import { useId, useState } from 'react';
import { calcAmpacity } from '../../calculations/ampacity';
import { calcBend } from '../../calculations/bend';
import { calcBoring } from '../../calculations/boring';
import { calcBoxFill } from '../../calculations/boxFill';
import { calcPullBox } from '../../calculations/pullBox';
import { calcTerminalBend } from '../../calculations/terminalBend';
import type { CalcOutput } from '../../calculations/types';
import { calcVoltageDrop } from '../../calculations/voltageDrop';
import { type CalcRead, readCalcInput } from '../../job/calcInput';
import type { Fault } from '../../units/fault';
import type { Result } from '../../units/result';
import { isKnown } from '../../units/types';
import { pocketWords as say } from '../../words/en/pocket';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import css from './check.module.css';
import { PocketAnswer } from './PocketAnswer';
import { POCKET, type PocketName } from './pocketFields';
import { pocketInput } from './pocketInput';

const CALCULATIONS: { readonly [N in PocketName]: (input: CalcRead[N]) => Result<CalcOutput, Fault> } = {
  'box-fill': calcBoxFill,
  ampacity: calcAmpacity,
  'voltage-drop': calcVoltageDrop,
  boring: calcBoring,
  'pull-box': calcPullBox,
  bend: calcBend,
  'terminal-bend': calcTerminalBend,
};
const NAMES = Object.keys(CALCULATIONS) as PocketName[];

const run = <N extends PocketName>(name: N, json: string): Result<CalcOutput, Fault> => {
  const input = readCalcInput(name, json);
  return input.ok ? CALCULATIONS[name](input.value) : input;
};
const spoken = (value: string | number | boolean | null): string =>
  value === true
    ? say.yes
    : value === false
      ? say.no
      : value === null || value === 'unknown'
        ? say.unknown
        : String(value);

/** The calculations the rules use, one at a time, with what was typed kept by calculation and every step shown. */
export const Pocket = () => {
  const [name, setName] = useState<PocketName>('box-fill');
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [answer, setAnswer] = useState<CalcOutput | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const id = useId();
  const { edition } = useJob().code;
  const fields = POCKET[name].map((f) =>
    f.key === 'edition' && isKnown(edition) ? { ...f, start: String(edition) } : f,
  );
  const keyOf = (key: string): string => `${name} ${key}`;
  const type = (key: string, value: string): void => {
    setTyped({ ...typed, [keyOf(key)]: value });
    setAnswer(null);
    setFault(null);
  };
  const work = (): void => {
    const own = Object.fromEntries(
      fields.flatMap((f) => (keyOf(f.key) in typed ? [[f.key, typed[keyOf(f.key)]!]] : [])),
    );
    const read = pocketInput(fields, own);
    const done = 'json' in read ? run(name, read.json) : null;
    setAnswer(done?.ok ? done.value : null);
    setFault('fault' in read ? read.fault : done && !done.ok ? say.notReadAt(done.error.error) : null);
  };
  return (
    <section className={css.block}>
      <h3>{say.title}</h3>
      <form
        className={css.pocket}
        onSubmit={(event) => {
          event.preventDefault();
          work();
        }}
      >
        <label htmlFor={`${id}-name`}>{say.choose}</label>
        <select
          id={`${id}-name`}
          value={name}
          onChange={(e) => {
            setName(e.target.value as PocketName);
            setAnswer(null);
            setFault(null);
          }}
        >
          {NAMES.map((n) => (
            <option key={n} value={n}>
              {say.names[n]}
            </option>
          ))}
        </select>
        {fields.map((f) => {
          const value = typed[keyOf(f.key)] ?? f.start;
          return (
            <div key={keyOf(f.key)} className={css.pocketField}>
              <label htmlFor={`${id}-${f.key}`}>{say.fields[f.label]}</label>
              {f.kind === 'choice' ? (
                <select id={`${id}-${f.key}`} value={value} onChange={(e) => type(f.key, e.target.value)}>
                  {f.choices.map((c) => (
                    <option key={String(c)} value={String(c)}>
                      {spoken(c)}
                    </option>
                  ))}
                </select>
              ) : (
                <input
                  id={`${id}-${f.key}`}
                  value={value}
                  autoComplete="off"
                  onChange={(e) => type(f.key, e.target.value)}
                />
              )}
            </div>
          );
        })}
        <button type="submit" className={parts.button}>
          {say.work}
        </button>
      </form>
      {fault !== null && (
        <p role="alert" className={css.refusal}>
          {fault}
        </p>
      )}
      {answer && <PocketAnswer answer={answer} />}
    </section>
  );
};
