import { describe, expect, it } from 'vitest';
import { groupFormulas } from '../../../src/review/audit/remembered';
import { GIVEN, numberAt, onTheWay, reviewed, worked, type Sheets, type SheetRows } from './bid-book';

const call = (name: string, zone: string) => `=WASH.${name}(Walls!$A$1:$F$4,${zone},Factors!$A$1:$B$4)`;
const LINES = 8;
const SECTIONS = 25;
/** The section that has the wash-down, and the row of its line. */
const WASH = { section: 9, row: 5 };

const estimate: SheetRows = [
  ['Zone', 'Water', 'Labor-hours', 'Price'],
  ...['North', 'South', 'West'].map((zone, index) => {
    const at = `$A${String(index + 2)}`;
    return [zone, call('WATER', at), call('LABORHOURS', at), call('BIDPRICE', at)];
  }),
  ['Whole job', call('WATER', ''), call('LABORHOURS', ''), call('BIDPRICE', '')],
  ['Sum of the zones', '=SUM(B2:B4)', '=SUM(C2:C4)', '=SUM(D2:D4)'],
];

function section(number: number): SheetRows {
  const lines = Array.from({ length: LINES }, (_, index) => {
    const row = index + 2;
    const wash = number === WASH.section && row === WASH.row;
    return [
      wash ? 'Final wash-down' : `Work ${String(number)}.${String(row)}`,
      wash ? 1 : 3 + index,
      wash ? '=Estimate!$D$5' : 100 * number + 7 * row,
      `=ROUND(B${String(row)}*C${String(row)},2)`,
    ];
  });
  return [['Work', 'Quantity', 'Rate', 'Amount'], ...lines, ['Total', '', '', '=SUM(D2:D9)']];
}

const name = (number: number) => `Section ${String(number)}`;
const numbers = Array.from({ length: SECTIONS }, (_, index) => index + 1);

/** Thirty sheets: what is given, an estimate, 25 sections with a subtotal each, a summary with mark-ups, and a cover. */
const BID: Sheets = {
  ...GIVEN,
  Estimate: estimate,
  ...Object.fromEntries(numbers.map((number) => [name(number), section(number)])),
  Summary: [
    ['Section', 'Amount'],
    ...numbers.map((number) => [name(number), `='${name(number)}'!D10`]),
    ['Sum', '=SUM(B2:B26)'],
    ['Overhead', '=B27*12%'],
    ['Grand total', '=B27+B28'],
  ],
  Cover: [['Price of the bid', '=ROUND(Summary!B29,0)']],
};

/** Every cell between the price of the whole job and the total on the cover, in order. */
const WAY = [
  'Estimate!D5',
  'Section 9!C5',
  'Section 9!D5',
  'Section 9!D10',
  'Summary!B10',
  'Summary!B27',
  'Summary!B28',
  'Summary!B29',
  'Cover!B1',
];

describe('in a bid of thirty sheets', () => {
  const honest = worked(BID);
  const first = reviewed(honest);

  it('nothing is found where nothing was typed over', () => {
    expect(Object.keys(BID)).toHaveLength(30);
    expect(onTheWay(first)).toEqual([]);
    expect(reviewed(honest, groupFormulas([...first.formulas, ...first.followers])).gone).toEqual([]);
  });

  it('the way of the price is every cell that it reaches', () => {
    const cells = first.followers.map(
      ({ sheet, row, column }) => `${sheet}!${String.fromCharCode(64 + column)}${String(row)}`,
    );
    expect(cells.toSorted()).toEqual(
      [...WAY.slice(1), 'Estimate!B6', 'Estimate!C6', 'Estimate!D6'].toSorted(),
    );
  });

  it.each([...WAY, 'Estimate!B6', 'Estimate!D3', 'Estimate!D6'])(
    'after a review a number typed over %s is found',
    (cell) => {
      const remembered = groupFormulas([...first.formulas, ...first.followers]);
      const report = reviewed(worked(BID, { [cell]: 90000 }), remembered);
      expect(onTheWay(report)).toContain(`typed over ${cell}`);
    },
  );

  it.each([
    ['Estimate!D5', 'left out Estimate!D2'],
    ['Section 9!C5', 'left out Estimate!D5'],
    ['Section 9!D5', 'typed over Section 9!D5'],
    ['Section 9!D10', 'typed over Section 9!D10'],
    ['Summary!B10', 'typed over Summary!B10'],
    ['Summary!B27', 'typed over Summary!B27'],
    ['Summary!B29', 'typed over Summary!B29'],
  ])(
    'without any review before, a number typed over %s is found by what stands around it',
    (cell, finding) => {
      expect(onTheWay(reviewed(worked(BID, { [cell]: 90000 })))).toContain(finding);
    },
  );

  it.each([90000, Math.round(numberAt(honest, 'Summary!B29'))])(
    'without any review before, the mark-up typed over with %d is found by its name',
    (amount) => {
      expect(onTheWay(reviewed(worked(BID, { 'Summary!B28': amount })))).toEqual(['typed over Summary!B28']);
    },
  );

  it('without any review before, the price on the cover typed over is found by its name', () => {
    const total = numberAt(honest, 'Summary!B29');
    for (const amount of [90000, total * 0.7, Math.round(total)])
      expect(onTheWay(reviewed(worked(BID, { 'Cover!B1': amount })))).toEqual(['typed over Cover!B1']);
  });

  it('a copy of the total is found whatever stands beside it', () => {
    const total = Math.round(numberAt(honest, 'Summary!B29'));
    const unnamed: Sheets = { ...BID, Cover: [['Job 12', total]] };
    expect(onTheWay(reviewed(worked(unnamed)))).toEqual(['typed over Cover!B1']);
  });

  it('an allowance, a bond, a budget and an area beside the bid are no finding', () => {
    const others: Sheets = {
      ...BID,
      Summary: [...(BID['Summary'] ?? []), ['Allowance', 20000], ['Sum with allowance', '=B29+B30']],
      Cover: [
        ['Bid bond amount', 12000],
        ['Budget of the owner', 700000],
        ['Washed area of the bid', 4000],
        ['Price of the bid per floor', 40000],
        ['Price of the last bid', 90000],
      ],
    };
    expect(onTheWay(reviewed(worked(others)))).toEqual([]);
  });
});

