import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaPieces } from '../../src/spreadsheet/formula-pieces';
import { moveFormula } from '../../src/spreadsheet/move-formula';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { callsWashdown, readable, washdownName } from '../../src/review/audit/washdown-calls';

const kindsOf = (formula: string) => tokensOf(formula).map(({ kind, text }) => `${kind} ${text}`);

describe('the pieces of a formula', () => {
  it('are the formula again', () => {
    const piece = fc.constantFrom(
      'A1',
      "'My s''heet'!$B$2",
      '"a ""b"" ("',
      'Walls[#All]',
      "[@[a''b]]",
      '1.5E3',
      ',',
      '(',
      '#N/A',
      '#',
      'SUM',
      ' ',
      '§',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string())), (pieces) => {
        const formula = pieces.join('');
        expect(
          tokensOf(formula)
            .map(({ text }) => text)
            .join(''),
        ).toBe(formula);
      }),
    );
  });

  it('tell addresses, names, calls, tables and spills apart', () => {
    expect(kindsOf("WASH.WATER('A!1'!$A$1:B2,Walls[[#All],[Area ']]],Rate,A1#,#N/A)")).toEqual([
      'call WASH.WATER',
      'sign (',
      "reference 'A!1'!$A$1:B2",
      'sign ,',
      'name Walls',
      "brackets [[#All],[Area ']]]",
      'sign ,',
      'name Rate',
      'sign ,',
      'reference A1',
      'sign #',
      'sign ,',
      'error #N/A',
      'sign )',
    ]);
    expect(kindsOf('LOG10(A:C)')).toEqual(['call LOG10', 'sign (', 'reference A:C', 'sign )']);
    expect(kindsOf('XYZ2024*2:4*TAX2024')).toEqual([
      'name XYZ2024',
      'sign *',
      'reference 2:4',
      'sign *',
      'reference TAX2024',
    ]);
  });
});

describe('a quoted sheet with no address behind, and a quote that nothing closes', () => {
  it('hide what looks like an address', () => {
    expect(kindsOf("'My A1 walls'!#REF!+B2")).toEqual([
      "quoted 'My A1 walls'",
      'sign !',
      'error #REF!',
      'sign +',
      'reference B2',
    ]);
    expect(kindsOf('B2&"see A1')).toEqual(['reference B2', 'sign &', 'quoted "see A1']);
    expect(kindsOf('B2&"see ""A1""')).toEqual(['reference B2', 'sign &', 'quoted "see ""A1""']);
  });

  it('stay as they are where a formula moves', () => {
    const [from, to] = [
      { row: 1, column: 1 },
      { row: 2, column: 1 },
    ];
    expect(moveFormula("='My A1 walls'!#REF!+B2", from, to)).toBe("='My A1 walls'!#REF!+B3");
  });
});

describe('the stretches of a formula', () => {
  it('are code, texts, quoted sheets and brackets', () => {
    const stretches = formulaPieces(`SUM('It''s [1]'!A1:B2,Walls[[#All],[a '] b]],"A1 ""x""")&'Old'!#REF!`);
    expect(stretches.map(({ kind, text }) => `${kind} ${text}`)).toEqual([
      'code SUM(',
      "sheet 'It''s [1]'",
      'code !A1:B2,Walls',
      "brackets [[#All],[a '] b]]",
      'code ,',
      'text "A1 ""x"""',
      'code )&',
      "sheet 'Old'",
      'code !#REF!',
    ]);
  });

  it('take a quote that nothing closes to the end', () => {
    expect(formulaPieces('A1&"b c').at(-1)).toEqual({ kind: 'text', text: '"b c' });
    expect(formulaPieces("A1&'b c").at(-1)).toEqual({ kind: 'sheet', text: "'b c" });
  });
});

describe('calls of Washdown functions', () => {
  it.each([
    ['WASH.WATER', 'WATER'],
    ['wash.water', 'WATER'],
    ['_xldudf_WASH_WATER', 'WATER'],
    ['_xldudf_WASH.WATER', 'WATER'],
    ['_XLDUDF_wash_bidprice', 'BIDPRICE'],
    ['WASH_WATER', undefined],
    ['CARWASH.WATER', undefined],
    ['SUM', undefined],
  ])('%s is %s', (called, name) => {
    expect(washdownName(called)).toBe(name);
  });

  it('are found in formulas, and not in their texts', () => {
    expect(callsWashdown('=ROUND(_xldudf_WASH_TAPE(A1:B2),0)')).toBe(true);
    expect(callsWashdown('="see WASH.TAPE(A1)"')).toBe(false);
    expect(callsWashdown('=SUM(A1:A3)')).toBe(false);
    expect(readable('=_xldudf_WASH_TAPE(A1,"_xldudf_WASH_TAPE(")')).toBe(
      '=WASH.TAPE(A1,"_xldudf_WASH_TAPE(")',
    );
  });
});
