import type { CellContent, WorkbookPort } from './workbook/port';

// A spreadsheet reads a text that starts like this as a formula, a number or a date.
const MAY_BE_READ = /^[=+\-@'\d]/;

/**
 * A text as a cell takes it and shows it, whatever it starts with.
 * @param text the text
 * @returns the text, with the mark of a plain text before it where it needs one
 */
export function plainCell(text: string): CellContent {
  return MAY_BE_READ.test(text) ? `'${text}` : text;
}

/**
 * Puts rows on a new sheet and shows it; no sheet that is there already is touched.
 * @param port the workbook
 * @param name name of the sheet, counted up where it is taken
 * @param rows texts, the first row being headings
 * @returns the name of the sheet
 */
export async function putOnNewSheet(
  port: WorkbookPort,
  name: string,
  rows: readonly (readonly string[])[],
): Promise<string> {
  const taken = new Set((await port.sheets()).map((sheet) => sheet.toLowerCase()));
  let sheet = name;
  for (let count = 2; taken.has(sheet.toLowerCase()); count++) sheet = `${name} ${String(count)}`;
  const cells = rows.map((row) => row.map(plainCell));
  await port.write([{ sheet, address: 'A1', rows: cells, heading: true }]);
  await port.goTo({ sheet, address: 'A1' });
  return sheet;
}
