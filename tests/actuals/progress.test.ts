import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, lines, number, numberIn, text, type Line } from '../properties/call';
import { refusal } from '../functions/call';

type Cells = readonly (readonly unknown[])[];

const walls: Cells = [
  ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Openings', 'Mortar', 'Residue'],
  ['S1', 'South', 1, 'Red clay brick', 900, 20, 100, 'N', 'light'],
  ['S2', 'South', 2, 'Red clay brick', 500, 12, 0, 'S', 'heavy'],
  ['S3', 'South', 2, 'Plain glass', 80, 8, 0, '', ''],
  ['N1', 'North', 1, 'Split-face block', 700, 18, 0, 'N', 'moderate'],
];
const HEAD = ['Date', 'Zone', 'Wall', 'Task', 'Area', 'Hours', 'Water', 'Cleaner', 'Note'];
const FACTORS: Cells = [['mobilize.hours', 10]];

/** An entry by its cells; what is not stated is blank. */
function entry(cells: Readonly<Record<string, unknown>>): unknown[] {
  return HEAD.map((heading) => cells[heading] ?? '');
}
function progress(
  entries: readonly Readonly<Record<string, unknown>>[],
  { zone = null, factors = FACTORS, of = walls }: { zone?: unknown; factors?: Cells; of?: Cells } = {},
): Line[] {
  return lines('PROGRESS', of, [HEAD, ...entries.map(entry)], zone, factors);
}
function lineOf(spilled: readonly Line[], zone: string, task: string): Line {
  const found = spilled.find((line) => line['Zone'] === zone && line['Task'] === task);
  if (found === undefined) throw new Error(`There is no line of ${task} in ${zone}.`);
  return found;
}
function ofWall(wall: string, heading: string): number {
  return numberIn(
    lines('WALLROWS', walls, null, FACTORS).find((line) => line['Wall'] === wall),
    heading,
  );
}
const hours = (zone: unknown, part: unknown = null): number =>
  number('LABORHOURS', walls, zone, FACTORS, part);

