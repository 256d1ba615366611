import { expect, it } from 'vitest';
import { column, spill } from '../functions/call';

const walls = (neverMasked: string, receives: string): unknown[][] => [
  ['Wall', 'Zone', 'Material', 'Area', 'Residue', 'Masked', 'Receives'],
  ['A-1', 'Upper', 'Red clay brick', 100, 'heavy', '', ''],
  ['A-2', 'Upper', 'Limestone', 40, '', neverMasked, ''],
  ['A-3', 'Upper', 'Stucco', 30, '', neverMasked, ''],
  ['B-1', 'Lower', 'Marble', 20, '', '', receives],
  ['B-2', 'Lower', 'Limestone', 20, '', '', receives],
];
const whyNot = (range: unknown[][]): unknown[] =>
  column(spill('OPTIONS', range, 'Upper'), 'Rows masked').slice(1);

it('every wall that stands in the way of a class is named, not the first alone', () => {
  // Limestone and stucco take class 1, so that class 2 is the first that they forbid.
  expect(whyNot(walls('never', ''))[2]).toContain('cannot be masked: A-2 (Limestone), A-3 (Stucco)');
  // Marble takes clear water alone; limestone below takes class 1.
  const wetted = whyNot(walls('', 'Upper'));
  expect(wetted[1]).toContain('the rinse runs over what it must not touch: B-1 (Marble)');
  expect(wetted[1]).not.toContain('B-2');
  expect(wetted[2]).toContain(': B-1 (Marble), B-2 (Limestone)');
});
