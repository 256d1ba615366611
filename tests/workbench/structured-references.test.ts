import { describe, expect, it } from 'vitest';
import { withoutStructuredReferences } from '../../workbench/engine/structured-references';
import type { BookTable } from '../../workbench/xlsx/book';

const WALLS: BookTable = {
  name: 'Walls',
  sheet: "Mason's walls",
  area: { top: 2, left: 1, bottom: 8, right: 4 },
  columns: ['Wall', 'Opening perimeter', 'Area [ft2]', 'Item #'],
  headerRows: 1,
  totalsRows: 1,
};
const NOTES: BookTable = { ...WALLS, name: 'Notes', sheet: 'Notes', totalsRows: 0 };

function at(formula: string, row = 0, column = 0, sheet = 'Bid'): string {
  return withoutStructuredReferences(formula, [WALLS, NOTES], { sheet, row, column });
}

describe('table references become plain ranges', () => {
  // The table stands in B3:E9: header in row 3, data in rows 4 to 8, totals in row 9.
  it.each([
    ['Walls[#All]', "'Mason''s walls'!$B$3:$E$9"],
    ['walls[#all]', "'Mason''s walls'!$B$3:$E$9"],
    ['Walls', "'Mason''s walls'!$B$4:$E$8"],
    ['Walls[]', "'Mason''s walls'!$B$4:$E$8"],
    ['Walls[#Data]', "'Mason''s walls'!$B$4:$E$8"],
    ['Walls[#Headers]', "'Mason''s walls'!$B$3:$E$3"],
    ['Walls[#Totals]', "'Mason''s walls'!$B$9:$E$9"],
    ['Walls[Opening perimeter]', "'Mason''s walls'!$C$4:$C$8"],
    ['Walls[opening PERIMETER]', "'Mason''s walls'!$C$4:$C$8"],
    ["Walls[Area '[ft2']]", "'Mason''s walls'!$D$4:$D$8"],
    ["Walls[Item '#]", "'Mason''s walls'!$E$4:$E$8"],
    ['Walls[[#All],[Wall]:[Opening perimeter]]', "'Mason''s walls'!$B$3:$C$9"],
    ['Walls[[#Headers],[#Data],[Wall]]', "'Mason''s walls'!$B$3:$B$8"],
    ['Walls[[Wall]:[Opening perimeter]]', "'Mason''s walls'!$B$4:$C$8"],
  ])('%s', (formula, range) => {
    expect(at(formula)).toBe(range);
  });

  it('takes the row of the formula', () => {
    expect(at('Walls[[#This Row],[Wall]]', 5, 9, WALLS.sheet)).toBe("'Mason''s walls'!$B$6");
    expect(at('[@Wall]&Walls[@[Opening perimeter]]', 5, 2, WALLS.sheet)).toBe(
      "'Mason''s walls'!$B$6&'Mason''s walls'!$C$6",
    );
  });

  it('leaves texts, sheet names and names that only look alike', () => {
    const formula = 'IF(A1="Walls[#All]",\'Walls\'!A1,Walls_2+Walls!B1+MyWalls(1))';
    expect(at(formula)).toBe(formula);
  });

  it('keeps the rest of the formula', () => {
    expect(at('ROUND(WASH.WATER(Walls[#All],,Notes[#All]),0)')).toBe(
      "ROUND(WASH.WATER('Mason''s walls'!$B$3:$E$9,,'Notes'!$B$3:$E$9),0)",
    );
  });

  it('names what is not there and what is', () => {
    expect(() => at('Wals[#All]')).toThrow('no table named "Wals"; it has "Walls", "Notes"');
    expect(() => at('Walls[Surface]')).toThrow(
      'Table Walls has no column "Surface". It has: "Wall", "Opening perimeter"',
    );
    expect(() => at('Walls[#Sums]')).toThrow('"#sums" is not part of a table');
    expect(() => at('Notes[#Totals]')).toThrow('Table Notes has no totals row');
    expect(() => at('Walls[@Wall]', 1)).toThrow('stands outside of its rows');
    expect(() => at('[@Wall]')).toThrow('without naming a table');
  });
});
