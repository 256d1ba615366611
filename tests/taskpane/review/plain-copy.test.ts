import { expect, it } from 'vitest';
import { nameText, planPlain } from '../../../taskpane/review/plain-copy';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import { evaluate } from '../evaluate';

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area'],
  ['A', 'Yard', 'Red clay brick', 100],
];

function workbook(bid: readonly (readonly string[])[], shows = {}) {
  return new MemoryWorkbook({
    sheets: { Walls: WALLS, Bid: bid },
    tables: [{ name: 'Walls', sheet: 'Walls', address: 'A1:D2' }],
    names: [
      { name: 'Water', refersTo: '=WASH.WATER(Walls[#All])' },
      { name: 'Twice', refersTo: '=Water*2' },
      { name: 'Rate', refersTo: '=0.5' },
    ],
    evaluate,
    shows,
  });
}

it('finds what needs the add-in: mixed formulas, names and spills too; the rest keeps its formula', async () => {
  const made = workbook([
    ['=WASH.TAPE(Walls[#All])', '=ROUND(WASH.TAPE(Walls[#All]),0)', '=A1*Rate', '=Twice+1', '=SUM(A3#)'],
    [],
    ['=WASH.SCHEDULE(Walls[#All])'],
  ]);
  const plan = await planPlain(made);
  expect(plan.places.map(({ sheet, address }) => `${sheet}!${address}`)).toEqual([
    'Bid!A1',
    'Bid!B1',
    'Bid!A3',
    'Bid!D1',
    'Bid!E1',
  ]);
  expect(plan.names.map(nameText)).toEqual([
    'The name Water stands for =WASH.WATER(Walls[#All]) and needs the add-in.',
    'The name Twice stands for =Water*2 and needs the add-in.',
  ]);
});

it('puts every value of a spill into its cell', async () => {
  const made = workbook([['=WASH.SCHEDULE(Walls[#All])']]);
  const before = await made.readRange({ sheet: 'Bid', address: 'A1:D2' });
  await made.makePlain((await planPlain(made)).places);
  expect(await made.readRange({ sheet: 'Bid', address: 'A1:D2' })).toEqual(before);
  expect(before[1]?.[0]).toBe('Yard');
  expect((await planPlain(made)).places).toEqual([]);
});

it('knows which show no value', async () => {
  const made = workbook([['=WASH.TAPE(Walls[#All])', '=WASH.WATER(Walls[#All])']], { 'Bid!B1': '#BUSY!' });
  expect((await planPlain(made)).unready).toEqual([{ sheet: 'Bid', address: 'B1' }]);
});
