import { expect, it } from 'vitest';
import { workOutAlternates } from '../../../taskpane/decisions/work-out-alternates';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import { number } from '../../properties/call';

const WALLS = [
  ['Wall', 'Material', 'Area', 'Mortar'],
  ['F-1', 'Red clay brick', 800, 'N'],
  ['F-2', 'Limestone', 60, 'N'],
];
const FACTORS = [
  ['Factor', 'Value'],
  ['price.labor', 55],
];
const SOURCE = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };
let time = 0;
// Every step takes longer than a slice.
const turns = { now: () => (time += 1000), pause: () => Promise.resolve() };

function workbook(): MemoryWorkbook {
  return new MemoryWorkbook({
    sheets: {
      Walls: WALLS,
      Factors: FACTORS,
      Asked: [
        ['Alternate', 'Wall', 'Column', 'Value'],
        ['Weaker mortar', 'F-1', 'Mortar', 'O'],
      ],
    },
    tables: [
      { name: 'Walls', sheet: 'Walls', address: 'A1:D3' },
      { name: 'Factors', sheet: 'Factors', address: 'A1:B2' },
      { name: 'Asked', sheet: 'Asked', address: 'A1:D2' },
    ],
  });
}

it('works out a table of alternates, each against the bid', async () => {
  const worked = await workOutAlternates(workbook(), SOURCE, 'Asked', turns, new AbortController().signal);
  const weaker = [WALLS[0] ?? [], ['F-1', 'Red clay brick', 800, 'O'], WALLS[2] ?? []];
  const difference = number('BIDPRICE', weaker, null, FACTORS) - number('BIDPRICE', WALLS, null, FACTORS);
  expect(worked?.lines.map(({ alternate: { name } }) => name)).toEqual(['Weaker mortar']);
  expect(worked?.lines[0]?.added).toBeCloseTo(difference, 2);
});

it('takes the choices that are still open where no table is named', async () => {
  const worked = await workOutAlternates(workbook(), SOURCE, '', turns, new AbortController().signal);
  expect(worked?.lines.map(({ alternate: { name } }) => name)).toContain('Mortar Type O for Type N');
});

it('ends where it is not wanted any more, and refuses a table that is gone', async () => {
  const ended = new AbortController();
  ended.abort();
  expect(await workOutAlternates(workbook(), SOURCE, 'Asked', turns, ended.signal)).toBeUndefined();
  await expect(
    workOutAlternates(workbook(), SOURCE, 'Gone', turns, new AbortController().signal),
  ).rejects.toThrow('Gone');
});
