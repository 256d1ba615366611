import { describe, expect, it } from 'vitest';
import { call, column, number, refusal, spill } from '../functions/call';

const walls = [
  ['Wall', 'Zone', 'Material', 'Area'],
  ['A', 'North court', 'Red clay brick', 100],
  ['B', 'South', 'Limestone', 30],
  ['C', ' NORTH  COURT ', 'Red clay brick', 200],
  ['D', 7, 'Granite', 50],
  ['E', '', 'Stucco', 10],
];
// A square foot of moderate residue takes an hour.
const scrapedAtOne = [
  ['rate.scrape.moderate', 1],
  ['working.share', 1],
];
const area = (zone?: unknown): number => number('LABORHOURS', walls, zone, scrapedAtOne, 'scrape');

describe('zones', () => {
  it('are one where case and spacing alone differ, named as first typed, in the order of the rows', () => {
    expect(column(spill('SCHEDULE', walls), 'Zone')).toEqual(['North court', 'South', '7', '(no zone)']);
    expect(column(spill('WALLROWS', walls), 'Zone')).toEqual([
      'North court',
      'South',
      'North court',
      '7',
      '(no zone)',
    ]);
  });

  it.each<[unknown, number]>([
    ['North court', 300],
    ['north COURT', 300],
    ['South', 30],
    [7, 50],
    ['7', 50],
    ['(no zone)', 10],
    [[['South']], 30],
    [undefined, 390],
    [null, 390],
    ['', 390],
    ['  ', 390],
    [0, 390],
    [[['']], 390],
    [[[0]], 390],
  ])('asked for as %j give %d ft2', (zone, worked) => {
    expect(area(zone)).toBeCloseTo(worked, 9);
  });

  it('without a Zone column are one', () => {
    const plain = [
      ['Wall', 'Material', 'Area'],
      ['A', 'Red clay brick', 100],
    ];
    expect(column(spill('SCHEDULE', plain), 'Zone')).toEqual(['(no zone)']);
  });

  it('that are not there are not available, with the nearest offered', () => {
    expect(refusal(() => call('WATER', walls, 'Nroth court'))).toEqual({
      type: 'nothing',
      message:
        'No wall is in the zone "Nroth court". Accepted: a zone: North court, South, 7, (no zone). Did you mean North court?',
    });
  });

  it.each<[unknown, string]>([
    [true, 'The zone cannot be TRUE. Accepted: a name, or empty.'],
    ['#REF!', 'The zone cannot be the error #REF!. Accepted: a name, or empty.'],
    [[['A', 'B']], 'The zone must be one cell, not a range.'],
    [[['A'], ['B']], 'The zone must be one cell, not a range.'],
  ])('cannot be asked for as %j', (zone, message) => {
    expect(refusal(() => call('WATER', walls, zone))).toEqual({ type: 'input', message });
  });
});
