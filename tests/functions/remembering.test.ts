import { describe, expect, it, vi } from 'vitest';
import { remembering } from '../../functions/remembering';

const range = (): unknown[][] => [
  ['Wall', 'Area', 'Note'],
  ['A', 100, ''],
  ['B', 250.5, null],
];
const fresh = (cells: unknown[][]): unknown[][] => cells.map((row) => [...row]);
/** A reader that counts, and gives what nobody else gives. */
const counted = () => {
  const read = vi.fn((walls: unknown, more?: unknown) => ({ walls, more }));
  return { read, ask: remembering(read) };
};

describe('a function that remembers', () => {
  it('is run once for ranges with the same cells, each in an array of its own', () => {
    const { read, ask } = counted();
    const first = ask(range(), 'x');
    for (let again = 0; again < 2000; again++) expect(ask(range(), 'x')).toBe(first);
    expect(read).toHaveBeenCalledTimes(1);
    expect(first).toEqual({ walls: range(), more: 'x' });
  });

  it.each<[string, unknown]>([
    ['the first heading', range().with(0, ['Walls', 'Area', 'Note'])],
    ['the last cell', range().with(2, ['B', 250.5, 'x'])],
    ['a number by its last digit', range().with(2, ['B', 250.50000000000003, null])],
    ['case', range().with(1, ['a', 100, ''])],
    ['a text of the same digits', range().with(1, ['A', '100', ''])],
    ['one blank for another', range().with(2, ['B', 250.5, ''])],
    ['a row more', [...range(), ['C', 1, '']]],
    ['a row less', range().slice(0, 2)],
    ['a cell more', range().with(1, ['A', 100, '', ''])],
    ['the same cells in other rows', [...range().slice(0, 1), ['A'], [100, '', 'B', 250.5, null]]],
    ['no range', 'Wall'],
  ])('is run again where the range differs by %s', (_, other) => {
    const { read, ask } = counted();
    ask(range());
    expect(ask(other)).toEqual({ walls: other, more: undefined });
    expect(read).toHaveBeenCalledTimes(2);
    expect(ask(range()).walls).toEqual(range());
    expect(read).toHaveBeenCalledTimes(2);
  });

  it('is run again where another argument differs, a range or a single value', () => {
    const { read, ask } = counted();
    for (const more of [null, '', 'SI', [['units', 'SI']], [['units', 'US']], [[null]], undefined]) {
      expect(ask(range(), more).more).toEqual(more);
    }
    expect(read).toHaveBeenCalledTimes(7);
  });

  it('is not led astray by a range that the caller changes afterwards', () => {
    const { read, ask } = counted();
    const mine = range();
    const [, first = []] = mine;
    const before = ask(mine);
    first[1] = 999;
    expect(ask(mine).walls).toEqual(range().with(1, ['A', 999, '']));
    expect(before.walls).toEqual(range());
    expect(ask(range())).toBe(before);
    expect(read).toHaveBeenCalledTimes(2);
  });

  it('remembers several ranges used in turn, and lets go of old ones', () => {
    const { read, ask } = counted();
    const numbered = (number: number): unknown[][] => range().with(1, ['A', number, '']);
    for (let round = 0; round < 10; round++) {
      for (const number of [1, 2]) expect(ask(numbered(number)).walls).toEqual(numbered(number));
    }
    expect(read).toHaveBeenCalledTimes(2);
    for (let number = 3; number < 40; number++) ask(numbered(number));
    expect(read).toHaveBeenCalledTimes(39);
    expect(ask(numbered(1)).walls).toEqual(numbered(1));
    expect(read).toHaveBeenCalledTimes(40);
  });

  it('throws each time what it threw, and then answers again', () => {
    const read = vi.fn((walls: unknown): number => {
      const [[cell] = []] = walls as unknown[][];
      if (typeof cell !== 'number') throw new Error(`not a number: ${String(cell)}`);
      return cell;
    });
    const ask = remembering(read);
    for (let again = 0; again < 3; again++) expect(() => ask([['#REF!']])).toThrow('not a number: #REF!');
    expect(read).toHaveBeenCalledTimes(3);
    expect(ask([[7]])).toBe(7);
  });

  it('takes NaN for something new, since it equals nothing', () => {
    const { read, ask } = counted();
    ask([[NaN]]);
    ask([[NaN]]);
    expect(read).toHaveBeenCalledTimes(2);
  });

  it('neither copies nor remembers a very long range', () => {
    const { read, ask } = counted();
    const long = Array.from({ length: 20_000 }, (_, row) => [`W${String(row)}`]);
    expect(ask(long).walls).toBe(long);
    expect(ask(fresh(long)).walls).toEqual(long);
    expect(read).toHaveBeenCalledTimes(2);
  });
});
