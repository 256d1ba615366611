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
  /** Whether errors are handed over as arguments; where not, an error in an argument is the result. */
  readonly takesErrors: boolean;
  readonly run: (...args: unknown[]) => unknown;
}

/** The built worksheet functions by id, in capitals. */
export type Bundle = ReadonlyMap<string, BundledFunction>;

type Run = (...args: unknown[]) => unknown;

/** What a built script finds in its host, and what became of it. */
export interface FunctionHost {
  /** The global of the host with which the script associates its functions. */
  readonly CustomFunctions: object;
  /**
   * The functions, once the script has run.
   * @param metadata text of the generated metadata
   * @returns the functions
   * @throws {Error} where script and metadata do not name the same functions
   */
  bundle(metadata: string): Bundle;
}

/**
 * A host for one built script.
 * @returns the host
 */
export function functionHost(): FunctionHost {
  const associated = new Map<string, Run>();
  return {
    CustomFunctions: {
      associate(first: string | Record<string, Run>, run?: Run) {
        if (typeof first !== 'string') {
          for (const [id, each] of Object.entries(first)) associated.set(id.toUpperCase(), each);
        } else if (run) {
          associated.set(first.toUpperCase(), run);
        }
      },
      Error: HostError,
      ErrorCode: HOST_ERROR_CODES,
    },
    bundle(metadata) {
      const { functions: listed, allowErrorForDataTypeAny: takesErrors = false } = JSON.parse(metadata) as {
        functions: FunctionMetadata[];
        allowErrorForDataTypeAny?: boolean;
      };
      const bundle = new Map<string, BundledFunction>();
      for (const each of listed) {
        const id = each.id.toUpperCase();
        const run = associated.get(id);
        if (!run) {
          throw new Error(`The bundle does not associate ${id}, which its metadata lists. Build again.`);
        }
        bundle.set(id, { metadata: each, takesErrors, run });
      }
      return bundle;
    },
  };
}
