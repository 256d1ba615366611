import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer, request, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { certificate } from '../../scripts/sideload/certificate';
import { filesOf } from '../../workbench/serve/files-of';
import type { Machine } from '../../scripts/sideload/machine';
import { register, unregister } from '../../scripts/sideload/register';

const MANIFEST = resolve('manifest.xml');
const ADDRESS = 'https://localhost:3010';
const ID = '8f6a1c52-3b7d-4e0a-9c41-d2e85f07ab36';

let home = '';
let ran: string[][] = [];

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'sideload-'));
  ran = [];
});
afterEach(() => {
  rmSync(home, { recursive: true });
});

function machine(platform: NodeJS.Platform, works = true): Machine {
  const run: Machine['run'] = (program, args) => {
    ran.push([program, ...args]);
    return works;
  };
  return { platform, home, run };
}

describe('where desktop Excel looks for the add-in', () => {
  // As the platform documents it: see scripts/sideload/register.ts.
  const key = String.raw`HKCU\Software\Microsoft\Office\16.0\WEF\Developer`;

  it('on Windows: a value of the registry, named by the id', () => {
    expect(register(machine('win32'), MANIFEST, ADDRESS)).toContain('Restart Excel');
    expect(unregister(machine('win32'), MANIFEST)).toContain('does not look');
    expect(ran).toEqual([
      ['reg', 'add', key, '/v', ID, '/t', 'REG_SZ', '/d', MANIFEST, '/f'],
      ['reg', 'delete', key, '/v', ID, '/f'],
    ]);
  });

  it('on Windows, a registry that refuses is told', () => {
    expect(() => register(machine('win32', false), MANIFEST, ADDRESS)).toThrow('registry');
    expect(unregister(machine('win32', false), MANIFEST)).toContain('was not there');
  });

  it('on a Mac: a copy in the folder that Excel may read', () => {
    const folder = join(home, 'Library', 'Containers', 'com.microsoft.Excel', 'Data', 'Documents', 'wef');
    expect(unregister(machine('darwin'), MANIFEST)).toContain('does not look');
    register(machine('darwin'), MANIFEST, ADDRESS);
    expect(readdirSync(folder)).toEqual([`${ID}.manifest.xml`]);
    expect(readFileSync(join(folder, `${ID}.manifest.xml`))).toEqual(readFileSync(MANIFEST));
    unregister(machine('darwin'), MANIFEST);
    expect(readdirSync(folder)).toEqual([]);
    expect(ran).toEqual([]);
  });

  it('elsewhere: nowhere, so it says what to upload', () => {
    expect(register(machine('linux'), MANIFEST, ADDRESS)).toContain(`Upload My Add-in`);
    expect(register(machine('linux'), MANIFEST, ADDRESS)).toContain(MANIFEST);
    expect(register(machine('linux'), MANIFEST, ADDRESS)).toContain(`${ADDRESS}/support.html`);
    unregister(machine('linux'), MANIFEST);
    expect(readdirSync(home)).toEqual([]);
    expect(ran).toEqual([]);
  });
});

describe('the certificate for https://localhost', () => {
  it("is what the platform's own program left", () => {
    const { run, ...rest } = machine('linux');
    const makes: Machine['run'] = (program, args) => {
      mkdirSync(join(home, '.office-addin-dev-certs'));
      for (const name of ['crt', 'key'])
        writeFileSync(join(home, '.office-addin-dev-certs', `localhost.${name}`), `the ${name}`);
      return run(program, args);
    };
    const { cert, key } = certificate({ ...rest, run: makes });
    expect([String(cert), String(key)]).toEqual(['the crt', 'the key']);
    expect(ran).toEqual([['npx', '--yes', '--loglevel=error', 'office-addin-dev-certs@3.0.0', 'install']]);
  });

  it('is missed where the program fails, whatever an earlier one left', () => {
    mkdirSync(join(home, '.office-addin-dev-certs'));
    for (const name of ['crt', 'key'])
      writeFileSync(join(home, '.office-addin-dev-certs', `localhost.${name}`), 'old');
    expect(() => certificate(machine('darwin', false))).toThrow(
      'The certificate for https://localhost could not be made or trusted',
    );
  });

  it('is missed where the program left none', () => {
    expect(() => certificate(machine('darwin'))).toThrow(`no certificate for https://localhost in ${home}`);
  });
});

it('the server gives the files of its folder and nothing outside of it', async () => {
  mkdirSync(join(home, 'served', 'assets'), { recursive: true });
  writeFileSync(join(home, 'secret.json'), '{}');
  writeFileSync(join(home, 'served', 'functions.json'), '{"functions":[]}');
  writeFileSync(join(home, 'served', 'assets', 'a.png'), 'png');
  const server = createServer(filesOf(join(home, 'served'), { others: true })).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  // Not fetch, which would tidy a path up before it is asked for.
  const ask = async (path: string) => {
    const [response] = (await once(request({ port, path, host: '127.0.0.1' }).end(), 'response')) as [
      IncomingMessage,
    ];
    return {
      status: response.statusCode,
      headers: response.headers,
      text: (await response.toArray()).join(''),
    };
  };
  expect(await ask('/functions.json?v=1')).toMatchObject({
    status: 200,
    // Platform documentation: Excel on the web reads it from another origin.
    headers: { 'content-type': 'application/json', 'access-control-allow-origin': '*' },
    text: '{"functions":[]}',
  });
  expect(await ask('/assets/a.png')).toMatchObject({ status: 200, text: 'png' });
  for (const path of [
    '/',
    '/assets',
    '/no.js',
    '/../secret.json',
    '/..%2fsecret.json',
    '/%2e%2e/secret.json',
  ])
    expect([path, (await ask(path)).status]).toEqual([path, 404]);
  server.close();
});

it.each([
  [['--port', '0'], 'a whole number from 1 to 65535'],
  [['--port=x'], 'a whole number from 1 to 65535'],
  [['--port', '3011'], 'npm run build -- --env url=https://localhost:3011'],
])('a port that cannot be served is told before anything is done: %j', (args, because) => {
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scripts/sideload/main.ts', ...args],
    {
      encoding: 'utf8',
      env: { ...process.env, HOME: home },
    },
  );
  expect(status).toBe(1);
  expect(stderr).toContain(because);
  expect(existsSync(join(home, '.office-addin-dev-certs'))).toBe(false);
});

it('an option that is not known is told before anything is done', () => {
  const program = ['--import', 'tsx', 'scripts/sideload/main.ts', '--undo'];
  const { status, stdout, stderr } = spawnSync(process.execPath, program, {
    encoding: 'utf8',
    env: { ...process.env, HOME: home },
  });
  expect([status, stdout]).toEqual([1, '']);
  expect(stderr).toContain('--undo');
  expect(existsSync(join(home, '.office-addin-dev-certs'))).toBe(false);
});
