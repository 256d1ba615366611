import { distance } from 'fastest-levenshtein';
import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/quantity/nearest';

describe('nearest names', () => {
  it('rank as a library for the same distance ranks them', () => {
    const known = ['limestone', 'marble', 'granite', 'stucco', 'timber', 'copper', 'caststone'];
    for (const seen of ['limstone', 'marbel', 'granit', 'stuco', 'timbre', 'coper', 'xyzzy']) {
      const best = Math.min(...known.map((name) => distance(seen, name)));
      expect(distance(seen, nearest(seen, known)[0] ?? '')).toBe(best);
    }
  });

  it('offer a name that the words hold before one that merely looks alike', () => {
    expect(nearest('limestone, lower course', ['Lime render, lower', 'Limestone'])[0]).toBe('Limestone');
  });
});
