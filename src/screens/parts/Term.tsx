import { type ReactNode, useId, useLayoutEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { TERMS, type TermKey } from '../../words/en/terms';
import { splitTerms, termsIn } from './findTerms';
import css from './term.module.css';

/** Gap between the word and its explanation, and to the edge of the window, px. */
const GAP = 6;

const Explanation = ({
  term,
  at,
  onClose,
}: {
  readonly term: TermKey;
  readonly at: DOMRect;
  readonly onClose: () => void;
}) => {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    element.showPopover();
    const { width, height } = element.getBoundingClientRect();
    const below = at.bottom + GAP;
    const top = below + height > innerHeight ? at.top - GAP - height : below;
    element.style.top = `${Math.max(GAP, top)}px`;
    element.style.left = `${Math.max(GAP, Math.min(at.left, innerWidth - width - GAP))}px`;
  }, [at]);
  return (
    <div
      ref={box}
      popover="auto"
      role="note"
      className={css.box}
      onToggle={(e) => e.newState === 'closed' && onClose()}
    >
      <b>{TERMS[term].name}</b> {TERMS[term].say}
    </div>
  );
};

/** A trade word that tells what it means: read out with it, and shown when pressed. */
export const Term = ({ of, children }: { readonly of: TermKey; readonly children?: ReactNode }) => {
  const [shown, setShown] = useState<{ readonly at: DOMRect; readonly within: Element } | null>(null);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  const show = (): void => {
    const element = button.current;
    // beside the word, so that it is shown over an open dialog too
    if (element)
      setShown({
        at: element.getBoundingClientRect(),
        within: element.closest('dialog, main, aside') ?? document.body,
      });
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className={css.term}
        aria-describedby={id}
        aria-expanded={shown !== null}
        onClick={show}
      >
        {children ?? TERMS[of].name}
      </button>
      <span id={id} hidden>
        {TERMS[of].say}
      </span>
      {shown && createPortal(<Explanation term={of} at={shown.at} onClose={() => setShown(null)} />, shown.within)}
    </>
  );
};

/** A sentence with the trade words in it explained, each where it is first met. Not inside a button or a figure. */
export const WithTerms = ({ text }: { readonly text: string }) =>
  splitTerms(text).map(({ part, term, at }) =>
    term === null ? (
      part
    ) : (
      <Term key={at} of={term}>
        {part}
      </Term>
    ),
  );

/** The trade words of a text that stands in a button or a figure, in a line of their own. Nothing where there are none. */
export const TermsOf = ({ text }: { readonly text: string }) => {
  const terms = termsIn(text);
  if (terms.length === 0) return null;
  return (
    <p className={css.line}>
      {terms.map((term) => (
        <Term key={term} of={term} />
      ))}
    </p>
  );
};