describe('a line', () => {
  const priced = (total: string, more: SheetRows = []): Sheets => ({
    ...GIVEN,
    Bid: [
      ['Work', 'Price'],
      ['Repointing', 4000],
      ['North', call('BIDPRICE', '$A3')],
      ['South', call('BIDPRICE', '$A4')],
      ['West', call('BIDPRICE', '$A5')],
      ['Total', total],
      ...more,
    ],
  });

  it('taken once is no finding', () => {
    expect(onTheWay(reviewed(worked(priced('=SUM(B2:B5)'))))).toEqual([]);
    expect(onTheWay(reviewed(worked(priced('=B2+B3+B4+B5'))))).toEqual([]);
  });

  it('that a range misses is left out', () => {
    expect(onTheWay(reviewed(worked(priced('=SUM(B2:B4)'))))).toEqual(['left out Bid!B5']);
    expect(onTheWay(reviewed(worked(priced('=SUM(B2:B3,B5)'))))).toEqual(['left out Bid!B4']);
  });

  it('in two ranges, in a subtotal and beside it, or whole and by zones, is added twice', () => {
    expect(onTheWay(reviewed(worked(priced('=SUM(B2:B4,B4:B5)'))))).toEqual(['added twice Bid!B6']);
    const above = priced('=SUM(B2:B5)', [['Sum', '=SUM(B2:B6)']]);
    expect(onTheWay(reviewed(worked(above)))).toEqual(['added twice Bid!B7']);
    const whole = priced('=SUM(B2:B5)', [
      ['Wash-down', call('BIDPRICE', '')],
      ['Sum', '=B6+B7'],
    ]);
    expect(onTheWay(reviewed(worked(whole)))).toEqual(['added twice Bid!B8']);
  });

  it('under a mark-up on its total is taken once', () => {
    const marked = priced('=SUM(B2:B5)', [
      ['Overhead', '=B6*10%'],
      ['Sum', '=B6+B7'],
    ]);
    expect(onTheWay(reviewed(worked(marked)))).toEqual([]);
  });

  it('for a zone that has none is missed, with the whole job beside the sum', () => {
    const without: Sheets = {
      ...GIVEN,
      Price: [
        ['Zone', 'Price'],
        ['North', call('BIDPRICE', '$A2')],
        ['South', call('BIDPRICE', '$A3')],
        ['Sum', '=SUM(B2:B3)'],
        ['Whole job', call('BIDPRICE', '')],
      ],
    };
    const book = worked(without);
    const report = reviewed(book);
    expect(onTheWay(report)).toEqual(['left out Price!B4']);
    const what = report.findings.find(({ kind }) => kind === 'left out')?.what ?? '';
    expect(what).toContain('Zone West has no line here');
    const said = (cell: string) => String(Number(numberAt(book, cell).toPrecision(10)));
    expect(what).toContain(
      `the lines come to ${said('Price!B4')}, BIDPRICE of the whole job is ${said('Price!B5')}`,
    );
    expect(numberAt(book, 'Price!B5')).toBeGreaterThan(numberAt(book, 'Price!B4'));
  });
});

describe('a cell of the walls that cannot be read', () => {
  const report = reviewed(worked(BID, { 'Walls!C3': 'Unobtainium' }));
  const errors = report.findings.filter(({ kind }) => kind === 'error');

  it('is one finding, at that cell, though every formula shows an error', () => {
    expect(errors.map(({ sheet, address }) => `${sheet}!${address}`)).toEqual(['Walls!C3']);
    expect(errors[0]?.what).toContain('"Unobtainium" cannot be used');
  });

  it('names every cell that is in error because of it: twelve calls, three sums, and the bid up to its cover', () => {
    const named = (errors[0]?.reaches ?? []).map(({ sheet, address }) => `${sheet}!${address}`);
    const calls = ['B', 'C', 'D'].flatMap((column) =>
      [2, 3, 4, 5, 6].map((row) => `Estimate!${column}${String(row)}`),
    );
    expect(named.toSorted()).toEqual([...calls, ...WAY.slice(1)].toSorted());
  });

  it('in the factors is one finding at its value', () => {
    const factor = reviewed(worked(BID, { 'Factors!B2': 'a lot' })).findings.filter(
      ({ kind }) => kind === 'error',
    );
    expect(factor.map(({ sheet, address }) => `${sheet}!${address}`)).toEqual(['Factors!B2']);
  });
});
