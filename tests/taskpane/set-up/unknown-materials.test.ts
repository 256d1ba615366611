import { expect, it } from 'vitest';
import { readFactors } from '../../../src/rules/read-factors';
import { readWalls } from '../../../src/walls/read-walls';
import { FreeNames } from '../../../taskpane/shared/free-names';
import { guessHeadings } from '../../../taskpane/set-up/guess-headings';
import { nameRows, unknownMaterials } from '../../../taskpane/set-up/unknown-materials';
import { planTable } from '../../../taskpane/set-up/plan-table';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const headings = ['Wall', 'Material', 'Area'];
const rows = [
  headings,
  ['A', 'Fieldstuff', 100],
  ['B', 'field stuff', 100],
  ['C', 'CMU', 50],
  ['', 'Other stuff', ''],
  ['Total', 'All stuff', 250],
  ['Example: x', 'Example stuff', 10],
  ['D', 7, 10],
];
const match = guessHeadings(headings);

it('names that nobody knows are asked for once, those of walls alone', () => {
  expect(unknownMaterials(rows.slice(1), match, readFactors(null).materials)).toEqual(['Fieldstuff']);
});

it('a name that was told is read by formulas, and stands in the table', async () => {
  const names = new Map([['Fieldstuff', 'Limestone']]);
  const { blocks } = planTable(
    { walls: { table: 'W' }, headings, match, system: 'US', names },
    await FreeNames.of(new MemoryWorkbook({ sheets: { A: [] } })),
  );
  const form = blocks[0]?.rows ?? [];
  expect(form.at(-1)?.slice(0, 2)).toEqual(nameRows(names)[0]);
  expect(new Set(form.map((row) => row.length)).size).toBe(1);
  const walls = readWalls(rows.slice(0, 4), readFactors(form));
  expect(walls.map(({ material }) => material.name)).toEqual([
    'Limestone',
    'Limestone',
    expect.stringContaining('block'),
  ]);
});
