import { useState } from 'react';
import { screenWords as say } from '../../words/en/screens';
import { AfterNotes } from '../SheetFrame';
import { InColumn } from '../Slots';
import { useSelected } from '../selected';
import { useWide } from '../survey/useWide';
import { AdviceStrip } from './AdviceStrip';
import { Alternates } from './Alternates';
import { Drivers } from './Drivers';
import { Firmness } from './Firmness';
import { LineBehind } from './LineBehind';
import { LinesTable } from './LinesTable';
import css from './lines.module.css';
import { OptionsTable } from './OptionsTable';

/** Options side by side, what is advised, and all that is behind the selected option's price. */
export const PriceSheet = () => {
  const selected = useSelected();
  const [line, setLine] = useState<string | null>(null);
  const wide = useWide();
  const plan = selected?.plan;
  const picked = plan?.price.lines.find((l) => l.id === line);
  const behind = selected && plan && picked && <LineBehind plan={plan} at={selected.at} line={picked} />;
  return (
    <>
      <OptionsTable />
      <AdviceStrip />
      {selected && plan && (
        <>
          {wide && behind && <InColumn>{behind}</InColumn>}
          <AfterNotes label={say.linesBehind}>
            <div className={css.pair}>
              <LinesTable
                plan={plan}
                at={selected.at}
                letter={selected.letter}
                open={line}
                onOpen={setLine}
                behind={wide ? null : behind}
              />
              <div>
                <Firmness plan={plan} at={selected.at} />
                <Alternates plan={plan} at={selected.at} />
                <Drivers plan={plan} at={selected.at} />
              </div>
            </div>
          </AfterNotes>
        </>
      )}
    </>
  );
};
