import { screenWords as say } from '../../words/en/screens';
import css from './legend.module.css';

interface Props {
  readonly closer: number;
  readonly most: number;
  readonly onCloser: (closer: number) => void;
  readonly singled: string | null;
  readonly onRelease: () => void;
}

const Sample = ({
  className,
  core,
}: {
  readonly className: string | undefined;
  readonly core?: string | undefined;
}) => (
  <svg width="34" height="10" aria-hidden="true">
    <path d="M1 5H33" className={className} />
    {core && <path d="M1 5H33" className={core} />}
  </svg>
);

/** Title of the view, what its lines mean, and how close one looks. */
export const Legend = ({ closer, most, onCloser, singled, onRelease }: Props) => (
  <div className={css.strip}>
    <h2 className={css.title}>
      <span className={css.number} aria-hidden="true">
        1
      </span>
      <span className={css.name}>{say.planTitle}</span>
    </h2>
    <ul className={css.lines} aria-label={say.linesTitle}>
      <li>
        <Sample className={css.stays} /> {say.lines.stays}
      </li>
      <li>
        <Sample className={css.away} /> {say.lines.away}
      </li>
      <li>
        <Sample className={css.fresh} /> {say.lines.fresh}
      </li>
      <li>
        <Sample className={css.feeder} core={css.core} /> {say.lines.feeder}
      </li>
      <li>
        <Sample className={css.zone} /> {say.lines.zone}
      </li>
    </ul>
    <div className={css.tools}>
      {singled !== null && (
        <button type="button" onClick={onRelease}>
          {say.release({ homeRun: singled })}
        </button>
      )}
      <button type="button" disabled={closer === 0} onClick={() => onCloser(0)}>
        {say.whole}
      </button>
      <button type="button" disabled={closer === most} onClick={() => onCloser(closer + 1)}>
        {say.closer}
      </button>
    </div>
  </div>
);
