import { Component, type ErrorInfo, type ReactNode } from 'react';
import type { Job } from '../job/schema';
import { screenWords as say } from '../words/en/screens';
import css from './crash.module.css';
import { ErrorReport } from './ErrorReport';
import type { Trouble } from './errorReport';
import parts from './parts/parts.module.css';

/** What a crash screen needs when nothing around it can be trusted any more. */
export interface Rescue {
  /** The open job and the edits made to it; null where none is open. */
  readonly open: () => { readonly job: Job; readonly steps: Trouble['steps'] } | null;
  /** Hands the open job to the person as a file. */
  readonly save: () => void;
  readonly download: (fileName: string, text: string) => void;
  readonly reload: () => void;
}
interface Props {
  readonly children: ReactNode;
  readonly rescue: Rescue;
}
interface State {
  readonly bug: unknown;
  readonly where: string | null;
}

/** What stands in for screens that threw: the job is saved from here, and a report is offered as a file. */
export class Crash extends Component<Props, State> {
  override state: State = { bug: null, where: null };
  static getDerivedStateFromError(bug: unknown): Partial<State> {
    return { bug };
  }
  override componentDidCatch(bug: unknown, info: ErrorInfo): void {
    console.error(bug, info.componentStack);
    this.setState({ where: info.componentStack ?? null });
  }
  override render(): ReactNode {
    const { bug, where } = this.state;
    if (bug === null) return this.props.children;
    const { rescue } = this.props;
    const open = rescue.open();
    return (
      <div className={css.crash} role="alert">
        <h2 className={css.title}>{say.crashTitle}</h2>
        <p>{open ? say.crashSay : say.crashSayNoJob}</p>
        <div className={css.buttons}>
          {open && (
            <button type="button" className={parts.go} onClick={rescue.save}>
              {say.saveFile}
            </button>
          )}
          <button type="button" className={parts.button} onClick={rescue.reload}>
            {say.crashReload}
          </button>
        </div>
        <ErrorReport bug={bug} where={where} open={open} download={rescue.download} />
      </div>
    );
  }
}
