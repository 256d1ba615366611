import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveFormula, relativeForm } from '../../src/spreadsheet/move-formula';

const B5 = { row: 5, column: 2 };

describe('a formula filled into another cell', () => {
  it.each([
    [
      '=WASH.WATER(Walls[#All],$A5,Factors[#All])',
      { row: 8, column: 4 },
      '=WASH.WATER(Walls[#All],$A8,Factors[#All])',
    ],
    ['=A4+A$4+$A4+$A$4', { row: 6, column: 3 }, '=B5+B$4+$A5+$A$4'],
    ['=\'My A1\'!C5:D9&"C5"', { row: 6, column: 2 }, '=\'My A1\'!C6:D10&"C5"'],
    ['=SUM(B:B,5:5,$B:C)', { row: 7, column: 3 }, '=SUM(C:C,7:7,$B:D)'],
    ['=LOG10(B6)*Q2', { row: 5, column: 3 }, '=LOG10(C6)*R2'],
    ['=A4', { row: 1, column: 2 }, '=#REF!'],
    ['=A4', { row: 5, column: 1 }, '=#REF!'],
    ["='My A1'!A4+$A$4", { row: 5, column: 1 }, "='My A1'!#REF!+$A$4"],
    ['=SUM(A4:C6)', { row: 5, column: 1 }, '=SUM(#REF!)'],
    ['=SUM(A:B)', { row: 5, column: 1 }, '=SUM(#REF!)'],
    ['=SUM(4:5)', { row: 1, column: 2 }, '=SUM(#REF!)'],
    ['=XFD4', { row: 5, column: 3 }, '=#REF!'],
    ['=A1048576', { row: 6, column: 2 }, '=#REF!'],
    // No sheet has the column XFE, nor the row 1048577: names.
    ['=XFE1+A4', { row: 6, column: 3 }, '=XFE1+B5'],
    ['=A1048577+A4', { row: 6, column: 3 }, '=A1048577+B5'],
    ['=#REF!+A4', { row: 6, column: 3 }, '=#REF!+B5'],
    ['=Walls[Area]&"A1"&LOG10(A4)', { row: 6, column: 3 }, '=Walls[Area]&"A1"&LOG10(B5)'],
  ])('%s', (formula, to, moved) => {
    expect(moveFormula(formula, B5, to)).toBe(moved);
  });

  it('comes back the same, and has one relative form everywhere', () => {
    const place = fc.record({
      row: fc.integer({ min: 50, max: 900 }),
      column: fc.integer({ min: 30, max: 300 }),
    });
    const formula = fc
      .tuple(fc.boolean(), fc.boolean(), fc.integer({ min: 45, max: 55 }))
      .map(([a, b, row]) => `=F(${a ? '$' : ''}AD${b ? '$' : ''}${String(row)},Walls[#All])`);
    fc.assert(
      fc.property(formula, place, (text, to) => {
        const from = { row: 50, column: 30 };
        const there = moveFormula(text, from, to);
        expect(moveFormula(there, to, from)).toBe(text);
        expect(relativeForm(there, to)).toBe(relativeForm(text, from));
      }),
    );
  });

  it('differs in its relative form from one that reads another row', () => {
    expect(relativeForm('=A5', B5)).not.toBe(relativeForm('=A6', B5));
    expect(relativeForm('=$A$5', B5)).toBe(relativeForm('=$A$5', { row: 9, column: 9 }));
  });
});
