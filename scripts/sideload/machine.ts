import { spawnSync } from 'node:child_process';
import { homedir } from 'node:os';

/** What is asked of the machine that Excel is on. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  /** The user's own folder. */
  readonly home: string;
  /** Runs a program, what it says on the error output; false where it failed. */
  readonly run: (program: string, args: readonly string[]) => boolean;
}

/** The machine at hand. */
export const thisMachine: Machine = {
  platform: process.platform,
  home: homedir(),
  run: (program, args) => {
    // On Windows npx is a script, which a shell alone starts.
    const shell = program === 'npx' && process.platform === 'win32';
    return spawnSync(program, args, { stdio: ['inherit', 2, 2], shell }).status === 0;
  },
};
