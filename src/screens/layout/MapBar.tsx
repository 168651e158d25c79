import type { Place } from '../../facts/result';
import { mapWords as say } from '../../words/en/map';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import { useActions, useJobState } from '../session';
import css from './map.module.css';
import { placeName, placeSays } from './placeSays';
import type { ShownMap } from './useMap';
import { useTakePlace } from './useTakePlace';

/** What is known of the place looked at, else the best there is. */
const Says = ({ shown, place }: { readonly shown: ShownMap; readonly place: Place | null }) => {
  const job = useJob();
  const take = useTakePlace();
  const { best } = shown.model;
  if (!place) {
    if (best) {
      const v = { place: placeName(best), price: dollars(best.cents ?? 0) };
      return (
        <p className={css.says}>
          <b>{shown.map.phase === 'done' ? say.best(v) : say.bestSoFar(v)}</b>
          <button type="button" className={parts.button} onClick={() => take(best)}>
            {say.take}
          </button>
        </p>
      );
    }
    return <p className={css.says}>{shown.map.phase === 'done' ? say.noPlace : say.how}</p>;
  }
  return (
    <p className={css.says}>
      <b>{placeName(place)}</b>
      {placeSays(job, place).map((text) => (
        <span key={text}>{text}</span>
      ))}
      {place.clear && (
        <button type="button" className={parts.button} onClick={() => take(place)}>
          {say.take}
        </button>
      )}
    </p>
  );
};

const TICKS = 'M3 12V2M8 12V4M13 12V3M18 12V5';
/** What the marks of the map mean, each drawn as it is there. */
const KEYS = [
  { width: 22, path: TICKS, css: css.within, say: say.within },
  { width: 22, path: TICKS, css: css.past, say: say.past },
  { width: 22, path: 'M1 2H21V11H1Z', css: css.shut, say: say.shut },
  { width: 12, path: 'M6 0V12', css: css.line, say: say.line },
  { width: 14, path: 'M1 1H13L7 11Z', css: css.now, say: say.now },
  { width: 14, path: 'M1 1H13L7 11Z', css: css.best, say: say.offered },
];

const Keys = ({ shown }: { readonly shown: ShownMap | null }) => (
  <ul className={css.keys} aria-hidden="true">
    {KEYS.map((key) => (
      <li key={key.say}>
        <svg width={key.width} height="12" aria-hidden="true">
          <path d={key.path} className={key.css} />
        </svg>
        {key.say}
      </li>
    ))}
    {shown && shown.model.least !== null && shown.model.most !== null && (
      <li>{say.heights({ least: dollars(shown.model.least), most: dollars(shown.model.most) })}</li>
    )}
  </ul>
);

/** Over the drawings while the map is shown: how far it is, what is looked at, and what the marks mean. */
export const MapBar = ({ shown, hover }: { readonly shown: ShownMap | null; readonly hover: Place | null }) => {
  const { showMap, stopMap, hideMap } = useActions();
  const id = useJobState((s) => s.option);
  const map = shown?.map ?? null;
  const figures = { done: map?.done ?? 0, of: map?.of ?? 0 };
  return (
    <section className={css.bar} aria-label={say.title}>
      <div className={css.state}>
        {map === null || map.of === 0 ? (
          <span role="status">{map?.phase === 'failed' ? say.failed({ say: map.say ?? '' }) : say.looking}</span>
        ) : (
          <>
            {map.phase === 'working' && <progress max={map.of} value={map.done} aria-label={say.title} />}
            <span>
              {map.phase === 'working'
                ? say.working(figures)
                : map.phase === 'stopped'
                  ? say.stopped(figures)
                  : map.phase === 'failed'
                    ? say.failed({ say: map.say ?? '' })
                    : say.done(figures)}
            </span>
          </>
        )}
        {map?.phase === 'working' && (
          <button type="button" className={parts.tool} onClick={stopMap}>
            {say.stop}
          </button>
        )}
        {(map?.phase === 'stopped' || map?.phase === 'failed') && id !== null && (
          <button type="button" className={parts.tool} onClick={() => showMap(id)}>
            {say.goOn}
          </button>
        )}
        <button type="button" className={parts.tool} onClick={hideMap}>
          {say.close}
        </button>
      </div>
      {shown && <Says shown={shown} place={hover ?? shown.at} />}
      <Keys shown={shown} />
    </section>
  );
};
