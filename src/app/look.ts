import type { Hand, Host, Theme } from '../screens/host';

/** Light or dark, desk or field, on the page and remembered; `look.js` sets both before the first paint. */
const root = document.documentElement;

const remember = (key: 'theme' | 'hand', value: string): void => {
  root.dataset[key] = value;
  try {
    localStorage.setItem(key, value);
  } catch {
    // storage is not allowed here: the choice holds until the page is left
  }
};

export const look: Host['look'] = () => ({
  theme: root.dataset.theme === 'dark' ? 'dark' : ('light' satisfies Theme),
  hand: root.dataset.hand === 'field' ? 'field' : ('desk' satisfies Hand),
});
export const setLook: Host['setLook'] = ({ theme, hand }) => {
  if (theme) remember('theme', theme);
  if (hand) remember('hand', hand);
};
