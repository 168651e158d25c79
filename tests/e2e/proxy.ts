import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A proxy that lets nothing through and writes down who was asked for. Loopback addresses do not come here. */
export interface Recorder {
  readonly address: string;
  readonly asked: readonly string[];
  readonly close: () => void;
}
/** Chromium itself, on no page's behalf, asks its own service what a text field may be called. Nothing a page can switch off. */
const BROWSER_ITSELF = 'content-autofill.googleapis.com:443';

export const startRecorder = async (): Promise<Recorder> => {
  const asked: string[] = [];
  const server: Server = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.writeHead(502).end();
  });
  server.on('connect', (request, socket) => {
    if (request.url !== BROWSER_ITSELF) asked.push(request.url ?? '');
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}`, asked, close: () => server.close() };
};
