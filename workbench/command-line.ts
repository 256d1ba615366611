import { parseArgs } from 'node:util';

/** A command line that cannot be understood. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

/** Options by their names: one that stands alone, or one with the name of a file. */
export type AcceptedOptions = Readonly<
  Record<string, { readonly type: 'boolean' | 'string'; readonly short?: string }>
>;

/** What a command line says. */
export interface CommandLine {
  /** Whether an option stands there. */
  readonly has: (name: string) => boolean;
  /** The file that an option names. */
  readonly file: (name: string) => string | undefined;
  readonly others: readonly string[];
}

/**
 * Reads a command line; unknown options and missing values are told in our own words.
 * @param args the arguments behind the name of the program
 * @param options the options that are accepted
 * @returns what it says
 * @throws {UsageError} where an option is unknown, given twice, or without its file
 */
export function readCommandLine(args: readonly string[], options: AcceptedOptions): CommandLine {
  const { values, positionals, tokens } = parseArgs({
    args: [...args],
    options,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const given = new Set<string>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, value, inlineValue } = token;
    const accepted = options[name];
    if (!accepted || (accepted.type === 'boolean' && value !== undefined)) {
      throw new UsageError(`Unknown option ${rawName}. Accepted: ${namesOf(options)}.`);
    }
    if (accepted.type === 'string' && (!value || (!inlineValue && value.startsWith('--')))) {
      throw new UsageError(`${rawName} needs the name of a file.`);
    }
    if (given.has(name) && accepted.type === 'string') throw new UsageError(`${rawName} is given twice.`);
    given.add(name);
  }
  return {
    has: (name) => given.has(name),
    file: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
    others: positionals,
  };
}

function namesOf(options: AcceptedOptions): string {
  return Object.entries(options)
    .map(([name, { type }]) => `--${name}${type === 'string' ? ' FILE' : ''}`)
    .join(', ');
}
