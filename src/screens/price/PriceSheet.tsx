import { screenWords as say } from '../../words/en/screens';
import { AfterNotes } from '../SheetFrame';
import { useSelected } from '../selected';
import { AdviceStrip } from './AdviceStrip';
import { OptionsTable } from './OptionsTable';
import { PriceLines } from './PriceLines';

/** Options side by side, what is advised, and the lines behind the selected option's price. */
export const PriceSheet = () => {
  const selected = useSelected();
  return (
    <>
      <OptionsTable />
      <AdviceStrip />
      {selected?.plan && (
        <AfterNotes label={say.linesBehind}>
          <PriceLines plan={selected.plan} at={selected.at} />
        </AfterNotes>
      )}
    </>
  );
};
