import { useState } from 'react';
import { screenWords as say } from '../../words/en/screens';
import { AfterNotes } from '../SheetFrame';
import { InColumn } from '../Slots';
import { useSelected } from '../selected';
import { useWide } from '../survey/useWide';
import { Alternates } from './Alternates';
import { Drivers } from './Drivers';
import { Firmness } from './Firmness';
import { LineBehind } from './LineBehind';
import { LinesTable } from './LinesTable';
import css from './lines.module.css';
import { Packages } from './Packages';

/** The lines of the selected option's price, how firm it is, and what the owner may take. */
export const OptionsPart = () => {
  const selected = useSelected();
  const [line, setLine] = useState<string | null>(null);
  const wide = useWide();
  const plan = selected?.plan;
  if (!selected || !plan) return null;
  const picked = plan.price.lines.find((l) => l.id === line);
  const behind = picked && <LineBehind plan={plan} at={selected.at} line={picked} />;
  return (
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
            <Packages plan={plan} at={selected.at} />
            <Alternates plan={plan} at={selected.at} />
            <Drivers plan={plan} at={selected.at} />
          </div>
        </div>
      </AfterNotes>
    </>
  );
};
