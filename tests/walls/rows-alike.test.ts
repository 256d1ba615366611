import { expect, it } from 'vitest';
import { quantityIds } from '../../src/estimate/quantities';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import { rowsAlike } from '../../src/walls/rows-alike';
import { zonesOf } from '../../src/walls/zones';
import { estimateZone } from '../core/made';
import { madeWalls } from '../../workbench/bench/made-walls';

it('rows put together have the sums of the rows by themselves', () => {
  const factors = readFactors([['price.labour', 40]]);
  for (const zone of zonesOf(readWalls(madeWalls(500), factors))) {
    const fewer = rowsAlike(zone.rows);
    expect(fewer.length).toBeLessThan(zone.rows.length);
    const whole = estimateZone(zone, factors).totals;
    const together = estimateZone({ ...zone, rows: fewer }, factors).totals;
    for (const id of quantityIds)
      expect(together[id] / (whole[id] || 1)).toBeCloseTo(whole[id] === 0 ? 0 : 1, 9);
  }
});
