import {
  closeSync,
  existsSync,
  fchmodSync,
  fsyncSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';

const DRAFT = /^\.(.+)\.(\d+)\.tmp$/;

function isRunning(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return true;
  } catch (cause) {
    // It runs, and belongs to somebody else.
    return (cause as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** Removes what a run that was killed has left. */
function removeDrafts(target: string): void {
  for (const name of readdirSync(dirname(target))) {
    const [, of, by] = DRAFT.exec(name) ?? [];
    if (of !== basename(target) || by === undefined) continue;
    if (Number(by) !== process.pid && isRunning(Number(by))) continue;
    remove(join(dirname(target), name));
  }
}

/** A draft that cannot be removed hinders nobody, and is not what went wrong. */
function remove(draft: string): void {
  try {
    rmSync(draft, { force: true });
  } catch {
    // The next run tries again.
  }
}

/** Has the disk keep the new name too, where the system can. */
function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    fsyncSync(handle);
    closeSync(handle);
  } catch {
    // Some systems open no folders; the file itself is on the disk.
  }
}

/**
 * Writes a file so that it is there whole or not at all: into a file beside it first, which takes its name once it is
 * on the disk. Drafts that a killed run left beside it are removed.
 * @param path where to
 * @param bytes what
 * @throws {Error} where the directory cannot be written to; the file is then as it was
 */
export function saveFile(path: string, bytes: Uint8Array): void {
  const target = existsSync(path) ? realpathSync(path) : path;
  removeDrafts(target);
  const draft = join(dirname(target), `.${basename(target)}.${String(process.pid)}.tmp`);
  try {
    const handle = openSync(draft, 'wx');
    try {
      if (existsSync(target)) fchmodSync(handle, statSync(target).mode);
      writeFileSync(handle, bytes);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(draft, target);
  } catch (cause) {
    remove(draft);
    throw cause;
  }
  syncFolder(dirname(target));
}
