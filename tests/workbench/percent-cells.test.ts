import { Workbook } from 'exceljs';
import { expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import type { Bundle } from '../../workbench/engine/bundle';
import { recalculate } from '../../workbench/engine/recalculate';
import { openArchive } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';

// Says what the factors come to, as a number of the sheet.
const SHARES: Bundle = new Map([
  [
    'SHARES',
    {
      metadata: {
        id: 'SHARES',
        name: 'SHARES',
        description: '',
        parameters: [{ name: 'factors', type: 'any', dimensionality: 'matrix' }],
      },
      takesErrors: true,
      run: (factors: unknown) => {
        const { value } = readFactors(factors);
        return [[value('price.overhead'), value('price.profit'), value('price.contingency')]];
      },
    },
  ],
]);

it('a percent cell of a file counts as it shows, typed or worked out, in a format of the file too', async () => {
  const book = new Workbook();
  const factors = book.addWorksheet('Factors');
  factors.addRows([
    ['price.overhead', 0.1],
    ['price.profit', ''],
    ['price.contingency', 5],
  ]);
  factors.getCell('B1').numFmt = '0%';
  factors.getCell('B2').value = { formula: '0.03+0.04' };
  factors.getCell('B2').numFmt = '0.0 %;[Red]-0.0 %';
  book.addWorksheet('Bid').getCell('A1').value = { formula: 'WASH.SHARES(Factors!A1:B3)' };
  const archive = openArchive(new Uint8Array(await book.xlsx.writeBuffer()));
  const [found] = (await recalculate(readBook(archive), SHARES)).filter(({ sheet }) => sheet === 'Bid');
  const [[overhead, profit, contingency] = []] = found?.result as number[][];
  expect(overhead).toBe(0.1);
  expect(profit).toBeCloseTo(0.07, 12);
  expect(contingency).toBe(0.05);
});
