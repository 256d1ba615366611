import ExcelJS, { type Workbook } from 'exceljs';

const EVERY_LINE = { style: 'thin', color: { argb: 'FF112233' } } as const;

function addValues(workbook: Workbook): void {
  const sheet = workbook.addWorksheet('Take-off', { properties: { tabColor: { argb: 'FF00AA55' } } });
  sheet.getCell('A1').value = 'plain';
  sheet.getCell('A2').value = '=1+1';
  sheet.getCell('A3').value = '007';
  sheet.getCell('A4').value = true;
  sheet.getCell('A5').value = { error: '#N/A' };
  sheet.getCell('A6').value = new Date(Date.UTC(2026, 0, 5));
  sheet.getCell('A6').numFmt = 'd-mmm-yy';
  sheet.getCell('A7').value = { richText: [{ text: 'two ' }, { text: 'looks', font: { bold: true } }] };
  sheet.getCell('A8').value = { text: 'drawing', hyperlink: 'https://example.invalid/drawing' };
  sheet.getCell('A9').value = '  two lines\nand <signs> & "quotes"  ';
  sheet.getCell('A10').value = -0.1;
  sheet.getCell('A11').value = '#N/A';
  sheet.getCell('C1').value = { formula: 'A10*2', result: -0.2 };
  for (const row of [2, 3, 4]) {
    sheet.getCell(`C${String(row)}`).value = {
      sharedFormula: 'C1',
      result: row,
    };
  }
  sheet.getCell('C5').value = { formula: '_xlfn.CONCAT(A1,"_xlfn.CONCAT(")', result: 'plain_xlfn.CONCAT(' };
  sheet.getCell('C6').value = { formula: 'NA()', result: { error: '#N/A' } };
  sheet.getCell('C7').value = { formula: 'A4', result: true };
  sheet.getCell('C8').value = { formula: '1+1' };
  sheet.getCell('E1').value = {
    formula: '_xlfn.SEQUENCE(2,2)',
    result: 1,
    shareType: 'array',
    ref: 'E1:F2',
  } as unknown as ExcelJS.CellFormulaValue;
  sheet.getCell('F1').value = 2;
  sheet.getCell('E2').value = 3;
  sheet.getCell('F2').value = 4;
}

function addLooks(workbook: Workbook): void {
  const sheet = workbook.addWorksheet('Looks', {
    views: [{ state: 'frozen', xSplit: 2, ySplit: 1, showGridLines: false }],
    pageSetup: { orientation: 'landscape', printArea: 'A1:B9' },
  });
  const cell = sheet.getCell('B2');
  cell.value = 1234.5;
  cell.numFmt = '#,##0.00 "ft2"';
  cell.font = {
    name: 'Arial',
    size: 14,
    bold: true,
    italic: true,
    underline: true,
    color: { argb: 'FFC00000' },
  };
  cell.fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFFEECC' } };
  cell.border = { top: { style: 'double', color: { argb: 'FF0000FF' } }, left: EVERY_LINE };
  cell.alignment = { horizontal: 'right', vertical: 'top', wrapText: true, textRotation: 45 };
  sheet.getCell('B3').font = { color: { theme: 4 } };
  sheet.getCell('B3').value = 'of the theme';
  sheet.getCell('B3').protection = { locked: false };
  sheet.mergeCells('C4:D5');
  sheet.getCell('C4').value = 'merged';
  sheet.getColumn(2).width = 20;
  sheet.getColumn(3).hidden = true;
  sheet.getColumn(5).font = { name: 'Calibri', size: 11, bold: true };
  sheet.getCell('E6').value = 'bold column';
  sheet.getCell('E7').value = 'thin cell';
  sheet.getCell('E7').style = { font: { name: 'Calibri', size: 11, bold: false } };
  sheet.getRow(3).height = 30;
  sheet.getRow(7).hidden = true;
  sheet.getCell('A9').dataValidation = { type: 'list', allowBlank: true, formulae: ['"yes,no"'] };
  sheet.addConditionalFormatting({
    ref: 'A1:A9',
    rules: [
      { type: 'expression', priority: 1, formulae: ["'Take-off'!$A$10<0"], style: { font: { bold: true } } },
    ],
  });
}

function addTables(workbook: Workbook): void {
  const sheet = workbook.addWorksheet('Lines');
  sheet.addTable({
    name: 'Lines',
    ref: 'B2',
    headerRow: true,
    totalsRow: true,
    style: { theme: 'TableStyleMedium4', showRowStripes: true },
    columns: [
      { name: 'Line', totalsRowLabel: 'All' },
      { name: 'Amount', totalsRowFunction: 'sum' },
    ],
    rows: [
      ['scaffold', 12],
      ['rinse', 30],
    ],
  });
  workbook.addWorksheet('Kept for later', { state: 'hidden' }).getCell('A1').value = 'out of sight';
  workbook.definedNames.add("'Take-off'!$A$1:$A$9", 'Texts');
}

/**
 * A workbook as another program writes it, with a bit of everything.
 * @param date1904 whether its days are counted from 1904
 * @returns the file
 */
export async function foreignFile(date1904 = false): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.properties.date1904 = date1904;
  addValues(workbook);
  addLooks(workbook);
  addTables(workbook);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
