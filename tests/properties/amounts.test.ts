import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, errorsIn, expectSame, number, numberIn, numbersIn, text, type Line } from './call';
import { expectSameLines, RELATIVE, scheduleOf, sumOf, wallRowsOf } from './compare';
import { ownFactors, rangeOf, RUNS, walls } from './walls';

const weather = fc.record({
  'weather.air': fc.integer({ min: 20, max: 110 }),
  'weather.surface': fc.integer({ min: 20, max: 140 }),
  'weather.humidity': fc.integer({ min: 0, max: 100 }),
  'weather.wind': fc.integer({ min: 0, max: 40 }),
});

/** The user's own values, a price of labour among them, and any weather. */
const anyFactors = fc
  .tuple(ownFactors, weather)
  .map(([own, air]) => [
    ['price.labor', 40],
    ...own.filter(([id]) => id !== 'price.labor'),
    ...Object.entries(air),
  ]);

const NOT_ADDED = new Set([
  'Ceiling',
  'Class',
  'Pre-wet',
  'Passes',
  'Patch',
  'Wait',
  'Patches',
  'Calendar days',
]);

function isAdded(heading: string): boolean {
  return !NOT_ADDED.has(heading);
}

it('every number is finite and not below zero', () => {
  fc.assert(
    fc.property(walls, anyFactors, (rows, own) => {
      const range = rangeOf(rows);
      for (const line of [...scheduleOf(range, own).values(), ...wallRowsOf(range, own).values()]) {
        for (const [heading, value] of numbersIn(line)) {
          expect(Number.isFinite(value) && value >= 0, `${heading} is ${String(value)}`).toBe(true);
        }
        for (const [heading, message] of errorsIn(line)) {
          expect(message, heading).toMatch(/No contact window|every row is masked/);
        }
      }
    }),
    { numRuns: 2 * RUNS },
  );
});

it('rows add up to zones, and zones to the job', () => {
  let summed = 0;
  fc.assert(
    fc.property(walls, anyFactors, (rows, own) => {
      const range = rangeOf(rows);
      const zones = scheduleOf(range, own);
      const ofRows = [...wallRowsOf(range, own).values()];
      for (const [zone, line] of zones) {
        const mine = ofRows.filter((row) => row['Zone'] === zone);
        for (const [heading, total] of numbersIn(line)) {
          if (!isAdded(heading)) continue;
          expectSame(sumOf(mine, heading) ?? NaN, total, RELATIVE, `${zone}: ${heading}`);
          summed++;
        }
        for (const heading of errorsIn(line).keys()) {
          if (isAdded(heading) && heading !== 'Set by') expect(sumOf(mine, heading)).toBeUndefined();
        }
      }
      const scalars: [name: string, heading: string, part?: string][] = [
        ['WATER', 'Water'],
        ['WATER', 'Rinse water', 'rinse'],
        ['MASKING', 'Masking'],
        ['TAPE', 'Tape'],
        ['CLEANER', 'Concentrate'],
        ['RUNOFF', 'Runoff'],
        ['NEUTRALIZER', 'Neutralizer'],
        ['CREWHOURS', 'Crew-hours'],
        ['CREWHOURS', 'Move hours', 'move'],
        ['BIDPRICE', 'Profit', 'profit'],
      ];
      for (const [name, heading, part] of scalars) {
        const total = sumOf(zones.values(), heading);
        const parts = part === undefined ? [] : [part];
        if (total === undefined) expect(call(name, range, null, own, ...parts)).toHaveProperty('error');
        else expectSame(number(name, range, null, own, ...parts), total, RELATIVE, name);
      }
      const price = sumOf(zones.values(), 'Price');
      // The job is rounded once, to the cent.
      if (price !== undefined)
        expect(Math.abs(number('BIDPRICE', range, null, own) - price)).toBeLessThan(0.0051);
    }),
    { numRuns: RUNS },
  );
  expect(summed).toBeGreaterThan(1000);
});

