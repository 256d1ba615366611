import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../functions/worksheet-function';
import { call, errorsIn, expectSame, lines, number, numberIn, text, type Line } from '../properties/call';

// The ceilings and needs of the model, typed in here from the table of starting values.
const CEILING: Readonly<Record<string, number>> = {
  'Red clay brick': 3,
  'Dark clay brick': 3,
  'Light clay brick': 2,
  'Cast stone': 2,
  Limestone: 1,
  'Ground-face block': 1,
  Marble: 0,
  'Coated glass': 0,
};
const NEED: Readonly<Record<string, number>> = { light: 1, moderate: 2, heavy: 3 };
const CLASSES = [0, 1, 2, 3];

const HEADINGS = ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Masked', 'Receives'];

interface Wall {
  readonly material: string;
  readonly area: number;
  readonly height: number;
  readonly mortar: string;
  readonly residue: string;
  readonly masked: string;
}

function rangeOf(walls: readonly Wall[], maskToo: ReadonlySet<number> = new Set()): unknown[][] {
  const rows = walls.map((wall, index) => [
    `W${String(index + 1)}`,
    'Front',
    wall.material,
    wall.area,
    wall.height,
    wall.mortar,
    wall.residue,
    maskToo.has(index) ? 'yes' : wall.masked,
    '',
  ]);
  return [HEADINGS, ...rows];
}

function needOf({ mortar, residue }: Wall): number {
  return Math.min(3, (NEED[residue] ?? NaN) + (mortar === 'S' || mortar === 'M' ? 1 : 0));
}

const wall: fc.Arbitrary<Wall> = fc.record({
  material: fc.constantFrom(...Object.keys(CEILING)),
  area: fc.integer({ min: 10, max: 900 }),
  height: fc.integer({ min: 2, max: 30 }),
  mortar: fc.constantFrom('M', 'S', 'N', 'O'),
  residue: fc.constantFrom('light', 'moderate', 'heavy'),
  masked: fc.constantFrom('', '', '', 'no', 'yes', 'never'),
});

const PRICES: readonly (readonly [string, number])[] = [
  ['price.labor', 55],
  ['price.cleaner.1', 12],
  ['price.cleaner.2', 22],
  ['price.cleaner.3', 30],
  ['price.film', 0.2],
  ['price.tape', 0.1],
  ['price.water', 0.02],
  ['price.equipment', 150],
  ['price.bicarbonate', 0.8],
  ['price.disposal', 0.1],
  ['price.overhead', 10],
  ['price.profit', 8],
];

/** Every set of rows, beyond those that are masked, whose masking allows a class; none where nothing is left to wash. */
function setsThatAllow(walls: readonly Wall[], wanted: number): Set<number>[] {
  const free = walls.flatMap(({ masked }, index) => (masked === 'yes' || masked === 'never' ? [] : [index]));
  const found: Set<number>[] = [];
  for (let bits = 0; bits < 2 ** free.length; bits += 1) {
    const chosen = new Set(free.filter((_, place) => Math.floor(bits / 2 ** place) % 2 === 1));
    const washed = walls.filter(({ masked }, index) => masked !== 'yes' && !chosen.has(index));
    const ceiling = Math.min(...washed.map(({ material }) => CEILING[material] ?? NaN));
    if (washed.length > 0 && ceiling >= wanted) found.push(chosen);
  }
  return found;
}

function namesIn(cell: CellValue | undefined): string[] {
  const named = text(cell);
  return named === 'none' ? [] : named.split(', ');
}

function marksOf(line: Line): string[] {
  return text(line['Mark']).split(', ').filter(Boolean);
}

