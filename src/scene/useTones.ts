import { useEffect, useState } from 'react';
import { readTones, type Tones } from './tones';

const read = (): Tones => {
  const style = getComputedStyle(document.documentElement);
  return readTones((name) => style.getPropertyValue(name));
};
/** The page's tokens as the shaders want them, read again when the theme or the hand changes. */
export const useTones = (): Tones => {
  const [tones, setTones] = useState(read);
  useEffect(() => {
    const watch = new MutationObserver(() => setTones(read()));
    watch.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'data-hand'] });
    return () => watch.disconnect();
  }, []);
  return tones;
};
