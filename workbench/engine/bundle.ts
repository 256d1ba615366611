import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, Script } from 'node:vm';
import { HOST_ERROR_CODES, HostError } from './host-error';

/** A parameter as the generated metadata describes it. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
}

/** A worksheet function as the generated metadata describes it. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result?: { readonly type?: string; readonly dimensionality?: string };
}

/** A function of the bundle, ready to be called. */
export interface BundledFunction {
  readonly metadata: FunctionMetadata;
  readonly run: (...args: unknown[]) => unknown;
}

/** The built worksheet functions by id, in capitals. */
export type Bundle = ReadonlyMap<string, BundledFunction>;

/**
 * Runs a built bundle as the host does and collects the functions that it associates.
 * @param script text of the built script
 * @param metadata text of the generated metadata
 * @returns the functions
 * @throws {Error} where script and metadata do not name the same functions
 */
export function readBundle(script: string, metadata: string): Bundle {
  const associated = new Map<string, (...args: unknown[]) => unknown>();
  const CustomFunctions = {
    associate(
      first: string | Record<string, (...args: unknown[]) => unknown>,
      run?: (...args: unknown[]) => unknown,
    ) {
      if (typeof first !== 'string') {
        for (const [id, each] of Object.entries(first)) associated.set(id.toUpperCase(), each);
      } else if (run) {
        associated.set(first.toUpperCase(), run);
      }
    },
    Error: HostError,
    ErrorCode: HOST_ERROR_CODES,
  };
  const globals: Record<string, unknown> = { CustomFunctions, console };
  globals['self'] = globals;
  new Script(script, { filename: 'functions.js' }).runInContext(createContext(globals));
  const listed = (JSON.parse(metadata) as { functions: FunctionMetadata[] }).functions;
  const bundle = new Map<string, BundledFunction>();
  for (const each of listed) {
    const id = each.id.toUpperCase();
    const run = associated.get(id);
    if (!run) throw new Error(`The bundle does not associate ${id}, which its metadata lists. Build again.`);
    bundle.set(id, { metadata: each, run });
  }
  return bundle;
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
  return readBundle(read('functions.js'), read('functions.json'));
}
