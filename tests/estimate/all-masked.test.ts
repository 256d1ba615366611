import { describe, expect, it } from 'vitest';
import { call, column, number, refusal, spill } from '../functions/call';

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Masked'],
  ['Door', 'Gate', 'Copper', 64, 8, 'yes'],
  ['Side', 'Gate', 'Marble', 16, 4, 'yes'],
];
const message = 'Nothing is washed here: every row is masked.';

describe('a zone whose rows are all masked', () => {
  it.each(['CLASS', 'GOVERNING', 'GOVERNOR'])('%s has no answer, and says why', (name) => {
    expect(refusal(() => call(name, walls, 'Gate'))).toEqual({ type: 'nothing', message });
  });

  it('takes no water and no cleaner', () => {
    expect(number('WATER', walls)).toBe(0);
    expect(number('CLEANER', walls)).toBe(0);
  });

  it('keeps its masking and the hours of it', () => {
    // Edges 2 x (8 + 8) = 32 and 2 x (4 + 4) = 16 ft, laps of half a foot.
    expect(number('MASKING', walls)).toBeCloseTo(64 + 16 + 16 + 8, 9);
    expect(number('TAPE', walls)).toBeCloseTo(48 * 1.1, 9);
    const hours = (part: string): number => number('CREWHOURS', walls, null, null, part);
    expect(hours('mask')).toBeCloseTo(104 / 150, 9);
    expect(hours('unmask')).toBeCloseTo(104 / 400, 9);
    for (const part of ['scrape', 'prewet', 'apply', 'scrub', 'rinse']) expect(hours(part), part).toBe(0);
    // 8 + 4 = 12 ft, one position of 20 min for 2.
    expect(hours('move')).toBeCloseTo(40 / 60, 9);
  });

  it('shows #N/A for its class in SCHEDULE, and numbers beside', () => {
    const spilled = spill('SCHEDULE', walls);
    for (const heading of ['Ceiling', 'Set by', 'Class'])
      expect(column(spilled, heading)).toEqual([{ error: '#N/A', message }]);
    expect(column(spilled, 'Water')).toEqual([0]);
    expect(column(spilled, 'Masking')[0]).toBeCloseTo(104, 9);
  });

  it('does not keep the other zones from an answer', () => {
    const more = [...walls, ['Wall', 'Yard', 'Red clay brick', 100, 10, '']];
    expect(call('GOVERNING', more)).toBe(3);
    expect(call('CLASS', more)).toBe(2);
    expect(call('GOVERNOR', more)).toBe('Red clay brick');
  });

  it('shares moves and set-up out by masked area', () => {
    const spilled = spill('WALLROWS', walls);
    const move = column(spilled, 'Move hours') as number[];
    // Masking 64 + 16 = 80 and 16 + 8 = 24 ft2.
    expect((move[0] ?? NaN) / (move[1] ?? NaN)).toBeCloseTo(80 / 24, 9);
  });
});
