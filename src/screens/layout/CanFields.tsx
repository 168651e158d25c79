import type { Enclosure, Option } from '../../job/schema';
import { turned } from '../../job/turned';
import { type In, isKnown } from '../../units/types';
import { layoutWords as say } from '../../words/en/layout';
import { LengthField } from '../parts/LengthField';
import { useJob } from '../selected';
import { ChoiceField } from './ChoiceField';
import css from './layout.module.css';
import { TextField } from './TextField';
import { optionPath, useTryEdit } from './useOptionEdit';

/** The can itself: size, spaces, bus, how it is mounted and which way up. */
export const CanFields = ({ option }: { readonly option: Option }) => {
  const job = useJob();
  const tryEdit = useTryEdit();
  const { size, spaces, busAmps, mount, upright, mainAt } = option.enclosure;
  const set = (key: string, value: unknown): string | null =>
    tryEdit({ edit: 'set value', path: optionPath(job, option, `enclosure/${key}`), value });
  const side = (key: keyof Enclosure['size'], label: string) => (
    <LengthField label={label} inches={size[key]} onSet={(inches: In) => set(`size/${key}`, inches)} />
  );
  const whole = (key: string) => (typed: string) => {
    const text = typed.trim();
    if (text === '' || text === say.unknown) return set(key, 'unknown');
    return /^\d+$/.test(text) ? set(key, Number(text)) : say.notANumber({ typed });
  };
  const known = (n: number | 'unknown'): string => (isKnown(n) ? String(n) : say.unknown);
  return (
    <div className={css.one}>
      {side('width', say.canWidth)}
      {side('height', say.canHeight)}
      {side('depth', say.canDepth)}
      <TextField numeric label={say.spaces} value={known(spaces)} onSet={whole('spaces')} />
      <TextField numeric label={say.bus} value={known(busAmps)} onSet={whole('busAmps')} />
      <ChoiceField
        label={say.mount}
        value={mount}
        choices={(['surface', 'recessed'] as const).map((value) => ({ value, say: say.mounts[value] }))}
        onSet={(value) => set('mount', value)}
      />
      <ChoiceField
        label={say.stands}
        value={mainAt}
        choices={(['top', 'bottom'] as const).map((value) => ({ value, say: say.upright[value] }))}
        onSet={(value) => {
          const { enclosure } = option;
          if (value === mainAt) return null;
          return tryEdit({
            edit: 'set value',
            path: optionPath(job, option, 'enclosure'),
            value: turned(enclosure, !upright),
          });
        }}
      />
    </div>
  );
};
