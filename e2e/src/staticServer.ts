import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

export type StaticServer = { readonly origin: string; readonly close: () => Promise<void> };

/** Serves a folder as it is at each request, and nothing else, until it is closed. `port` 0: any that is free. */
export async function serveFolder(folder: string, port = 0): Promise<StaticServer> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = normalize(join(folder, pathname.endsWith('/') ? `${pathname}index.html` : pathname));
    try {
      if (!file.startsWith(folder)) throw new Error('outside');
      const content = await readFile(file);
      response.writeHead(200, { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream' });
      response.end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((done) => server.listen(port, '127.0.0.1', done));
  const { port: taken } = server.address() as AddressInfo; // listening on a port
  return {
    origin: `http://127.0.0.1:${taken}`,
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}
