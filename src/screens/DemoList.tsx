import { screenWords as say } from '../words/en/screens';
import { DemoPlan } from './DemoPlan';
import css from './jobs.module.css';
import { useHost } from './session';
import { useOpening } from './useOpening';

interface Props {
  /** With a small plan of each. */
  readonly drawn: boolean;
  readonly onOpened?: () => void;
}

/** The demo jobs; each opens as a job of one's own. */
export const DemoList = ({ drawn, onOpened }: Props) => {
  const { demos } = useHost();
  const { openDemo } = useOpening(onOpened);
  return (
    <section aria-labelledby="demos-title">
      <h2 id="demos-title" className={css.title}>
        {say.demosTitle}
      </h2>
      <ul>
        {demos.map((demo) => (
          <li key={demo.name}>
            <button
              type="button"
              className={drawn ? css.drawn : css.row}
              onClick={() => void openDemo(demo.name, demo.title)}
            >
              {drawn && <DemoPlan name={demo.name} />}
              <span>
                <b>{demo.title}</b>
                <small>{demo.about}</small>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
