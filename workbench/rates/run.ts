import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pooledRates, type ObservedJob } from '../../src/actuals/pool-jobs';
import { WashdownError } from '../../src/quantity/problem';
import type { System } from '../../src/quantity/systems';
import { UsageError } from '../command-line';
import { readFile } from '../estimate/read-file';
import { saveFile } from '../estimate/save-file';
import { BadTarget, checkTarget, reasonOf } from '../estimate/target';
import { openArchive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import { HELP, readRatesOptions } from './options';
import { readJob, type JobRead } from './read-job';
import { ratesText } from './report';

/** Where the command's output goes. */
export interface Output {
  readonly print: (text: string) => void;
  readonly warn: (text: string) => void;
}

const WORKBOOK = /\.xls[xm]$/i;
// Drafts and locks of spreadsheets that have a workbook open.
const PASSING = /^[.~]/;

function workbooksIn(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => WORKBOOK.test(name) && !PASSING.test(name))
      .sort();
  } catch (cause) {
    throw new UsageError(`${folder} cannot be read: ${reasonOf(cause)}`);
  }
}

/** What a workbook shows; undefined where it has no recorded work. */
function jobIn(path: string): JobRead | undefined {
  return readJob(openArchive(readFile(path)));
}

function newFile(out: string): string {
  if (existsSync(out)) throw new BadTarget(`${out} is there already. Accepted: the name of a new file.`);
  return checkTarget(out, '.xlsx');
}

/**
 * The command: reads the recorded work of the workbooks of a folder, prints the rates that they show together, and
 * writes them as factors where that is asked for.
 * @param args the arguments behind the name of the program
 * @param output where the output goes
 * @returns the exit code: 0 done, 1 a file cannot be used, 2 wrong command line
 */
export async function runRatesCommand(args: readonly string[], output: Output): Promise<0 | 1 | 2> {
  const { print, warn } = output;
  try {
    const options = readRatesOptions(args);
    if (options === 'help') {
      print(HELP);
      return 0;
    }
    const target = options.out === undefined ? undefined : newFile(options.out);
    const jobs = new Map<string, ObservedJob>();
    let system: System | undefined;
    let failed = false;
    for (const name of workbooksIn(options.folder)) {
      try {
        const job = jobIn(join(options.folder, name));
        if (job === undefined) {
          warn(`${name}: no table Actuals, left out.\n`);
          continue;
        }
        jobs.set(name, job.observed);
        system ??= job.system;
        if (job.without > 0) warn(`${name}: entries that show no rate: ${String(job.without)}.\n`);
      } catch (cause) {
        if (!(cause instanceof BadFile || cause instanceof WashdownError)) throw cause;
        failed = true;
        warn(`${name}: ${cause.message}\n`);
      }
    }
    const rates = pooledRates(jobs);
    print(ratesText(rates, system ?? 'US'));
    if (target !== undefined) {
      // The library that writes workbooks is large.
      const { factorBook } = await import('./factor-book');
      saveFile(target, await factorBook(rates, system ?? 'US'));
      warn(`Factors written to ${options.out ?? target}\n`);
    }
    return failed ? 1 : 0;
  } catch (cause) {
    if (cause instanceof UsageError) {
      warn(`${cause.message}\n\n${HELP}`);
      return 2;
    }
    warn(cause instanceof BadTarget ? `${cause.message}\n` : `The rates failed: ${reasonOf(cause)}\n`);
    return 1;
  }
}
