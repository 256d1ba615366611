import { describe, expect, it } from 'vitest';
import { withEngineNames } from '../../../workbench/page/table-names';

// The names by which the engine would know two tables, Walls and Kept_2026.
const KNOWN = new Map([
  ['walls', withEngineNames('Walls', () => true)],
  ['kept', withEngineNames('Kept_2026', () => true)],
]);
const rename = (formula: string) => withEngineNames(formula, (name) => [...KNOWN.values()].includes(name));

describe('names of tables in a formula', () => {
  it('hold no sign that the engine does not read', () => {
    for (const name of KNOWN.values()) expect(name).toMatch(/^[\p{L}\p{N}]+$/u);
    expect(new Set(KNOWN.values()).size).toBe(2);
    expect(withEngineNames('A_B', () => true)).not.toBe(withEngineNames('A.B', () => true));
  });

  it.each([
    ['=ROWS(WALLS[#All])', `=ROWS(${KNOWN.get('walls') ?? ''}[#All])`],
    [
      '=ROWS(Kept_2026)+SUM(walls[Area])',
      `=ROWS(${KNOWN.get('kept') ?? ''})+SUM(${KNOWN.get('walls') ?? ''}[Area])`,
    ],
  ])('%s has its tables renamed', (formula, expected) => {
    expect(rename(formula)).toBe(expected);
  });

  it.each(['="Walls"&A1', "=SUM(Walls!A1:B2)+'Walls'!C3", '=WALLS(1)', '=Other[Walls]', '=Walls2[#All]'])(
    '%s has none',
    (formula) => {
      expect(rename(formula)).toBe(formula);
    },
  );
});