describe('mask or govern, against every subset of masked rows', () => {
  it('masks the one set that every other set contains, or says that there is none', () => {
    let infeasible = 0;
    let masking = 0;
    fc.assert(
      fc.property(fc.array(wall, { minLength: 1, maxLength: 8 }), (walls) => {
        const options = lines('OPTIONS', rangeOf(walls), 'Front', PRICES);
        expect(options.map((line) => line['Class allowed'])).toEqual(CLASSES);
        CLASSES.forEach((wanted, index) => {
          const line = options[index] ?? {};
          const sets = setsThatAllow(walls, wanted);
          if (sets.length === 0) {
            infeasible += 1;
            expect(marksOf(line)).toEqual(['not feasible']);
            expect([...errorsIn(line).keys()]).toEqual([
              'Left unwashed',
              'Masking',
              'Class used',
              'Crew-hours',
              'Water',
              'Price',
            ]);
            return;
          }
          const inAll = walls.flatMap((_, row) =>
            sets.every((set) => set.has(row)) ? [`W${String(row + 1)}`] : [],
          );
          expect(
            sets.some((set) => set.size === inAll.length),
            'the least set is itself one of them',
          ).toBe(true);
          if (inAll.length > 0) masking += 1;
          expect(namesIn(line['Rows to mask'])).toEqual(inAll);
          const least = walls.filter((_, row) => inAll.includes(`W${String(row + 1)}`));
          const area = least.reduce((sum, row) => sum + row.area, 0);
          expect(line['Left unwashed']).toBeCloseTo(area, 9);
        });
      }),
      { seed: 20, numRuns: 150 },
    );
    expect(infeasible).toBeGreaterThan(50);
    expect(masking).toBeGreaterThan(50);
  });

  it('takes what the zone takes once its rows are masked by hand, and marks the cheapest', () => {
    fc.assert(
      fc.property(fc.array(wall, { minLength: 2, maxLength: 8 }), (walls) => {
        const options = lines('OPTIONS', rangeOf(walls), 'Front', PRICES);
        const washedNow = walls.filter(({ masked }) => masked !== 'yes');
        const classNow = Math.min(
          ...washedNow.map(({ material }) => CEILING[material] ?? NaN),
          Math.max(...washedNow.map(needOf)),
        );
        const prices = options.map((line, wanted) => {
          const sets = setsThatAllow(walls, wanted);
          const [least] = sets.sort((a, b) => a.size - b.size);
          if (least === undefined) return Infinity;
          const need = Math.max(
            ...walls.filter(({ masked }, row) => masked !== 'yes' && !least.has(row)).map(needOf),
          );
          const chosen: [string, number] = ['cleaner.class', Math.min(wanted, need)];
          const edited = rangeOf(walls, least);
          const [byHand] = lines('SCHEDULE', edited, 'Front', [...PRICES, chosen]);
          for (const heading of ['Masking', 'Crew-hours', 'Water', 'Price']) {
            expectSame(numberIn(line, heading), numberIn(byHand, heading), 1e-12, heading);
          }
          expect(line['Class used']).toBe(byHand?.['Class']);
          const bid = number('BIDPRICE', edited, 'Front', [...PRICES, chosen]);
          expect(Math.abs(numberIn(line, 'Price') - bid)).toBeLessThanOrEqual(0.005 + 1e-9);
          expect(marksOf(line).includes('as it stands')).toBe(least.size === 0 && wanted === classNow);
          return numberIn(byHand, 'Price');
        });
        const best = Math.min(...prices);
        // Of two that cost the same the milder.
        const cheapest = prices.findIndex((price) => price !== Infinity && price <= best * (1 + 1e-12));
        expect(options.findIndex((line) => marksOf(line).includes('cheapest'))).toBe(cheapest);
        expect(options.filter((line) => marksOf(line).includes('cheapest')).length).toBe(
          cheapest < 0 ? 0 : 1,
        );
      }),
      { seed: 21, numRuns: 60 },
    );
  });
});

const front: readonly Wall[] = [
  { material: 'Red clay brick', area: 800, height: 20, mortar: 'N', residue: 'moderate', masked: '' },
  { material: 'Limestone', area: 60, height: 3, mortar: 'N', residue: 'light', masked: '' },
  { material: 'Cast stone', area: 40, height: 1, mortar: 'N', residue: 'light', masked: 'never' },
  { material: 'Coated glass', area: 120, height: 10, mortar: 'N', residue: 'light', masked: 'yes' },
];

