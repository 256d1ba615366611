import { describe, expect, it } from 'vitest';
import { isCellError } from '../../functions/worksheet-function';
import { call, column, number, spill } from '../functions/call';

// 40 degC, dry, 60 km/h: E = 5 x (58^2.5 - 0) x 64 x 1e-6 = 5 x 25619 x 64e-6 = 8.198 kg/m2/h, so a film of 0.1 mm, 0.1
// kg/m2, dries in 0.1 / 8.198 x 60 = 0.732 min. Equation of ACI 305R; Uno 1998.
const scorching = [
  ['units', 'SI'],
  ['weather.air', 40],
  ['weather.surface', 40],
  ['weather.humidity', 0],
  ['weather.wind', 60],
];
const walls = [
  ['Wall', 'Zone', 'Material', 'Area'],
  ['South', 'Sun', 'Red clay brick', 50],
  ['Door', 'Door', 'Painted or anodised aluminium', 5],
];
const message =
  'No contact window: the cleaner dries after 0.732 min, before its least dwell of 3 min. Wait for cooler or calmer weather, shade the wall, or see the label.';

describe('a cleaner that dries before its least dwell', () => {
  it.each(['', 'prewet', 'apply', 'rinse', 'setup'])('gives CREWHOURS "%s" an error, no number', (part) => {
    expect(call('CREWHOURS', walls, 'Sun', scorching, part)).toEqual({ error: '#VALUE!', message });
    expect(call('CREWHOURS', walls, null, scorching, part)).toEqual({ error: '#VALUE!', message });
  });

  it('leaves what does not hang on the patch', () => {
    // 50 m2 at 200 ft2/h.
    expect(number('CREWHOURS', walls, 'Sun', scorching, 'scrape')).toBeCloseTo(50 / (200 * 0.09290304), 9);
    // The water is that of cooler weather.
    const water = number('WATER', walls, 'Sun', [['units', 'SI']]);
    expect(number('WATER', walls, 'Sun', scorching)).toBeCloseTo(water, 9);
    expect(water).toBeGreaterThan(0);
  });

  it('puts errors into those cells of SCHEDULE alone', () => {
    const spilled = spill('SCHEDULE', walls, null, scorching);
    const headings = (spilled[0] ?? []).map((heading) => (heading as string).replace(/ \([^)]*\)$/, ''));
    const wrong = headings.filter((_, place) => isCellError(spilled[1]?.[place] ?? ''));
    expect(wrong).toEqual([
      'Patch',
      'Wait',
      'Patches',
      'Crew-hours',
      'Pre-wet hours',
      'Apply hours',
      'Rinse hours',
      'Set-up hours',
      'Days',
      'Calendar days',
    ]);
    for (const cell of (spilled[1] ?? []).filter(isCellError))
      expect(cell).toEqual({ error: '#VALUE!', message });
  });

  it('leaves the other zone whole', () => {
    const spilled = spill('SCHEDULE', walls, null, scorching);
    expect((spilled[2] ?? []).filter(isCellError)).toEqual([]);
    expect(column(spilled, 'Class')[1]).toBe(0);
  });

  it('is told apart from a dwell of one length at different rates', () => {
    const factors = [
      ['dwell.least', 4],
      ['dwell.most', 4],
    ];
    expect(call('CREWHOURS', walls, 'Sun', factors)).toEqual({
      error: '#VALUE!',
      message:
        'No contact window: least and most dwell are both 4 min while applying and rinsing go at different rates. Accepted: a wider dwell, or equal rates.',
    });
  });
});

describe('a cleaner that dries within the dwell', () => {
  it('shortens the patch', () => {
    // 20 degC, half saturated, 10 km/h dries 0.1 mm in 19.3 min (ACI 305R equation); a film of 0.02 mm in a fifth, 3.852 min.
    const evaporation = 5 * (38 ** 2.5 - 0.5 * 38 ** 2.5) * 14 * 1e-6;
    const dries = (0.02 / evaporation) * 60;
    expect(dries).toBeCloseTo(3.852, 2);
    const factors = [['weather.film', 0.02]];
    const patch = column(spill('SCHEDULE', walls, 'Sun', factors), 'Patch')[0] as number;
    expect(patch / Math.min(8 * dries, (dries - 3) / (1 / 8 - 1 / 10))).toBeCloseTo(1, 6);
  });
});
