import { describe, expect, it } from 'vitest';
import { readableFormula, soleCall, storedForm, washdownCalls } from '../../workbench/engine/washdown-names';

describe('the two forms of a function name', () => {
  it.each([
    ['_xldudf_WASH_WATER(A1:B2)', 'WASH.WATER(A1:B2)'],
    ['_xldudf_wash_water(A1:B2)', 'WASH.WATER(A1:B2)'],
    ['_xldudf_WASH.WATER(A1:B2)', 'WASH.WATER(A1:B2)'],
    ['wash.water (A1:B2)', 'WASH.WATER (A1:B2)'],
    ['ROUND(_xldudf_WASH_WATER(A1),0)', 'ROUND(WASH.WATER(A1),0)'],
    ['"_xldudf_WASH_WATER(" & A1', '"_xldudf_WASH_WATER(" & A1'],
    ['MY_WASH.WATER(A1)', 'MY_WASH.WATER(A1)'],
  ])('%s reads %s', (stored, readable) => {
    expect(readableFormula(stored)).toBe(readable);
  });

  it('stores what was typed and leaves what is stored', () => {
    expect(storedForm('1+WASH.Tape(A1,"WASH.TAPE(")')).toBe('1+_xldudf_WASH_TAPE(A1,"WASH.TAPE(")');
    expect(storedForm('_xldudf_wash_tape(A1)')).toBe('_xldudf_wash_tape(A1)');
  });

  it('finds the calls', () => {
    expect(washdownCalls('IF(WASH.CLASS(A1)>1,_xldudf_WASH_WATER(A1),"WASH.TAPE(A1)")')).toEqual([
      'CLASS',
      'WATER',
    ]);
    expect(washdownCalls('SUM(A1:A9)')).toEqual([]);
  });

  it('tells a single call from a mixture', () => {
    expect(soleCall(' _xldudf_WASH_WATER(Walls[#All],")") ')).toBe('WATER');
    expect(soleCall('WASH.WATER(A1)+1')).toBeUndefined();
    expect(soleCall('WASH.WATER(A1)&"gal"')).toBeUndefined();
    expect(soleCall('WASH.WATER(A1)+WASH.WATER(A2)')).toBeUndefined();
    expect(soleCall('ROUND(WASH.WATER(A1),0)')).toBeUndefined();
  });
});
