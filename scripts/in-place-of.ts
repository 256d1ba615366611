import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Makes a folder anew without taking it away from a server that still uses it: what is made stands beside it first.
 * @param folder the folder
 * @param make puts files into the folder that it is given
 * @throws {Error} where they cannot be made; the folder is then as it was
 */
export async function inPlaceOf(folder: string, make: (fresh: string) => Promise<void>): Promise<void> {
  mkdirSync(dirname(folder), { recursive: true });
  const fresh = mkdtempSync(`${folder}-`);
  const former = `${fresh}-former`;
  try {
    await make(fresh);
    if (existsSync(folder)) renameSync(folder, former);
    renameSync(fresh, folder);
  } finally {
    for (const each of [fresh, former]) rmSync(each, { recursive: true, force: true });
  }
}
