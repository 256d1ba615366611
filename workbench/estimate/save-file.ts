import { existsSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/**
 * Writes a file so that it is there whole or not at all: into a file beside it first, which then takes its name.
 * @param path where to
 * @param bytes what
 * @throws {Error} where the directory cannot be written to; the file is then as it was
 */
export function saveFile(path: string, bytes: Uint8Array): void {
  const target = existsSync(path) ? realpathSync(path) : path;
  const mode = existsSync(target) ? statSync(target).mode : 0o666;
  const draft = join(dirname(target), `.${basename(target)}.${String(process.pid)}.tmp`);
  try {
    writeFileSync(draft, bytes, { mode });
    renameSync(draft, target);
  } finally {
    rmSync(draft, { force: true });
  }
}
