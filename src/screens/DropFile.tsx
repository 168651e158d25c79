import { useEffect, useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import css from './jobs.module.css';
import { useOpening } from './useOpening';

const hasFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

/** A job file dragged in from the desk of the computer is opened, wherever it is let go. */
export const DropFile = () => {
  const { openFile } = useOpening();
  const [over, setOver] = useState(false);
  useEffect(() => {
    const drag = (event: DragEvent): void => {
      if (!hasFile(event)) return;
      event.preventDefault(); // else the browser would leave the program and show the file
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(false);
      const [file] = event.dataTransfer?.files ?? [];
      if (file) void openFile(file);
    };
    addEventListener('dragover', drag);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', drag);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  });
  return over ? (
    <p className={css.drop} role="status">
      {words.drop}
    </p>
  ) : null;
};
