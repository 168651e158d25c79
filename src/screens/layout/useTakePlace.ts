import type { Place } from '../../facts/result';
import { freshId } from '../../job/newOption';
import type { Option } from '../../job/schema';
import { turned } from '../../job/turned';
import { formatFeetInches } from '../../units/length';
import { mapWords as say } from '../../words/en/map';
import { wallName } from '../parts/names';
import { useJob } from '../selected';
import { useActions, useJobState } from '../session';

/** Makes a place of the map an option of its own, like the one the map was asked for, and shows it. */
export const useTakePlace = (): ((place: Place) => void) => {
  const job = useJob();
  const of = useJobState((s) => s.map?.option ?? null);
  const { edit, choose, hideMap } = useActions();
  return (place) => {
    const like = job.options.find((o) => o.id === of);
    if (!like || !place.clear) return;
    const { on, upright } = place;
    const panels = [...job.enclosures, ...job.options.map((o) => o.enclosure)].map((e) => e.id);
    const option: Option = {
      ...like,
      id: freshId(
        'option',
        job.options.map((o) => o.id),
      ),
      kind: 'relocate',
      title: say.titleOf({ wall: wallName(on), left: formatFeetInches(on.left) }),
      enclosure: { ...turned(like.enclosure, upright), id: freshId('new', panels), on },
    };
    if (!edit({ edit: 'add option', option })) return;
    hideMap();
    choose(option.id);
  };
};
