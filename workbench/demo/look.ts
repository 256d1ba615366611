import type { Fill, Row, Worksheet } from 'exceljs';

const HEADER_COLOUR = 'FF2F5D73';
// Two lines of text, in points.
const HEADER_HEIGHT = 32;
const TITLE_HEIGHT = 20;
const HEADER_FILL: Fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: HEADER_COLOUR } };

/** The font of the workbook; a format that names none falls back to another. */
export const FONT = { name: 'Calibri', size: 11 } as const;

/** The colour of what is shown beside the figures that count. */
export const QUIET = 'FF555555';

/** Number formats by what is counted. */
export const FORMATS = { count: '0', quantity: '#,##0.0', money: '#,##0.00' } as const;

/**
 * Makes a row a header.
 * @param row the row
 */
export function asHeader(row: Row): void {
  row.height = HEADER_HEIGHT;
  row.eachCell((cell) => {
    cell.fill = HEADER_FILL;
    cell.font = { ...FONT, bold: true, color: { argb: 'FFFFFFFF' } };
    cell.alignment = { vertical: 'middle', horizontal: 'center', wrapText: true };
  });
}

/**
 * Sets the widths of the columns from the left.
 * @param sheet the sheet
 * @param widths in characters
 */
export function setWidths(sheet: Worksheet, widths: readonly number[]): void {
  for (const [index, width] of widths.entries()) sheet.getColumn(index + 1).width = width;
}

/**
 * Keeps the headings in view while the rest scrolls, and the columns on one page where the sheet is printed.
 * @param sheet the sheet
 * @param rows how many rows
 * @param columns how many columns
 */
export function freeze(sheet: Worksheet, rows: number, columns = 0): void {
  sheet.views = [{ state: 'frozen', ySplit: rows, xSplit: columns }];
  sheet.pageSetup = { orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 };
}

/**
 * Formats a cell as a title.
 * @param sheet the sheet
 * @param address the cell
 * @param text the title
 */
export function title(sheet: Worksheet, address: string, text: string): void {
  const cell = sheet.getCell(address);
  cell.value = text;
  cell.font = { ...FONT, bold: true, size: 14 };
  sheet.getRow(Number(cell.row)).height = TITLE_HEIGHT;
}

/**
 * Makes the first row a header as far as a spilled formula fills it.
 * @param sheet the sheet
 * @param columns the most columns that it may fill
 */
export function spilledHeader(sheet: Worksheet, columns: number): void {
  sheet.getRow(1).height = HEADER_HEIGHT;
  for (let column = 1; column <= columns; column += 1) {
    const cell = sheet.getCell(1, column);
    cell.font = { ...FONT, bold: true };
    cell.alignment = { vertical: 'middle', horizontal: 'center', wrapText: true };
  }
  sheet.addConditionalFormatting({
    ref: `A1:${sheet.getCell(1, columns).address}`,
    rules: [
      {
        type: 'expression',
        priority: 1,
        formulae: ['LEN(A1)>0'],
        style: {
          fill: { type: 'pattern', pattern: 'solid', bgColor: { argb: HEADER_COLOUR } },
          font: { bold: true, color: { argb: 'FFFFFFFF' } },
        },
      },
    ],
  });
}
