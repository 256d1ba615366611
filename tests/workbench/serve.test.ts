import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { spawn, type ChildProcess } from 'node:child_process';
import { createServer, request } from 'node:http';
import { connect, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesOf } from '../../workbench/serve/files-of';
import { inPlaceOf } from '../../scripts/in-place-of';
import { serveFiles, type FileServer } from '../../workbench/serve/serve-files';

const folder = mkdtempSync(join(tmpdir(), 'washdown-serve-'));
let server: FileServer;
let port = 0;

beforeAll(async () => {
  mkdirSync(join(folder, 'site', 'sub'), { recursive: true });
  writeFileSync(join(folder, 'site', 'workbench.html'), '<p>here</p>');
  writeFileSync(join(folder, 'site', 'sub', 'a b.js'), 'let a;');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  server = await serveFiles(join(folder, 'site'), 0, { start: '/workbench.html' });
  port = Number(new URL(server.address).port);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** Sends bytes as they are and gives what comes back until the server ends the connection. */
function raw(bytes: string | Buffer): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    let back = '';
    socket.on('data', (data) => (back += data.toString('latin1')));
    socket.on('error', () => undefined);
    socket.on('close', () => {
      resolve(back);
    });
    socket.write(bytes);
  });
}

const ask = (line: string, headers = 'Host: localhost\r\n'): Promise<string> =>
  raw(`${line} HTTP/1.1\r\n${headers}Connection: close\r\n\r\n`);

async function answers(): Promise<void> {
  expect(await ask('GET /workbench.html')).toContain('<p>here</p>');
}

describe('the server of npm start', () => {
  it('gives the page, leads to it, and says what browsers are to do with it', async () => {
    const page = await ask('GET /workbench.html');
    expect(page).toMatch(/^HTTP\/1\.1 200 /);
    for (const header of [
      'x-content-type-options: nosniff',
      "content-security-policy: frame-ancestors 'self'",
      'cross-origin-resource-policy: same-origin',
    ]) {
      expect(page.toLowerCase()).toContain(header);
    }
    expect(page.toLowerCase()).not.toContain('access-control-allow-origin');
    expect(await ask('GET /')).toMatch(/^HTTP\/1\.1 302 [\s\S]*location: \/workbench\.html/i);
    const head = await ask('HEAD /workbench.html');
    expect(head).toMatch(/content-length: 11/i);
    expect(head).not.toContain('here');
  });

  it.each(['localhost', 'LOCALHOST:80', '127.0.0.1', '127.0.0.1:3210', '[::1]', '[::1]:3210'])(
    'answers to %s',
    async (host) => {
      expect(await ask('GET /workbench.html', `Host: ${host}\r\n`)).toMatch(/^HTTP\/1\.1 200 /);
    },
  );

  it.each<[string, () => Promise<string>, number]>([
    ['GET //', () => ask('GET //'), 400],
    ['GET ///etc/passwd', () => ask('GET ///etc/passwd'), 400],
    ['a whole address', () => ask('GET http://other.example/workbench.html'), 400],
    ['an address without a start', () => ask('GET workbench.html'), 400],
    ['GET *', () => ask('GET *'), 400],
    ['a broken escape', () => ask('GET /%zz'), 404],
    ['a way up', () => ask('GET /../secret.txt'), 404],
    ['an escaped way up', () => ask('GET /%2e%2e/secret.txt'), 404],
    ['an escaped slash', () => ask('GET /..%2fsecret.txt'), 404],
    ['a backslash', () => ask('GET /..\\secret.txt'), 404],
    ['a NUL', () => ask('GET /workbench.html%00'), 404],
    ['a folder', () => ask('GET /sub'), 404],
    ['a long path', () => ask(`GET /${'a'.repeat(8000)}`), 404],
    ['a path of many parts', () => ask(`GET ${'/a'.repeat(4000)}`), 404],
    ['POST', () => ask('POST /workbench.html'), 405],
    ['PUT', () => ask('PUT /new.html'), 405],
    ['DELETE', () => ask('DELETE /workbench.html'), 405],
    ['OPTIONS', () => ask('OPTIONS /workbench.html'), 405],
    ['TRACE', () => ask('TRACE /'), 405],
    ['no host', () => raw('GET /workbench.html HTTP/1.0\r\n\r\n'), 421],
    ['another host', () => ask('GET /workbench.html', 'Host: other.example\r\n'), 421],
    ['a host that starts like ours', () => ask('GET /', 'Host: localhost.other.example\r\n'), 421],
    ['an address of another machine', () => ask('GET /', 'Host: 192.168.0.7:3210\r\n'), 421],
    ['large headers', () => ask('GET /', `Host: localhost\r\nX: ${'a'.repeat(20_000)}\r\n`), 400],
    ['no request', () => raw('hello\r\n\r\n'), 400],
    ['bytes', () => raw(Buffer.from([0, 255, 1, 254, 13, 10, 13, 10])), 400],
    ['a handshake of another protocol', () => raw(Buffer.from('160301020001000001fc0303', 'hex')), 400],
    ['two lengths', () => ask('GET /', 'Host: localhost\r\nContent-Length: 1\r\nContent-Length: 2\r\n'), 400],
    [
      'a length and pieces',
      () => ask('GET /', 'Host: localhost\r\nContent-Length: 1\r\nTransfer-Encoding: chunked\r\n'),
      400,
    ],
    ['a space in the method', () => raw('GE T / HTTP/1.1\r\nHost: localhost\r\n\r\n'), 400],
  ])('answers %s in words and goes on', async (_, send, status) => {
    expect(await send()).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    await answers();
  });

  it('goes on where a client sends one byte and waits, or breaks off', async () => {
    const sockets = Array.from({ length: 50 }, () => {
      const socket = connect(port, '127.0.0.1');
      socket.on('error', () => undefined);
      socket.write('G');
      return socket;
    });
    await answers();
    for (const socket of sockets) socket.resetAndDestroy();
    await answers();
  });

  it('answers two hundred at once', async () => {
    const all = await Promise.all(Array.from({ length: 200 }, () => ask('GET /workbench.html')));
    expect(all.filter((each) => each.includes('<p>here</p>'))).toHaveLength(200);
  });

  it('answers 500 where the files are gone, and goes on', async () => {
    const gone = createServer(filesOf(join(folder, 'never'))).listen(0, '127.0.0.1');
    await new Promise((resolve) => gone.once('listening', resolve));
    for (let time = 0; time < 2; time += 1) {
      const status = await new Promise((resolve) => {
        request({ port: (gone.address() as AddressInfo).port, path: '/a', host: '127.0.0.1' }, (response) => {
          response.resume();
          resolve(response.statusCode);
        }).end();
      });
      expect(status).toBe(500);
    }
    gone.closeAllConnections();
    gone.close();
  });

  it('takes a free port where the one that is asked for is taken', async () => {
    const second = await serveFiles(join(folder, 'site'), port);
    expect(second.address).not.toBe(server.address);
    await second.close();
  });
});

