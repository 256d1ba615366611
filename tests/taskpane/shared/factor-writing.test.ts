import { describe, expect, it } from 'vitest';
import {
  factorWriting,
  systemOf,
  writeFactors,
  type FactorCells,
} from '../../../taskpane/shared/factor-writing';
import { formRows } from '../../../taskpane/shared/factor-table-rows';
import type { FactorRows } from '../../../taskpane/shared/factor-rows';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import { WriteFailed } from '../../../taskpane/workbook/port';

const ROWS: FactorRows = [
  ['Factor', 'Value', 'Note'],
  ['Rate.Scrape.Light', 60, 'first bid'],
  ['', '', ''],
  ['rate.apply', 900, ''],
];
const SCRAPE = { id: 'rate.scrape.light', value: 50.43, note: 'from 3 entries' };
const WET = { id: 'rate.wet', value: 1200, note: 'from 2 entries' };
const GLASS = { id: 'rate.glass', value: 90, note: 'from 1 entry' };
const place = { sheet: 'Data', address: 'B3:D6' };
const asTable = (rows: FactorRows, ...changes: FactorCells[]) =>
  factorWriting({ rows, place, reference: { table: 'Factors' } }, changes);
const asRange = (rows: FactorRows, ...changes: FactorCells[]) =>
  factorWriting({ rows, place, reference: place }, changes);

describe('values for factors', () => {
  it('go beside the id where it stands, however it is written, wherever the table is', () => {
    expect(asTable(ROWS, SCRAPE)).toEqual({
      blocks: [{ sheet: 'Data', address: 'C4', rows: [[50.43, 'from 3 entries']] }],
      added: [],
    });
  });

  it('leave alone what is not given', () => {
    expect(asTable(ROWS, { id: 'rate.apply', note: 'ours' }, { id: 'rate.scrape.light', value: 70 })).toEqual(
      {
        blocks: [
          { sheet: 'Data', address: 'D6', rows: [['ours']] },
          { sheet: 'Data', address: 'C4', rows: [[70]] },
        ],
        added: [],
      },
    );
  });

  it('without a row of their own take a blank one, then the end of the table', () => {
    expect(asTable(ROWS, WET, GLASS)).toEqual({
      blocks: [{ sheet: 'Data', address: 'B5', rows: [['rate.wet', 1200, 'from 2 entries']] }],
      added: [['rate.glass', 90, 'from 1 entry']],
    });
    // A factor that is new and has a note alone keeps its starting value.
    expect(asTable(ROWS.slice(0, 2), { id: 'teams', note: 'one lance' })).toEqual({
      blocks: [],
      added: [['teams', 'start', 'one lance']],
    });
  });

  it('in a range take a blank row too, and without room are refused, by name', () => {
    expect(asRange(ROWS, WET)).toEqual(asTable(ROWS, WET));
    expect(asRange(ROWS, WET, GLASS)).toEqual({
      refused:
        'The factors are a range without a blank row for rate.glass. Make it a table, or choose a longer range under Set up.',
    });
  });

  it('leave the note out where the table has two columns', () => {
    const two = ROWS.map((row) => row.slice(0, 2));
    expect(asTable(two, SCRAPE, WET, GLASS)).toEqual({
      blocks: [
        { sheet: 'Data', address: 'C4', rows: [[50.43]] },
        { sheet: 'Data', address: 'B5', rows: [['rate.wet', 1200]] },
      ],
      added: [['rate.glass', 90]],
    });
  });

  it('are refused where the cell shows a percent and the factor is none', () => {
    const shown = { basicValue: 0.6, numberFormat: '0%' };
    const rows: FactorRows = [
      ['Factor', 'Value', 'Note'],
      ['rate.scrape.light', shown, ''],
      ['price.overhead', shown, ''],
    ];
    expect(asTable(rows, SCRAPE)).toEqual({
      refused:
        'The cell of rate.scrape.light shows a percent. Set its number format to a plain number first.',
    });
    expect(asTable(rows, { id: 'price.overhead', value: '12%' })).toMatchObject({
      blocks: [{ address: 'C5' }],
    });
  });

  it('in a form that lacks the row bring its unit, its start and its bounds, in the units of the form', () => {
    const [us, si] = (['US', 'SI'] as const).map((system) => {
      const rows = formRows(system).rows.filter(([id]) => id !== 'rate.wet');
      expect(systemOf(rows)).toBe(system);
      const writing = asTable(rows, WET);
      return 'added' in writing ? writing.added[0] : undefined;
    });
    expect(us?.slice(0, 4)).toEqual(['rate.wet', 1200, 'from 2 entries', 'ft²/min']);
    expect(si?.slice(0, 4)).toEqual(['rate.wet', 1200, 'from 2 entries', 'm²/min']);
  });
});

it('rows that were added are named where the rest could not be written', async () => {
  const port = new MemoryWorkbook({
    sheets: { Data: [[], [], ...ROWS.map((row) => ['', ...row.map(String)])] },
    tables: [{ name: 'Factors', sheet: 'Data', address: 'B3:D6' }],
  });
  const writing = asTable(ROWS.slice(0, 2), SCRAPE, GLASS);
  if ('refused' in writing) throw new Error(writing.refused);
  port.addRows = () => Promise.resolve();
  port.write = () => Promise.reject(new WriteFailed('The sheet is protected.', ['Data!C4']));
  await expect(writeFactors(port, { table: 'Factors' }, writing)).rejects.toMatchObject({
    message: 'The sheet is protected.',
    left: ['row rate.glass', 'Data!C4'],
  });
});
