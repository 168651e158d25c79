import type { Edit } from './edit';

/** Its kind and the keys it is about: nothing that a person typed, so that it may stand in an error report. */
export const editKind = (edit: Edit): string => {
  const keys = 'path' in edit ? edit.path : 'list' in edit ? `${edit.list}${'field' in edit ? edit.field : ''}` : '';
  const own = keys.startsWith('/code/amendments') || keys.startsWith('/people');
  return keys === '' ? edit.edit : `${edit.edit} ${own ? keys.split('/', 3).join('/') : keys}`;
};