describe('making the page anew', () => {
  it('leaves the former one in use until the new one is whole', async () => {
    const place = join(folder, 'site');
    await expect(
      inPlaceOf(place, async (fresh) => {
        writeFileSync(join(fresh, 'half.html'), 'half');
        await answers();
        throw new Error('no more');
      }),
    ).rejects.toThrow('no more');
    await answers();
    await inPlaceOf(place, (fresh) => {
      writeFileSync(join(fresh, 'workbench.html'), '<p>here</p> anew');
      return Promise.resolve();
    });
    expect(await ask('GET /workbench.html')).toContain('anew');
    expect(readFileSync(join(place, 'workbench.html'), 'utf8')).toContain('anew');
    expect(readdirSync(folder).sort()).toEqual(['secret.txt', 'site']);
  });
});

describe('a server whose starter is gone', () => {
  it('ends', async () => {
    const script = `
      const { spawn } = require('node:child_process');
      const child = spawn(process.execPath, ['--import', 'tsx', '-e', ${JSON.stringify(
        `import('./workbench/serve/stop-with-starter.ts').then(({ stopWithStarter }) => { stopWithStarter(); setInterval(() => undefined, 1000); console.log('ready'); });`,
      )}], { stdio: ['ignore', 'pipe', 'inherit'] });
      child.stdout.on('data', () => console.log(child.pid));`;
    const starter: ChildProcess = spawn(process.execPath, ['-e', script], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const pid = await new Promise<number>((resolve) => {
      starter.stdout?.once('data', (data: Buffer) => {
        resolve(Number(data.toString()));
      });
    });
    starter.kill('SIGKILL');
    const isThere = (): boolean => {
      try {
        // What has ended and was not asked after yet is still listed.
        return !/\) Z /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
      } catch {
        return false;
      }
    };
    await expect.poll(isThere, { timeout: 20_000 }).toBe(false);
  });
});
