import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { makeReady, root } from './built.mjs';

makeReady();

function run(...args) {
  const { status } = spawnSync(process.execPath, [join(root, 'scripts/run-built.mjs'), ...args], {
    cwd: root,
    env: { ...process.env, INIT_CWD: root },
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

run('workbench/demo/main.ts');
run('workbench/estimate/main.ts', 'out/demo-bid-us.xlsx');
console.log(`
The workbooks are out/demo-bid-us.xlsx and out/demo-bid-metric.xlsx: open them in any spreadsheet.
Change a quantity or a material, save, and work them out again:
  npm run estimate -- out/demo-bid-us.xlsx`);
