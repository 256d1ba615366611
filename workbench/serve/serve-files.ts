import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { filesOf, type Audience } from './files-of';

// Whoever takes longer than this to ask is no browser on this machine.
const LONGEST_HEADERS = 10_000;
const LONGEST_REQUEST = 20_000;

/** A server of the files of a directory, on this machine alone. */
export interface FileServer {
  /** For example `http://127.0.0.1:40123`. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves the files of a directory on 127.0.0.1.
 * @param directory the directory
 * @param wanted the port; where it is taken, and without one, the system gives another
 * @param audience who may use the files
 * @returns the server, once it listens
 */
export async function serveFiles(
  directory: string,
  wanted = 0,
  audience: Audience = {},
): Promise<FileServer> {
  const server = createServer(
    { headersTimeout: LONGEST_HEADERS, requestTimeout: LONGEST_REQUEST },
    filesOf(directory, audience),
  );
  // What is no request at all is answered too, and a connection that breaks is nobody's error.
  server.on('clientError', (_, socket) => {
    if (socket.writable) socket.end('HTTP/1.1 400 Bad Request\r\nconnection: close\r\n\r\n');
    else socket.destroy();
  });
  const listen = (port: number): Promise<void> =>
    new Promise((resolve, reject) => {
      server.once('error', reject);
      server.listen(port, '127.0.0.1', () => {
        resolve();
      });
    });
  await listen(wanted).catch((error: unknown) => {
    if (wanted === 0 || (error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    return listen(0);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${String(port)}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
}
