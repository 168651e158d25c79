import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Fault } from '../src/units/fault';
import { compareText } from '../src/units/order';
import { err, ok, type Result } from '../src/units/result';

/** What a command reads from disk, or why it cannot: a fault of the input, never of the program. */
export const fault = (type: string, path: string, say: string): Fault => ({ error: { type, path, say } });

const CODES: Readonly<Record<string, readonly [type: string, because: string]>> = {
  ENOENT: ['no-such-file', 'there is no such file or folder'],
  ENOTDIR: ['no-such-file', 'there is no such file or folder'],
  EACCES: ['unreadable', 'it may not be read'],
  EPERM: ['unreadable', 'it may not be read'],
  EISDIR: ['unreadable', 'it is a folder, not a file'],
  ELOOP: ['unreadable', 'its links lead in a circle'],
  ENAMETOOLONG: ['no-such-file', 'the name is too long'],
  ERR_INVALID_ARG_VALUE: ['no-such-file', 'that is no name a file can have'],
  ERR_FS_FILE_TOO_LARGE: ['too-large', 'it is too large to be read'],
};
/** What the system says of the path becomes a fault; anything else is a bug and goes on. */
const tried = <T>(path: string, read: () => T): Result<T, Fault> => {
  try {
    return ok(read());
  } catch (e) {
    const known = CODES[(e as { code?: string }).code ?? ''];
    if (!known) throw e;
    return err(fault(known[0], '', `${path}: ${known[1]}.`));
  }
};

/** A file's text. Bytes that are not UTF-8 are refused: replaced by other characters they would change the job. */
export const readText = (path: string): Result<string, Fault> => {
  const bytes = tried(path, () => readFileSync(path));
  if (!bytes.ok) return bytes;
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    return err(fault('not-text', '', `${path}: expected a text in UTF-8, found other bytes.`));
  }
};

export interface JobFiles {
  readonly folder: boolean;
  /** As shown, and where they are; sorted by name. */
  readonly files: readonly { readonly name: string; readonly path: string }[];
}

/** The job files a path names: itself, or every `*.job.json` in it. */
export const jobFiles = (path: string): Result<JobFiles, Fault> =>
  tried(path, () =>
    statSync(path).isDirectory()
      ? {
          folder: true,
          files: readdirSync(path)
            .filter((name) => name.endsWith('.job.json'))
            .sort(compareText)
            .map((name) => ({ name, path: join(path, name) })),
        }
      : { folder: false, files: [{ name: path, path }] },
  );
