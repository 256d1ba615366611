import { copyFileSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Machine } from './machine';

// Platform documentation, "Uninstall add-ins under development": the name of a value is the add-in's id, its data
// the path of the manifest.
const REGISTRY_KEY = String.raw`HKCU\Software\Microsoft\Office\16.0\WEF\Developer`;
// Platform documentation, "Sideload Office Add-ins on Mac for testing" and "Clear the Office cache" (2025).
const MAC_FOLDER = 'Library/Containers/com.microsoft.Excel/Data/Documents/wef';
// Platform documentation, "Sideload Office Add-ins to Office on the web".
const upload = (
  address: string,
) => `There is no desktop Excel on this platform. Excel on the web takes the manifest by upload: Home, Add-ins,
More Add-ins, My Add-ins, Upload My Add-in. Its browser must trust the certificate: open ${address}/support.html in it
first.`;
const GONE = 'Excel does not look for the add-in any more once it is started again.';
const MAC_CACHE = 'Library/Containers/com.microsoft.Excel/Data/Library/Caches';

/**
 * Puts a manifest where desktop Excel looks for it.
 * @param machine the machine
 * @param manifest path of the manifest
 * @param address where the add-in is served
 * @returns what to do next, in a sentence or two
 */
export function register(machine: Machine, manifest: string, address: string): string {
  if (machine.platform === 'win32') {
    const value = ['/v', idOf(manifest), '/t', 'REG_SZ', '/d', manifest];
    if (!machine.run('reg', ['add', REGISTRY_KEY, ...value, '/f']))
      throw new Error('The registry refused it.');
    return 'Restart Excel: the add-in is in the tab Home itself, or there under Add-ins.';
  }
  if (machine.platform === 'darwin') {
    mkdirSync(join(machine.home, MAC_FOLDER), { recursive: true });
    copyFileSync(manifest, macFile(machine, manifest));
    return 'Restart Excel: the add-in is under Home, Add-ins.';
  }
  return `${upload(address)}\nThe file is ${manifest}`;
}

/**
 * Takes a manifest away again.
 * @param machine the machine
 * @param manifest path of the manifest
 * @returns what became of it, in a sentence
 */
export function unregister(machine: Machine, manifest: string): string {
  if (machine.platform === 'win32') {
    const removed = machine.run('reg', ['delete', REGISTRY_KEY, '/v', idOf(manifest), '/f']);
    return removed ? GONE : 'The add-in was not there.';
  }
  if (machine.platform === 'darwin') {
    rmSync(macFile(machine, manifest), { force: true });
    return `${GONE} Where it still shows, quit Excel and empty the folder ${join(machine.home, MAC_CACHE)}.`;
  }
  return "In Excel on the web the add-in goes when the browser's cache is cleared; it is kept only there.";
}

function macFile({ home }: Machine, manifest: string): string {
  return join(home, MAC_FOLDER, `${idOf(manifest)}.manifest.xml`);
}

function idOf(manifest: string): string {
  const id = /<Id>([^<]+)<\/Id>/.exec(readFileSync(manifest, 'utf8'))?.[1];
  if (id === undefined) throw new Error(`${manifest} has no id.`);
  return id;
}
