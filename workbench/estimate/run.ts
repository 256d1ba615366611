import type { Bundle } from '../engine/bundle';
import { openArchive, packArchive, type Archive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import { endingOf, isSigned } from '../xlsx/kind-of-file';
import { HELP, readOptions, UsageError, type Options } from './options';
import { readFile } from './read-file';
import { reportCell, type UnitOf } from './report-cells';
import { reportText } from './report-text';
import { saveFile } from './save-file';
import { BadTarget, checkTarget, lockBeside, reasonOf, sameFile } from './target';
import { zoneTables } from './zone-tables';

/** Where the command's output goes, and what it runs on. */
export interface Surroundings {
  readonly bundle: () => Bundle;
  readonly unitOf: UnitOf;
  readonly print: (text: string) => void;
  readonly warn: (text: string) => void;
}

/** The file that is to be written, undefined where nothing is. */
function targetOf(options: Options, archive: Archive): string | undefined {
  const { file, out, inPlace } = options;
  if (out !== undefined && sameFile(file, out)) {
    throw new UsageError(`--out names the workbook itself. Accepted: another file, or --in-place.`);
  }
  const path = inPlace ? file : out;
  return path === undefined ? undefined : checkTarget(path, endingOf(archive));
}

function save(target: string, named: string, archive: Archive, warn: (text: string) => void): void {
  if (isSigned(archive)) {
    warn('The workbook is signed. The signature does not hold for what is written now; sign it again.\n');
  }
  const lock = lockBeside(target);
  if (lock !== undefined) {
    warn(`${lock} says that a spreadsheet has ${named} open. Close it there without saving.\n`);
  }
  try {
    saveFile(target, packArchive(archive));
  } catch (cause) {
    throw new BadTarget(`${named} is not written: ${reasonOf(cause)}`);
  }
  warn(`Values written to ${named}\n`);
}

/**
 * The command: recalculates a workbook, prints the estimate, and writes the values where that is asked for.
 * @param args the arguments behind the name of the program
 * @param surroundings where the output goes and what it runs on
 * @returns the exit code: 0 done, 1 a file cannot be used, 2 wrong command line
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
    const target = targetOf(options, archive);
    // The spreadsheet's engine is large: a file that cannot be used is refused without it.
    const { estimateBook } = await import('./estimate-book');
    const functions = bundle();
    const { washdown, archive: done } = await estimateBook(archive, functions);
    const cells = washdown.map((each) => reportCell(each, unitOf));
    print(
      options.json
        ? `${JSON.stringify({ cells })}\n`
        : `${reportText(zoneTables(washdown, functions), cells)}\n`,
    );
    if (target === undefined) warn('Nothing is written. --out FILE or --in-place writes the values.\n');
    else save(target, options.out ?? file, done, warn);
    return 0;
  } catch (cause) {
    if (cause instanceof UsageError) {
      warn(`${cause.message}\n\n${HELP}`);
      return 2;
    }
    const reason = cause instanceof Error ? cause.message : String(cause);
    if (cause instanceof BadTarget) warn(`${reason}\n`);
    else warn(cause instanceof BadFile ? `${file}: ${reason}\n` : `The estimate failed: ${reason}\n`);
    return 1;
  }
}
