import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/quantity/nearest';

describe('nearest names', () => {
  it('are those that the fewest letters are apart, in that order', () => {
    // Letters to change, add or drop, counted by hand: boat 1, gloat 1, coats 2, stone 5.
    expect(nearest('goat', ['stone', 'coats', 'boat', 'gloat'])).toEqual(['boat', 'gloat', 'coats']);
  });

  it('do not mind case and spacing', () => {
    expect(nearest('NORTHCOURT', ['South court', 'North Court', 'Yard'])[0]).toBe('North Court');
  });

  it('put a name that is a part of what was typed, or the other way round, before names of like length', () => {
    // Eight letters lie between "limestone" and "limestone plinth"; a quarter of them count.
    expect(nearest('limestone plinth', ['Limestone', 'Sandstone plint'])[0]).toBe('Limestone');
    expect(nearest('glass', ['Brass', 'Coated glass', 'Grass'])).toEqual(['Grass', 'Coated glass', 'Brass']);
  });

  it('are three at most, and none where there is nothing to offer', () => {
    expect(nearest('a', ['b', 'c', 'd', 'e', 'f'])).toHaveLength(3);
    expect(nearest('a', ['b'])).toEqual(['b']);
    expect(nearest('a', [])).toEqual([]);
  });
});
