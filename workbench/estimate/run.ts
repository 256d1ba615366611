import type { Bundle } from '../engine/bundle';
import { RULES_VERSION } from '../../src/rules/version';
import type { Parts } from '../xlsx/package-parts';
import { writeKeptTexts } from '../xlsx/write-kept-parts';
import { openArchive, packArchive, type Archive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import { endingOf, isSigned } from '../xlsx/kind-of-file';
import { workbookPart } from '../xlsx/parts';
import { UsageError } from '../command-line';
import { HELP, readOptions, type Options } from './options';
import { plainCopy } from './plain-copy';
import { readFile } from './read-file';
import { leftCell, reportCell, type UnitOf } from './report-cells';
import { leftText, reportText } from './report-text';
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

/** The file says under which rules its values were worked out: a later review tells a change of rules from a slip. */
function withRules(archive: Archive): Archive {
  const parts: Parts = new Map(archive);
  writeKeptTexts(parts, workbookPart(parts), { rules: RULES_VERSION });
  return parts;
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
    const estimate = await estimateBook(archive, functions);
    const { washdown, archive: done, left } = estimate;
    const cells = washdown.map((each) => reportCell(each, unitOf));
    print(
      options.json
        ? `${JSON.stringify({ cells, ...(left.length > 0 ? { left: left.map((each) => leftCell(each)) } : {}) })}\n`
        : `${reportText(zoneTables(washdown, functions), cells)}\n`,
    );
    if (target === undefined) warn('Nothing is written. --out FILE or --in-place writes the values.\n');
    else if (options.values) {
      const copy = plainCopy(estimate);
      save(target, options.out ?? file, copy.archive, warn);
      warn([`${String(copy.replaced)} formulas replaced by their values.`, ...copy.says, ''].join('\n'));
    } else save(target, options.out ?? file, withRules(done), warn);
    warn(leftText(estimate));
    return 0;
  } catch (cause) {
    if (cause instanceof UsageError) {
      warn(`${cause.message}\n\n${HELP}`);
      return 2;
    }
    const reason = reasonOf(cause);
    if (cause instanceof BadTarget) warn(`${reason}\n`);
    else warn(cause instanceof BadFile ? `${file}: ${reason}\n` : `The estimate failed: ${reason}\n`);
    return 1;
  }
}
