import { Fragment, useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { useJob } from '../../selected';
import { FeederExtras } from '../FeederExtras';
import { ChoiceField } from '../fields/ChoiceField';
import { LOAD_KINDS } from '../fields/oldWork';
import { freshId, PARTS, part } from '../ref';
import { ThingGroups } from '../ThingGroups';
import { useAdd } from '../useAdd';
import css from './panels.module.css';

const LoadForm = () => {
  const job = useJob();
  const add = useAdd();
  const [kind, setKind] = useState<string>(LOAD_KINDS[0]);
  return (
    <div className={css.narrow}>
      <h3 className={css.head}>{say.loadsTitle}</h3>
      <ChoiceField
        spec={{ label: say.kind, unknown: false }}
        of={LOAD_KINDS.map((value) => ({ value, say: value }))}
        value={kind}
        onSet={(value) => {
          setKind(value as string);
          return null;
        }}
      />
      <button
        type="button"
        className={parts.button}
        onClick={() =>
          add('/house/loads', { id: freshId(job, '/house/loads', kind), kind, va: 'unknown', onPanel: 'unknown' })
        }
      >
        {say.addLoad}
      </button>
    </div>
  );
};

/** What the rules ask of the house, the code and the feeder, and the large loads. */
export const HousePanel = () => (
  <div className={css.parts}>
    <LoadForm />
    {PARTS.map((p) => (
      <Fragment key={p}>
        <ThingGroups of={part(p)} />
        {p === '/feeder' && <FeederExtras />}
      </Fragment>
    ))}
  </div>
);
