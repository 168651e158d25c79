import { execFileSync } from 'node:child_process';

interface Process {
  readonly pid: number;
  readonly parent: number;
  readonly args: string;
}
const processes = (): Process[] =>
  execFileSync('ps', ['-eo', 'pid=,ppid=,args='], { encoding: 'utf8', maxBuffer: 64_000_000 })
    .split('\n')
    .flatMap((line) => {
      const [, pid, parent, args] = /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(line) ?? [];
      return args === undefined ? [] : [{ pid: Number(pid), parent: Number(parent), args }];
    });

/** Every process of the browser that runs on a profile of its own: those that name it, and all they started. */
export const browserOn = (profile: string): number[] => {
  const all = processes();
  const found = new Set(all.filter((p) => p.args.includes(`--user-data-dir=${profile}`)).map((p) => p.pid));
  for (let before = -1; before !== found.size; ) {
    before = found.size;
    for (const p of all) if (found.has(p.parent)) found.add(p.pid);
  }
  return [...found];
};

export const killAtOnce = (pids: readonly number[]): void => {
  for (const pid of pids)
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // gone with the one before it
    }
};