describe('the ladder of one zone', () => {
  // Cast stone, class 2, can never be masked, so class 3 is out of reach; limestone must be masked for class 2.
  it('honours the rows that are never masked, and names them as the reason', () => {
    const options = lines('OPTIONS', rangeOf(front), 'Front', PRICES);
    expect(options.map((line) => line['Rows to mask'])).toEqual([
      'none',
      'none',
      'W2',
      'cannot be masked: W3 (Cast stone)',
    ]);
    expect(options.map((line) => line['Cleaner'])).toEqual([
      'clear water',
      'neutral detergent',
      'buffered mild acid',
      'buffered acid at full label strength',
    ]);
    const messages = new Set(errorsIn(options[3] ?? {}).values());
    expect([...messages]).toEqual(['cannot be masked: W3 (Cast stone)']);
  });

  it('names every row that stands in the way', () => {
    const walls = front.map((row) => (row.material === 'Limestone' ? { ...row, masked: 'never' } : row));
    const options = lines('OPTIONS', rangeOf(walls), 'Front');
    expect(options[2]?.['Rows to mask']).toBe('cannot be masked: W2 (Limestone)');
    expect(options[3]?.['Rows to mask']).toBe('cannot be masked: W2 (Limestone), W3 (Cast stone)');
  });

  it('says that nothing would be left to wash', () => {
    const [, limestone] = front;
    const walls = limestone ? [limestone, { ...limestone, masked: 'yes' }] : [];
    const options = lines('OPTIONS', rangeOf(walls), 'Front', PRICES);
    expect(options.map((line) => line['Rows to mask'])).toEqual([
      'none',
      'none',
      'nothing would be left to wash',
      'nothing would be left to wash',
    ]);
    const masked = lines('OPTIONS', rangeOf(walls, new Set([0])), 'Front', PRICES);
    expect(masked.map((line) => line['Mark'])).toEqual(CLASSES.map(() => 'not feasible'));
  });

  it('marks the fewest crew-hours where labour has no price, and has no price then', () => {
    const options = lines('OPTIONS', rangeOf(front), 'Front', [['price.film', 5000]]);
    expect(options.map((line) => line['Price'])).toEqual([undefined, undefined, undefined, undefined]);
    // Worked out by hand from each rung: masking the limestone saves the scrubbing of 800 ft2 of brick, a class short.
    const hours = CLASSES.slice(0, 3).map((wanted) =>
      number('CREWHOURS', rangeOf(front, wanted === 2 ? new Set([1]) : new Set()), 'Front', [
        ['cleaner.class', wanted],
      ]),
    );
    expect(Math.min(...hours)).toBe(hours[2]);
    expect(options.map((line) => line['Mark'])).toEqual([
      '',
      'as it stands',
      'fewest crew-hours',
      'not feasible',
    ]);
    // The price of film decides once labour has one too.
    const priced = lines('OPTIONS', rangeOf(front), 'Front', [
      ['price.film', 5000],
      ['price.labor', 55],
    ]);
    expect(priced.findIndex((line) => text(line['Mark']).includes('cheapest'))).not.toBe(2);
  });

  it('uses no stronger cleaner than the rows left need', () => {
    // Light residue needs class 1; a red wall would take class 3.
    const [brick] = front;
    const walls = brick ? [{ ...brick, residue: 'light' }] : [];
    const options = lines('OPTIONS', rangeOf(walls), 'Front', PRICES);
    expect(options.map((line) => line['Class used'])).toEqual([0, 1, 1, 1]);
    expect(options.map((line) => text(line['Mark']).includes('as it stands'))).toEqual([
      false,
      true,
      false,
      false,
    ]);
  });

  it('heeds a class that the user chose', () => {
    const options = lines('OPTIONS', rangeOf(front), 'Front', [...PRICES, ['cleaner.class', 1]]);
    expect(options.slice(0, 3).map((line) => line['Class used'])).toEqual([0, 1, 1]);
  });

  it('counts the rows that its rinse runs over', () => {
    const rows = rangeOf(front.map((row) => (row.masked === 'never' ? { ...row, masked: '' } : row)));
    const court = (material: string, masked: string): unknown[] => [
      'C1',
      'Court',
      material,
      50,
      5,
      'N',
      'light',
      masked,
      'Front',
    ];
    const rung = (material: string, masked: string): CellValue[] =>
      lines('OPTIONS', [...rows, court(material, masked)], 'Front').map((line) => line['Rows to mask'] ?? '');
    expect(rung('Limestone', '')).toEqual([
      'none',
      'none',
      'the rinse runs over what may not meet it: C1 (Limestone)',
      'the rinse runs over what may not meet it: C1 (Limestone)',
    ]);
    expect(rung('Cast stone', '')[2]).toBe('W2');
    expect(rung('Cast stone', '')[3]).toBe('the rinse runs over what may not meet it: C1 (Cast stone)');
    expect(rung('Limestone', 'yes')).toEqual(['none', 'none', 'W2', 'W2, W3']);
  });

  it('keeps the rungs that have a number where the cleaner dries too soon', () => {
    const hot = [
      ['weather.air', 100],
      ['weather.surface', 130],
      ['weather.humidity', 10],
      ['weather.wind', 25],
    ];
    const options = lines('OPTIONS', rangeOf(front), 'Front', [...PRICES, ...hot]);
    expect(errorsIn(options[0] ?? {}).size).toBe(0);
    expect(options[0]?.['Mark']).toBe('cheapest');
    const errors = errorsIn(options[2] ?? {});
    expect([...errors.keys()]).toEqual(['Crew-hours', 'Price']);
    expect(errors.get('Price')).toContain('No contact window');
    expect(numberIn(options[2], 'Water')).toBeGreaterThan(0);
  });

  it('spills each zone of the job as it is when asked for alone', () => {
    const job = [
      ...rangeOf(front),
      ['Y1', 'Yard', 'Marble', 90, 9, 'N', 'light', '', ''],
      ['Y2', 'Yard', 'Dark clay brick', 300, 9, 'N', 'heavy', '', ''],
    ];
    const whole = call('OPTIONS', job, null, PRICES) as CellValue[][];
    const [head, ...south] = call('OPTIONS', job, 'Front', PRICES) as CellValue[][];
    const [, ...yard] = call('OPTIONS', job, 'Yard', PRICES) as CellValue[][];
    expect(whole).toEqual([head, ...south, ...yard]);
    expect(yard.map(([, , , toMask]) => toMask)).toEqual(['none', 'Y1', 'Y1', 'Y1']);
  });
});
