import { layoutWords } from '../../words/en/layout';
import { screenWords as say } from '../../words/en/screens';
import legend from '../drawing/legend.module.css';
import css from './layout.module.css';

const Sample = ({ line, core }: { readonly line: string | undefined; readonly core?: string | undefined }) => (
  <svg width="30" height="10" aria-hidden="true">
    <path d="M1 5H29" className={line} />
    {core && <path d="M1 5H29" className={core} />}
  </svg>
);

/** What the lines of both drawings mean. */
export const Lines = () => (
  <ul className={css.lines} aria-label={say.linesTitle}>
    <li>
      <Sample line={legend.stays} /> {say.lines.stays}
    </li>
    <li>
      <Sample line={legend.away} /> {say.lines.away}
    </li>
    <li>
      <Sample line={legend.fresh} /> {say.lines.fresh}
    </li>
    <li>
      <Sample line={legend.feeder} core={legend.core} /> {say.lines.feeder}
    </li>
    <li>
      <Sample line={legend.zone} /> {say.lines.zone}
    </li>
    <li>
      <svg width="30" height="12" aria-hidden="true">
        <rect x="1" y="2" width="28" height="8" className={css.clearPlace} />
      </svg>
      {layoutWords.clearPlace}
    </li>
    <li>
      <svg width="30" height="12" aria-hidden="true">
        <rect x="1" y="2" width="28" height="8" className={css.barredPlace} />
      </svg>
      {layoutWords.barredPlace}
    </li>
  </ul>
);
