import { useState } from 'react';
import { screenWords as say } from '../../words/en/screens';
import { useSelected } from '../selected';
import { Checked } from './Checked';
import { CutList } from './CutList';
import { HomeRuns } from './HomeRuns';
import { OptionsTable } from './OptionsTable';
import { PriceLines } from './PriceLines';
import css from './tables.module.css';

const TABS = ['options', 'cuts', 'runs', 'price', 'checked'] as const;
type Tab = (typeof TABS)[number];

const Content = ({ tab }: { readonly tab: Tab }) => {
  const selected = useSelected();
  if (tab === 'options') return <OptionsTable />;
  if (!selected?.plan) return <p className={css.empty}>{say.notPlannedYet}</p>;
  const { plan, at } = selected;
  switch (tab) {
    case 'cuts':
      return <CutList plan={plan} at={at} />;
    case 'runs':
      return <HomeRuns plan={plan} at={at} />;
    case 'price':
      return <PriceLines plan={plan} at={at} />;
    case 'checked':
      return <Checked plan={plan} at={at} />;
  }
};

/** The figures behind the drawing, one list at a time. Arrow keys go from tab to tab. */
export const Tables = () => {
  const [tab, setTab] = useState<Tab>('options');
  const go = (by: number): void => {
    const next = TABS[(TABS.indexOf(tab) + by + TABS.length) % TABS.length]!;
    setTab(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <div className={css.tables}>
      <div role="tablist" aria-label={say.tablesTitle} className={css.tabs}>
        {TABS.map((name) => (
          <button
            key={name}
            id={`tab-${name}`}
            type="button"
            role="tab"
            aria-selected={name === tab}
            aria-controls="table-panel"
            tabIndex={name === tab ? 0 : -1}
            className={name === tab ? css.tabOn : css.tab}
            onClick={() => setTab(name)}
            onKeyDown={(e) => {
              if (e.key === 'ArrowRight') go(1);
              if (e.key === 'ArrowLeft') go(-1);
            }}
          >
            {say.tabs[name]}
          </button>
        ))}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the list scrolls, and a keyboard must reach it */}
      <div id="table-panel" role="tabpanel" aria-labelledby={`tab-${tab}`} tabIndex={0} className={css.panel}>
        <Content tab={tab} />
      </div>
    </div>
  );
};
