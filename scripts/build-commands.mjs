import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { writeDemos } from '../workbench/demo/write-demos';
import { loadBundle } from '../workbench/engine/load-bundle';
import { buildPage } from './build-page';
import { inPlaceOf } from './in-place-of';
import { COMMANDS, MADE_OF, madeOf, root } from './built.mjs';

const PAGE = join(root, 'out', 'workbench');

// Some packages ask for others while they run.
const REQUIRE =
  "import { createRequire as requireOf } from 'node:module'; const require = requireOf(import.meta.url);";

/** Bundles the commands that people wait for, so that they start without a loader of TypeScript. */
async function buildCommands() {
  rmSync(COMMANDS, { recursive: true, force: true });
  await bundled({ estimate: 'workbench/estimate/main.ts', start: 'workbench/serve/main.ts' });
  // Apart: the spreadsheet's engine finds its parts by the order in which they load, which shared parts change.
  await bundled({ rates: 'workbench/rates/main.ts' });
}

function bundled(entryPoints) {
  return build({
    absWorkingDir: root,
    entryPoints,
    outdir: COMMANDS,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    conditions: ['bundled'],
    banner: { js: REQUIRE },
    logLevel: 'error',
  });
}

/** The page with the demo workbooks beside it. */
async function buildWorkbench() {
  await inPlaceOf(PAGE, async (folder) => {
    await buildPage(root, folder);
    await writeDemos(folder, loadBundle(join(root, 'dist')));
  });
}

const made = madeOf();
await Promise.all([buildCommands(), buildWorkbench()]);
mkdirSync(COMMANDS, { recursive: true });
// Last, so that a build that was broken off counts for nothing.
writeFileSync(MADE_OF, JSON.stringify(made));
