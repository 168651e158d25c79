import { createContext, type ReactNode, useContext, useLayoutEffect, useState } from 'react';
import { createPortal } from 'react-dom';

/** Places of the frame that the open sheet may fill. */
const PLACES = ['tools', 'views', 'selected'] as const;
type Place = (typeof PLACES)[number];

interface Slot {
  readonly element: HTMLElement | null;
  readonly place: (element: HTMLElement | null) => void;
  readonly filled: boolean;
  readonly fill: (by: 1 | -1) => void;
}
const SlotsContext = createContext<Readonly<Record<Place, Slot>> | null>(null);

const useOneSlot = (): Slot => {
  const [element, place] = useState<HTMLElement | null>(null);
  const [count, setCount] = useState(0);
  const [fill] = useState(() => (by: 1 | -1) => setCount((n) => n + by));
  return { element, place, filled: count > 0, fill };
};

export const SlotsProvider = ({ children }: { readonly children: ReactNode }) => {
  const tools = useOneSlot();
  const views = useOneSlot();
  const selected = useOneSlot();
  return <SlotsContext value={{ tools, views, selected }}>{children}</SlotsContext>;
};

const useSlot = (place: Place): Slot => {
  const slots = useContext(SlotsContext);
  if (!slots) throw new Error('No sheet frame around this part');
  return slots[place];
};

/** Where the frame shows what the sheet puts there; `instead` as long as it puts nothing. */
export const SlotPlace = ({ of, instead = null }: { readonly of: Place; readonly instead?: ReactNode }) => {
  const { place, filled } = useSlot(of);
  return (
    <>
      <div ref={place} style={{ display: 'contents' }} />
      {!filled && instead}
    </>
  );
};

const Fill = ({ of, children }: { readonly of: Place; readonly children: ReactNode }) => {
  const { element, fill } = useSlot(of);
  useLayoutEffect(() => {
    fill(1);
    return () => fill(-1);
  }, [fill]);
  return element && createPortal(children, element);
};

/** Tools of the open sheet, in the tool row after the jobs. Buttons of class `parts.tool`. */
export const InTools = ({ children }: { readonly children: ReactNode }) => <Fill of="tools">{children}</Fill>;
/** How the open sheet is looked at, at the end of the tool row. Buttons of class `parts.tool`. */
export const InViews = ({ children }: { readonly children: ReactNode }) => <Fill of="views">{children}</Fill>;
/** The thing selected on the open sheet, with its typed fields, in the right column in place of the new panel. */
export const InColumn = ({ children }: { readonly children: ReactNode }) => <Fill of="selected">{children}</Fill>;
