import ExcelJS, { type Cell, type Workbook } from 'exceljs';

/**
 * Opens a file with a library that knows nothing of the page.
 * @param bytes the file
 * @returns the workbook
 */
export async function readWithExceljs(bytes: Uint8Array): Promise<Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(Buffer.from(bytes) as unknown as ArrayBuffer);
  return workbook;
}

function cellFacts(cell: Cell): unknown {
  const { value, style } = cell;
  return { value, style };
}

/**
 * All that the library says of a workbook, to compare two of them.
 * @param workbook the workbook
 * @returns plain data
 */
export function workbookFacts(workbook: Workbook): unknown {
  return workbook.worksheets.map((sheet) => {
    const cells: Record<string, unknown> = {};
    const heights: Record<number, unknown> = {};
    sheet.eachRow({ includeEmpty: true }, (row, number) => {
      heights[number] = [row.height, row.hidden];
      row.eachCell({ includeEmpty: true }, (cell) => {
        const facts = cellFacts(cell);
        if (cell.value !== null || Object.keys(cell.style).length > 0) cells[cell.address] = facts;
      });
    });
    const { name, state, views, properties, pageSetup } = sheet;
    return {
      name,
      state,
      views,
      properties,
      pageSetup,
      cells,
      heights,
      widths: sheet.columns.map((column) => [column.width, column.hidden, column.style]),
      merges: (sheet.model as unknown as { merges: unknown }).merges,
      tables: sheet.getTables().map((table) => (table as unknown as { table: unknown }).table),
      rules: (sheet as unknown as { conditionalFormattings: unknown }).conditionalFormattings,
      validations: (sheet as unknown as { dataValidations: { model: unknown } }).dataValidations.model,
    };
  });
}
