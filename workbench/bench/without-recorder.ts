import type { FunctionName } from '../../functions/runs';
import { build, type Plugin } from 'esbuild';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import ts from 'typescript';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

const RECORDERS = ['rec', 'zoneRec', 'rowRec', 'recorded', 'taker'];

/** Puts `undefined` in the place of every recorder that is used, so that the bundler leaves out what it would do. */
const withoutRecorders: ts.TransformerFactory<ts.SourceFile> = (context) => {
  const { factory } = context;
  const nothing = () => factory.createVoidZero();
  const visit = (node: ts.Node): ts.Node => {
    if (ts.isShorthandPropertyAssignment(node) && RECORDERS.includes(node.name.text)) {
      return factory.createPropertyAssignment(node.name, nothing());
    }
    if (!ts.isIdentifier(node) || !RECORDERS.includes(node.text)) {
      return ts.visitEachChild(node, visit, context);
    }
    const { parent } = node;
    const isName =
      (ts.isParameter(parent) || ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent)) &&
      parent.name === node;
    const isMember =
      ts.isBindingElement(parent) ||
      ts.isPropertySignature(parent) ||
      (ts.isPropertyAccessExpression(parent) && parent.name === node);
    return isName || isMember ? node : nothing();
  };
  return (file) => ts.visitEachChild(file, visit, context);
};

const withoutRecorder: Plugin = {
  name: 'without-recorder',
  setup(plugin) {
    plugin.onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
      const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
      const { transformed } = ts.transform(file, [withoutRecorders]);
      const [edited = file] = transformed;
      return { loader: 'ts', contents: ts.createPrinter().printFile(edited) };
    });
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
