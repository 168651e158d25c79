import type { Finding } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from './Figure';
import { Length } from './Length';

const HUNDREDTH = 100;
/** A figure of a rule in its unit: lengths as 10′-6½″, shares as percent, others with the unit behind. */
const InUnit = ({ value, unit, path }: { readonly value: number; readonly unit: string; readonly path: string }) => {
  if (unit === 'in')
    return (
      <Figure path={path}>
        <Length inches={value} />
      </Figure>
    );
  if (unit === 'share') return <Figure path={path}>{`${Math.round(value * 100)} %`}</Figure>;
  return (
    <>
      <Figure path={path}>{String(Math.round(value * HUNDREDTH) / HUNDREDTH)}</Figure> {unit}
    </>
  );
};

/** What a rule measured and what it is set against; nothing where it measured nothing. `path` is the finding's. */
export const Measured = ({ finding, path }: { readonly finding: Finding; readonly path: string }) => {
  const { measured, required, unit } = finding;
  if (measured === null && required === null) return null;
  return (
    <span>
      {measured !== null && (
        <>
          {say.found} <InUnit value={measured} unit={unit} path={`${path}/measured`} />
        </>
      )}
      {measured !== null && required !== null && ' · '}
      {required !== null && (
        <>
          {say.ruleFigure} <InUnit value={required} unit={unit} path={`${path}/required`} />
        </>
      )}
    </span>
  );
};
