/** Which kept job this tab has open: its own over a reload, else the one opened last in this browser. */
const KEY = 'open-job';

export const remembered = (): string | null => {
  try {
    return sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY);
  } catch {
    return null; // storage is not allowed here: start with an empty sheet
  }
};
export const remember = (key: string | null): void => {
  try {
    for (const storage of [sessionStorage, localStorage])
      if (key === null) storage.removeItem(KEY);
      else storage.setItem(KEY, key);
  } catch {
    // the database is refused too in that case, and that is said on the screen
  }
};
