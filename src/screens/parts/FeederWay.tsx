import type { Plan } from '../../facts/result';
import { cableName } from '../../standards/cableNames';
import { isKnown } from '../../units/types';
import { feederWords as say } from '../../words/en/feeder';
import { figurePath } from '../selected';
import { Figure } from './Figure';
import { Length } from './Length';

/** What becomes of the feeder in an option, why, and what is cut for it. */
export const FeederWay = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const { feeder } = plan;
  const path = (key: string) => figurePath(at, `feeder/${key}`);
  return (
    <>
      <b>
        {say.title} <Figure path={path('way')}>{say.way[feeder.way]}</Figure>.
      </b>{' '}
      <Figure path={path('why')}>{feeder.why}</Figure>{' '}
      {feeder.cutLength > 0 && (
        <>
          {say.cut}{' '}
          <b>
            <Figure path={path('cutLength')}>
              <Length inches={feeder.cutLength} />
            </Figure>
          </b>{' '}
          {say.of({ cable: cableName(feeder.cable) })}
          {isKnown(feeder.outside) && feeder.outside > 0 && (
            <>
              , {say.withOutside}{' '}
              <Figure path={path('outside')}>
                <Length inches={feeder.outside} />
              </Figure>
            </>
          )}
          .
        </>
      )}{' '}
      {feeder.way === 'replaced' && (feeder.cutLength === 0 ? say.untold : !isKnown(feeder.outside) && say.partUntold)}
    </>
  );
};
