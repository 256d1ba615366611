import { freeName } from './free-name';
import type { Block, WorkbookPort } from '../workbook/port';

/**
 * Puts rows on a new sheet and shows it; no sheet that is there already is touched.
 * @param port the workbook
 * @param name name of the sheet, counted up where it is taken
 * @param rows values, the first row in bold
 * @param widths of the columns in characters; without them a column fits its content
 * @param print how it prints; without it the host decides
 * @returns the name of the sheet
 */
export async function putOnNewSheet(
  port: WorkbookPort,
  name: string,
  rows: Block['rows'],
  widths?: readonly number[],
  print?: Block['print'],
): Promise<string> {
  const sheet = freeName(name, await port.sheets(), ' ');
  await port.write([
    { sheet, address: 'A1', rows, heading: true, ...(widths ? { widths } : {}), ...(print ? { print } : {}) },
  ]);
  // It is written, whether it can be shown or not.
  await port.goTo({ sheet, address: 'A1' }).catch(() => undefined);
  return sheet;
}
