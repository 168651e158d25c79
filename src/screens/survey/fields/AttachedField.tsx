import type { Enclosure } from '../../../job/schema';
import { surveyWords as say } from '../../../words/en/survey';
import { ChoiceField } from './ChoiceField';
import css from './fields.module.css';
import { ATTACHED_KINDS } from './oldWork';
import { text } from './spec';
import { TypedField } from './TypedField';

type Attached = Enclosure['attached'];
const BECOMES = (['moves', 'ends'] as const).map((value) => ({ value, say: say.choices[value] }));

/** What hangs on an old panel and must go somewhere when it goes: each with what becomes of it, or not known. */
export const AttachedField = ({
  attached,
  onSet,
}: {
  readonly attached: Attached;
  readonly onSet: (attached: Attached) => string | null;
}) => (
  <>
    {attached.map((thing, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: what hangs on a panel has no name but its place in the list
      <div key={i} className={css.grid}>
        <ChoiceField
          spec={{ label: say.attached({ n: i + 1 }), unknown: false }}
          of={ATTACHED_KINDS.map((value) => ({ value, say: value }))}
          value={thing.kind}
          onSet={(kind) => onSet(attached.with(i, { ...thing, kind: kind as string }))}
        />
        <ChoiceField
          spec={{ label: say.attachedBecomes({ kind: thing.kind }), unknown: true }}
          of={BECOMES}
          value={thing.becomes}
          onSet={(becomes) => onSet(attached.with(i, { ...thing, becomes: becomes as Attached[number]['becomes'] }))}
        />
        <TypedField
          spec={text('', say.attachedAnswer({ kind: thing.kind }), 'may be unknown')}
          value={thing.answer}
          onSet={(answer) => onSet(attached.with(i, { ...thing, answer: answer as string }))}
        />
        <button type="button" className={css.more} onClick={() => onSet(attached.toSpliced(i, 1))}>
          {say.removeAttached({ kind: thing.kind })}
        </button>
      </div>
    ))}
    <button
      type="button"
      className={css.more}
      onClick={() => onSet([...attached, { kind: ATTACHED_KINDS[0], becomes: 'unknown', answer: 'unknown' }])}
    >
      {say.addAttached}
    </button>
  </>
);
