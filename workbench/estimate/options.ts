import { readCommandLine, UsageError } from '../command-line';

/** What the person asked for on the command line. */
export interface Options {
  readonly file: string;
  /** Where the workbook with the values goes; without it nothing is written. */
  readonly out?: string;
  readonly inPlace: boolean;
  /** Whether what is written does without the add-in: values in place of every Washdown formula. */
  readonly values: boolean;
  readonly json: boolean;
}

/** What --help prints. */
export const HELP = `Recalculates the Washdown formulas of a workbook and prints the estimate.

  npm run estimate -- FILE.xlsx [--out FILE2.xlsx [--values] | --in-place] [--json]

  FILE.xlsx       the workbook; it is only read, unless --in-place is given
  --out FILE2     write the workbook there with the new values in its Washdown cells; everything else stays as it is
  --values        with --out: a copy for people without the add-in, in which every Washdown formula, and every formula
                  that mixes Washdown's with others, is replaced by its value
  --in-place      write the new values into FILE.xlsx itself
  --json          print one JSON object with every Washdown cell, and nothing else, on standard output
                  (npm run --silent estimate -- ... keeps npm's own banner out of it)
  --help          print this

Ordinary formulas that depend on Washdown cells get their new values too. What cannot be worked out here is listed.
Exit code: 0 done, 1 the file cannot be used, 2 wrong command line.
`;

const ACCEPTED = {
  out: { type: 'string' },
  'in-place': { type: 'boolean' },
  values: { type: 'boolean' },
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/**
 * Reads the command line.
 * @param args the arguments behind the name of the program
 * @returns what is asked for, or `help`
 * @throws {UsageError} where an argument is unknown, missing or one too many
 */
export function readOptions(args: readonly string[]): Options | 'help' {
  const line = readCommandLine(args, ACCEPTED);
  if (line.has('help')) return 'help';
  const [file, another] = line.others;
  if (file === undefined || file === '') throw new UsageError('Which workbook? Accepted: one .xlsx file.');
  if (another !== undefined)
    throw new UsageError(`One workbook at a time: "${file}" and "${another}" were given.`);
  const inPlace = line.has('in-place');
  const values = line.has('values');
  const out = line.file('out');
  if (inPlace && out !== undefined) {
    throw new UsageError(
      '--out and --in-place contradict each other. Accepted: one of them, or none to only print.',
    );
  }
  if (values && out === undefined) {
    throw new UsageError('--values goes with --out: the copy without formulas is a separate file.');
  }
  return { file, ...(out === undefined ? {} : { out }), inPlace, values, json: line.has('json') };
}
