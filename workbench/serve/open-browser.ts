import { spawn } from 'node:child_process';

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  darwin: ['open'],
  win32: ['cmd', '/c', 'start', ''],
};

/**
 * Opens an address in the browser of whoever sits at this machine; where there is none, nothing happens.
 * @param address the address
 */
export function openBrowser(address: string): void {
  const [command = 'xdg-open', ...args] = OPENERS[process.platform] ?? ['xdg-open'];
  const opener = spawn(command, [...args, address], { stdio: 'ignore', detached: true });
  // The address is printed as well, so that a machine without a browser is no error.
  opener.on('error', () => undefined);
  opener.unref();
}
