import type { Plan } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { figurePath } from '../selected';
import { Figure } from './Figure';
import parts from './parts.module.css';

/** Circuits that gain AFCI, and how many more may: of them it cannot be told, or the inspector decides. */
export const AfciGain = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => (
  <>
    <Figure path={figurePath(at, 'tally/afciAdded')}>{plan.tally.afciAdded}</Figure>
    {plan.afciOpen > 0 && (
      <small title={say.afciOpen}>
        {' + '}
        <Figure path={figurePath(at, 'afciOpen')}>{plan.afciOpen}</Figure>
        <span aria-hidden="true">{say.afciOpenBrief}</span>
        <span className={parts.hidden}> {say.afciOpen}</span>
      </small>
    )}
  </>
);