it('the parts of water, crew-hours and price add up to the whole', () => {
  const sumIn = (line: Line, headings: readonly string[]): number =>
    headings.reduce((sum, heading) => sum + numberIn(line, heading), 0);
  fc.assert(
    fc.property(walls, anyFactors, (rows, own) => {
      const range = rangeOf(rows);
      for (const line of [...scheduleOf(range, own).values(), ...wallRowsOf(range, own).values()]) {
        const zone = text(line['Zone']);
        const water = ['Pre-wet water', 'Mix water', 'Rinse water'];
        expectSame(sumIn(line, water), numberIn(line, 'Water'), RELATIVE, `${zone}: water`);
        expectSame(
          numberIn(line, 'Mix water') + numberIn(line, 'Concentrate'),
          numberIn(line, 'Mixed cleaner'),
          RELATIVE,
          `${zone}: mix`,
        );
        if (errorsIn(line).has('Crew-hours')) continue;
        const hours = Object.keys(line).filter((heading) => heading.endsWith(' hours'));
        expect(hours).toHaveLength(9);
        expectSame(sumIn(line, hours), numberIn(line, 'Crew-hours'), RELATIVE, `${zone}: hours`);
        const prices = Object.keys(line).filter(
          (heading) => heading.endsWith(' price') || ['Contingency', 'Overhead', 'Profit'].includes(heading),
        );
        expect(prices).toHaveLength(11);
        expectSame(sumIn(line, prices), numberIn(line, 'Price'), RELATIVE, `${zone}: price`);
      }
    }),
    { numRuns: RUNS },
  );
});

describe('twice the area', () => {
  it('takes twice the water, cleaner, runoff and alkali', () => {
    const doubled = [
      'Washed area',
      'Water',
      'Pre-wet water',
      'Mix water',
      'Rinse water',
      'Water taken up',
      'Mixed cleaner',
      'Concentrate',
      'Runoff',
      'Neutralizer',
      'Sodium bicarbonate',
      'Soda ash',
      'Scrape hours',
      'Scrub hours',
    ];
    fc.assert(
      fc.property(walls, anyFactors, (rows, own) => {
        const once = scheduleOf(rangeOf(rows), own);
        // The openings are a share of the area and double with it.
        const twice = scheduleOf(rangeOf(rows.map((row) => ({ ...row, area: 2 * row.area }))), own);
        for (const [zone, line] of once) {
          for (const heading of doubled) {
            const expected = 2 * numberIn(line, heading);
            expectSame(numberIn(twice.get(zone), heading), expected, RELATIVE, `${zone}: ${heading}`);
          }
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe('the starting values given back as factors', () => {
  it.each(['US', 'SI'])('change nothing in %s units', (units) => {
    const spilled = call('FACTORS', [['units', units]]) as unknown[][];
    fc.assert(
      fc.property(walls, (rows) => {
        const range = rangeOf(rows);
        const plain = [['units', units]];
        expectSameLines(scheduleOf(range, spilled), scheduleOf(range, plain));
        expectSameLines(wallRowsOf(range, spilled), wallRowsOf(range, plain));
      }),
      { numRuns: RUNS },
    );
  });
});

it('rinse that passes down a long chain of full zones is followed to its end', () => {
  const zones = Array.from({ length: 12 }, (_, index) => `Z${String(index)}`);
  const range: unknown[][] = [['Wall', 'Zone', 'Material', 'Area', 'Receives']];
  zones.forEach((zone, index) => {
    for (let row = 0; row < 12; row++) {
      const material = index === zones.length - 1 ? 'Marble' : 'Red clay brick';
      range.push([`${zone}-${String(row)}`, zone, material, 10, zones[index - 1] ?? '']);
    }
  });
  // Marble, at the foot, takes clear water only: nothing stronger may be used anywhere above.
  expect([...scheduleOf(range).values()].map((line) => line['Ceiling'])).toEqual(zones.map(() => 0));
});
