import { spawn, type ChildProcess, type SpawnOptions } from 'node:child_process';
import { resolve } from 'node:path';

/**
 * Starts the page of the workbench, and waits until it says where it is served.
 * @param args the script to run, from the root, and its arguments
 * @param options whether it leads a group of its own processes, to be ended with them
 * @returns the process and the address
 * @throws {Error} with what it printed, where it ends before that
 */
export async function serveWorkbench(
  [script, ...args]: readonly [string, ...string[]],
  options: Pick<SpawnOptions, 'detached'> = {},
): Promise<{ command: ChildProcess; address: string }> {
  const command = spawn(process.execPath, [resolve(script), ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
    ...options,
  });
  const address = await new Promise<string>((found, failed) => {
    let text = '';
    command.once('exit', (code) => {
      failed(new Error(`The workbench ended with ${String(code)}: ${text}`));
    });
    command.stdout.on('data', (data: Buffer) => {
      text += data.toString();
      const [printed] = /http:\S+/.exec(text) ?? [];
      if (printed !== undefined) found(printed);
    });
  });
  return { command, address };
}
