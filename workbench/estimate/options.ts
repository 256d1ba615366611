import { resolve } from 'node:path';

/** What the person asked for on the command line. */
export interface Options {
  readonly file: string;
  /** Where the workbook with its values goes; undefined where only a copy without formulas is wanted. */
  readonly out: string | undefined;
  /** Where a copy without Washdown formulas goes. */
  readonly values: string | undefined;
  readonly json: boolean;
}

/** A command line that cannot be understood. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

export const HELP = `Recalculates the Washdown formulas of a workbook, prints the estimate and writes the values back.

  npm run estimate -- FILE.xlsx [--out FILE2.xlsx] [--values FILE3.xlsx] [--json]

  FILE.xlsx       the workbook; its Washdown cells get their new values, everything else stays as it is
  --out FILE2     write the workbook there and leave FILE.xlsx alone
  --values FILE3  write a copy for people without the add-in: every Washdown formula, and every formula that mixes
                  Washdown's with others, replaced by its value; FILE.xlsx is left alone
  --json          print one JSON object with every Washdown cell, and nothing else, on standard output;
                  the values are written to the workbook all the same
  --help          print this

Ordinary formulas that depend on Washdown cells get their new values too. What cannot be worked out here is listed.
Exit code: 0 done, 1 the file cannot be used, 2 wrong command line.
`;

/**
 * Reads the command line.
 * @param args the arguments behind the name of the program
 * @returns what is asked for, or `help`
 * @throws {UsageError} where an argument is unknown, missing or one too many
 */
export function readOptions(args: readonly string[]): Options | 'help' {
  const files: string[] = [];
  let out: string | undefined;
  let values: string | undefined;
  let json = false;
  let literal = false;
  for (let index = 0; index < args.length; index += 1) {
    const arg = args[index] ?? '';
    if (literal || !arg.startsWith('-')) files.push(arg);
    else if (arg === '--') literal = true;
    else if (arg === '--help' || arg === '-h') return 'help';
    else if (arg === '--json') json = true;
    else if (arg === '--out') {
      index += 1;
      out = args[index];
      if (out === undefined || out.startsWith('--')) throw new UsageError('--out needs the name of a file.');
    } else if (arg.startsWith('--out=')) out = arg.slice('--out='.length);
    else if (arg === '--values') {
      index += 1;
      values = args[index] ?? '';
      if (values.startsWith('--')) values = '';
    } else if (arg.startsWith('--values=')) values = arg.slice('--values='.length);
    else throw new UsageError(`Unknown option ${arg}. Accepted: --out FILE, --values FILE, --json, --help.`);
  }
  const [file, another] = files;
  if (file === undefined || file === '') throw new UsageError('Which workbook? Accepted: one .xlsx file.');
  if (another !== undefined)
    throw new UsageError(`One workbook at a time: "${file}" and "${another}" were given.`);
  if (out === '') throw new UsageError('--out needs the name of a file.');
  if (values === '') throw new UsageError('--values needs the name of a file.');
  const copies = [file, ...(out === undefined ? [] : [out])].map((each) => resolve(each));
  if (values !== undefined && copies.includes(resolve(values))) {
    throw new UsageError(`--values makes a copy without formulas. Accepted: another file than "${values}".`);
  }
  return { file, out: out ?? (values === undefined ? file : undefined), values, json };
}
