import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import { refusal } from '../functions/call';

const read = (label: string) =>
  readWalls(
    [
      ['Wall', 'Material', 'Area'],
      ['A', 'CMU', 10],
      [label, 'CMU', 10],
    ],
    readFactors(null),
  );

describe('a row that sums others', () => {
  it.each([
    'Total',
    'TOTAL:',
    'Totals',
    'Grand total',
    'Subtotal',
    'Sub-total north',
    'North total',
    'Total area',
  ])('%s is refused, whatever else stands in it', (label) => {
    expect(refusal(() => read(label)).message).toBe(
      `Row 3 (${label}), column Wall: "${label}", which would count its walls twice, cannot be used. Accepted: walls alone: end the range above it, or name the row otherwise where it is a wall.`,
    );
  });

  it('is refused too where its label stands in another column', () => {
    const rows = [
      ['Wall', 'Zone', 'Material', 'Area'],
      ['A', 'North', 'CMU', 10],
      ['', 'Total', '', 10],
    ];
    expect(refusal(() => readWalls(rows, readFactors(null))).message).toContain(
      'Row 3, column Wall: "Total", which would count its walls twice',
    );
  });

  it.each(['Totalizer room', 'Totem wall', 'Subbasement', 'Hotel lobby'])('%s is a wall', (label) => {
    expect(read(label)).toHaveLength(2);
  });
});
