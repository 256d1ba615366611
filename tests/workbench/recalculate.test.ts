import { describe, expect, it } from 'vitest';
import { recalculate } from '../../workbench/engine/recalculate';
import { cellAddress } from '../../workbench/xlsx/address';
import type { CellValue } from '../../workbench/xlsx/cell-value';
import { readBook } from '../../workbench/xlsx/read-book';
import { fakeBundle } from './fake-bundle';
import { rawArchive, WALLS } from './raw-workbook';

async function calculate(
  rows: string,
  extra = '',
  name = 'Bid',
): Promise<ReadonlyMap<string, CellValue | CellValue[][]>> {
  const results = await recalculate(readBook(rawArchive([WALLS, { name, rows }], extra)), fakeBundle());
  return new Map(
    results
      .filter(({ sheet }) => sheet === name)
      .map(({ row, column, result }) => [cellAddress(row, column), result]),
  );
}

function row(number: number, ...formulas: string[]): string {
  const cells = formulas.map((formula, index) =>
    formula ? `<c r="${cellAddress(number - 1, index)}"><f>${formula}</f></c>` : '',
  );
  return `<row r="${String(number)}">${cells.join('')}</row>`;
}

describe('recalculating a workbook', () => {
  it('runs the functions in either form, over walls that are formulas with and without a saved value', async () => {
    // 100 + 100/2 + 100*0.3 = 180, two gallons each.
    const results = await calculate(
      row(1, '_xldudf_WASH_WATER(Walls[#All])', 'WASH.WATER(Walls!A1:C4,"North")', 'wash.water(Walls!$A:$C)'),
    );
    expect([...results.values()]).toEqual([360, 60, 360]);
  });

  it('runs them inside ordinary formulas, and ordinary formulas over them', async () => {
    const results = await calculate(
      row(1, 'ROUND(WASH.WATER(Walls[#All])/7,0)', 'IFERROR(WASH.WATER(Walls[#All],"West"),-1)', 'A1*2+B1') +
        row(2, 'SUM(WASH.SCHEDULE(Walls[#All]))', 'INDEX(WASH.SCHEDULE(Walls[#All]),2,1)'),
    );
    // 360 / 7 = 51.4
    expect(results.get('A1')).toBe(51);
    expect(results.get('B1')).toBe(-1);
    expect(results.get('C1')).toBe(101);
    expect(results.get('A2')).toBe(360);
    expect(results.get('B2')).toBe('South');
  });

  it('follows @ round a call, a range and a spill', async () => {
    const results = await calculate(
      row(1, '_xlfn.SINGLE(_xldudf_WASH_WATER(Walls[#All]))', '_xlfn.SINGLE(WASH.SCHEDULE(Walls[#All]))') +
        row(
          3,
          '_xlfn.SINGLE(Walls!C1:C4)+0*WASH.WATER(Walls[#All])',
          '_xlfn.SINGLE(WASH.WATER(Walls[#All],"West"))',
        ) +
        row(9, '_xlfn.SINGLE(Walls!C1:C4)+0*WASH.WATER(Walls[#All])'),
    );
    // The area of the wall in row 3 is half of 100.
    expect([...results.values()]).toEqual([
      360,
      'Zone',
      50,
      { error: '#N/A', message: 'No wall in zone West.' },
      { error: '#VALUE!' },
    ]);
  });

  it('lets a spill reach the formulas that read it, and theirs', async () => {
    const results = await calculate(
      row(1, 'WASH.SCHEDULE(Walls[#All])', '', 'SUM(B2:B3)', 'C1+1', 'WASH.ECHO(D1)') +
        row(5, '_xlfn.ANCHORARRAY(A1)', '', 'SUM(B6:B7)'),
    );
    expect(results.get('A1')).toEqual([
      ['Zone', 'Water, gal'],
      ['South', 300],
      ['North', 60],
    ]);
    expect(results.get('E1')).toBe('[[361]]');
    expect(results.get('A5')).toEqual(results.get('A1'));
    expect(results.get('C5')).toBe(360);
  });

  it('hands over blanks, left-out arguments, texts and errors as what they are', async () => {
    const cells =
      '<row r="9"><c r="A9" t="inlineStr"><is><t>007</t></is></c><c r="C9" t="b"><v>0</v></c><c r="D9" t="e"><v>#DIV/0!</v></c></row>';
    const results = await calculate(
      row(1, 'WASH.ECHO(A9:D9)', 'WASH.ECHO()', 'WASH.ECHO("x")', 'WASH.ECHO({1,"b";TRUE,4})') + cells,
    );
    expect([...results.values()]).toEqual([
      '[["007","",false,"#DIV/0!"]]',
      'null',
      '[["x"]]',
      '[[1,"b"],[true,4]]',
    ]);
  });

  it('keeps texts of digits, blanks and errors in a spill', async () => {
    const results = await calculate(row(1, 'WASH.MIXED()'));
    expect(results.get('A1')).toEqual([
      [1, { error: '#N/A', message: 'nothing here' }],
      ['007', ''],
    ]);
  });

  it('passes on why a function refused', async () => {
    const results = await calculate(
      row(
        1,
        'WASH.WATER(Walls[#All],"West")',
        'A1+1',
        'WASH.BROKEN()',
        'WASH.WATER()',
        'WASH.WATER(1,2,3,4)',
      ) + row(2, 'WASH.WATER(Walls[#All],Walls!A1:A2)', 'WASH.NOPE(1)', 'WASH.WATER(Wals[#All])', 'A2&"!"'),
    );
    expect(results.get('A1')).toEqual({ error: '#N/A', message: 'No wall in zone West.' });
    expect(results.get('B1')).toEqual({ error: '#N/A' });
    expect(results.get('C1')).toEqual({ error: '#VALUE!', message: 'a slip of the pen' });
    expect(results.get('D1')).toEqual({ error: '#VALUE!', message: 'The argument walls is missing.' });
    expect(results.get('E1')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('3 arguments at most'),
    });
    expect(results.get('A2')).toMatchObject({
      message: expect.stringContaining('Accepted: one value or one cell'),
    });
    expect(results.get('B2')).toEqual({ error: '#NAME?', message: 'There is no function WASH.NOPE.' });
    expect(results.get('C2')).toMatchObject({
      error: '#REF!',
      message: expect.stringContaining('it has "Walls"'),
    });
    expect(results.get('D2')).toMatchObject({ error: '#VALUE!' });
  });

  it('reports a spill that has no room, with what is in the way', async () => {
    const results = await calculate(
      row(1, 'WASH.SCHEDULE(Walls[#All])') + '<row r="3"><c r="B3"><v>7</v></c></row>',
    );
    expect(results.get('A1')).toMatchObject({ error: '#SPILL!', message: expect.stringContaining('B3') });
  });

  it('does not take its own former spill for something in the way', async () => {
    const results = await calculate(
      '<row r="1"><c r="A1" t="str" cm="1"><f t="array" ref="A1:B2">_xldudf_WASH_SCHEDULE(Walls[#All])</f><v>Zone</v></c><c r="B1" t="str"><v>old</v></c></row>' +
        '<row r="2"><c r="A2" t="str"><v>South</v></c><c r="B2"><v>1</v></c></row>',
    );
    expect(results.get('A1')).toHaveLength(3);
  });

  it('keeps the saved value of what it cannot calculate', async () => {
    const results = await calculate(
      '<row r="1"><c r="A1"><f>_xldudf_OTHER_THING(1)</f><v>5</v></c><c r="B1"><f>[1]Prices!A1</f><v>6</v></c><c r="C1"><f>WASH.ECHO(A1:B1)</f></c></row>',
    );
    expect(results.get('C1')).toBe('[[5,6]]');
  });

  it('knows defined names and sheets with an apostrophe', async () => {
    const names = '<definedNames><definedName name="AllWalls">Walls!$A$1:$C$4</definedName></definedNames>';
    const results = await calculate(
      row(1, 'WASH.WATER(AllWalls)', "WASH.ECHO('Joe''s bid'!A1)"),
      names,
      "Joe's bid",
    );
    expect([...results.values()]).toEqual([360, '[[360]]']);
  });
});
