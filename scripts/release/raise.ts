/** The files that say a version, and what they hold. */
export type VersionFiles = Readonly<
  Record<
    'package.json' | 'package-lock.json' | 'manifest.xml' | 'CHANGELOG.md' | 'src/rules/version.ts',
    string
  >
>;

/** Why no release can be made. */
export class ReleaseError extends Error {
  override readonly name = 'ReleaseError';
}

interface Lock {
  version: string;
  readonly packages: { readonly '': { version: string } };
}

const THREE_NUMBERS = /^\d+\.\d+\.\d+$/;
const IN_PACKAGE = /(?<=^ {2}"version": ")[^"]+/m;
const IN_MANIFEST = /(?<=<Version>)\d+\.\d+\.\d+(?=\.\d+<\/Version>)/;
const IN_RULES = /(?<=RULES_VERSION = ')\d+/;

/**
 * The same files with a higher version, and the changelog's part of what is next under its number.
 * @param files the files as they are
 * @param version three numbers
 * @param withRules whether the version of the rules rises too: a number has changed
 * @returns the files as they are to be
 * @throws {ReleaseError} where the version is not higher, or the changelog says nothing of what is next
 */
export function raised(files: VersionFiles, version: string, withRules: boolean): VersionFiles {
  for (const now of [found(files['package.json'], IN_PACKAGE), found(files['manifest.xml'], IN_MANIFEST)]) {
    if (THREE_NUMBERS.test(version) && isHigher(version, now)) continue;
    throw new ReleaseError(`"${version}" cannot follow ${now}. Accepted: three higher numbers, as 1.2.0.`);
  }
  const rules = String(Number(found(files['src/rules/version.ts'], IN_RULES)) + 1);
  const changes = headed(files['CHANGELOG.md'], 'Next', `Version ${version}`);
  return {
    'package.json': files['package.json'].replace(IN_PACKAGE, version),
    'package-lock.json': inLock(files['package-lock.json'], version),
    'manifest.xml': files['manifest.xml'].replace(IN_MANIFEST, version),
    'CHANGELOG.md': withRules ? headed(changes, 'Next rules', `Rules ${rules}`) : changes,
    'src/rules/version.ts': withRules
      ? files['src/rules/version.ts'].replace(IN_RULES, rules)
      : files['src/rules/version.ts'],
  };
}

function found(text: string, pattern: RegExp): string {
  const [version] = pattern.exec(text) ?? [];
  if (version === undefined) throw new ReleaseError('A file states no version where it did.');
  return version;
}

function isHigher(version: string, than: string): boolean {
  return version.localeCompare(than, 'en', { numeric: true }) > 0;
}

function inLock(text: string, version: string): string {
  const lock = JSON.parse(text) as Lock;
  lock.version = version;
  lock.packages[''].version = version;
  return `${JSON.stringify(lock, null, 2)}\n`;
}

/** Gives a part of the changelog its heading; a part without a text says nothing. */
function headed(changelog: string, from: string, to: string): string {
  const part = new RegExp(String.raw`^## ${from}\n\s*(?=[^#\s])`, 'm');
  if (!part.test(changelog)) {
    throw new ReleaseError(
      `CHANGELOG.md says nothing under "## ${from}". Accepted: what changes for those who use it.`,
    );
  }
  return changelog.replace(part, `## ${to}\n\n`);
}
