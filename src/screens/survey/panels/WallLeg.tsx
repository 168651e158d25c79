import { surveyWords as say } from '../../../words/en/survey';
import { ChoiceField } from '../fields/ChoiceField';
import { angle, length } from '../fields/spec';
import { TypedField } from '../fields/TypedField';
import type { Leg } from '../traverse';
import css from './panels.module.css';

export const TURNS = [
  { value: 90, say: say.turns.right },
  { value: -90, say: say.turns.left },
  { value: 0, say: say.turns.straight },
] as const;
const NOT_SQUARE = { value: 'other', say: say.turns.other } as const;
const isSquare = (turn: number) => TURNS.some((t) => t.value === turn);

/** A turn as one of the usual ones, or typed in degrees. */
export const TurnFields = ({
  n,
  turn,
  onSet,
}: {
  readonly n: number;
  readonly turn: number;
  readonly onSet: (turn: number) => void;
}) => (
  <>
    <ChoiceField
      brief={say.turnTitle}
      spec={{ label: say.turnAfter({ n }), unknown: false }}
      of={[...TURNS, NOT_SQUARE]}
      value={isSquare(turn) ? turn : 'other'}
      onSet={(value) => {
        onSet(value === 'other' ? 45 : (value as number));
        return null;
      }}
    />
    {!isSquare(turn) && (
      <TypedField
        spec={angle('', say.degrees({ n }))}
        value={turn}
        onSet={(value) => {
          if (Math.abs(value as number) >= 180) return say.notAnAngle({ typed: String(value) });
          onSet(value as number);
          return null;
        }}
      />
    )}
  </>
);

/** A wall typed already; its length and its turn can be typed anew. */
export const WallLeg = ({
  n,
  leg,
  onSet,
}: {
  readonly n: number;
  readonly leg: Leg;
  readonly onSet: (leg: Leg) => void;
}) => (
  <li className={css.leg}>
    <TypedField
      spec={length('', say.wallLength({ n }))}
      brief={String(n)}
      value={leg.length}
      onSet={(value) => {
        if ((value as number) <= 0) return say.notPositive;
        onSet({ ...leg, length: value as number });
        return null;
      }}
    />
    <TurnFields n={n} turn={leg.turn} onSet={(turn) => onSet({ ...leg, turn })} />
  </li>
);
