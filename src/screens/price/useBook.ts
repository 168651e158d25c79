import type { PriceBook } from '../../job/schema';
import { defaultBook } from '../../pricing/defaultBook';
import { bookWords as say } from '../../words/en/book';
import { useJob } from '../selected';
import { useActions } from '../session';

/** The job's book, and how to change it: the first change of the default book makes it the job's own. */
export const useBook = () => {
  const job = useJob();
  const { edit } = useActions();
  const isDefault = job.priceBook === 'default';
  const book: PriceBook = job.priceBook === 'default' ? defaultBook : job.priceBook;
  const write = (value: PriceBook | 'default', name: string): boolean =>
    edit({ edit: 'set values', name, values: [{ path: '/priceBook', value }] });
  return {
    isDefault,
    book,
    write,
    change: (next: PriceBook, what: string): boolean =>
      write(isDefault ? { ...next, id: 'own', dated: job.changedOn } : next, say.edit({ what })),
  };
};
