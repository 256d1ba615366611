import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';

const INSTALLED = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const VERSION = '153.0.0';

/** Milliseconds that a test waits for what a person would see: a busy machine is slow, not wrong. */
export const PATIENCE = 60_000;

/**
 * A real Chromium: the one that is installed, or else the one in the npm package, with the libraries that the package
 * brings where the machine has none.
 * @returns the browser
 */
export async function launchChromium(): Promise<Browser> {
  const installed = INSTALLED.find((path) => existsSync(path));
  if (installed !== undefined) return chromium.launch({ executablePath: installed, args: ['--no-sandbox'] });
  const directory = await unpacked();
  const executablePath = join(directory, 'chromium');
  const fonts = join(directory, 'fonts.conf');
  const libraries = missesLibraries(executablePath)
    ? { LD_LIBRARY_PATH: join(directory, 'al2023', 'lib') }
    : {};
  return chromium.launch({
    executablePath,
    args: ['--no-sandbox'],
    env: { ...(process.env as Record<string, string>), ...libraries, FONTCONFIG_FILE: fonts },
  });
}

/** Unpacks into a directory of its own and moves it into place, so that tests in parallel do not get in each other's way. */
async function unpacked(): Promise<string> {
  const place = join(tmpdir(), `washdown-chromium-${VERSION}`);
  if (existsSync(place)) return place;
  const own = `${place}-${String(process.pid)}`;
  mkdirSync(own, { recursive: true });
  const { TMPDIR, AWS_EXECUTION_ENV } = process.env;
  process.env['TMPDIR'] = own;
  // The package unpacks its libraries only where it takes the machine for this one.
  process.env['AWS_EXECUTION_ENV'] = 'AWS_Lambda_nodejs20.x';
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    await packaged.executablePath();
  } finally {
    restore('TMPDIR', TMPDIR);
    restore('AWS_EXECUTION_ENV', AWS_EXECUTION_ENV);
  }
  writeFileSync(
    join(own, 'fonts.conf'),
    `<?xml version="1.0"?><fontconfig><dir>/usr/share/fonts</dir><dir>${join(place, 'fonts')}</dir><cachedir>${join(place, 'fonts-cache')}</cachedir></fontconfig>`,
  );
  try {
    renameSync(own, place);
  } catch {
    // Another test was first.
    rmSync(own, { recursive: true });
  }
  return place;
}

function restore(name: string, value: string | undefined): void {
  // eslint-disable-next-line @typescript-eslint/no-dynamic-delete
  if (value === undefined) delete process.env[name];
  else process.env[name] = value;
}

function missesLibraries(executable: string): boolean {
  try {
    return execFileSync('ldd', [executable], { encoding: 'utf8' }).includes('not found');
  } catch {
    return true;
  }
}
