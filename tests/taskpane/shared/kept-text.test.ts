import { describe, expect, it } from 'vitest';
import { keep, keepOnSheet, NOTES_SHEET, readKept } from '../../../taskpane/shared/kept-text';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const forgetful = () => new MemoryWorkbook({ sheets: { Sheet1: [] }, keepsParts: false });

describe('a kept text', () => {
  it('is kept by the workbook, without a sheet', async () => {
    const workbook = new MemoryWorkbook({ sheets: { Sheet1: [] } });
    expect(await keep(workbook, 'steps', 'text')).toBe(true);
    expect(await readKept(workbook, 'steps')).toBe('text');
    expect(await workbook.sheets()).toEqual(['Sheet1']);
  });

  it('is told as not kept where the workbook does not, until there is a sheet', async () => {
    const workbook = forgetful();
    expect(await keep(workbook, 'steps', 'one')).toBe(false);
    expect(await workbook.sheets()).toEqual(['Sheet1']);
    await keepOnSheet(workbook, 'steps', 'two');
    expect(await readKept(workbook, 'steps')).toBe('two');
    expect(await keep(workbook, 'steps', 'three')).toBe(true);
    expect(await readKept(workbook, 'steps')).toBe('three');
  });

  it('may be longer than a cell, stands beside others, and leaves nothing of a longer one behind', async () => {
    const workbook = forgetful();
    const long = `=${'x'.repeat(70_000)}`;
    await keepOnSheet(workbook, 'source', 'mine');
    await keepOnSheet(workbook, 'steps', long);
    expect(await readKept(workbook, 'steps')).toBe(long);
    expect(await readKept(workbook, 'source')).toBe('mine');
    const cells = await workbook.readRange({ sheet: NOTES_SHEET, address: 'B1:B6' });
    for (const [cell] of cells) expect(String(cell).length).toBeLessThan(32_768);
    await keepOnSheet(workbook, 'steps', 'short');
    expect(await readKept(workbook, 'steps')).toBe('short');
    expect(await readKept(workbook, 'source')).toBe('mine');
    expect(await readKept(workbook, 'formulas')).toBeUndefined();
  });
});
