import { type RefObject, useLayoutEffect, useState } from 'react';

/** The inner size of an element, kept up to date; nothing before it is shown. */
export const useSize = (ref: RefObject<HTMLElement | null>): { readonly width: number; readonly height: number } => {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      // what the element takes on the page, without its scroll bars: they come and go with what is in it
      const { width, height } = element.getBoundingClientRect();
      setSize((old) => (old.width === width && old.height === height ? old : { width, height }));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [ref]);
  return size;
};
