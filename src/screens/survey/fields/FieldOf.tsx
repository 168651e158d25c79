import { useJob } from '../../selected';
import { setField } from '../drag';
import { fieldValue, type Ref } from '../ref';
import { useChange } from '../useChange';
import { ChoiceField } from './ChoiceField';
import type { Spec } from './spec';
import { TypedField } from './TypedField';

/** A field of a thing, bound to the job. */
export const FieldOf = ({ of, spec }: { readonly of: Ref; readonly spec: Spec }) => {
  const job = useJob();
  const change = useChange();
  const value = fieldValue(job, of, spec.field);
  const onSet = (next: unknown) => change(setField(of, spec.field, next));
  if (value === undefined) return null;
  return spec.input.as === 'choice' ? (
    <ChoiceField spec={spec} of={spec.input.of} value={value} onSet={onSet} />
  ) : (
    <TypedField spec={spec} value={value} onSet={onSet} />
  );
};