describe('PROGRESS', () => {
  it('has the estimate as its budget, by task, zone and job, and is blank where nothing is booked', () => {
    const spilled = progress([]);
    for (const zone of ['South', 'North']) {
      expect(numberIn(lineOf(spilled, zone, 'all'), 'Budget hours')).toBeCloseTo(hours(zone), 9);
      expect(numberIn(lineOf(spilled, zone, 'scrub'), 'Budget hours')).toBeCloseTo(hours(zone, 'scrub'), 9);
    }
    const job = lineOf(spilled, 'Job', 'all');
    expect(numberIn(job, 'Budget hours')).toBeCloseTo(hours(null), 9);
    expect(numberIn(job, 'Budget water')).toBeCloseTo(number('WATER', walls, null, FACTORS), 9);
    expect(numberIn(job, 'Budget cleaner')).toBeCloseTo(number('CLEANER', walls, null, FACTORS), 9);
    for (const line of spilled)
      for (const heading of ['Earned hours', 'Actual hours', 'Index of hours', 'Area done', 'Finding'])
        expect(line[heading]).toBe('');
    const water = spilled.filter((line) => line['Zone'] === 'South' && line['Task'] !== 'all');
    expect(water.reduce((sum, line) => sum + numberIn(line, 'Budget water'), 0)).toBeCloseTo(
      numberIn(lineOf(spilled, 'South', 'all'), 'Budget water'),
      9,
    );
  });

  it('earns the share of the wall that is named, not of the zone', () => {
    const scrub = lineOf(progress([{ Wall: 'S2', Task: 'scrub', Area: 250, Hours: 9 }]), 'South', 'scrub');
    const earned = ofWall('S2', 'Scrub hours') / 2;
    expect(numberIn(scrub, 'Earned hours')).toBeCloseTo(earned, 9);
    expect(numberIn(scrub, 'Actual hours')).toBe(9);
    expect(numberIn(scrub, 'Index of hours')).toBeCloseTo(earned / 9, 9);
    // 800 ft2 of S1 are bare, and all of S2.
    expect(numberIn(scrub, 'Area')).toBeCloseTo(1300, 9);
    expect(numberIn(scrub, 'Area done')).toBeCloseTo(250, 9);
    expect(numberIn(scrub, 'Share done')).toBeCloseTo(250 / 1300, 9);
    const budget = hours('South', 'scrub');
    const forecast = (of: string): number => numberIn(scrub, `Forecast hours: ${of}`);
    expect(forecast('the rest at the index so far')).toBeCloseTo((budget * 9) / earned, 9);
    expect(forecast('the rest as budgeted')).toBeCloseTo(9 + budget - earned, 9);
    expect(forecast('task by task at its own index')).toBeCloseTo((budget * 9) / earned, 9);
  });

  it('earns the share of the zone where no wall is named', () => {
    const scrub = lineOf(
      progress([{ Zone: ' south', Task: 'Scrub', Area: 650, Hours: 9 }]),
      'South',
      'scrub',
    );
    expect(numberIn(scrub, 'Earned hours')).toBeCloseTo(hours('South', 'scrub') / 2, 9);
  });

  it('forecasts the zone and the job from their tasks', () => {
    const spilled = progress([
      { Zone: 'South', Task: 'scrape', Area: 1300, Hours: 8 },
      { Zone: 'South', Task: 'scrub', Area: 650, Hours: 30 },
    ]);
    const [scrape, scrub] = [hours('South', 'scrape'), hours('South', 'scrub')];
    const zone = lineOf(spilled, 'South', 'all');
    const earned = scrape + scrub / 2;
    expect(numberIn(zone, 'Earned hours')).toBeCloseTo(earned, 9);
    expect(numberIn(zone, 'Index of hours')).toBeCloseTo(earned / 38, 9);
    // Scraping is done, scrubbing half done, the rest not begun.
    const byTask = 8 + 60 + (hours('South') - scrape - scrub);
    expect(numberIn(zone, 'Forecast hours: task by task at its own index')).toBeCloseTo(byTask, 9);
    expect(
      numberIn(lineOf(spilled, 'Job', 'all'), 'Forecast hours: task by task at its own index'),
    ).toBeCloseTo(byTask + hours('North'), 9);
  });

  it('counts a zone done twice once, and says so', () => {
    const spilled = progress([
      { Zone: 'North', Task: 'scrape', Area: 700, Hours: 5 },
      { Zone: 'North', Task: 'scrape', Area: 140, Hours: 1 },
    ]);
    const scrape = lineOf(spilled, 'North', 'scrape');
    expect(numberIn(scrape, 'Earned hours')).toBeCloseTo(hours('North', 'scrape'), 9);
    expect(numberIn(scrape, 'Share done')).toBe(1);
    expect(numberIn(scrape, 'Actual hours')).toBe(6);
    expect(text(scrape['Finding'])).toContain('North: 840 ft² recorded of 700 ft².');
  });

  it('says where more of a wall is done than it has, though the zone has more', () => {
    const scrape = lineOf(progress([{ Wall: 'S2', Task: 'scrape', Area: 600, Hours: 5 }]), 'South', 'scrape');
    expect(text(scrape['Finding'])).toContain('S2: 600 ft² recorded of 500 ft².');
    expect(numberIn(scrape, 'Earned hours')).toBeCloseTo(ofWall('S2', 'Scrape hours'), 9);
  });

  it('says where walls by name and the zone besides are more than there is', () => {
    const scrape = lineOf(
      progress([
        { Wall: 'S2', Task: 'scrape', Area: 500, Hours: 5 },
        { Zone: 'South', Task: 'scrape', Area: 1000, Hours: 5 },
      ]),
      'South',
      'scrape',
    );
    expect(text(scrape['Finding'])).toContain('South: 1500 ft² recorded of 1300 ft².');
    expect(numberIn(scrape, 'Earned hours')).toBeCloseTo(hours('South', 'scrape'), 9);
  });

  it('earns the washed share where a task states no area: a wall is washed when it is rinsed', () => {
    const rinsed = { Zone: 'North', Task: 'rinse', Area: 175, Hours: 2 };
    const spilled = progress([rinsed, { Zone: 'North', Task: 'move', Hours: 1 }]);
    expect(numberIn(lineOf(spilled, 'North', 'move'), 'Earned hours')).toBeCloseTo(
      hours('North', 'move') / 4,
      9,
    );
    const none = lineOf(progress([{ Zone: 'North', Task: 'move', Hours: 1 }]), 'North', 'move');
    expect(numberIn(none, 'Index of hours')).toBe(0);
    expect(none['Forecast hours: the rest as budgeted']).toBe('');
    expect(text(none['Finding'])).toContain('nothing is earned yet: no forecast');
  });

  it('puts the parts of the wash on one line where the wash is recorded as a whole', () => {
    const parts = ['prewet', 'apply', 'scrub', 'rinse', 'tend', 'change', 'below'];
    const budget = parts.reduce((sum, part) => sum + hours('North', part), 0);
    const spilled = progress([{ Zone: 'North', Task: 'wash', Area: 350, Hours: 40, Water: 500, Cleaner: 4 }]);
    const wash = lineOf(spilled, 'North', 'wash');
    expect(numberIn(wash, 'Budget hours')).toBeCloseTo(budget, 9);
    expect(numberIn(wash, 'Earned hours')).toBeCloseTo(budget / 2, 9);
    expect(numberIn(wash, 'Area done')).toBeCloseTo(350, 9);
    expect(numberIn(wash, 'Earned water')).toBeCloseTo(numberIn(wash, 'Budget water') / 2, 9);
    expect(numberIn(wash, 'Index of cleaner')).toBeCloseTo(numberIn(wash, 'Budget cleaner') / 2 / 4, 9);
    const named = spilled.filter((line) => line['Zone'] === 'North').map((line) => line['Task']);
    expect(named).not.toEqual(expect.arrayContaining(['scrub']));
    expect(spilled.filter((line) => line['Zone'] === 'South').map((line) => line['Task'])).toContain('scrub');
    expect(numberIn(lineOf(spilled, 'North', 'all'), 'Budget hours')).toBeCloseTo(hours('North'), 9);
    // What is cleaned once more is no part of the first wash: 5% of reclean.share.
    expect(numberIn(wash, 'Budget water')).toBeLessThan(number('WATER', walls, 'North', FACTORS));
  });

  it('says where a part of the wash is recorded besides on the same area', () => {
    const both = [
      { Zone: 'North', Task: 'wash', Area: 600, Hours: 40 },
      { Zone: 'North', Task: 'prewet', Area: 600, Hours: 2 },
    ];
    const wash = lineOf(progress(both), 'North', 'wash');
    expect(text(wash['Finding'])).toContain('as wash and by its parts too');
    expect(numberIn(wash, 'Actual hours')).toBe(42);
    expect(numberIn(wash, 'Earned hours')).toBeLessThanOrEqual(numberIn(wash, 'Budget hours'));
    const apart = [both[0] ?? {}, { Zone: 'North', Task: 'prewet', Area: 100, Hours: 2 }];
    expect(lineOf(progress(apart), 'North', 'wash')['Finding']).toBe('');
  });

  it('shares out what is booked for the job as its budget is, earned by the washed share of the job', () => {
    const spilled = progress([
      { Task: 'mobilize', Hours: 12 },
      { Zone: 'North', Task: 'wash', Area: 350, Hours: 40 },
    ]);
    const share = hours('North', 'mobilize') / hours(null, 'mobilize');
    const mobilize = lineOf(spilled, 'North', 'mobilize');
    expect(numberIn(mobilize, 'Actual hours')).toBeCloseTo(12 * share, 9);
    // 350 ft2 of 700 and 1,300.
    expect(numberIn(mobilize, 'Earned hours')).toBeCloseTo((hours('North', 'mobilize') * 350) / 2000, 9);
    expect(numberIn(lineOf(spilled, 'Job', 'all'), 'Actual hours')).toBeCloseTo(52, 9);
  });

  it('says where the estimate has nothing for what is booked', () => {
    const spilled = progress([{ Zone: 'North', Task: 'mask', Area: 30, Hours: 2 }]);
    const mask = lineOf(spilled, 'North', 'mask');
    expect(numberIn(mask, 'Budget hours')).toBe(0);
    expect(text(mask['Finding'])).toContain('The estimate has no hours for this');
    expect(numberIn(lineOf(spilled, 'North', 'all'), 'Actual hours')).toBe(2);
  });

  it('keeps to the zone that is asked for', () => {
    const spilled = progress([{ Zone: 'North', Task: 'scrape', Area: 70, Hours: 1 }], { zone: 'North' });
    expect(new Set(spilled.map((line) => line['Zone']))).toEqual(new Set(['North']));
  });

  it('is the same in SI', () => {
    const entries = [{ Zone: 'North', Task: 'wash', Area: 350, Hours: 40, Water: 500 }];
    const metric = walls.map((row, index) =>
      index === 0
        ? row
        : row.map((cell, place) => {
            if (typeof cell !== 'number') return cell;
            return place === 5 ? cell * 0.3048 : place === 4 || place === 6 ? cell * 0.09290304 : cell;
          }),
    );
    const us = lineOf(progress(entries), 'North', 'wash');
    const si = lineOf(
      progress([{ ...entries[0], Area: 350 * 0.09290304, Water: 500 * 3.785411784 }], {
        of: metric,
        factors: [...FACTORS, ['units', 'SI']],
      }),
      'North',
      'wash',
    );
    expect(numberIn(si, 'Earned hours')).toBeCloseTo(numberIn(us, 'Earned hours'), 9);
    expect(numberIn(si, 'Index of water')).toBeCloseTo(numberIn(us, 'Index of water'), 9);
    expect(numberIn(si, 'Area done')).toBeCloseTo(numberIn(us, 'Area done') * 0.09290304, 9);
  });

  it('earns no more than the budget and adds up, whatever is booked, in any order of rows and columns', () => {
    const cells = fc.record({
      Zone: fc.constantFrom('South', 'North'),
      Task: fc.constantFrom('wash', 'scrub', 'rinse', 'scrape', 'mask', 'move', 'setup', 'glass'),
      Area: fc.constantFrom(0, 40, 300, 2000),
      Hours: fc.constantFrom(0, 3, 30),
      Water: fc.constantFrom(1, 90),
      Cleaner: fc.constantFrom(0, 2),
    });
    let booked = 0;
    fc.assert(
      fc.property(fc.array(cells, { maxLength: 8 }), fc.nat(8), (entries, turn) => {
        const spilled = progress(entries);
        for (const line of spilled)
          for (const measure of ['hours', 'water', 'cleaner'])
            if (line[`Earned ${measure}`] !== '')
              expect(numberIn(line, `Earned ${measure}`)).toBeLessThanOrEqual(
                numberIn(line, `Budget ${measure}`) * (1 + 1e-9),
              );
        const job = lineOf(spilled, 'Job', 'all');
        const whole = entries.reduce((sum, { Hours }) => sum + Hours, 0);
        if (whole > 0) expect(numberIn(job, 'Actual hours')).toBeCloseTo(whole, 9);
        if (whole > 0) booked += 1;
        const turned = [...HEAD.slice(turn), ...HEAD.slice(0, turn)];
        const rows = [...entries].reverse().map((each) => {
          const by: Readonly<Record<string, unknown>> = each;
          return turned.map((heading) => by[heading] ?? '');
        });
        const again = lines('PROGRESS', walls, [turned, HEAD.map(() => ''), ...rows], null, FACTORS);
        expect(again.map((line) => line['Task'])).toEqual(spilled.map((line) => line['Task']));
        const other = lineOf(again, 'Job', 'all');
        for (const heading of ['Earned hours', 'Actual water']) {
          if (job[heading] === '') expect(other[heading]).toBe('');
          else expect(numberIn(other, heading)).toBeCloseTo(numberIn(job, heading), 9);
        }
      }),
      { numRuns: 60 },
    );
    expect(booked).toBeGreaterThan(20);
  });
});

