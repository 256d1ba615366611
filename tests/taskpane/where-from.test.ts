import { describe, expect, it } from 'vitest';
import { askNumber } from '../../taskpane/where-from/asked-number';
import { cellOf, wallCell } from '../../taskpane/where-from/leaf-place';
import { numberInSelection } from '../../taskpane/where-from/number-in-cell';
import { MemoryWorkbook } from '../../taskpane/workbook/memory-workbook';
import { evaluate } from './evaluate';

const WALLS = 'Walls!$B$3:$F$6';
const RATES = 'Rates!$A$2:$B$4';

const workbook = () =>
  new MemoryWorkbook({
    sheets: {
      Walls: [
        ['Take-off'],
        [],
        ['', 'Wall', 'Zone', 'Material', 'Area', 'Height'],
        ['', 'S-1', 'South', 'Red clay brick', 900, 20],
        ['', 'S-2', 'South', 'Red clay brick', 600, 10],
        ['', 'N-1', 'North', 'Limestone', 500, 12],
      ],
      Rates: [['Rates'], ['price.labor', 60], ['Mask.Lap', 8], ['price.profit', 10]],
      Bid: [
        ['South', `=WASH.LABORHOURS(${WALLS},A1,${RATES},"scrub")`],
        ['', `=WASH.BIDPRICE(${WALLS},,${RATES},"rate")*3`],
        ['', `=WASH.CLASS(${WALLS},"North")`],
        ['', 12],
      ],
      Whole: [[`=WASH.SCHEDULE(${WALLS},,${RATES})`]],
      Rows: [[`=WASH.WALLROWS(${WALLS},,${RATES})`]],
    },
    evaluate,
  });

const never = new AbortController().signal;

async function wantedAt(sheet: string, address: string) {
  const book = workbook();
  book.select({ sheet, address });
  return numberInSelection(book, never);
}

describe('the number in the selected cell', () => {
  it.each([
    ['Bid', 'B1', { quantity: 'scrub hours', zone: 'South', wall: '' }],
    ['Bid', 'B2', { quantity: 'bid price', zone: '', wall: '' }],
    ['Bid', 'B3', { quantity: 'class', zone: 'North', wall: '' }],
  ])('of %s!%s is told by its formula', async (sheet, address, wanted) => {
    const found = await wantedAt(sheet, address);
    expect(found.wanted).toEqual(wanted);
    expect(found.ranges.wallsAt).toEqual({ sheet: 'Walls', address: 'B3:F6' });
  });

  it('within a spill is told by its heading and its line', async () => {
    const book = workbook();
    const [headings = []] = await book.readRange({ sheet: 'Whole', address: 'A1:BZ1' });
    const water = headings.findIndex((heading) => heading === 'Water (gal)');
    const letter = String.fromCharCode(65 + water);
    expect((await wantedAt('Whole', `${letter}3`)).wanted).toEqual({
      quantity: 'water',
      zone: 'North',
      wall: '',
    });
    const [ofRows = []] = await book.readRange({ sheet: 'Rows', address: 'A1:Z1' });
    const tape = String.fromCharCode(65 + ofRows.findIndex((heading) => heading === 'Tape (ft)'));
    expect((await wantedAt('Rows', `${tape}3`)).wanted).toEqual({ quantity: 'tape', zone: '', wall: 'S-2' });
    await expect(wantedAt('Whole', `${letter}1`)).rejects.toThrow('shows no single number');
  });

  it('is none where there is no Washdown formula', async () => {
    await expect(wantedAt('Bid', 'B4')).rejects.toThrow('There is no Washdown formula in Bid!B4.');
  });
});

it('a leaf is found in its cell, wherever walls and factors stand', async () => {
  const { ranges } = await wantedAt('Bid', 'B1');
  const number = askNumber(ranges, { quantity: 'bid price', zone: 'South', wall: '' });
  expect(number.formula).toBe(`=WASH.TRACE("bid price",${WALLS},"South",${RATES})`);
  expect(cellOf(number, { by: 'cell', row: 3, column: 'area' })).toEqual({ sheet: 'Walls', address: 'E5' });
  expect(cellOf(number, { by: 'cell', row: 3, column: 'openings' })).toBeUndefined();
  expect(wallCell(number, 4, 'wall')).toEqual({ sheet: 'Walls', address: 'B6' });
  expect(cellOf(number, { by: 'factor', id: 'mask.lap' })).toEqual({ sheet: 'Rates', address: 'B3' });
  expect(cellOf(number, { by: 'factor', id: 'shift' })).toBeUndefined();
  expect(cellOf(number, { by: 'constant' })).toBeUndefined();
});
