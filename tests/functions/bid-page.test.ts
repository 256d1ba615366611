import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../functions/worksheet-function';
import { number, spill } from './call';

const HEAD = [
  'Wall',
  'Zone',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Masked',
];
const WALLS = [
  [...HEAD, 'Mortar', 'Residue'],
  ['S-1', 'South', 'Red clay brick', 1200, 14, 200, 180, 3, 'no', 'N', 'moderate'],
  ['S-2', 'South', 'Red clay brick', 800, 14, 0, 0, 0, 'no', '', ''],
  ['S-3', 'South', 'Limestone', 300, 3, 0, 0, 0, 'yes', 'N', 'light'],
  ['S-4', 'South', 'Coated glass', 100, 3, 0, 0, 0, 'yes', '', ''],
  ['N-1', 'North', 'Marble', 200, 10, 0, 0, 0, 'only', 'N', 'light'],
  ['N-2', 'North', 'Granite', 400, 10, 0, 0, 0, 'no', 'N', 'light'],
];
const PRICES = [
  ['price.labor', 60],
  ['cleaner.class', 1],
];
const ALTERNATES = [
  ['Alternate', 'Wall', 'Column', 'Value'],
  ['Granite by others', 'N-2', 'Masked', 'only'],
];

const page = (...args: readonly unknown[]): CellValue[][] => spill('BIDPAGE', WALLS, ...args);

/** The lines of a part as a reader takes them: cut sentences put together again. */
function part(lines: readonly CellValue[][], wanted: string): string {
  const from = lines.findIndex(([name]) => name === wanted);
  const behind = lines.slice(from + 1).findIndex(([name]) => name !== '');
  return lines
    .slice(from, behind < 0 ? undefined : from + 1 + behind)
    .map(([, text]) => (typeof text === 'string' ? text : ''))
    .join(' ');
}
const line = (lines: readonly CellValue[][], text: string): CellValue[] =>
  lines.find(([, each]) => each === text)?.slice(2) ?? [];

describe('the page to send', () => {
  it('tells the scope from the walls: 1,200 - 200 + 800 of brick washed, the rest masked', () => {
    const scope = part(page(null, PRICES), 'Scope');
    expect(scope).toContain('South: wash 1,800 ft² of red clay brick with class 1 (neutral detergent).');
    expect(scope).toMatch(
      /South: mask 300 ft² of limestone, and wash it afterwards with class \d \([a-z ]+\)\./,
    );
    expect(scope).toContain('South: mask 100 ft² of coated glass.');
    expect(scope).toContain('South: mask openings of 200 ft², 3 fixtures.');
    expect(scope).toContain('North: mask 200 ft² of marble; its wash is out of scope.');
    expect(scope).toContain('North: wash 400 ft² of granite');
  });

  it('follows the walls', () => {
    const without = spill(
      'BIDPAGE',
      WALLS.filter(([wall]) => wall !== 'S-2'),
      null,
      PRICES,
    );
    expect(part(without, 'Scope')).toContain('South: wash 1,000 ft² of red clay brick');
    expect(line(without, 'Washed area')).toEqual([1700, 'ft²', '']);
  });

  it('has the quantities and the price of the other functions, the price in cents, the rate by division', () => {
    const lines = page(null, PRICES);
    const price = number('BIDPRICE', WALLS, null, PRICES);
    // 1,800 + 300 + 400.
    expect(line(lines, 'Washed area')).toEqual([2500, 'ft²', '']);
    expect(line(lines, 'Water')[0]).toBe(Math.round(number('WATER', WALLS, null, PRICES)));
    expect(line(lines, 'Labor-hours')[0]).toBe(Math.round(number('LABORHOURS', WALLS, null, PRICES)));
    expect(line(lines, 'Price of the wash-down')).toEqual(['', '', price]);
    expect(line(lines, 'Price per area')).toEqual(['', 'per ft²', Math.round(price / 25) / 100]);
    expect(line(lines, 'Area per labor-hour')[0]).toBe(
      Math.round(2500 / number('LABORHOURS', WALLS, null, PRICES)),
    );
  });

  it('says what is assumed, and who does what has no price', () => {
    const lines = page(null, PRICES);
    const clarified = part(lines, 'Clarifications');
    expect(clarified).toContain('Mortar is not stated on 1 wall: Type N is assumed.');
    expect(clarified).toContain('Residue is not stated on 1 wall');
    expect(clarified).toContain('20 ft² at least');
    expect(clarified).toContain('7 days later');
    expect(clarified).toContain('below 40 °F');
    expect(part(lines, 'Not included')).toContain('Water: by others, since no price is given for it');
    expect(part(page(null, [...PRICES, ['price.water', 0.02]]), 'Not included')).not.toContain('Water:');
    expect(
      part(page(null, [...PRICES, ['scaffold', 'yes'], ['access.kind', 'scaffold']]), 'Included'),
    ).toContain('Erecting and dismantling the scaffold');
  });

  it('names the alternates of a table with what they deduct, and none without', () => {
    const lines = page(null, PRICES, ALTERNATES);
    const spilled = spill('ALTERNATES', WALLS, ALTERNATES, null, PRICES);
    const place = spilled[0]?.indexOf('Add or deduct') ?? -1;
    const deducted = spilled.find(([name]) => name === 'Granite by others')?.[place];
    const found = lines.find(([name]) => name === 'Alternates');
    expect(found?.[1]).toBe('Granite by others: Masked only: N-2; deduct.');
    expect(deducted).toBeLessThan(0);
    expect(found?.[4]).toBe(deducted);
    expect(page(null, PRICES).some(([name]) => name === 'Alternates')).toBe(false);
  });

  it('has no price where labor has none, and one zone where one is asked for', () => {
    expect(part(page(null, null), 'Price')).toBe('No labor price is given, so there is no price.');
    expect(part(page('North', PRICES), 'Scope')).not.toContain('South');
  });

  it('keeps every line within the column of the page', () => {
    for (const [, text] of page(null, PRICES, ALTERNATES))
      expect((text as string).length).toBeLessThanOrEqual(80);
  });

  it('says why there are no numbers where no cleaner can dwell long enough', () => {
    // A patch of 20 ft2 takes longer to apply than a dwell of a minute.
    const slow = [...PRICES, ['dwell.least', 0.5], ['dwell.most', 1], ['patch.least', 20]];
    const lines = page(null, slow);
    expect(part(lines, 'Price')).toMatch(/patch|dwell/);
    expect(lines.some(([, , quantity, , money]) => quantity !== '' || money !== '')).toBe(false);
    expect(part(lines, 'Scope')).toContain('1,800 ft² of red clay brick');
  });
});
