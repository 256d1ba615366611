import { freeName } from './free-name';
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
