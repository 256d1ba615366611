import type { WorkbookPort } from '../workbook/port';

/** Gives out names that the workbook does not use, each once. */
export class FreeNames {
  private readonly sheetNames: string[];
  private readonly tableNames: string[];

  private constructor(sheets: readonly string[], tables: readonly string[]) {
    this.sheetNames = [...sheets];
    this.tableNames = [...tables];
  }

  /**
   * Looks which names the workbook uses.
   * @param port the workbook
   * @returns the names that are left
   */
  static async of(port: WorkbookPort): Promise<FreeNames> {
    const [sheets, tables, names] = await Promise.all([port.sheets(), port.tables(), port.names()]);
    return new FreeNames(sheets, [...tables.map(({ name }) => name), ...names.map(({ name }) => name)]);
  }

  /**
   * A name for a new sheet.
   * @param wanted the name
   * @returns the wanted one, counted up where it is taken
   */
  sheet(wanted: string): string {
    const name = freeName(wanted, this.sheetNames, ' ');
    this.sheetNames.push(name);
    return name;
  }

  /**
   * A name for a new table.
   * @param wanted the name
   * @returns the wanted one, counted up where a table or a defined name has it
   */
  table(wanted: string): string {
    const name = freeName(wanted, this.tableNames, '');
    this.tableNames.push(name);
    return name;
  }
}

/**
 * A name that is not taken: the wanted one, or with a number behind it.
 * @param wanted the name
 * @param taken the names in use, in any case
 * @param gap what stands before the number
 * @returns the name
 */
export function freeName(wanted: string, taken: readonly string[], gap: string): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  let name = wanted;
  for (let count = 2; used.has(name.toLowerCase()); count++) name = `${wanted}${gap}${String(count)}`;
  return name;
}