describe('a table of recorded work', () => {
  const read = (cells: Readonly<Record<string, unknown>>): string =>
    refusal(() =>
      call('PROGRESS', walls, [HEAD, entry({ Zone: 'North', Task: 'scrape', Hours: 1, ...cells })]),
    ).message;

  it.each([
    [{ Task: 'scraping' }, 'column Task: "scraping" cannot be used. Accepted: one of '],
    [{ Task: '' }, 'column Task: a blank cell cannot be used'],
    [
      { Zone: 'West' },
      'column Zone: "West" cannot be used. Accepted: a zone of the walls: South, North. Did you mean South?',
    ],
    [{ Wall: 'S9' }, 'column Wall: "S9" cannot be used. Accepted: the label of a wall. Did you mean S'],
    [
      { Wall: 'S1' },
      'column Wall: "S1" in zone North cannot be used. Accepted: a wall of that zone, or no zone',
    ],
    [
      { Zone: '' },
      'column Zone: a blank cell cannot be used. Accepted: a zone, or the label of a wall, for scrape',
    ],
    [{ Hours: '' }, 'column Hours: a blank cell cannot be used. Accepted: hours above 0'],
    [{ Hours: -1 }, 'column Hours: -1 cannot be used'],
    [{ Hours: '1,5' }, 'column Hours: "1,5" (a number stored as text) cannot be used'],
    [{ Area: '#N/A' }, 'column Area: the error #N/A cannot be used'],
    [{ Water: 'some' }, 'column Water: "some" cannot be used'],
    [{ Date: '3/5/2026' }, 'column Date: "3/5/2026" (a date) cannot be used. Accepted: a date, or blank'],
    [{ Date: 12 }, 'column Date: 12 cannot be used'],
  ])('refuses %j and says what is accepted', (cells, says) => {
    expect(read(cells)).toContain(`Row 2, ${says}`);
  });

  it('tells of every bad row', () => {
    const table = [
      HEAD,
      entry({ Task: 'x', Zone: 'North', Hours: 1 }),
      [],
      entry({ Task: 'scrub', Hours: 'y' }),
    ];
    expect(refusal(() => call('PROGRESS', walls, table)).message).toContain('2 more problems were found.');
  });

  it('needs its headings', () => {
    expect(refusal(() => call('PROGRESS', walls, [['Date', 'Zone', 'Hours']])).message).toContain(
      'no column is headed "Task"',
    );
    expect(refusal(() => call('RATES', 'x', walls)).message).toContain('The actuals must be a range');
  });

  it('takes a task with a hyphen or spaces, a date with a format, and a wall whatever its case', () => {
    const [line] = lines(
      'RATES',
      [
        HEAD,
        entry({
          Wall: 's1 ',
          Task: 'Pre-wet',
          Area: 100,
          Hours: 1,
          Date: {
            type: 'FormattedNumber',
            basicType: 'Double',
            basicValue: 46145,
            numberFormat: 'yyyy-mm-dd',
          },
        }),
      ],
      walls,
    );
    expect(line?.['Factor']).toBe('rate.wet');
    // 46,143 days after 30 December 1899 is 1 May 2026.
    expect(line?.['Note for the factor']).toBe('from 1 entry to May 3, 2026');
  });

  it('is found by one range of headings together with the walls, which leave its columns alone', () => {
    const mapping = [
      ['Area', 'SF'],
      ['Task', 'Activity'],
      ['Hours', 'Man hours'],
    ];
    const mapped = walls.map((row, index) => (index === 0 ? row.with(4, 'SF') : row));
    const table = [
      ['Activity', 'Zone', 'Area', 'Man hours'],
      ['scrape', 'North', 350, 3],
    ];
    const spilled = lines('PROGRESS', mapped, table, null, FACTORS, mapping);
    expect(numberIn(lineOf(spilled, 'North', 'scrape'), 'Share done')).toBeCloseTo(0.5, 9);
    expect(number('LABORHOURS', mapped, null, FACTORS, null, mapping)).toBeCloseTo(hours(null), 9);
  });
});
