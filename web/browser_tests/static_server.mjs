// A small server of the built screens, for machines without the native one and for what only a test
// needs: a file that changes between two loads.
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, normalize } from 'node:path';

const mediaTypes = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** The policy of the native server: code of this origin only, and the engine may be compiled. */
const contentSecurityPolicy =
  "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/**
 * Serves `folder` on a free port of the loopback address. `altered` maps a path to a function of
 * the file's text, for example to make a new version. Returns the address and a way to stop.
 */
export async function serveStatic(folder, altered = new Map()) {
  const server = createServer(async (request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url, 'http://host').pathname));
    const name = path.endsWith('/') ? `${path}index.html` : path;
    try {
      let bytes = await readFile(join(folder, name));
      const alter = altered.get(name);
      if (alter) bytes = Buffer.from(alter(bytes.toString('utf8')));
      response.writeHead(200, {
        'Content-Type': mediaTypes[extname(name)] ?? 'application/octet-stream',
        'Content-Security-Policy': contentSecurityPolicy,
        'X-Content-Type-Options': 'nosniff',
        'Cache-Control': 'no-cache',
      });
      response.end(bytes);
    } catch {
      response.writeHead(404, { 'Content-Type': 'text/plain' });
      response.end('There is no such page here.\n');
    }
  });
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    name: 'the small server of the tests',
    address: `http://127.0.0.1:${server.address().port}/`,
    stop: async () => {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}
