import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { failureCounts, failuresOf } from '../../scripts/steady/failures';

const folder = resolve('/bids');

it('the tests that failed in a run are named with their file, and a file that broke outside of them too', () => {
  const report = {
    testResults: [
      {
        name: join(folder, 'tests', 'a.test.ts'),
        status: 'failed',
        assertionResults: [
          { fullName: 'a wall is washed', status: 'passed' },
          { fullName: 'a wall is masked', status: 'failed' },
        ],
      },
      { name: join(folder, 'tests', 'b.test.ts'), status: 'failed', assertionResults: [] },
      {
        name: join(folder, 'tests', 'c.test.ts'),
        status: 'passed',
        assertionResults: [{ fullName: 'a zone is read', status: 'passed' }],
      },
    ],
  };
  expect(failuresOf(report, folder)).toEqual([
    `${join('tests', 'a.test.ts')}: a wall is masked`,
    `${join('tests', 'b.test.ts')}: outside of its tests`,
  ]);
});

it('over several runs it is told how often each failed, and how many runs passed', () => {
  expect(failureCounts([[], ['b'], ['a', 'b'], []])).toEqual([
    'failed 2 of 4  b',
    'failed 1 of 4  a',
    '2 of 4 runs passed',
  ]);
});

it.each([
  ['--runs', 'many'],
  ['--runs', '0'],
  ['--busy', '-1'],
])('%s %s is refused with what is accepted', (option, value) => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scripts/steady/main.ts', `${option}=${value}`],
    { encoding: 'utf8' },
  );
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toContain(`${option} must be a whole number`);
  expect(stderr).toContain(`not "${value}"`);
});
