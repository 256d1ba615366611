import { describe, expect, it } from 'vitest';
import { filedFormula, typedFormula } from '../../../../workbench/page/files/formula-form';

// Stored forms: [MS-XLSX] 2.2.3 for prefixes; ISO/IEC 29500-1, 18.17.6.4 for [#This Row].
const BOTH_WAYS: readonly (readonly [typed: string, filed: string])[] = [
  ['=WASH.WATER(Walls[#All],$A2)', '_xldudf_WASH_WATER(Walls[#All],$A2)'],
  ['=CONCAT(A1,B1)&TEXTJOIN(",",TRUE,A:A)', '_xlfn.CONCAT(A1,B1)&_xlfn.TEXTJOIN(",",TRUE,A:A)'],
  ['=FILTER(A1:A9,SORT(B1:B9)>1)', '_xlfn._xlws.FILTER(A1:A9,_xlfn._xlws.SORT(B1:B9)>1)'],
  ['=SUM(A1#)', 'SUM(_xlfn.ANCHORARRAY(A1))'],
  ["=SUM('Two words'!$A$1#)", "SUM(_xlfn.ANCHORARRAY('Two words'!$A$1))"],
  ['=@A1:A9', '_xlfn.SINGLE(A1:A9)'],
  ['=STDEV.S(A1:A9)', '_xlfn.STDEV.S(A1:A9)'],
  ['=LET(x,A1*2,y,x+1,x*y)', '_xlfn.LET(_xlpm.x,A1*2,_xlpm.y,_xlpm.x+1,_xlpm.x*_xlpm.y)'],
  ['=MAP(A1:A3,LAMBDA(each,each^2))', '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.each,_xlpm.each^2))'],
  ['="CONCAT(A1#)"&\'CONCAT(\'!A1', '"CONCAT(A1#)"&\'CONCAT(\'!A1'],
  ['=SUM(Walls[Area])+ROUND(1.5,0)', 'SUM(Walls[Area])+ROUND(1.5,0)'],
  ['=IF(A1="#",#N/A,B1)', 'IF(A1="#",#N/A,B1)'],
];

describe('a formula', () => {
  it.each(BOTH_WAYS)('%s is kept as %s', (typed, filed) => {
    expect(filedFormula(typed)).toBe(filed);
    expect(typedFormula(filed)).toBe(typed);
  });

  it('is read with the dot of the typed form behind the stored prefix too', () => {
    expect(typedFormula('_xldudf_WASH.WATER(A1:B2)')).toBe('=WASH.WATER(A1:B2)');
    expect(typedFormula('WASH.WATER(A1:B2)')).toBe('=WASH.WATER(A1:B2)');
  });

  it('is not given a prefix twice', () => {
    expect(filedFormula('=_xlfn.CONCAT(A1)')).toBe('_xlfn.CONCAT(A1)');
  });

  it('says the row at hand in full in a file', () => {
    expect(filedFormula('=Walls[@Area]*2')).toBe('Walls[[#This Row],[Area]]*2');
    expect(filedFormula('=[@[Gross area]]/[@Height]', 'Walls')).toBe(
      'Walls[[#This Row],[Gross area]]/Walls[[#This Row],[Height]]',
    );
    expect(filedFormula('=COUNTA(Walls[@])')).toBe('COUNTA(Walls[#This Row])');
  });
});
