import { useRef } from 'react';
import { screenWords as say } from '../words/en/screens';
import parts from './parts/parts.module.css';
import { useOpening } from './useOpening';

interface Props {
  /** The new job is the one next thing on this sheet. */
  readonly leading: boolean;
  readonly onOpened?: () => void;
}

/** A new job, or one from a file. */
export const OpenButtons = ({ leading, onOpened }: Props) => {
  const { startNew, openFile } = useOpening(onOpened);
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className={leading ? parts.go : parts.button} onClick={() => void startNew()}>
        {say.newJob}
      </button>
      <button type="button" className={parts.button} onClick={() => file.current?.click()}>
        {say.openFile}
      </button>
      <input
        ref={file}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={say.openFile}
        onChange={(e) => {
          const input = e.currentTarget;
          const chosen = input.files?.[0];
          if (!chosen) return;
          // emptied, so that the same file can be chosen again
          void openFile(chosen).finally(() => {
            input.value = '';
          });
        }}
      />
    </>
  );
};
