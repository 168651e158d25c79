import { useState } from 'react';
import type { Option } from '../../job/schema';
import { layoutWords as say } from '../../words/en/layout';
import { useJob } from '../selected';
import css from './layout.module.css';
import { useTryEdit } from './useOptionEdit';

/** Deleting an option, asked back once; undo brings it back. The last option stays. */
export const OptionEnds = ({ option }: { readonly option: Option }) => {
  const job = useJob();
  const tryEdit = useTryEdit();
  const [sure, setSure] = useState(false);
  if (job.options.length < 2) return null;
  if (!sure)
    return (
      <button type="button" className={css.end} onClick={() => setSure(true)}>
        {say.remove}
      </button>
    );
  return (
    <p className={css.pin}>
      <button type="button" onClick={() => tryEdit({ edit: 'remove record', list: '/options', id: option.id })}>
        {say.reallyRemove}
      </button>
      <button type="button" onClick={() => setSure(false)}>
        {say.keep}
      </button>
    </p>
  );
};
