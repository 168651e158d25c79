import type { Option } from '../../job/schema';
import { byId } from '../../units/order';
import type { Id } from '../../units/types';
import { layoutWords as say } from '../../words/en/layout';
import { thingName } from '../parts/names';
import { useJob } from '../selected';
import { ChoiceField } from './ChoiceField';
import css from './layout.module.css';
import { optionPath, useTryEdit } from './useOptionEdit';

type Becomes = keyof typeof say.becomes;
const CHOICES: readonly Becomes[] = ['not replaced', 'removed', 'splice can', 'subpanel', 'program chooses'];

/** Which old panels the new one replaces, and what becomes of each can; what is moved out of the way for it. */
export const ReplacesFields = ({ option }: { readonly option: Option }) => {
  const job = useJob();
  const tryEdit = useTryEdit();
  const becomes = (enclosure: Id): Becomes =>
    option.replaces.find((r) => r.enclosure === enclosure)?.becomes ?? 'not replaced';
  const set = (enclosure: Id, value: Becomes): void => {
    const others = option.replaces.filter((r) => r.enclosure !== enclosure);
    const next = value === 'not replaced' ? others : byEnclosure([...others, { enclosure, becomes: value }]);
    tryEdit({ edit: 'set value', path: optionPath(job, option, 'replaces'), value: next });
  };
  const stay = (obstacle: Id): void => {
    const next = option.moves.filter((m) => m.obstacle !== obstacle);
    tryEdit({ edit: 'set value', path: optionPath(job, option, 'moves'), value: next });
  };
  return (
    <div className={css.one}>
      {byId(job.enclosures).map((e) => (
        <ChoiceField
          key={e.id}
          label={say.replaces({ panel: thingName(job, e.id) })}
          value={becomes(e.id)}
          choices={CHOICES.map((value) => ({ value, say: say.becomes[value] }))}
          onSet={(value) => set(e.id, value)}
        />
      ))}
      {option.moves.length > 0 && <h3 className={css.sub}>{say.movesHeading}</h3>}
      {option.moves.map((m) => (
        <p key={m.obstacle} className={css.pin}>
          <span>
            {thingName(job, m.obstacle)}: {m.to === 'away' ? say.movedAway : say.movedTo}
          </span>
          <button type="button" onClick={() => stay(m.obstacle)}>
            {say.dropMove}
          </button>
        </p>
      ))}
    </div>
  );
};
const byEnclosure = (list: Option['replaces']): Option['replaces'] =>
  [...list].sort((a, b) => (a.enclosure < b.enclosure ? -1 : 1));
