import { describe, expect, it } from 'vitest';
import { call, column, number, spill } from './call';

const walls = [
  // prettier-ignore
  ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Fixtures', 'Mortar', 'Residue', 'Brushed', 'Masked', 'Suction'],
  ['N1', 'North', 1, 'Red clay brick', 1234.5, 30, 210.25, 180.5, 3, 'N', 'moderate', '', '', ''],
  ['S1', 'South', 1, 'Light clay brick', 987, 24, 100, 90, 1, 'S', 'heavy', '', '', 3.3],
  ['N2', 'North', 2, 'Limestone', 77.7, 2.5, '', '', '', '', '', '', 'yes', ''],
  ['E1', 'Entry', 1, 'Glazed brick', 211, 9, 80, 61, 2, '', '', 'yes', '', ''],
  ['N3', 'North', 2, 'Red clay brick', 333.3, 11, 12, 16, 2, 'M', 'light', '', 'no', ''],
  ['G1', 'Gate', 1, 'Copper', 40, 8, '', '', '', '', '', '', 'yes', ''],
  ['G2', 'Gate', 1, 'Marble', 0, '', '', '', '', '', '', '', 'yes', ''],
  ['S2', 'South', 2, 'Granite', 55, 2, '', '', '', '', '', '', 'never', ''],
  ['F1', 'Front', 1, 'Coated glass', 640, 32, '', '', '', '', 'light', '', '', ''],
];
const zones = ['North', 'South', 'Entry', 'Gate', 'Front'];
const headings = [
  'Washed area',
  'Water',
  'Pre-wet water',
  'Water below',
  'Mix water',
  'Rinse water',
  'Re-clean water',
  'Water taken up',
  'Mixed cleaner',
  'Concentrate',
  'Runoff',
  'Masking',
  'Film to buy',
  'Tape',
  'Crew-hours',
  'Labor-hours',
  'Scrape hours',
  'Mask hours',
  'Pre-wet hours',
  'Apply hours',
  'Scrub hours',
  'Rinse hours',
  'Standby hours',
  'Patch change hours',
  'Wetting below hours',
  'Unmask hours',
  'Glass hours',
  'Move hours',
  'Re-clean hours',
  'Sample hours',
  'Set-up hours',
  'Days',
  'Rental days',
];
const HOUR_PARTS = [
  'scrape',
  'mask',
  'prewet',
  'apply',
  'scrub',
  'rinse',
  'tend',
  'change',
  'below',
  'unmask',
  'glass',
  'move',
  'scaffold',
  'brush',
  'reclean',
  'zonesetup',
  'sample',
  'mobilize',
  'protect',
  'setup',
];
const sum = (values: readonly unknown[]): number =>
  (values as number[]).reduce((all, value) => all + value, 0);

function expectSame(seen: number, worked: number, what: string): void {
  expect(Math.abs(seen - worked), `${what}: ${String(seen)} and ${String(worked)}`).toBeLessThanOrEqual(
    1e-12 * Math.abs(worked),
  );
}

