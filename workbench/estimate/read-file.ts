import { readFileSync, statSync } from 'node:fs';
import { BadFile } from '../xlsx/bad-file';
import { counted, MOST_FILE_BYTES } from '../xlsx/limits';
import { reasonOf } from './target';

/**
 * Reads the file of a workbook.
 * @param path where it is
 * @returns its bytes
 * @throws {BadFile} where there is none, or it cannot be read
 */
export function readFile(path: string): Uint8Array {
  try {
    const file = statSync(path);
    if (file.isDirectory()) throw new BadFile('This is a folder. Accepted: an .xlsx workbook.');
    if (!file.isFile()) throw new BadFile('This is a device or a pipe. Accepted: an .xlsx workbook.');
    if (file.size > MOST_FILE_BYTES) {
      throw new BadFile(
        `The file has ${counted(file.size)} bytes. Accepted: ${counted(MOST_FILE_BYTES)} at most.`,
      );
    }
    return readFileSync(path);
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
    if (code === 'ENOENT') throw new BadFile('There is no such file.');
    if (cause instanceof BadFile) throw cause;
    if (code === 'EACCES' || code === 'EPERM') throw new BadFile('You may not read this file.');
    throw new BadFile(`The file cannot be read: ${reasonOf(cause)}`);
  }
}
