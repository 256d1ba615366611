import ExcelJS from 'exceljs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { alternatesOf } from '../../../src/alternates/alternates';
import { ownerPage } from '../../../taskpane/decisions/owner-page';
import type { CellContent, Formula } from '../../../taskpane/workbook/port';
import { loadBundle } from '../../../workbench/engine/load-bundle';
import { recalculate } from '../../../workbench/engine/recalculate';
import { openArchive } from '../../../workbench/xlsx/archive';
import { readBook } from '../../../workbench/xlsx/read-book';
import { number } from '../../properties/call';

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Masked'],
  ['F-1', 'Front', 'Red clay brick', 800, 20, 'N', 'moderate', ''],
  ['F-2', 'Front', 'Limestone', 60, 3, 'N', 'light', ''],
];
const FACTORS = [
  ['Factor', 'Value'],
  ['price.labor', 55],
];
const ODD = 'Type "O" below 5\'';
const ALTERNATES = [
  ['Alternate', 'Wall', 'Column', 'Value'],
  ['Granite base', 'F-2', 'Material', 'Granite'],
  [ODD, 'F-1', 'Mortar', 'O'],
  ['Not picked', 'F-1', 'Mortar', 'S'],
];
const WORKED = "What's it worth";
const result = alternatesOf({ walls: WALLS, factors: FACTORS, alternates: ALTERNATES, zone: '' });
const page = ownerPage(result, new Set(['Granite base', ODD]), 'For the owner', WORKED);
const bid = (walls: unknown[][]): number => number('BIDPRICE', walls, null, FACTORS);
const edited = (row: number, column: number, value: string): unknown[][] =>
  WALLS.map((cells, at) => (at === row ? cells.with(column, value) : cells));

/** The page in a workbook with the walls, worked out by the engine of the workbench. */
async function workedOut(): Promise<(row: number, column: number) => unknown> {
  const book = new ExcelJS.Workbook();
  for (const [name, rows] of Object.entries({ Walls: WALLS, Factors: FACTORS, Asked: ALTERNATES }))
    book.addWorksheet(name).addRows(rows);
  const spilled = book.addWorksheet(WORKED);
  spilled.getCell('A1').value = {
    formula: 'WASH.ALTERNATES(Walls!A1:H3,Asked!A1:D4,,Factors!A1:B2)',
    shareType: 'array',
    ref: 'A1:N7',
  } as ExcelJS.CellFormulaValue;
  const sheet = book.addWorksheet(page.sheet);
  page.rows.forEach((row, at) => {
    row.forEach((cell, column) => {
      sheet.getCell(at + 1, column + 1).value = contentOf(cell);
    });
  });
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  const results = await recalculate(
    readBook(openArchive(bytes)),
    loadBundle(join(import.meta.dirname, '../../../dist')),
  );
  const found = results.filter((each) => each.sheet === page.sheet);
  return (row, column) => found.find((each) => each.row === row && each.column === column)?.result;
}

function contentOf(cell: CellContent | Formula): ExcelJS.CellValue {
  return typeof cell === 'object' ? { formula: cell.formula.slice(1) } : cell;
}

it('looks its numbers up where the alternates are spilled: each the difference of two bids', async () => {
  const names = page.rows.map(([name]) => name);
  const at = await workedOut();
  const price = (name: string): unknown => at(names.indexOf(name), 2);
  const base = bid(WALLS);
  expect(price('Base bid')).toBeCloseTo(base, 2);
  expect(price('Granite base')).toBeCloseTo(bid(edited(2, 2, 'Granite')) - base, 2);
  expect(price(ODD)).toBeCloseTo(bid(edited(1, 5, 'O')) - base, 2);
  const both = edited(2, 2, 'Granite').map((cells, row) => (row === 1 ? cells.with(5, 'O') : cells));
  expect(price('All that save together')).toBeCloseTo(bid(both) - base, 2);
});

it('tells of the picked ones alone, in words, and prints on one page', () => {
  const names = page.rows.map(([name]) => name);
  expect(names).toContain('Granite base');
  expect(names).not.toContain('Not picked');
  const [, what = '', , , note = ''] = page.rows[names.indexOf(ODD)] ?? [];
  expect(what).toMatch(/^Mortar becomes O|^.*Mortar.*O/);
  expect(note).toBe('The engineer and the code choose the mortar.');
  expect(page.print).toEqual({ held: 'sideways', onePage: true });
});

it('has no column of money where labor has no price', () => {
  const unpriced = alternatesOf({ walls: WALLS, alternates: ALTERNATES, factors: null, zone: '' });
  const { rows, widths } = ownerPage(unpriced, new Set(['Granite base']), 'Owner', WORKED);
  expect(rows.find(([first]) => first === 'Alternate')).toEqual([
    'Alternate',
    'What it changes',
    'Labor-hours added',
    'To know',
  ]);
  expect(widths).toHaveLength(4);
});

it('has a name looked up as it is, also one with a sign that stands for any text', () => {
  // A tilde before ?, * or ~ takes the sign for itself (the platform's help on VLOOKUP).
  const table = [ALTERNATES[0] ?? [], ['Why not O? * ~', 'F-1', 'Mortar', 'O']];
  const odd = alternatesOf({ walls: WALLS, factors: FACTORS, alternates: table, zone: '' });
  const { rows } = ownerPage(odd, new Set(['Why not O? * ~']), 'Owner', WORKED);
  const [, , looked] = rows.find(([name]) => name === 'Why not O? * ~') ?? [];
  expect(looked).toEqual({
    formula: `=VLOOKUP("Why not O~? ~* ~~",'What''s it worth'!A:K,10,FALSE)`,
  });
});
