import { useJob } from '../selected';
import { cannotMatter } from './cannotMatter';
import { groupsOf } from './fields/all';
import { FieldOf } from './fields/FieldOf';
import css from './fields/fields.module.css';
import type { Spec } from './fields/spec';
import { fieldValue, type Ref } from './ref';

/** The typed fields of a thing, in its groups. */
export const ThingGroups = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  // what was once told stays to be seen and changed
  const asked = ({ field }: Spec) => fieldValue(job, of, field) !== 'unknown' || !cannotMatter(job, of, field);
  return groupsOf(of).map((group) => (
    <fieldset key={group.title ?? ''} className={css.group} aria-label={group.title ?? undefined}>
      {group.title !== null && <h3 className={css.head}>{group.title}</h3>}
      <div className={css.grid}>
        {group.specs.filter(asked).map((spec) => (
          <FieldOf key={spec.field} of={of} spec={spec} />
        ))}
      </div>
    </fieldset>
  ));
};
