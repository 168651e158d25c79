import type { Host } from '../screens/host';

/** Small texts of the contractor's own, beside the jobs: price books, the truck's stock. */
const key = (name: string): string => `own ${name}`;

export const ownText: Host['ownText'] = (name) => {
  try {
    return localStorage.getItem(key(name));
  } catch {
    return null; // storage is not allowed here: nothing can have been kept
  }
};
export const keepOwnText: Host['keepOwnText'] = (name, text) => {
  try {
    localStorage.setItem(key(name), text);
    return true;
  } catch {
    return false; // full, or not allowed: the caller says so
  }
};
