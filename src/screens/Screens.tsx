import { DropFile } from './DropFile';
import { Hatches } from './parts/Hatches';
import { Sheets } from './Sheets';
import { StartSheet } from './StartSheet';
import { useJobState } from './session';

/** The sheet of the open job, or the way in. */
export const Screens = () => {
  const open = useJobState((s) => s.history !== null);
  return (
    <>
      <Hatches />
      {open ? <Sheets /> : <StartSheet />}
      <DropFile />
    </>
  );
};
