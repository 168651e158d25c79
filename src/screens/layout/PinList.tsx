import type { Plan } from '../../facts/result';
import { freshId } from '../../job/newOption';
import { type Job, type Option, type Pin, WAYS, type Way } from '../../job/schema';
import { layoutWords as say } from '../../words/en/layout';
import { pinWords as words } from '../../words/en/pins';
import { homeRunTag } from '../parts/names';
import { useJob } from '../selected';
import { useJobState } from '../session';
import { ChoiceField } from './ChoiceField';
import css from './layout.module.css';
import { PinForm } from './PinForm';
import { optionPath, useTryEdit } from './useOptionEdit';

const saysOf = (job: Job, pin: Pin): string => {
  const tags = (ids: readonly string[]): string => ids.map((id) => homeRunTag(job, id)).join(', ');
  switch (pin.pin) {
    case 'way':
      return say.pin.way({ run: homeRunTag(job, pin.homeRun), way: pin.way });
    case 'through':
      return say.pin.through({ run: homeRunTag(job, pin.homeRun), points: pin.points.length });
    case 'splice at':
      return say.pin['splice at']({ runs: tags(pin.homeRuns) });
    case 'keep out':
      return say.pin['keep out'];
    case 'row':
      return say.pin.row({ runs: tags(pin.homeRuns) });
  }
};

/** What the person has settled against the program's own answer, each to be removed; the way of the run singled out. */
export const PinList = ({ option, plan }: { readonly option: Option; readonly plan: Plan | null }) => {
  const job = useJob();
  const singled = useJobState((s) => s.homeRun);
  const tryEdit = useTryEdit();
  const costs = new Map(plan?.pins.map((c) => [c.pin, c.say]));
  const list = optionPath(job, option, 'pins');
  const pinned = option.pins.find((p) => p.pin === 'way' && p.homeRun === singled);
  const setWay = (way: Way | ''): void => {
    if (singled === null) return;
    const others = option.pins.filter((p) => p !== pinned);
    const id =
      pinned?.id ??
      freshId(
        'pin',
        option.pins.map((p) => p.id),
      );
    const pins: Pin[] = way === '' ? others : [...others, { id, pin: 'way', homeRun: singled, way }];
    tryEdit({ edit: 'set value', path: list, value: pins });
  };
  return (
    <div className={css.one}>
      {option.pins.length === 0 && <p className={css.quiet}>{say.noPins}</p>}
      {option.pins.map((pin) => (
        <p key={pin.id} className={css.pin}>
          <span>
            {saysOf(job, pin)}
            {costs.has(pin.id) && <small> {costs.get(pin.id)}</small>}
          </span>
          <button type="button" onClick={() => tryEdit({ edit: 'remove record', list, id: pin.id })}>
            {say.removePin}
          </button>
        </p>
      ))}
      {singled === null ? (
        <p className={css.quiet}>{say.pinHow}</p>
      ) : (
        <ChoiceField<Way | ''>
          label={say.pinRun({ run: homeRunTag(job, singled) })}
          value={pinned?.pin === 'way' ? pinned.way : ''}
          choices={[{ value: '' as const, say: say.pinNone }, ...WAYS.map((value) => ({ value, say: value }))]}
          onSet={setWay}
        />
      )}
      <details className={css.more}>
        <summary>{words.add}</summary>
        <PinForm option={option} />
      </details>
    </div>
  );
};
