import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { extname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const DIST = process.env.BACKBOARD_DIST ?? fileURLToPath(new URL('../../dist/', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};
const UNDER = '/some/where/';

/** The built app in a folder of a plain server, which can be taken away. `change` is given each text before it is sent. */
export const serveBuild = async (change = (_file: string, text: string): string => text) => {
  const sockets = new Set<Socket>();
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://here').pathname;
    const file = join(DIST, normalize(path.startsWith(UNDER) ? path.slice(UNDER.length) : 'missing'));
    const at = path.endsWith('/') ? join(file, 'index.html') : file;
    if (!at.startsWith(DIST) || !statSync(at, { throwIfNoEntry: false })?.isFile())
      return void response.writeHead(404).end();
    response.writeHead(200, { 'content-type': TYPES[extname(at)] ?? 'application/octet-stream', vary: 'Origin' });
    const text = /\.(html|js)$/.test(at);
    response.end(text ? change(relative(DIST, at), readFileSync(at, 'utf8')) : readFileSync(at));
  });
  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://localhost:${port}${UNDER}`,
    stop: () =>
      new Promise<void>((resolve) => {
        for (const socket of sockets) socket.destroy();
        server.close(() => resolve());
      }),
  };
};
