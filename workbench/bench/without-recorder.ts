import type { FunctionName } from '../../functions/runs';
import { build, type Plugin } from 'esbuild';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** Takes every word about the recorder out of the core, so that nothing is left to cost anything. */
const withoutRecorder: Plugin = {
  name: 'without-recorder',
  setup(plugin) {
    plugin.onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => ({
      loader: 'ts',
      contents: readFileSync(path, 'utf8')
        .replace(/\brec(orded)?\?\./g, 'undefined?.')
        .replace(/if \(rec\)/g, 'if (false)')
        .replace(/!rec\b/g, 'true')
        .replace(/\|\| rec\b/g, '|| false'),
    }));
  },
};

/** The worksheet functions as one module. */
export interface Bundle {
  readonly runs: Readonly<Record<FunctionName, (args: readonly unknown[]) => unknown[][]>>;
}

/**
 * Bundles the worksheet functions, as they are or without the recorder.
 * @param recorder whether the recorder stays in
 * @returns the module
 */
export async function bundled(recorder: boolean): Promise<Bundle> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const outfile = join(folder, 'functions.mjs');
  try {
    await build({
      stdin: {
        contents:
          "import { runs as core } from './runs'; import { moreRuns } from './more-runs'; export const runs = { ...core, ...moreRuns };",
        resolveDir: join(root, 'functions'),
      },
      bundle: true,
      format: 'esm',
      minifySyntax: true,
      outfile,
      plugins: recorder ? [] : [withoutRecorder],
    });
    return (await import(pathToFileURL(outfile).href)) as Bundle;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