describe.each([
  ['US', null],
  ['SI', [['units', 'SI']]],
])('in %s units', (_, factors) => {
  it.each(headings)('rows add up to zones: %s', (heading) => {
    const schedule = spill('SCHEDULE', walls, null, factors);
    const rows = spill('WALLROWS', walls, null, factors);
    const zoneOfRow = column(rows, 'Zone');
    const ofRow = column(rows, heading);
    expect(column(schedule, 'Zone')).toEqual(zones);
    expect(sum(ofRow)).toBeGreaterThan(0);
    column(schedule, heading).forEach((value, place) => {
      const own = ofRow.filter((_cell, row) => zoneOfRow[row] === zones[place]);
      expectSame(sum(own), value as number, `${heading} of ${String(zones[place])}`);
    });
  });

  it.each([
    ['WATER', '', 'Water'],
    ['WATER', 'prewet', 'Pre-wet water'],
    ['WATER', 'below', 'Water below'],
    ['WATER', 'mix', 'Mix water'],
    ['WATER', 'reclean', 'Re-clean water'],
    ['WATER', 'rinse', 'Rinse water'],
    ['MASKING', '', 'Masking'],
    ['TAPE', '', 'Tape'],
    ['CLEANER', '', 'Concentrate'],
    ['RUNOFF', '', 'Runoff'],
    ['CREWHOURS', '', 'Crew-hours'],
    ['LABORHOURS', '', 'Labor-hours'],
    ['LABORHOURS', 'scrape', 'Scrape hours'],
    ['LABORHOURS', 'mask', 'Mask hours'],
    ['LABORHOURS', 'prewet', 'Pre-wet hours'],
    ['LABORHOURS', 'apply', 'Apply hours'],
    ['LABORHOURS', 'scrub', 'Scrub hours'],
    ['LABORHOURS', 'rinse', 'Rinse hours'],
    ['LABORHOURS', 'tend', 'Standby hours'],
    ['LABORHOURS', 'change', 'Patch change hours'],
    ['LABORHOURS', 'below', 'Wetting below hours'],
    ['LABORHOURS', 'unmask', 'Unmask hours'],
    ['LABORHOURS', 'glass', 'Glass hours'],
    ['LABORHOURS', 'move', 'Move hours'],
    ['LABORHOURS', 'reclean', 'Re-clean hours'],
    ['LABORHOURS', 'sample', 'Sample hours'],
    ['LABORHOURS', 'setup', 'Set-up hours'],
  ])('%s "%s" is the column %s of SCHEDULE, zone by zone and for the job', (name, part, heading) => {
    const cells = column(spill('SCHEDULE', walls, null, factors), heading);
    zones.forEach((zone, place) => {
      expectSame(number(name, walls, zone, factors, part), cells[place] as number, zone);
    });
    expectSame(number(name, walls, null, factors, part), sum(cells), 'the job');
  });

  it.each([
    ['WATER', ['prewet', 'below', 'mist', 'mix', 'rinse', 'reclean']],
    ['LABORHOURS', HOUR_PARTS],
    ['CREWHOURS', HOUR_PARTS],
  ])('the parts of %s add up', (name, parts) => {
    for (const zone of ['', ...zones]) {
      const each = parts.map((part) => number(name, walls, zone, factors, part));
      expectSame(sum(each), number(name, walls, zone, factors), zone);
    }
  });
});

it('WALLROWS keeps the order of the rows, also where zones are mixed', () => {
  expect(column(spill('WALLROWS', walls), 'Wall')).toEqual(walls.slice(1).map(([label]) => label));
});

it('WALLROWS and SCHEDULE of one zone are the lines of the whole', () => {
  const rows = spill('WALLROWS', walls);
  const zonePlace = rows[0]?.indexOf('Zone') ?? -1;
  expect(spill('WALLROWS', walls, 'South')).toEqual([
    rows[0],
    ...rows.slice(1).filter((line) => line[zonePlace] === 'South'),
  ]);
  expect(spill('SCHEDULE', walls, 'South')).toEqual([
    spill('SCHEDULE', walls)[0],
    spill('SCHEDULE', walls)[2],
  ]);
});

it('SCHEDULE has the class that CLASS, GOVERNING and GOVERNOR have', () => {
  const schedule = spill('SCHEDULE', walls);
  for (const [place, zone] of zones.entries()) {
    if (zone === 'Gate') continue;
    expect(call('CLASS', walls, zone)).toBe(column(schedule, 'Class')[place]);
    expect(call('GOVERNING', walls, zone)).toBe(column(schedule, 'Ceiling')[place]);
    expect(call('GOVERNOR', walls, zone)).toBe(column(schedule, 'Set by')[place]);
  }
});

it('labor-hours are those of two persons where one team of two is the crew', () => {
  for (const zone of ['', ...zones]) {
    const labor = number('LABORHOURS', walls, zone, [['teams', 1]]);
    expect(labor / number('CREWHOURS', walls, zone)).toBeCloseTo(2, 12);
    expect(number('LABORHOURS', walls, zone, [['teams', 3]])).toBeCloseTo(labor, 9);
    expect(labor / number('CREWHOURS', walls, zone, [['teams', 3]])).toBeCloseTo(6, 12);
  }
});
