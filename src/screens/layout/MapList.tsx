import { circuitNumbers } from '../../drawings/mapModel';
import type { Place } from '../../facts/result';
import { BEST } from '../../plan/map/mapSteps';
import { placeKey, ranked } from '../../plan/map/rank';
import { mapWords as say } from '../../words/en/map';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import css from './map.module.css';
import { placeName } from './placeSays';
import type { ShownMap } from './useMap';
import { useTakePlace } from './useTakePlace';

const Row = ({ place }: { readonly place: Place }) => {
  const job = useJob();
  const take = useTakePlace();
  return (
    <tr>
      <th scope="row">{placeName(place)}</th>
      <td className={css.figure}>{dollars(place.cents ?? 0)}</td>
      <td className={css.figure}>
        {place.afciAdded} {place.past.length > 0 && <small>{circuitNumbers(job, place.past)}</small>}
      </td>
      <td className={css.figure}>{place.conductorsSpliced ?? '–'}</td>
      <td>{place.grade && say.grade[place.grade]}</td>
      <td>
        <button type="button" className={parts.button} onClick={() => take(place)}>
          {say.take}
        </button>
      </td>
    </tr>
  );
};

/** The best places in words and figures, other heights and upside down among them. */
export const MapList = ({ shown }: { readonly shown: ShownMap }) => {
  const best = ranked(shown.map.places)
    .filter((p) => p.grade !== 'splices only')
    .slice(0, BEST);
  if (best.length === 0) return null;
  return (
    <table className={css.list} aria-label={say.listTitle}>
      <caption>{say.listTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{say.colPlace}</th>
          <th scope="col">{say.colPrice}</th>
          <th scope="col">{say.colAfci}</th>
          <th scope="col">{say.colSpliced}</th>
          <th scope="col">{say.colHow}</th>
          <td />
        </tr>
      </thead>
      <tbody>
        {best.map((place) => (
          <Row key={placeKey(place)} place={place} />
        ))}
      </tbody>
    </table>
  );
};
