import { Component, type ErrorInfo, type ReactNode } from 'react';
import { screenWords as say } from '../words/en/screens';
import css from './crash.module.css';
import parts from './parts/parts.module.css';

interface Props {
  readonly children: ReactNode;
  /** Hands the open job to the person as a file; null where none is open. */
  readonly save: (() => void) | null;
  readonly reload: () => void;
}
interface State {
  readonly bug: unknown;
}

/** What stands in for screens that threw: the job is saved from here, and the report copied by hand. */
export class Crash extends Component<Props, State> {
  override state: State = { bug: null };
  static getDerivedStateFromError(bug: unknown): State {
    return { bug };
  }
  override componentDidCatch(bug: unknown, info: ErrorInfo): void {
    console.error(bug, info.componentStack);
  }
  override render(): ReactNode {
    const { bug } = this.state;
    if (bug === null) return this.props.children;
    const { save, reload } = this.props;
    return (
      <main className={css.crash}>
        <h1>{say.crashTitle}</h1>
        <p>{say.crashSay}</p>
        <div className={css.buttons}>
          {save && (
            <button type="button" className={parts.go} onClick={save}>
              {say.saveFile}
            </button>
          )}
          <button type="button" className={parts.button} onClick={reload}>
            {say.crashReload}
          </button>
        </div>
        <h2>{say.crashReport}</h2>
        <pre className={css.report}>{bug instanceof Error ? `${bug.message}\n${bug.stack ?? ''}` : String(bug)}</pre>
      </main>
    );
  }
}
