import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, Script } from 'node:vm';
import { functionHost, type Bundle } from './bundle';

// What a script looks up in the globals of a context is asked of the object behind them each time, which takes many
// times as long as arithmetic does. The names of the language are therefore names of the script's own.
const OF_THE_LANGUAGE = [
  'Array',
  'Error',
  'JSON',
  'Map',
  'Math',
  'Number',
  'Object',
  'RegExp',
  'Set',
  'String',
];

function scriptOf(text: string, filename: string): Script {
  return new Script(`{const {${OF_THE_LANGUAGE.join()}}=globalThis;${text}\n}`, { filename });
}

/**
 * Runs a built bundle as the host does and collects the functions that it associates.
 * @param script text of the built script
 * @param metadata text of the generated metadata
 * @param more text of the script with the functions that a host loads when one of them is called
 * @returns the functions
 * @throws {Error} where script and metadata do not name the same functions
 */
export function readBundle(script: string, metadata: string, more?: string): Bundle {
  const host = functionHost();
  const globals: Record<string, unknown> = { CustomFunctions: host.CustomFunctions, console };
  globals['self'] = globals;
  const context = createContext(globals);
  scriptOf(script, 'functions.js').runInContext(context);
  if (more !== undefined) scriptOf(more, 'functions-more.js').runInContext(context);
  return host.bundle(metadata);
}

/**
 * Loads the built bundle.
 * @param directory where functions.js and functions.json are
 * @returns the functions
 * @throws {Error} where the bundle is not built
 */
export function loadBundle(directory: string): Bundle {
  const read = (name: string): string => {
    try {
      return readFileSync(join(directory, name), 'utf8');
    } catch {
      throw new Error(`${join(directory, name)} is missing. Build first: npm run build`);
    }
  };
  return readBundle(read('functions.js'), read('functions.json'), read('functions-more.js'));
}
