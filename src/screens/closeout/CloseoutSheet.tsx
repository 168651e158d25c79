import { cutListCsv, orderCsv } from '../../documents/cutListCsv';
import { closeoutWords as say } from '../../words/en/closeout';
import { Cautions } from '../parts/Cautions';
import { homeRunTag } from '../parts/names';
import parts from '../parts/parts.module.css';
import { InTools, InViews } from '../Slots';
import { useJob, useSelected, useStale } from '../selected';
import { useHost } from '../session';
import { goToSheet, useSheetPart } from '../sheetHash';
import { BoxTable } from './BoxTable';
import { CutList } from './CutList';
import { DirectoryTable } from './DirectoryTable';
import { OrderTable } from './OrderTable';
import { Papers } from './Papers';
import css from './papers.module.css';
import { RunsTable } from './RunsTable';
import { Tasks } from './Tasks';
import { Truck } from './Truck';

const PARTS = ['crew', 'cuts', 'boxes', 'directory'] as const;

/** What is handed to the crew and to the counter, one list at a time; all of them on paper. */
export const CloseoutSheet = () => {
  const selected = useSelected();
  const job = useJob();
  const stale = useStale();
  const host = useHost();
  const at = useSheetPart();
  const part = PARTS.find((p) => p === at) ?? 'crew';
  const plan = selected?.plan;
  if (!selected || !plan) return <p className={css.none}>{say.notPlanned}</p>;
  const fileName = (what: string) =>
    `${[job.id, selected.option.id, what].join('.').replace(/[^\p{L}\p{N}._-]+/gu, '-')}.csv`;
  return (
    <>
      <InTools>
        {PARTS.map((name) => (
          <button
            key={name}
            type="button"
            className={parts.tool}
            aria-pressed={name === part}
            onClick={() => goToSheet('closeout', name)}
          >
            {say.parts[name]}
          </button>
        ))}
      </InTools>
      <InViews>
        <button type="button" className={`${parts.go} ${css.print}`} onClick={() => print()}>
          {say.print}
        </button>
      </InViews>
      {stale && <p className={css.none}>{say.stale}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the list scrolls at a desk, and a keyboard must reach it */}
      <section className={css.sheet} aria-label={say.parts[part]} tabIndex={0}>
        {part === 'crew' && (
          <>
            <Tasks plan={plan} at={selected.at} />
            <div className={css.cautioned}>
              <Cautions at="crew" />
            </div>
            <RunsTable plan={plan} at={selected.at} ticks={false} />
          </>
        )}
        {part === 'cuts' && (
          <>
            <div className={css.files}>
              <button
                type="button"
                className={parts.button}
                onClick={() =>
                  host.download(
                    fileName('cuts'),
                    cutListCsv(plan, (id) => homeRunTag(job, id)),
                  )
                }
              >
                {say.cutsCsv}
              </button>
              <button
                type="button"
                className={parts.button}
                onClick={() => host.download(fileName('order'), orderCsv(plan.order))}
              >
                {say.orderCsv}
              </button>
            </div>
            <div className={css.pair}>
              <div>
                <CutList plan={plan} at={selected.at} />
                <Truck plan={plan} />
              </div>
              <OrderTable plan={plan} at={selected.at} />
            </div>
          </>
        )}
        {part === 'boxes' && <BoxTable plan={plan} at={selected.at} />}
        {part === 'directory' && <DirectoryTable plan={plan} at={selected.at} />}
      </section>
      <Papers view={selected} plan={plan} />
    </>
  );
};
