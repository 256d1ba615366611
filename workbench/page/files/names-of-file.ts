/** Names that start like this are the spreadsheet's own: print areas, filters. */
export const BUILT_IN_NAME = /^_xlnm\./i;

/**
 * The id under which the page keeps a sheet of the file.
 * @param number the sheet's own number in the file
 * @returns the id
 */
export function sheetId(number: string): string {
  return `sheet-${number}`;
}
