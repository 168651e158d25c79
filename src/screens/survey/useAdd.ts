import { useActions } from '../session';
import { useSheet } from './sheetState';

/** Adds a record and selects it; what could not be added is said by the sheet's notices, and the tool stays. */
export const useAdd = (): (<T extends { readonly id: string }>(list: string, record: T) => boolean) => {
  const { edit } = useActions();
  const { set } = useSheet();
  return (list, record) => {
    const added = edit({ edit: 'add record', list, record, before: null });
    if (added) set({ selected: { list, id: record.id }, tool: 'select', taken: null, thing: null });
    return added;
  };
};
