import { describe, expect, it } from 'vitest';
import { putOnNewSheet } from '../../../taskpane/shared/sheet-out';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

describe('a new sheet', () => {
  it('is shown, and touches no sheet that is there', async () => {
    const workbook = new MemoryWorkbook({ sheets: { Walls: [['Wall']], 'washdown CAUTIONS': [['mine']] } });
    expect(await putOnNewSheet(workbook, 'Washdown cautions', [['Topic'], ['=1+1']])).toBe(
      'Washdown cautions 2',
    );
    expect(await putOnNewSheet(workbook, 'Washdown cautions', [['Topic']])).toBe('Washdown cautions 3');
    expect(workbook.cell({ sheet: 'washdown CAUTIONS', address: 'A1' })).toEqual({ value: 'mine' });
    expect(workbook.cell({ sheet: 'Washdown cautions 2', address: 'A2' })).toEqual({ value: '=1+1' });
    expect(workbook.wentTo).toEqual({ sheet: 'Washdown cautions 3', address: 'A1' });
  });
});
