import { hasNotes } from '../../../taskpane/shared/factor-rows';
import { describe, expect, it } from 'vitest';
import { factorLines } from '../../../src/rules/factor-lines';
import { readFactors } from '../../../src/rules/read-factors';
import { formRows } from '../../../taskpane/shared/factor-table-rows';
import {
  cellsOf,
  changesOf,
  refusals,
  standingOf,
  type Edit,
} from '../../../taskpane/set-up/factors/factor-edits';
import { formulasIn } from '../../../taskpane/set-up/factors/formulas-in';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const lines = factorLines('US').flatMap((group) => group.lines);
const place = { sheet: 'Factors', address: 'B3:D6' };
const rows = [
  ['Factor', 'Value', 'Note'],
  ['Team.Size', 3, 'crew of this job'],
  ['price.overhead', { basicValue: 0.1, numberFormat: '0%' }, ''],
  ['cleaner.class', 'by need', ''],
];
const edits = (typed: Record<string, Edit>) => new Map(Object.entries(typed));
const changes = (typed: Record<string, Edit>) => changesOf(rows, place, lines, edits(typed));

describe('a factor in the table', () => {
  it('is found in any spelling, with its value as it is shown', () => {
    expect(standingOf(rows, 'team.size')).toEqual({ row: 1, value: '3', note: 'crew of this job' });
    expect(standingOf(rows, 'price.overhead')).toEqual({ row: 2, value: '10%', note: '' });
    expect(standingOf(rows, 'teams')).toEqual({ row: undefined, value: '', note: '' });
    expect(standingOf(formRows('US').rows, 'teams').value).toBe('');
    expect([hasNotes(rows), hasNotes([['Factor', 'Value']])]).toEqual([true, false]);
  });
});

describe('what is typed', () => {
  it.each<[string, string, string]>([
    ['team.size', '25', '25 cannot be used. Accepted: a whole number from 1 to 20 people.'],
    ['team.size', 'two', '"two" cannot be used. Accepted: a whole number from 1 to 20 people.'],
    ['price.overhead', '0.1', '0.1 cannot be used. Accepted: a number from 0 to 300%; 0.1 may be 10%'],
    ['cleaner.class', '4', '4 cannot be used. Accepted: 0 to 3 or by need'],
    ['dwell.most', '2', 'The minimum dwell is longer than the maximum dwell.'],
  ])('%s %s is refused as the reader of the formulas refuses it', (id, value, words) => {
    const told = [...refusals(rows, lines, edits({ [id]: { value } })).values()];
    expect(told).toHaveLength(1);
    expect(told[0]?.startsWith(words)).toBe(true);
  });

  it.each(['4', '1,200', '12%', '0.5%', '', "'0.5%"])('%s is taken for a percent or a price', (value) => {
    const id = value === '1,200' || value === '4' ? 'price.labor' : 'price.overhead';
    expect([...refusals(rows, lines, edits({ [id]: { value } }))]).toEqual([]);
  });

  it('changes a cell where it stands, and says what stood there', () => {
    expect(changes({ 'team.size': { value: '4' } })).toEqual([
      {
        id: 'team.size',
        of: 'value',
        place: { sheet: 'Factors', address: 'C4' },
        from: '3',
        to: '4',
        content: 4,
      },
    ]);
    expect(changes({ 'team.size': { value: ' 3 ' } })).toEqual([]);
    expect(changes({ 'team.size': { value: '' } })[0]?.content).toBe('start');
    const note = changes({ 'team.size': { note: 'as last year' } });
    expect(cellsOf(note)).toEqual([{ id: 'team.size', note: 'as last year' }]);
  });

  it('is a percent that formulas can read, whatever the format of its cell', () => {
    const [ofCell] = changes({ 'price.overhead': { value: '12' } });
    const [own] = changes({ 'price.profit': { value: '8%' } });
    const [small] = changes({ 'price.contingency': { value: '0.5%' } });
    expect([ofCell?.content, own?.content, small?.content]).toEqual(['12%', 8, '0.5%']);
    const inForce = readFactors([
      ['price.overhead', ofCell?.content],
      ['price.profit', own?.content],
      ['price.contingency', small?.content],
    ]);
    expect(
      (['price.overhead', 'price.profit', 'price.contingency'] as const).map((id) => inForce.value(id)),
    ).toEqual([0.12, 0.08, 0.005]);
  });

  it('is one line for each factor, value and note together', () => {
    const typed = { teams: { value: '2', note: 'two lances' }, 'team.size': { note: '' } };
    expect(cellsOf(changes(typed))).toEqual([
      { id: 'teams', value: 2, note: 'two lances' },
      { id: 'team.size', note: '' },
    ]);
  });
});

it('a formula under a value is found', async () => {
  const workbook = new MemoryWorkbook({
    sheets: {
      Other: [['x']],
      Factors: [
        ['Factor', 'Value'],
        ['team.size', '=Other!A1'],
        ['teams', 2],
      ],
    },
    evaluate: () => 3,
  });
  const at = (address: string) => ({ sheet: 'Factors', address });
  expect([...(await formulasIn(workbook, [at('B2'), at('B3')]))]).toEqual([['B2', '=Other!A1']]);
  expect((await formulasIn(workbook, [])).size).toBe(0);
});
