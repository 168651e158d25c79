import type { Finding } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';

/** How firm a printed section is, wherever that is less than confirmed. */
export const Standing = ({ of }: { readonly of: Pick<Finding, 'standing'> }) =>
  of.standing === 'confirmed' ? null : <> · {say.standing[of.standing]}</>;
