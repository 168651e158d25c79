import { EDITIONS } from '../../units/types';
import { checkWords as say } from '../../words/en/check';
import { ChoiceField } from '../layout/ChoiceField';
import { TextField } from '../layout/TextField';
import { useTryEdit } from '../layout/useOptionEdit';
import { useJob } from '../selected';
import { useActions } from '../session';
import css from './check.module.css';

/** Local amendments the rules know, with what each may say. */
const CHOICES = {
  afciOnPanelReplacement: ['none'],
  afciCountsTails: ['yes', 'no'],
  afciShortened: ['yes', 'no'],
  racewayCountsIn6ft: ['yes', 'no'],
  spliceCan: ['yes', 'no', 'ask'],
  spdInsideHouse: ['no'],
  nmAllowed: ['yes', 'no'],
  headroomInNewSpot: ['yes', 'no'],
} as const satisfies Record<string, readonly (keyof typeof say.values)[]>;
const HANDLE = 'handleMaxIn';
const AS_NEC = '';

/** The code year in force and what the place does otherwise: settings that findings quote. */
export const CodeSettings = () => {
  const job = useJob();
  const { edit } = useActions();
  const tryEdit = useTryEdit();
  const { edition, place, amendments } = job.code;
  const amend = (key: string, value: string | number): string | null => {
    if (value !== AS_NEC) return tryEdit({ edit: 'set value', path: `/code/amendments/${key}`, value });
    return key in amendments ? tryEdit({ edit: 'remove record', list: '/code/amendments', id: key }) : null;
  };
  const spoken = (key: string): string => {
    const value = amendments[key];
    if (value === undefined || value === 'as NEC') return AS_NEC;
    return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
  };
  return (
    <section className={css.block}>
      <h3>{say.settingsTitle}</h3>
      <ChoiceField
        label={say.edition}
        value={String(edition)}
        choices={[
          { value: 'unknown', say: say.editionUnknown },
          ...EDITIONS.map((year) => ({ value: String(year), say: say.nec({ edition: year }) })),
        ]}
        onSet={(value) =>
          edit({ edit: 'set value', path: '/code/edition', value: value === 'unknown' ? value : Number(value) })
        }
      />
      <TextField
        label={say.place}
        value={place}
        onSet={(value) => tryEdit({ edit: 'set value', path: '/code/place', value })}
      />
      {(Object.keys(CHOICES) as (keyof typeof CHOICES)[]).map((key) => (
        <ChoiceField
          key={key}
          label={say.amendments[key]}
          value={spoken(key)}
          choices={[
            { value: AS_NEC, say: say.asNec },
            ...CHOICES[key].map((value) => ({
              value: value as string,
              say: key === 'spdInsideHouse' ? say.values.none : say.values[value],
            })),
          ]}
          onSet={(value) => amend(key, value)}
        />
      ))}
      <TextField
        numeric
        label={say.amendments[HANDLE]}
        value={spoken(HANDLE)}
        onSet={(typed) => {
          const text = typed.trim();
          if (text === '') return amend(HANDLE, AS_NEC);
          return /^\d+(\.\d+)?$/.test(text) ? amend(HANDLE, Number(text)) : say.notInches({ typed });
        }}
      />
    </section>
  );
};
