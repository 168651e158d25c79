import { formatFeetInches, parseLength, toSixtyFourths } from '../../../units/length';
import { formatDollars } from '../../../units/money';
import { err, ok, type Result } from '../../../units/result';
import { screenWords } from '../../../words/en/screens';
import { surveyWords as say } from '../../../words/en/survey';
import type { Spec } from './spec';

/** The ways a person writes that something is not known. */
const NOT_KNOWN = /^(\?+|not known|unknown|n\/?k)$/i;
const NUMBER = /^-?(\d+(\.\d*)?|\.\d+)$/;

/** What was typed into a field as a value of the job, or why it cannot be one. */
export const readTyped = (spec: Pick<Spec, 'input' | 'unknown'>, typed: string): Result<unknown, string> => {
  const text = typed.trim();
  const { input, unknown } = spec;
  if (unknown && (NOT_KNOWN.test(text) || (text === '' && input.as !== 'text'))) return ok('unknown');
  if ('none' in input && input.none !== undefined && text.toLowerCase() === input.none.toLowerCase()) return ok(null);
  switch (input.as) {
    case 'length': {
      const read = parseLength(text);
      return read.ok ? ok(toSixtyFourths(read.value) + 0) : err(screenWords.notALength({ typed }));
    }
    case 'angle': {
      const bare = text.replace(/\s*°$/, '');
      return NUMBER.test(bare) ? ok(Number(bare)) : err(say.notANumber({ typed }));
    }
    case 'count': {
      const bare = text.replaceAll(',', '');
      return NUMBER.test(bare) ? ok(Number(bare)) : err(say.notANumber({ typed }));
    }
    case 'money': {
      const bare = text.replace(/^\$\s*/, '').replaceAll(',', '');
      return /^\d+(\.\d{1,2})?$/.test(bare) ? ok(Math.round(Number(bare) * 100)) : err(say.notMoney({ typed }));
    }
    case 'text':
      return ok(text);
    case 'choice':
      return err(say.notANumber({ typed }));
  }
};

/** A value of the job as it stands in its field. */
export const writeValue = ({ input }: Pick<Spec, 'input'>, value: unknown): string => {
  if (value === 'unknown') return say.notKnown;
  if (value === null) return 'none' in input && input.none !== undefined ? input.none : '';
  if (typeof value !== 'number') return String(value);
  if (input.as === 'length') return formatFeetInches(value, 64);
  if (input.as === 'angle') return `${value}°`;
  return input.as === 'money' ? formatDollars(value) : String(value);
};
