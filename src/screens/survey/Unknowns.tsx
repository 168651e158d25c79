import { useMemo, useState } from 'react';
import { surveyWords as say } from '../../words/en/survey';
import { EffectMark } from '../parts/EffectMark';
import { pointerName } from '../parts/names';
import { useJob, useStale } from '../selected';
import { useJobState } from '../session';
import { goToSheet } from '../sheetHash';
import { CIRCUITS } from './grid/SurveyViews';
import { useSheet } from './sheetState';
import css from './survey.module.css';
import { rankUnknowns } from './unknowns';

const FEW = 6;
/** Circuits and home runs have their fields in the grid. */
const OF_GRID = /^\/(homeRuns|circuits)\//;

/** What is still unknown, ranked by what it blocks; a tap leads to the thing it belongs to. */
export const Unknowns = () => {
  const job = useJob();
  const stale = useStale();
  const result = useJobState((s) => s.answer?.result ?? null);
  const { set } = useSheet();
  const [all, setAll] = useState(false);
  const ranked = useMemo(() => rankUnknowns(job, stale ? null : result), [job, stale, result]);
  const shown = all ? ranked : ranked.slice(0, FEW);
  return (
    <section className={css.unknowns} aria-labelledby="survey-unknown">
      <h2 id="survey-unknown">
        {say.unknownTitle} <small>{say.unknownRanked}</small>
      </h2>
      {ranked.length === 0 && <p className={css.say}>{say.nothingUnknown}</p>}
      {job.options.length === 0 && <p className={css.say}>{say.noOptionYet}</p>}
      <ol>
        {shown.map((u, i) => {
          const name = pointerName(job, u.pointer);
          const text = (
            <>
              <EffectMark effect="verify in field" number={i + 1} />
              <span>
                <b>
                  {name.thing}:{' '}
                  {say.these([...new Set([name, ...u.also.map((p) => pointerName(job, p))].map((n) => n.what))])}
                </b>
                <small className={css.detail}>
                  {u.stops && `${say.stopsToo} · `}
                  {u.blocks.length > 0 ? say.blocks({ what: say.blocked(u.blocks) }) : say.blocksNothing}
                </small>
              </span>
            </>
          );
          const { ref } = u;
          const lead = ref
            ? () => set({ selected: ref, tool: 'select', taken: null })
            : OF_GRID.test(u.pointer)
              ? () => goToSheet('survey', CIRCUITS)
              : null;
          return (
            <li key={u.pointer}>
              {lead === null ? (
                <span className={css.plain}>{text}</span>
              ) : (
                <button type="button" onClick={lead}>
                  {text}
                </button>
              )}
            </li>
          );
        })}
      </ol>
      {ranked.length > FEW && (
        <button type="button" className={css.quiet} onClick={() => setAll(!all)}>
          {all ? say.showFewer : say.showAll({ n: ranked.length })}
        </button>
      )}
    </section>
  );
};
