import { describe, expect, it } from 'vitest';
import { call, refusal } from './call';

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Residue'],
  ['A', 'North', 'Red clay brick', 100, 'heavy'],
  ['B', 'South', 'Limestone', 100, 'light'],
  ['C', 'Front', 'Coated glass', 100, 'light'],
];

describe('CLASS over the whole job', () => {
  it('names each zone where they differ: no one class would be true', () => {
    expect(refusal(() => call('CLASS', walls))).toEqual({
      type: 'input',
      message:
        'The zones are washed with different classes: North class 3 (buffered acid at full label strength), South class 1 (neutral detergent), Front class 0 (clear water). Accepted: the name of one zone.',
    });
  });

  it('is the class of all where they agree', () => {
    expect(call('CLASS', walls, null, [['cleaner.class', 0]])).toBe(0);
    expect(call('CLASS', [walls[0], walls[2]])).toBe(1);
  });

  it('leaves the other functions an answer', () => {
    expect(call('GOVERNING', walls)).toBe(0);
    expect(call('GOVERNOR', walls)).toBe('Coated glass');
  });
});
