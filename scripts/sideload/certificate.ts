import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Machine } from './machine';

/** The platform's own maker of certificates that this machine trusts; fetched only when it is needed. */
export const CERTIFICATES = 'office-addin-dev-certs@3.0.0';

/** What an https server shows, and what it keeps to itself. */
export interface Certificate {
  readonly cert: Buffer;
  readonly key: Buffer;
}

/**
 * A certificate for https://localhost, made and trusted where it is missing or has run out.
 * @param machine the machine
 * @returns the certificate and its key
 */
export function certificate({ home, run }: Machine): Certificate {
  const made = run('npx', ['--yes', '--loglevel=error', CERTIFICATES, 'install']);
  const folder = join(home, '.office-addin-dev-certs');
  const [cert, key] = ['localhost.crt', 'localhost.key'].map((name) => join(folder, name));
  if (!made) {
    throw new Error(
      `The certificate for https://localhost could not be made or trusted: ${CERTIFICATES} failed, as it says above. Excel loads nothing without it.`,
    );
  }
  // The maker ends well at times when it has failed too: what counts is what it left.
  if (!cert || !key || !existsSync(cert) || !existsSync(key)) {
    throw new Error(`There is no certificate for https://localhost in ${folder}.`);
  }
  return { cert: readFileSync(cert), key: readFileSync(key) };
}
