import { budgetsOf, type ZoneBudgets } from '../../src/actuals/budget';
import type { Entry } from '../../src/actuals/entry';
import { actualsHeadings, readActuals, rowOfActuals, type NewEntry } from '../../src/actuals/read-actuals';
import { WashdownError } from '../../src/quantity/problem';
import { freeName } from '../shared/free-name';
import type { Job } from '../shared/use-job';
import type { TableInfo, WorkbookPort } from '../workbook/port';

const TABLE = 'Actuals';
const DATE_FORMAT = 'yyyy-mm-dd';

/** The recorded work of a job, and what the estimate allows for it. */
export interface Recorded {
  readonly job: Job;
  readonly entries: readonly Entry[];
  readonly budgets: readonly ZoneBudgets[];
  /** Where it stands; undefined where the workbook has no such table. */
  readonly table: TableInfo | undefined;
}

/**
 * Reads the recorded work of a workbook: its table Actuals.
 * @param port the workbook
 * @param job the job that it belongs to
 * @returns the entries; none where there is no such table
 * @throws {WashdownError} naming each cell that cannot be read
 */
export async function readRecorded(port: WorkbookPort, job: Job): Promise<Recorded> {
  const table = await actualsTable(port);
  const entries = table
    ? readActuals(await port.readTable(table.name), job.walls, job.factors.system, job.headings)
    : [];
  return { job, entries, budgets: budgetsOf(job.walls, job.factors), table };
}

/**
 * Adds an entry to the end of the recorded work. A workbook without a table of it gets one, on a sheet of its own.
 * @param port the workbook
 * @param job the job that it belongs to
 * @param entry what the line holds, as the display system has it
 * @returns where it stands now, in words
 * @throws {WashdownError} naming each value that cannot be used; nothing is written then
 */
export async function addEntry(port: WorkbookPort, job: Job, entry: NewEntry): Promise<string> {
  const table = await actualsTable(port);
  const header = table ? ((await port.readTable(table.name))[0] ?? []) : actualsHeadings;
  const row = rowOfActuals(header, entry, job.factors.system, job.headings);
  check([header, row], job);
  if (table) {
    await port.addRows(table.name, [row]);
    return `the table ${table.name}`;
  }
  const sheet = freeName(TABLE, await port.sheets(), ' ');
  await port.write([
    {
      sheet,
      address: 'A1',
      rows: [actualsHeadings, row],
      table: TABLE,
      heading: true,
      formats: { A2: DATE_FORMAT },
    },
  ]);
  return `the new table ${TABLE} on the sheet ${sheet}`;
}

async function actualsTable(port: WorkbookPort): Promise<TableInfo | undefined> {
  return (await port.tables()).find(({ name }) => name.toLowerCase() === TABLE.toLowerCase());
}

/** What would not be read back is not written; its row has no number yet. */
function check(lines: readonly (readonly unknown[])[], job: Job): void {
  try {
    readActuals(lines, job.walls, job.factors.system, job.headings);
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    throw new WashdownError(
      error.problems.map((problem) => ({
        ...problem,
        message: problem.message.replace(/^Row 2(?: \([^)]*\))?, column /, ''),
      })),
    );
  }
}
