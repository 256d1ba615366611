import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createHash } from 'node:crypto';
import { createContext, runInContext } from 'node:vm';
import webpack from 'webpack';
import { unifiedManifest } from './scripts/unified-manifest.mjs';

const root = dirname(fileURLToPath(import.meta.url));
const DEFAULT_ADDRESS = 'https://localhost:3000';
const HASH_LENGTH = 16;
// What pages and the manifest load that changes from build to build.
const LOADED = /(?<=[="/])(?:functions\.json|functions\.js|taskpane\.js|style\.css)(?=["\s>])/g;
const MORE = 'functions-more.js';
const IN_MANIFEST = /https:\/\/localhost:3000/g;

/** Puts files beside the bundles; with `make`, what it returns. */
class Emit {
  constructor(files) {
    this.files = files;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap('Emit', (compilation) => {
      compilation.hooks.processAssets.tap(
        { name: 'Emit', stage: webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL },
        () => {
          for (const { from, to, make } of this.files) {
            if (from !== undefined && !existsSync(join(root, from))) {
              compilation.errors.push(
                new webpack.WebpackError(`The build needs ${from}, which is not there.`),
              );
              continue;
            }
            const content = make
              ? make(from && readFileSync(join(root, from), 'utf8'))
              : readFileSync(join(root, from));
            compilation.emitAsset(to, new webpack.sources.RawSource(content));
          }
        },
      );
    });
  }
}

/**
 * Names what a page and the manifest load by its content too, so that nobody goes on with an old script after an update;
 * the unified manifest follows from the other one.
 */
class ByContent {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap('ByContent', (compilation) => {
      compilation.hooks.processAssets.tap(
        { name: 'ByContent', stage: webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_TRANSFER },
        (assets) => {
          const hashOf = (name) =>
            createHash('sha256').update(assets[name].source()).digest('hex').slice(0, HASH_LENGTH);
          // The functions that come later are loaded by name from those that come first.
          const first = assets['functions.js'].source().toString();
          const withMore = first.replaceAll(MORE, `${MORE}?v=${hashOf(MORE)}`);
          compilation.updateAsset('functions.js', new webpack.sources.RawSource(withMore));
          for (const page of ['taskpane.html', 'manifest.xml']) {
            const text = assets[page].source().toString();
            const named = text.replace(LOADED, (name) => `${name}?v=${hashOf(name)}`);
            compilation.updateAsset(page, new webpack.sources.RawSource(named));
          }
          const manifest = unifiedManifest(assets['manifest.xml'].source().toString());
          compilation.emitAsset(
            'manifest.json',
            new webpack.sources.RawSource(`${JSON.stringify(manifest, null, 2)}\n`),
          );
        },
      );
    });
  }
}

/** Fails the build where functions.json and the bundle do not name the same functions: the host would say nothing. */
class SameFunctions {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap('SameFunctions', (compilation) => {
      compilation.hooks.processAssets.tap(
        { name: 'SameFunctions', stage: webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT },
        (assets) => {
          // A bundle that did not compile has said so already.
          if (compilation.errors.length > 0) return;
          const ids = new Set();
          const CustomFunctions = { associate: (id) => ids.add(id) };
          runInContext(assets['functions.js'].source().toString(), createContext({ CustomFunctions }));
          const listed = JSON.parse(assets['functions.json'].source()).functions.map(({ id }) => id);
          const apart = [
            ...listed.filter((id) => !ids.has(id)).map((id) => `${id} is listed but not in the bundle`),
            ...[...ids]
              .filter((id) => !listed.includes(id))
              .map((id) => `${id} is in the bundle but not listed`),
          ];
          for (const what of apart) compilation.errors.push(new webpack.WebpackError(`${what}.`));
        },
      );
    });
  }
}

/** functions.json and the page of help come from the same list as the functions themselves. */
function printed(script, ...args) {
  return execFileSync(process.execPath, ['--import', 'tsx', join(root, 'scripts', script), ...args], {
    cwd: root,
  });
}

/** The style sheets of the panels, which stand beside them; the page loads one sheet. */
function panelStyles() {
  return readdirSync(join(root, 'taskpane'), { recursive: true })
    .filter((file) => /[\\/].+\.css$/.test(file))
    .sort()
    .map((file) => readFileSync(join(root, 'taskpane', file), 'utf8'))
    .join('');
}

export default (env = {}) => {
  const address = (env.url ?? DEFAULT_ADDRESS).replace(/\/+$/, '');
  return {
    mode: 'production',
    target: ['web', 'es2022'],
    devtool: false,
    entry: {
      functions: './functions/functions.ts',
      // Shares what functions.js has; the page loads that first.
      'functions-more': { import: './functions/more.ts', dependOn: 'functions' },
      taskpane: { import: './taskpane/main.tsx', dependOn: 'functions' },
    },
    output: {
      path: join(root, 'dist'),
      filename: '[name].js',
      globalObject: 'globalThis',
      // Scripts lie beside the page that loads them; functions.js also runs where there is no page to ask.
      publicPath: '',
      chunkFilename: `[name].js?v=[contenthash:${HASH_LENGTH}]`,
      clean: true,
      // The scripts tell by its age whether the build is up to date, so every build writes every file.
      compareBeforeEmit: false,
    },
    resolve: { extensions: ['.ts', '.tsx', '.js'] },
    module: {
      rules: [
        // Types are checked by `npm run typecheck`, over tests and scripts too.
        {
          test: /\.tsx?$/,
          loader: 'ts-loader',
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
      ],
    },
    plugins: [
      new Emit([
        { from: 'taskpane/taskpane.html', to: 'taskpane.html' },
        { from: 'taskpane/style.css', to: 'style.css', make: (shell) => shell + panelStyles() },
        { from: 'assets/support.html', to: 'support.html' },
        { from: 'assets/privacy.html', to: 'privacy.html' },
        {
          from: 'manifest.xml',
          to: 'manifest.xml',
          make: (text) =>
            text
              .replace(IN_MANIFEST, () => address.replaceAll('&', '&amp;'))
              .replace(/(?<=<Version>)[^<]+/, (given) => env.version ?? given),
        },
        { to: 'functions.json', make: () => printed('print-metadata.ts', address) },
        { to: 'help.html', make: () => printed('print-help.ts') },
        ...[16, 32, 64, 80, 192]
          .map((size) => `assets/icon-${size}.png`)
          .concat('assets/outline-32.png')
          .map((icon) => ({ from: icon, to: icon })),
      ]),
      new SameFunctions(),
      new ByContent(),
    ],
    // A build after the first takes a seventh of the time; anew where these files have changed.
    cache: {
      type: 'filesystem',
      buildDependencies: { config: [fileURLToPath(import.meta.url), join(root, 'tsconfig.json')] },
    },
    performance: { hints: false },
    stats: 'errors-warnings',
  };
};
