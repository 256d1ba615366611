import { readFileSync } from 'node:fs';
import type { Bundle } from '../engine/bundle';
import { openArchive, packArchive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import { HELP, readOptions, UsageError } from './options';
import { reportCell, type UnitOf } from './report-cells';
import { reportText } from './report-text';
import { saveFile } from './save-file';
import { zoneTables } from './zone-tables';

/** Where the command's output goes, and what it runs on. */
export interface Surroundings {
  readonly bundle: () => Bundle;
  readonly unitOf: UnitOf;
  readonly print: (text: string) => void;
  readonly warn: (text: string) => void;
}

function readFile(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
    if (code === 'ENOENT') throw new BadFile('There is no such file.');
    if (code === 'EISDIR') throw new BadFile('This is a folder. Accepted: an .xlsx workbook.');
    throw new BadFile(`The file cannot be read: ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

/**
 * The command: recalculates a workbook, prints the estimate, writes the values back.
 * @param args the arguments behind the name of the program
 * @param surroundings where the output goes and what it runs on
 * @returns the exit code: 0 done, 1 the file cannot be used, 2 wrong command line
 */
export async function runEstimate(args: readonly string[], surroundings: Surroundings): Promise<0 | 1 | 2> {
  const { bundle, unitOf, print, warn } = surroundings;
  let file = '';
  try {
    const options = readOptions(args);
    if (options === 'help') {
      print(HELP);
      return 0;
    }
    file = options.file;
    const archive = openArchive(readFile(file));
    // The spreadsheet's engine is large: a file that cannot be used is refused without it.
    const { estimateBook } = await import('./estimate-book');
    const functions = bundle();
    const { washdown, archive: done } = await estimateBook(archive, functions);
    saveFile(options.out, packArchive(done));
    const cells = washdown.map((each) => reportCell(each, unitOf));
    print(
      options.json
        ? `${JSON.stringify({ cells })}\n`
        : `${reportText(zoneTables(washdown, functions), cells)}\n`,
    );
    warn(`Values written to ${options.out}\n`);
    return 0;
  } catch (cause) {
    if (cause instanceof UsageError) {
      warn(`${cause.message}\n\n${HELP}`);
      return 2;
    }
    const reason = cause instanceof Error ? cause.message : String(cause);
    warn(cause instanceof BadFile ? `${file}: ${reason}\n` : `The estimate failed: ${reason}\n`);
    return 1;
  }
}
