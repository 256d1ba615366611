import { describe, expect, it } from 'vitest';
import { column, number, spill } from './call';

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Masked'],
  ['S-1', 'South', 'Red clay brick', 9000, 14, 200, 180, 'no'],
  ['S-2', 'South', 'Limestone', 300, 3, 0, 0, 'yes'],
  ['W-1', 'West', 'Red clay brick', 500, 14, 0, 0, 'no'],
  ['N-1', 'North', 'Granite', 4000, 10, 100, 90, 'no'],
];
const CREW = [
  ['shift', 9],
  ['teams', 2],
  ['team.size', 3],
];
const plan = spill('DAYPLAN', WALLS, null, CREW);
const numbers = (heading: string): number[] => column(plan, heading).map(Number);
const sum = (of: readonly number[]): number => of.reduce((total, each) => total + each, 0);
const days = numbers('Day');
const zones = column(plan, 'Zone');

describe('the day plan', () => {
  it('adds up to the estimate', () => {
    const whole = (name: string): number => number(name, WALLS, null, CREW);
    expect(sum(numbers('Crew-hours'))).toBeCloseTo(whole('CREWHOURS'), 8);
    expect(sum(numbers('Labor-hours'))).toBeCloseTo(whole('LABORHOURS'), 8);
    expect(sum(numbers('Cleaner'))).toBeCloseTo(whole('CLEANER'), 8);
    expect(sum(numbers('Water'))).toBeCloseTo(whole('WATER'), 6);
    expect(sum(numbers('Tape'))).toBeCloseTo(whole('TAPE'), 8);
  });

  it('fills every day but the last to its shift of 9 h, and none further', () => {
    const most = Math.max(...days);
    // A crew-hour is an hour of the whole crew, so that the days are those of the hours by 9.
    expect(most).toBe(Math.ceil(number('CREWHOURS', WALLS, null, CREW) / 9));
    expect(most).toBeGreaterThan(2);
    for (let day = 1; day <= most; day++) {
      const hours = sum(numbers('Crew-hours').filter((_, place) => days[place] === day));
      if (day < most) expect(hours).toBeCloseTo(9, 8);
      else expect(hours).toBeLessThanOrEqual(9 + 1e-9);
    }
  });

  it('keeps the zones in order, and each begins when the one before is done', () => {
    expect([...new Set(zones)]).toEqual(['South', 'West', 'North']);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    const south = number('CREWHOURS', WALLS, 'South', CREW);
    expect(days[zones.indexOf('West')]).toBe(Math.floor(south / 9) + 1);
  });

  it('brings film and tape on the first day of a zone, and has the whole crew of 2 x 3 on each', () => {
    expect(numbers('Tape')[0]).toBeCloseTo(number('TAPE', WALLS, 'South', CREW), 8);
    expect(numbers('Tape')[1]).toBe(0);
    expect(new Set(numbers('People'))).toEqual(new Set([6]));
  });

  it('says what is waited for: the sample before the job, masked masonry at the end of its zone', () => {
    const waits = column(plan, 'Waits').map(String);
    expect(waits[0]).toContain('Samples are washed 7 days before');
    expect(waits.filter((each) => each.includes('Samples'))).toHaveLength(1);
    expect(waits[zones.lastIndexOf('South')]).toMatch(/Masked masonry is washed last, with class \d/);
    expect(waits.filter((each) => each.includes('Masked masonry'))).toHaveLength(1);
  });

  it('gives a zone by itself the days that it has in the whole job', () => {
    const north = spill('DAYPLAN', WALLS, 'North', CREW);
    expect(column(north, 'Day')).toEqual(days.filter((_, place) => zones[place] === 'North'));
  });

  it('says why a zone stands on no day', () => {
    // A patch of 20 ft2 takes longer to apply than a dwell of a minute.
    const slow = [
      ['cleaner.class', 1],
      ['dwell.least', 0.5],
      ['dwell.most', 1],
      ['patch.least', 20],
    ];
    const lines = spill('DAYPLAN', WALLS, 'West', slow);
    expect(lines).toHaveLength(2);
    expect(lines[1]?.[0]).toMatchObject({ error: '#VALUE!' });
    expect(lines[1]?.[1]).toBe('West');
  });

  it('names the walls of each day, from the top down, and brings what those walls take', () => {
    const walls = [
      ['Wall', 'Level', 'Material', 'Area'],
      ['low', 2, 'Red clay brick', 3000],
      ['top', 1, 'Granite', 6000],
    ];
    const rows = spill('WALLROWS', walls, null, CREW);
    const of = (wall: string, heading: string): number =>
      Number(column(rows, heading)[column(rows, 'Wall').indexOf(wall)]);
    // Six persons work 9 h a day: the top wall ends at its labor-hours by 54, counted in days.
    const end = of('top', 'Labor-hours') / 54;
    expect(end % 1).toBeGreaterThan(0.01);
    const lines = spill('DAYPLAN', walls, null, CREW);
    const expected = column(lines, 'Day').map((day) =>
      [Number(day) - 1 < end ? 'top' : '', Number(day) > end ? 'low' : ''].filter(Boolean).join(', '),
    );
    expect(expected).toContain('top, low');
    expect(column(lines, 'Walls')).toEqual(expected);
    expect(Number(column(lines, 'Water')[0])).toBeCloseTo(of('top', 'Water') / end, 6);
  });

  it('puts walls that their cell has no room for on lines of their own, which count nothing twice', () => {
    const names = ['gable wall, east side', 'gable wall, west side', 'rear wall by the dock', 'porch'];
    const walls = [['Wall', 'Material', 'Area'], ...names.map((name) => [name, 'Granite', 10])];
    const lines = spill('DAYPLAN', walls, null, CREW);
    expect(column(lines, 'Walls').map(String)).toEqual([
      'gable wall, east side, gable wall, west side, rear wall by',
      'the dock, porch',
    ]);
    expect(column(lines, 'Day')).toEqual([1, '']);
    expect(column(lines, 'Water')[1]).toBe('');
  });
});
