import { useMemo, useState } from 'react';
import { type KeyNote, keyNotes } from '../drawings/keyNotes';
import type { Effect } from '../facts/result';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { FirstSteps } from './FirstSteps';
import { NoteRow } from './NoteRow';
import { EffectMark } from './parts/EffectMark';
import { useSelected } from './selected';

const countOf = (notes: readonly KeyNote[], effect: Effect): number =>
  notes.filter((n) => n.effect === effect).reduce((n, k) => n + k.findings.length, 0);

/** What the rules found for the selected option, gravest first; plain notes folded away. */
export const Notes = () => {
  const selected = useSelected();
  const findings = selected?.plan?.findings;
  const notes = useMemo(() => (findings ? keyNotes(findings) : []), [findings]);
  const [open, setOpen] = useState<Effect | null>(null);
  if (!selected) return <FirstSteps />;
  if (!findings)
    return (
      <section className={css.notes} aria-label={say.findingsTitle}>
        <p className={css.empty}>{say.notPlannedYet}</p>
      </section>
    );
  const stops = countOf(notes, 'stops the job');
  const shown = notes.filter((n) => n.effect !== 'note' || open === 'note');
  const plain = countOf(notes, 'note');
  return (
    <section className={css.notes} aria-label={say.findingsTitle}>
      {stops === 0 && <p className={css.clear}>{say.noConflict}</p>}
      <ol className={css.list}>
        {shown.map((note) => (
          <NoteRow key={note.number} note={note} at={selected.at} />
        ))}
      </ol>
      {plain > 0 && (
        <button
          type="button"
          className={css.more}
          aria-expanded={open === 'note'}
          onClick={() => setOpen(open === 'note' ? null : 'note')}
        >
          <EffectMark effect="note" size={15} /> {open === 'note' ? say.foldNotes : say.showNotes({ count: plain })}
        </button>
      )}
    </section>
  );
};
