import { readCommandLine, UsageError } from '../command-line';

/** What the person asked for on the command line. */
export interface RatesOptions {
  readonly folder: string;
  /** The workbook to write; undefined where none is. */
  readonly out: string | undefined;
}

/** What --help prints. */
export const HELP = `Reads the recorded work of every workbook in a folder and prints the rates that the jobs show together.

  npm run rates -- FOLDER [--out FILE.xlsx]

  FOLDER          its .xlsx and .xlsm workbooks are read, never written; each needs a table Actuals and a table Walls
                  (or the walls that Set up remembers); one without a table Actuals is left out
  --out FILE      write a new workbook with a table of factors: factor, value, note
  --help          print this

A job counts by its own mean, since the entries of one job share its conditions (random effects: DerSimonian and Laird, 1986).
Each rate starts from the starting value, not from what a workbook states. The values are in the units of the first job.
Exit code: 0 done, 1 a file cannot be used (the others are read all the same), 2 wrong command line.
`;

const ACCEPTED = { out: { type: 'string' }, help: { type: 'boolean', short: 'h' } } as const;

/**
 * Reads the command line.
 * @param args the arguments behind the name of the program
 * @returns what is asked for, or `help`
 * @throws {UsageError} where an argument is unknown, missing or one too many
 */
export function readRatesOptions(args: readonly string[]): RatesOptions | 'help' {
  const line = readCommandLine(args, ACCEPTED);
  if (line.has('help')) return 'help';
  const [folder, another] = line.others;
  if (folder === undefined || folder === '') throw new UsageError('Which folder? Accepted: one folder.');
  if (another !== undefined)
    throw new UsageError(`One folder at a time: "${folder}" and "${another}" were given.`);
  return { folder, out: line.file('out') };
}
