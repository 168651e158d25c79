import { pricePartWords as say } from '../../words/en/price';
import parts from '../parts/parts.module.css';
import { InTools } from '../Slots';
import { goToSheet, useSheetPart } from '../sheetHash';
import { AdviceStrip } from './AdviceStrip';
import { BookPart } from './BookPart';
import { ComparePart } from './ComparePart';
import { DayPart } from './DayPart';
import { NewerBook } from './NewerBook';
import { OptionsPart } from './OptionsPart';
import { OptionsTable } from './OptionsTable';
import { RangePart } from './RangePart';

const PARTS = ['options', 'range', 'compare', 'day', 'book'] as const;
type Part = (typeof PARTS)[number];
const SHOWS: Readonly<Record<Part, () => React.ReactNode>> = {
  options: OptionsPart,
  range: RangePart,
  compare: ComparePart,
  day: DayPart,
  book: BookPart,
};

/** Options side by side, what is advised, and one part of all that is behind the selected option's price. */
export const PriceSheet = () => {
  const at = useSheetPart();
  const part = PARTS.find((p) => p === at) ?? 'options';
  const Shown = SHOWS[part];
  return (
    <>
      <InTools>
        {PARTS.map((name) => (
          <button
            key={name}
            type="button"
            className={parts.tool}
            aria-pressed={name === part}
            onClick={() => goToSheet('price', name === 'options' ? '' : name)}
          >
            {say.parts[name]}
          </button>
        ))}
      </InTools>
      {part !== 'book' && (
        <>
          <OptionsTable />
          {part === 'options' && <AdviceStrip />}
          <NewerBook />
        </>
      )}
      <Shown />
    </>
  );
};
