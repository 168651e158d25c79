import type { Job } from '../job/schema';
import { ENGINE } from '../plan/engine';

export interface Trouble {
  readonly bug: unknown;
  /** What React says of where it happened; null from elsewhere. */
  readonly where: string | null;
  readonly address: string;
  readonly browser: string;
  /** The edits made, the latest last: by kind, and by the name that may hold what a person typed. */
  readonly steps: readonly { readonly name: string; readonly kind: string }[];
  /** Only where the person ticked it. */
  readonly job: Job | null;
}

/** What a person may send along when the program erred; a plain text they can read first. Nothing of the job unless it goes along. */
export const errorReport = ({ bug, where, address, browser, steps, job }: Trouble): string => {
  const said =
    bug instanceof Error ? { error: bug.message, stack: (bug.stack ?? '').split('\n') } : { error: String(bug) };
  const report = {
    format: 'backboard-error-report',
    engine: ENGINE,
    ...said,
    ...(where === null ? {} : { where: where.trim().split('\n') }),
    address,
    browser,
    steps: steps.map(({ name, kind }) => (job === null ? kind : name)),
    ...(job === null ? {} : { job }),
  };
  return `${JSON.stringify(report, null, 1)}\n`;
};
