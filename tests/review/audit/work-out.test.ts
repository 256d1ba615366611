import { describe, expect, it } from 'vitest';
import { WorkOut } from '../../../src/review/audit/work-out';
import { book, smallFunctions, WALLS } from './book';

const cells = book(
  {
    ...WALLS.sheets,
    "Bob's sheet": [
      ['North', 2, 'factor', 10],
      ['South', '', true],
      [{ formula: '=WASH.LINES(Walls[#All])', shows: 'Zone' }, 'Area'],
    ],
    Own: [
      ['Wall', 'Size', 'Note'],
      ['North', 7, { formula: '=WASH.AREA(Own[[#All],[Wall]:[Size]],[@Wall])', shows: 7 }],
      ['South', 11, ''],
      ['Total', 18, ''],
    ],
  },
  [
    WALLS.table,
    { name: 'Own', sheet: 'Own', address: 'A1:C4', headings: ['Wall', 'Size', 'Note'], totals: true },
  ],
  [
    { name: 'MyZone', refersTo: "='Bob''s sheet'!$A$1" },
    { name: 'Through', refersTo: '=MyZone' },
    { name: 'Loop', refersTo: '=Loop' },
    { name: 'Rate', refersTo: '=0.5' },
    { name: 'Rate', sheet: 'Own', refersTo: '=3' },
  ],
);
const at = { sheet: "Bob's sheet", row: 9, column: 2 };
const gives = (formula: string, place = at) =>
  new WorkOut(cells, smallFunctions().functionCalled).formula(formula, place);

