import type { Host } from '../screens/host';

/** Light or dark, desk or field, single keys or none: on the page and remembered; `look.js` sets them before the first paint. */
const root = document.documentElement;

const remember = (key: 'theme' | 'hand' | 'keys', value: string): void => {
  root.dataset[key] = value;
  try {
    localStorage.setItem(key, value);
  } catch {
    // storage is not allowed here: the choice holds until the page is left
  }
};

export const look: Host['look'] = () => ({
  theme: root.dataset.theme === 'dark' ? 'dark' : 'light',
  hand: root.dataset.hand === 'field' ? 'field' : 'desk',
  keys: root.dataset.keys !== 'off',
});
export const setLook: Host['setLook'] = ({ theme, hand, keys }) => {
  if (theme) remember('theme', theme);
  if (hand) remember('hand', hand);
  if (keys !== undefined) remember('keys', keys ? 'on' : 'off');
};
