import { useMemo } from 'react';
import { surveyWords as say } from '../../words/en/survey';
import { useShortcuts } from '../shortcuts';
import { TOOLS, type Tool, useSheet } from './sheetState';
import css from './survey.module.css';

/** What can be drawn, beside the plan; each with its key. */
export const DrawRail = () => {
  const { now, set } = useSheet();
  // biome-ignore lint/correctness/useExhaustiveDependencies: `set` is made anew each time but does the same
  const keys = useMemo(() => {
    const take = (tool: Tool) => () => set({ tool, taken: null, thing: null });
    return Object.fromEntries([...TOOLS.map(({ tool, key }) => [key, take(tool)]), ['Escape', take('select')]]);
  }, []);
  useShortcuts(keys);
  return (
    <section aria-label={say.drawTitle} className={css.rail}>
      <h2 className={css.railTitle}>{say.drawTitle}</h2>
      {TOOLS.map(({ tool, key }) => (
        <button
          key={tool}
          type="button"
          aria-pressed={now.tool === tool}
          aria-keyshortcuts={key}
          onClick={() => set({ tool, taken: null, thing: null })}
        >
          <span>{say.tools[tool]}</span>
          <kbd>{key.toUpperCase()}</kbd>
        </button>
      ))}
    </section>
  );
};
