import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { recalculate, type FormulaResult } from '../../workbench/engine/recalculate';
import { openArchive } from '../../workbench/xlsx/archive';
import type { BookSheet } from '../../workbench/xlsx/book';
import { isCellError } from '../../workbench/xlsx/cell-value';
import { readBook } from '../../workbench/xlsx/read-book';

// These run the built bundle: npm test builds it first.

let results: ReadonlyMap<string, FormulaResult>;

beforeAll(async () => {
  const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
  const book = readBook(openArchive(await makeWorkbook(libraryUs, bundle)));
  // The tables that the examples name, and a sheet for each example, so that no spill is in the way of another.
  const tables = book.sheets.filter(({ name }) =>
    ['Walls', 'Baseline', 'Factors', 'Actuals', 'Asked for'].includes(name),
  );
  const examples = worksheetFunctions.map(({ name, example }): BookSheet => ({
    // Sheets are known whatever the case, and a table stands on one named like a function.
    name: `Example ${name}`,
    part: '',
    cells: new Map([['A1', { row: 0, column: 0, value: null, formula: example.slice(1) }]]),
  }));
  const worked = await recalculate({ ...book, sheets: [...tables, ...examples] }, bundle);
  results = new Map(worked.map((each) => [each.sheet.replace('Example ', ''), each]));
});

describe('the example of each worksheet function, on the demo workbook', () => {
  it.each(worksheetFunctions.map((each) => [each.example, each] as const))(
    '%s gives a value',
    (example, { name, result: shape, unit }) => {
      expect(example.startsWith(`=WASH.${name}(`)).toBe(true);
      const { result, calls } = results.get(name) ?? {};
      expect(calls?.map(({ id }) => id)).toContain(name);
      if (shape === 'matrix') {
        expect(Array.isArray(result)).toBe(true);
        const grid = Array.isArray(result) ? result : [];
        expect(grid.length).toBeGreaterThan(1);
        expect(grid.flat().some(isCellError)).toBe(false);
        // A page starts with its title alone; a list has a heading on each column.
        expect(grid[0]?.[0]).not.toBe('');
        if (name !== 'BIDPAGE') expect(grid[0]).not.toContain('');
      } else if (unit === 'text') {
        expect(result).toMatch(/\w/);
      } else {
        expect(result).toBeTypeOf('number');
        expect(result).toBeGreaterThan(0);
      }
    },
  );

  it('gives what the drawings say where that is told at sight', () => {
    // The south is governed by its limestone plinth, class 1; nothing of it needs less.
    expect(['CLASS', 'GOVERNING', 'GOVERNOR'].map((name) => results.get(name)?.result)).toEqual([
      1,
      1,
      'Limestone',
    ]);
    // Applied at 10 and rinsed at 8 ft2/min within 5 min; number 10 at 400 psi.
    expect(results.get('PATCH')?.result).toMatchObject({ 0: ['Patch', expect.closeTo(40, 9), 'ft²'] });
    expect(results.get('NOZZLE')?.result).toMatchObject({
      0: ['Flow', expect.closeTo(Math.sqrt(10), 9), 'gal/min'],
    });
    // One band was swapped.
    expect(results.get('CHANGES')?.result).toHaveLength(3);
  });
});
