import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { whatIfs } from '../../scripts/docs/what-if';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { recalculate } from '../../workbench/engine/recalculate';
import { cellAddress } from '../../workbench/xlsx/address';
import type { BookCell, BookSheet, BookTable } from '../../workbench/xlsx/book';
import { number } from '../functions/call';

// These run the built bundle: npm test builds it first.

type Cells = readonly (readonly (string | number)[])[];

const walls: Cells = [
  ['Wall', 'Zone', 'Material', 'Area', 'Mortar', 'Residue'],
  ['S-1', 'South', 'Red clay brick', 900, 'S', 'moderate'],
  ['S-2', 'South', 'Limestone', 80, 'N', 'light'],
  ['N-1', 'North', 'Red clay brick', 600, 'S', ''],
];
const factors: Cells = [
  ['Factor', 'Value'],
  ['price.labor', 60],
  ['team.size', 2],
  ['teams', 2],
];

function sheet(name: string, cells: Cells, formulas: readonly string[] = []): BookSheet {
  const all = new Map<string, BookCell>();
  cells.forEach((line, row) => {
    line.forEach((value, column) => {
      if (value !== '') all.set(cellAddress(row, column), { row, column, value });
    });
  });
  formulas.forEach((formula, row) => {
    all.set(cellAddress(row, 0), { row, column: 0, value: null, formula: formula.slice(1) });
  });
  return { name, part: '', cells: all };
}

function tableOf(name: string, cells: Cells): BookTable {
  const [columns = []] = cells;
  return {
    name,
    sheet: name,
    area: { top: 0, left: 0, bottom: cells.length - 1, right: columns.length - 1 },
    columns: columns.map(String),
    headerRows: 1,
    totalsRows: 0,
  };
}

const edited = (cells: Cells, from: string | number, to: string | number): Cells =>
  cells.map((line) => line.map((value) => (value === from ? to : value)));

describe('a what-if in one cell', () => {
  it('gives what the sheet would with its cells edited', async () => {
    const book = {
      sheets: [
        sheet('Walls', walls),
        sheet('Factors', factors),
        sheet(
          'Bid',
          [],
          whatIfs.map(({ formula }) => formula),
        ),
      ],
      tables: [tableOf('Walls', walls), tableOf('Factors', factors)],
      names: [],
    };
    const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
    const results = (await recalculate(book, bundle)).map(({ result }) => result);
    const bid = (of: Cells): number => number('BIDPRICE', of, null, factors);
    const [granite, mortar, team] = results as number[];
    expect(granite).toBeCloseTo(bid(edited(walls, 'Limestone', 'Granite')), 6);
    expect(granite).not.toBeCloseTo(bid(walls), 0);
    expect(mortar).toBeCloseTo(bid(walls) - bid(edited(walls, 'S', 'N')), 6);
    expect(mortar).toBeGreaterThan(1);
    const three = factors.map(([id, value]) => [id, id === 'team.size' ? 3 : value]);
    expect(team).toBeCloseTo(number('LABORHOURS', walls, null, three), 6);
    expect(team).not.toBeCloseTo(number('LABORHOURS', walls, null, factors), 2);
  });
});
