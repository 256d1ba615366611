import { describe, expect, it } from 'vitest';
import { call, number } from '../functions/call';

// 900 ft2 of red brick over a plinth of limestone, 60 ft long and 2 ft high.
const walls = (masked: string): unknown[][] => [
  ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Masked'],
  ['Field', 'South', 1, 'Red clay brick', 900, 15, 'N', 'moderate', ''],
  ['Plinth', 'South', 2, 'Limestone', 120, 2, 'N', 'light', masked],
];

describe('a limestone plinth below red brick', () => {
  it('governs while it is washed with the brick', () => {
    expect(call('GOVERNING', walls(''))).toBe(1);
    expect(call('GOVERNOR', walls(''))).toBe('Limestone');
    expect(call('CLASS', walls(''))).toBe(1);
    // The brick needs class 2: one short on 900 ft2 at 60 ft2/h; the plinth needs class 1 and is not short.
    expect(number('CREWHOURS', walls(''), null, null, 'scrub')).toBeCloseTo(15, 9);
    expect(number('MASKING', walls(''))).toBe(0);
  });

  it('governs no more where it is masked', () => {
    expect(call('GOVERNING', walls('yes'))).toBe(3);
    expect(call('GOVERNOR', walls('yes'))).toBe('Red clay brick');
    expect(call('CLASS', walls('yes'))).toBe(2);
    expect(number('CREWHOURS', walls('yes'), null, null, 'scrub')).toBe(0);
    // The plinth and a lap of half a foot along its edge: 120 + 2 x (60 + 2) x 0.5.
    expect(number('MASKING', walls('yes'))).toBeCloseTo(182, 9);
    // The edge and a tenth of waste.
    expect(number('TAPE', walls('yes'))).toBeCloseTo(136.4, 9);
  });

  it('is rinsed with the brick, and is not once it is masked', () => {
    const rinse = (masked: string): number => number('WATER', walls(masked), null, null, 'rinse');
    expect(rinse('') / rinse('yes')).toBeCloseTo(1020 / 900, 12);
  });

  it('without a height has the edge of a square', () => {
    const bare = [
      ['Wall', 'Material', 'Area', 'Masked'],
      ['Plinth', 'Limestone', 121, 'yes'],
      ['Field', 'Red clay brick', 900, ''],
    ];
    // 4 x 11 ft.
    expect(number('MASKING', bare)).toBeCloseTo(121 + 44 * 0.5, 9);
    expect(number('TAPE', bare)).toBeCloseTo(44 * 1.1, 9);
  });

  it('has its openings and fixtures beneath the masking', () => {
    const bare = [
      ['Wall', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Fixtures', 'Masked'],
      ['Plinth', 'Limestone', 120, 2, 30, 40, 5, 'yes'],
      ['Field', 'Red clay brick', 900, 15, '', '', '', ''],
    ];
    expect(number('MASKING', bare)).toBeCloseTo(182, 9);
    expect(number('TAPE', bare)).toBeCloseTo(136.4, 9);
    // No fixture to cover: 182 ft2 at 150 ft2/h.
    expect(number('CREWHOURS', bare, null, null, 'mask')).toBeCloseTo(182 / 150, 9);
  });
});
