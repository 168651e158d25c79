import { useActions, useHost } from './session';
import { goToSheet } from './sheetHash';

/** Ways to have another job open; `onOpened` once it is. */
export const useOpening = (onOpened?: () => void) => {
  const host = useHost();
  const { openText, openFile, openKept, refreshKept } = useActions();
  const then = (good: boolean): void => {
    void refreshKept();
    if (good) onOpened?.();
  };
  return {
    startNew: async () => {
      const good = await openText(host.newJobText(), '');
      if (good) goToSheet('survey');
      then(good);
    },
    openFile: async (file: File) => then(await openFile(file)),
    openDemo: async (name: string, title: string) => then(await openText(await host.demoText(name), title)),
    openOneKept: async (key: string) => then(await openKept(key)),
  };
};
