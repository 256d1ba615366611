import { describe, expect, it } from 'vitest';
import { baselineBlock, keptBaselines } from '../../../taskpane/decisions/kept-baselines';
import { dayText } from '../../../taskpane/shared/time-text';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const walls = [
  ['Wall', 'Material', 'Area'],
  ['=A', 'Limestone', 100],
];
const DAY = '2026-11-25';

function book(): MemoryWorkbook {
  return new MemoryWorkbook({
    sheets: { Walls: [...walls, ['', '', ''], ['', '', '']] },
    tables: [{ name: 'Walls', sheet: 'Walls', address: 'A1:C2' }],
  });
}

describe('baselines', () => {
  it('are named by the day in the time zone of the user', () => {
    expect(dayText(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
    expect(dayText(new Date(2026, 10, 25, 0, 0))).toBe(DAY);
  });

  it('are a copy of the walls on a new sheet, under names that are free', async () => {
    const workbook = book();
    const first = await baselineBlock(workbook, { table: 'Walls' }, DAY);
    expect(first).toMatchObject({
      sheet: 'Baseline 2026-11-25',
      table: 'Baseline_2026_11_25',
      address: 'A1',
    });
    await workbook.write([first]);
    const second = await baselineBlock(workbook, { table: 'Walls' }, DAY);
    expect([second.sheet, second.table]).toEqual(['Baseline 2026-11-25 2', 'Baseline_2026_11_25_2']);
    await workbook.write([second]);
    expect(await workbook.readTable('Baseline_2026_11_25')).toEqual(await workbook.readTable('Walls'));
    expect((await keptBaselines(workbook)).map(({ name }) => name)).toEqual([
      'Baseline_2026_11_25_2',
      'Baseline_2026_11_25',
    ]);
  });

  it('leave out the blank rows below the walls', async () => {
    const range = { sheet: 'Walls', address: 'A1:C4' };
    expect((await baselineBlock(book(), range, DAY)).rows).toHaveLength(2);
  });

  it('are known by their name, however they came into the workbook', async () => {
    const workbook = new MemoryWorkbook({
      sheets: { S: [['Wall']] },
      tables: ['Baselines', 'Old_baseline', 'Baseline', 'BASELINE_10', 'Baseline_9'].map((name) => ({
        name,
        sheet: 'S',
        address: 'A1:A2',
      })),
    });
    expect((await keptBaselines(workbook)).map(({ name }) => name)).toEqual([
      'BASELINE_10',
      'Baseline_9',
      'Baseline',
    ]);
  });
});
