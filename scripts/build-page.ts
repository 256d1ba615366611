import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { noticesOf, packagesOf, shippedPackages } from './licence-notices.mjs';

const PLATFORM_SCRIPT = /<script src="?https:\/\/[^">]+\/office\.js"?><\/script>/;

/**
 * Puts the page together: the spreadsheet, and beside it the built pane as it is, but for the platform's script.
 * @param root folder of the project, the add-in built
 * @param folder where the page goes; what is there is removed
 * @throws {Error} where something that it is made of is missing
 */
export async function buildPage(root: string, folder: string): Promise<void> {
  const source = join(root, 'workbench', 'page');
  const pane = join(folder, 'pane');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  cpSync(join(root, 'dist'), pane, { recursive: true });
  cpSync(join(root, 'assets', 'icon-32.png'), join(folder, 'assets', 'icon-32.png'));
  cpSync(join(source, 'workbench.html'), join(folder, 'workbench.html'));
  const html = readFileSync(join(pane, 'taskpane.html'), 'utf8');
  if (!PLATFORM_SCRIPT.test(html)) throw new Error("The pane does not load the platform's script any more.");
  writeFileSync(
    join(pane, 'taskpane.html'),
    html.replace(PLATFORM_SCRIPT, '<script src="host.js"></script>'),
  );
  const { metafile } = await build({
    entryPoints: {
      workbench: join(source, 'main.ts'),
      'workbench-style': join(source, 'workbench.css'),
      'pane/host': join(source, 'pane-host.ts'),
    },
    outdir: folder,
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    define: { 'process.env.NODE_ENV': '"production"', global: 'globalThis' },
    logLevel: 'error',
    metafile: true,
  });
  // The pane has packages of its own.
  const bundled = [...packagesOf(root, Object.keys(metafile.inputs)), ...shippedPackages(root)];
  writeFileSync(join(folder, 'licences.txt'), noticesOf(bundled));
}