describe('a formula worked out', () => {
  it.each([
    ['=WASH.AREA(Walls[#All])', 123],
    ['=wash.area(walls[#ALL],"North")', 103],
    ['=_xldudf_WASH_AREA(Walls!A1:B4,A1)', 103],
    ['=WASH.AREA(Walls!$A:$B,MyZone)', 103],
    ['=WASH.AREA(Walls!1:3,Through)', 100],
    ['=WASH.AREA({"Zone","Area";"North",4;"North",5})', 9],
    ['=WASH.AREA(Walls[#All],,C1:D1)', 1230],
    ['=WASH.AREA(Walls[#All],"",C1:D1)', 1230],
    ['=WASH.AREA(A3#,A2)', 20],
    ['=WASH.AREA(_xlfn.ANCHORARRAY(A3),A2)', 20],
    // The cell of the formula's own row is blank, and a blank zone means the whole job.
    ['=WASH.AREA(Walls[#All],@A1:A9)', 123],
    ['=WASH.AREA(Walls[#All],@$A$1:$D$1)', { error: '#N/A', message: 'No wall is in the zone "2".' }],
  ])('%s', (formula, expected) => {
    expect(gives(formula)).toEqual(expected);
  });

  it.each([
    ['=2+3*4', 14],
    ['=-2^2', 4],
    ['=2^3^2', 64],
    ['=50%*8', 4],
    ['="a"&1+1&TRUE', 'a2TRUE'],
    ['=1+1=2', true],
    ['="B">"a"', true],
    ['=5<"a"', true],
    ['=B2+4', 4],
    ['="3"*2', 6],
    ['="x"*2', { error: '#VALUE!', message: '' }],
    ['=1/0', { error: '#DIV/0!', message: '' }],
    ['=ROUND(1.005*100,0)', 101],
    ['=ROUND(-2.5,0)', -3],
    ['=ROUND(1234.5,-2)', 1200],
    ['=ROUNDUP(-1.1,0)', -2],
    ['=ROUNDDOWN(9.99,1)', 9.9],
    ['=SUM(A1:D2,"4",1)', 17],
    ['=MAX(B1,D1)-MIN(B1,D1)', 8],
    ['=IF(B1>1,"yes","no")', 'yes'],
    ['=IFERROR(1/0,7)', 7],
    ['=INDEX(WASH.LINES(Walls[#All]),3,2)', 20],
    ['=ABS(-4)', 4],
    ['=ROUND(WASH.AREA(Walls[#All])/7,1)', 17.6],
    ['=Rate*2', 1],
    ['=Rate*2', 6, { sheet: 'Own', row: 1, column: 5 }],
    ['=[@Size]*2', 22, { sheet: 'Own', row: 3, column: 3 }],
    ['=SUM(Own[Size])', 18],
    ['=Own[[#Totals],[Size]]', 18],
    ['=WASH.AREA(Own[[#All],[Wall]:[Size]],[@Wall])', 7, { sheet: 'Own', row: 2, column: 3 }],
    ['=_xlfn.SINGLE(_xldudf_WASH_AREA(Walls[#All]))', 123],
    ['=_xlfn.SINGLE(WASH.LINES(Walls[#All]))', 'Zone'],
    ['=ROUND(_xlfn.SINGLE(WASH.AREA(Walls[#All]))/7,1)', 17.6],
    ['=WASH.AREA(Own[[#All],[Wall]:[Size]],_xlfn.SINGLE(Own[Wall]))', 7, { sheet: 'Own', row: 2, column: 3 }],
    // The host hands an error over, and the function says what it thinks of it.
    ['=WASH.AREA(Walls[#All],#N/A)', { error: '#N/A', message: 'No wall is in the zone "#N/A".' }],
    ['=WASH.AREA(Walls[#All],"East")', { error: '#N/A', message: 'No wall is in the zone "East".' }],
    ['=WASH.AREA(Walls[#All],"East")+1', { error: '#N/A', message: 'No wall is in the zone "East".' }],
  ])('%s', (formula, expected, place = at) => {
    expect(gives(formula, place)).toEqual(expected);
  });

  it.each([
    ['=WASH.AREA(Walls[#All],XLOOKUP(1,A1,B1))', 'it uses XLOOKUP, which Review does not work out'],
    ['=WASH.AREA([Other.xlsx]Walls!A1:B4)', 'it reads another workbook'],
    ["=WASH.AREA('[Other.xlsx]Walls'!A1:B4)", 'it reads another workbook'],
    ['=WASH.AREA(Gone!A1:B4)', 'the sheet "Gone" is empty or not there'],
    ['=WASH.AREA(Nothing)', 'there is no name or table "Nothing"'],
    ['=WASH.AREA(Nothing[#All])', 'there is no table Nothing'],
    ['=WASH.AREA(Walls[Height])', 'the table Walls has no column "Height"'],
    ['=WASH.AREA(Walls[#Totals])', 'the table Walls has no totals row'],
    ['=WASH.AREA(Loop)', 'the name Loop refers to itself'],
    ['=WASH.AREA(Walls[#All],A1:A2)', 'it has a range where one value belongs'],
    ['=WASH.AREA((A1:B2,D1))', 'it joins several ranges into one'],
    ['=WASH.AREA(INDEX(A1,1):B4)', 'it makes a range out of two references'],
    ['=WASH.AREA()', 'WASH.AREA is missing its argument walls'],
    ['=WASH.AREA(A1,A1,A1,A1)', 'WASH.AREA takes 3 arguments at most'],
    ['=WASH.VOLUME(A1)', 'there is no function WASH.VOLUME'],
    ['=WASH.AREA(A9#)', 'it reads a spill that is not there'],
    ['=[@Size]', 'there is no table around it'],
    ['=WASH.AREA(A1', 'it cannot be read'],
    ['=WASH.AREA(A1))', 'it cannot be read from ")" on'],
  ])('%s is not followed', (formula, why) => {
    expect(() => gives(formula)).toThrow(why);
  });

  it('asks equal questions once, however they are written', () => {
    const { functionCalled, runs } = smallFunctions();
    const worker = new WorkOut(cells, functionCalled);
    for (const walls of ['Walls[#All]', 'Walls!A1:B4', 'Walls!$A$1:$B$4', 'walls[[#All],[Zone]:[Area]]']) {
      for (const zone of ['"North"', 'A1', 'MyZone']) {
        expect(worker.formula(`=WASH.AREA(${walls},${zone})`, at)).toBe(103);
      }
    }
    expect(runs).toEqual(['AREA']);
  });
});
