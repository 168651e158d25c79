import { lazy, Suspense, useMemo } from 'react';
import { EFFECTS, type KeyNote, keyNotes } from '../../drawings/keyNotes';
import { checkWords as say } from '../../words/en/check';
import { coverageWords } from '../../words/en/coverage';
import { pocketWords } from '../../words/en/pocket';
import { screenWords } from '../../words/en/screens';
import { Cautions } from '../parts/Cautions';
import { EffectMark } from '../parts/EffectMark';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { InTools } from '../Slots';
import { useSelected } from '../selected';
import { useActions, useJobState } from '../session';
import { goToSheet, useSheetPart } from '../sheetHash';
import { Checked } from './Checked';
import { CodeSettings } from './CodeSettings';
import css from './check.module.css';
import { FindingDetail } from './FindingDetail';
import { FindingDrawing } from './FindingDrawing';
import { QuestionSheet } from './QuestionSheet';
import { Recorded } from './Recorded';

/** Fetched when the sheet is first open: the survey needs none of it. */
const Pocket = lazy(() => import('./pocket/Pocket').then((m) => ({ default: m.Pocket })));

/** Fetched when it is looked at: it holds every rule. */
const Coverage = lazy(() => import('./Coverage').then((m) => ({ default: m.Coverage })));

const count = (notes: readonly KeyNote[]): number => notes.reduce((n, k) => n + k.findings.length, 0);

/** The parts of the sheet: the findings; what the inspector is asked; every rule and what becomes of it. */
const PARTS = ['findings', 'questions', 'coverage'] as const;

export const CheckSheet = () => {
  const at = useSheetPart();
  const part = PARTS.find((p) => p === at) ?? 'findings';
  return (
    <>
      <InTools>
        {PARTS.map((name) => (
          <button
            key={name}
            type="button"
            className={parts.tool}
            aria-pressed={name === part}
            onClick={() => goToSheet('check', name === 'findings' ? '' : name)}
          >
            {say.parts[name]}
          </button>
        ))}
      </InTools>
      {part === 'findings' && <Findings />}
      {part === 'questions' && <QuestionSheet />}
      {part === 'coverage' && (
        <Suspense fallback={<p className={parts.empty}>{coverageWords.opening}</p>}>
          <Coverage />
        </Suspense>
      )}
    </>
  );
};

/** Findings by what they do; the one chosen in the drawing and in full; then the code year, and what was not checked. */
const Findings = () => {
  const selected = useSelected();
  const findings = selected?.plan?.findings;
  const notes = useMemo(() => (findings ? keyNotes(findings) : []), [findings]);
  const chosen = useJobState((s) => s.note);
  const { singleOut } = useActions();
  const note = notes.find((n) => n.number === chosen) ?? notes[0] ?? null;
  return (
    <>
      {selected?.plan ? (
        <div className={css.check}>
          <fieldset className={css.counts}>
            <legend className={parts.hidden}>{say.countsTitle}</legend>
            {EFFECTS.map((effect) => {
              const some = notes.filter((n) => n.effect === effect);
              const first = some[0];
              return (
                <button
                  key={effect}
                  type="button"
                  disabled={!first}
                  aria-pressed={note?.effect === effect}
                  onClick={() => first && singleOut({ note: first.number })}
                >
                  <EffectMark effect={effect} size={26} /> <b>{count(some)}</b>
                  <small>{say.effectShort[effect]}</small>
                </button>
              );
            })}
          </fieldset>
          {note ? (
            <div className={css.one}>
              <FindingDrawing selected={selected} note={note} />
              <FindingDetail selected={selected} note={note} notes={notes} />
            </div>
          ) : (
            <p className={parts.empty}>{say.nothing}</p>
          )}
        </div>
      ) : (
        <p className={parts.empty}>{screenWords.notPlannedYet}</p>
      )}
      <AfterNotes label={screenWords.sheets.check}>
        <div className={css.settings}>
          <CodeSettings />
          <div>
            <Cautions at="check" />
            <Recorded />
            <Suspense fallback={<p className={parts.empty}>{pocketWords.opening}</p>}>
              <Pocket />
            </Suspense>
          </div>
        </div>
        {selected?.plan && <Checked plan={selected.plan} at={selected.at} />}
      </AfterNotes>
    </>
  );
};
