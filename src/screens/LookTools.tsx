import { useState } from 'react';
import { screenWords as say } from '../words/en/screens';
import type { Look } from './host';
import parts from './parts/parts.module.css';
import { useHost } from './session';

/** Light or dark, small or large controls, single keys or none. */
export const LookTools = () => {
  const host = useHost();
  const [{ theme, hand, keys }, setLook] = useState(host.look);
  const change = (next: Partial<Look>): void => {
    host.setLook(next);
    setLook(host.look());
  };
  return (
    <>
      <button
        type="button"
        className={parts.button}
        onClick={() => change({ theme: theme === 'dark' ? 'light' : 'dark' })}
      >
        {theme === 'dark' ? say.toLight : say.toDark}
      </button>
      <button
        type="button"
        className={parts.button}
        onClick={() => change({ hand: hand === 'field' ? 'desk' : 'field' })}
      >
        {hand === 'field' ? say.toDesk : say.toField}
      </button>
      <button type="button" className={parts.button} onClick={() => change({ keys: !keys })}>
        {keys ? say.keysOff : say.keysOn}
      </button>
    </>
  );
};
