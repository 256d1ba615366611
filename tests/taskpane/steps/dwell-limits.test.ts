import { expect, it } from 'vitest';
import { dwellLimits } from '../../../taskpane/steps/dwell-limits';
import { estimated } from '../../site/job';

const row = (name: string, material: string) => [
  ...[name, 'Z', 1, material, 400, 10, 0, 0, 0, 'N', 'moderate', 10, 'no', ''],
];

function limits(rows: unknown[][], factors: unknown[][] = []) {
  const job = estimated(rows, factors);
  const [zone] = job.zones;
  if (!zone) throw new Error('no zone');
  return dwellLimits(zone, job.factors);
}

it('tells when the plan starts to rinse, and when the last point has had its maximum dwell', () => {
  // A patch of 5 / (0.11859 + 0.14167) = 19.212 ft2 is covered at 10 ft2/min and scrubbed at 0.14167 min/ft2.
  const alike = limits([row('A', 'Red clay brick'), row('B', 'Red clay brick')]);
  const { least, most, rinseAt, rinseAtMost, lastBy } = alike;
  expect([least, most, rinseAtMost]).toEqual([3, 5, undefined]);
  expect(rinseAt).toBeCloseTo(19.212 * (0.1 + 0.14167), 3);
  expect(lastBy).toBeCloseTo(1.9212 + 5, 3);
});

it('tells the first and the last start where walls differ, and takes the last point that comes first', () => {
  // At class 1, s = 0.33333: 5 / (0.6 / 3.5777 + s) = 9.979 ft2 of sand-faced, 11.064 ft2 of red brick.
  const { rinseAt, rinseAtMost, lastBy } = limits([row('A', 'Sand-faced brick'), row('B', 'Red clay brick')]);
  expect(rinseAt).toBeCloseTo(9.979 * (0.1 + 0.33333), 2);
  expect(rinseAtMost).toBeCloseTo(11.064 * (0.1 + 0.33333), 2);
  expect(lastBy).toBeCloseTo(0.9979 + 5, 3);
});

it('has no patch to tell of under clear water', () => {
  const { rinseAt, lastBy } = limits([row('A', 'Marble')]);
  expect([rinseAt, lastBy]).toEqual([undefined, undefined]);
});
