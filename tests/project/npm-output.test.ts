import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { rawFile, WALLS } from '../workbench/raw-workbook';

const folder = mkdtempSync(join(tmpdir(), 'washdown-'));

afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Runs npm as a person would: with the settings of the project, none from the run of the tests. */
function npm(...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !name.toLowerCase().startsWith('npm_config_')),
  );
  const { status, stdout, stderr } = spawnSync('npm', args, {
    encoding: 'utf8',
    env,
    shell: process.platform === 'win32',
  });
  return { status, stdout, stderr };
}

it('a mistyped script is told', () => {
  const { status, stderr } = npm('run', 'estimat');
  expect(status).not.toBe(0);
  expect(stderr).toMatch(/missing script.*estimat/i);
});

it('the estimate as JSON is all that the silent command of the README prints', () => {
  const file = join(folder, 'bid.xlsx');
  const cell = '<row r="1"><c r="A1"><f>WASH.WATER(Walls[#All])</f></c></row>';
  writeFileSync(file, rawFile([WALLS, { name: 'Bid', rows: cell }]));
  const { status, stdout } = npm('run', '--silent', 'estimate', '--', file, '--json');
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({
    cells: [{ sheet: 'Bid', cell: 'A1', formula: '=WASH.WATER(Walls[#All])' }],
  });
}, 60_000);
