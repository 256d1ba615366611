import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';

const script = (limits: string, work: string): string[] => [
  ...['--import', 'tsx', '--input-type=module', '-e'],
  `import { watch } from './workbench/estimate/watch.ts'; const rest = watch(${limits}); ${work} await rest(); console.log('done');`,
];

it.each([
  ['goes on without end', '1, 1e12', 'for (;;);', 'takes longer than 1 seconds'],
  [
    'takes more and more memory',
    '100, 400e6',
    'const all = []; for (;;) all.push(Buffer.alloc(1e6, 1));',
    'MB of memory',
  ],
])('work that %s is given up in a sentence', (_, limits, work, sentence) => {
  const { stderr, stdout, signal } = spawnSync(process.execPath, script(limits, work), { encoding: 'utf8' });
  expect(stderr).toContain(sentence);
  expect([stdout, signal]).toEqual(['', 'SIGKILL']);
});

it('work that ends in time is left alone', () => {
  const { stdout, status } = spawnSync(process.execPath, script('100, 1e12', ''), { encoding: 'utf8' });
  expect([stdout, status]).toEqual(['done\n', 0]);
});
