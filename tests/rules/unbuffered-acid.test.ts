import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { refusal } from '../functions/call';

const refused = (value: unknown): string => refusal(() => readFactors([['cleaner.class', value]])).message;

// BIA Technical Note 20: unbuffered muriatic acid is not to be used.
describe('unbuffered acid', () => {
  it.each<[unknown, string]>([
    ['muriatic acid', '"muriatic acid"'],
    ['Muriatic', '"Muriatic"'],
    ['unbuffered acid', '"unbuffered acid"'],
    ['raw acid', '"raw acid"'],
    ['hydrochloric acid 1:9', '"hydrochloric acid 1:9"'],
    [4, '4'],
    [10, '10'],
  ])('asked for as %j is answered, and not offered', (value, seen) => {
    expect(refused(value)).toBe(
      `Row 1 (cleaner.class), column value: ${seen} cannot be used. Accepted: 0 to 3 or by need. Unbuffered acid is not offered: BIA Technical Note 20 advises against it.`,
    );
  });

  it.each<[unknown, string]>([
    ['buffered acid', '"buffered acid"'],
    ['detergent', '"detergent"'],
    [2.5, '2.5'],
    [-1, '-1'],
    ['3', '"3" (a number stored as text)'],
    [true, 'TRUE'],
  ])('is not what %j asks for', (value, seen) => {
    expect(refused(value)).toBe(
      `Row 1 (cleaner.class), column value: ${seen} cannot be used. Accepted: 0 to 3 or by need.`,
    );
  });

  it('has no class: 0 to 3 are taken', () => {
    for (const value of [0, 1, 2, 3]) expect(readFactors([['cleaner.class', value]]).chosenClass).toBe(value);
    for (const text of ['by need', 'By Need', 'BYNEED'])
      expect(readFactors([['cleaner.class', text]]).chosenClass).toBeUndefined();
  });
});
