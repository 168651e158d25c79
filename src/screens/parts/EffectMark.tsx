import type { Effect } from '../../facts/result';

/** The shape and pattern of what a finding does to the job, with its key inside; an empty one beside a count. */
export const EffectShape = ({ effect, r }: { readonly effect: Effect; readonly r: number }) => {
  switch (effect) {
    case 'stops the job': {
      const k = r * 1.1;
      const c = k * 0.4142;
      const points = [
        [-c, -k],
        [c, -k],
        [k, -c],
        [k, c],
        [c, k],
        [-c, k],
        [-k, c],
        [-k, -c],
      ];
      return <polygon points={points.join(' ')} fill="var(--stop)" stroke="var(--paper)" strokeWidth={1.2} />;
    }
    case 'extra work': {
      const inner = r - 2.6;
      return (
        <>
          <rect
            x={-r}
            y={-r}
            width={2 * r}
            height={2 * r}
            fill="url(#h-extra)"
            stroke="var(--extra)"
            strokeWidth={1.3}
          />
          <rect x={-inner} y={-inner} width={2 * inner} height={2 * inner} fill="var(--paper)" />
        </>
      );
    }
    case 'verify in field': {
      const k = r * 1.42;
      return (
        <>
          <polygon
            points={`0,${-k} ${k},0 0,${k} ${-k},0`}
            fill="url(#h-verify)"
            stroke="var(--verify)"
            strokeWidth={1.3}
          />
          <circle r={r * 0.74} fill="var(--paper)" />
        </>
      );
    }
    case 'note':
      return <circle r={r} fill="var(--paper)" stroke="var(--note)" strokeWidth={1.3} />;
  }
};

const TONES: Readonly<Record<Effect, string>> = {
  'stops the job': 'var(--on-stop)',
  'extra work': 'var(--extra)',
  'verify in field': 'var(--verify)',
  note: 'var(--ink-2)',
};

/** A mark around the origin, for drawings. */
export const MarkAt = ({
  effect,
  number,
  r = 9,
}: {
  readonly effect: Effect;
  readonly number: number | null;
  readonly r?: number;
}) => (
  <>
    <EffectShape effect={effect} r={r} />
    {number !== null && (
      <text
        y={r * 0.42}
        textAnchor="middle"
        fontSize={r * (number > 9 ? 1.05 : 1.22)}
        fontWeight={700}
        fontFamily="var(--text)"
        fill={TONES[effect]}
      >
        {number}
      </text>
    )}
  </>
);

/** A mark in running text; the word stands beside it. */
export const EffectMark = ({
  effect,
  number = null,
  size = 24,
}: {
  readonly effect: Effect;
  readonly number?: number | null;
  readonly size?: number;
}) => (
  <svg width={size} height={size} viewBox="-13 -13 26 26" aria-hidden="true">
    <MarkAt effect={effect} number={number} />
  </svg>
);

/** The octagon in the color of the text around it: beside a count on a solid bar. */
export const StopSign = ({ size = 13 }: { readonly size?: number }) => (
  <svg width={size} height={size} viewBox="0 0 10 10" aria-hidden="true">
    <path d="M3 0h4l3 3v4l-3 3H3L0 7V3z" fill="currentColor" />
  </svg>
);
