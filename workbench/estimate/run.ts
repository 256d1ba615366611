import { readFileSync } from 'node:fs';
import type { Bundle } from '../engine/bundle';
import { RULES_VERSION } from '../../src/rules/version';
import type { Parts } from '../page/files/package-parts';
import { writeKeptTexts } from '../page/files/write-kept-parts';
import { openArchive, packArchive, type Archive } from '../xlsx/archive';
import { workbookPart } from '../xlsx/parts';
import { BadFile } from '../xlsx/bad-file';
import { estimateBook } from './estimate-book';
import { HELP, readOptions, UsageError } from './options';
import { leftCell, reportCell, type UnitOf } from './report-cells';
import { leftText, reportText } from './report-text';
import { plainCopy } from './plain-copy';
import { saveFile } from './save-file';
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
    const functions = bundle();
    const estimate = await estimateBook(archive, functions);
    const { washdown, archive: done } = estimate;
    if (options.out !== undefined) saveFile(options.out, packArchive(withRules(done)));
    const copy = options.values === undefined ? undefined : plainCopy(estimate);
    if (copy && options.values !== undefined) saveFile(options.values, packArchive(copy.archive));
    const cells = washdown.map((each) => reportCell(each, unitOf));
    print(
      options.json
        ? `${JSON.stringify({ cells, ...(estimate.left.length > 0 ? { left: estimate.left.map((each) => leftCell(each)) } : {}) })}\n`
        : `${reportText(zoneTables(washdown, functions), cells)}\n`,
    );
    if (options.out !== undefined) warn(`Values written to ${options.out}\n`);
    if (copy && options.values !== undefined) {
      warn(
        [
          `${String(copy.replaced)} formulas replaced by their values in ${options.values}`,
          ...copy.says,
          '',
        ].join('\n'),
      );
    }
    warn(leftText(estimate));
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
