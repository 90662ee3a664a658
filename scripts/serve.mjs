// The one long-running process: a small static server on loopback for the built planner. Nothing is read but the files of
// the build, nothing is written, and every answer carries the strict policy the page lives under.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.yaml': 'text/yaml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** `wasm-unsafe-eval` lets the solver's WebAssembly be compiled and nothing else; no third party is ever asked. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS = {
  'Content-Security-Policy': POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'geolocation=(), microphone=(), camera=(self)',
  // Isolation lets the page stop a running search through shared memory.
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Serves a built folder on loopback; resolves with the server and its address. Port 0 takes any free one. */
export function serve(folder, port = 0) {
  const server = createServer((request, response) => {
    const answer = (status, type, body) => {
      response.writeHead(status, { ...HEADERS, 'Content-Type': type });
      response.end(body);
    };
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      answer(405, 'text/plain; charset=utf-8', 'Only reading is possible here.\n');
      return;
    }
    const file = fileOf(folder, request.url ?? '/');
    if (file === null) {
      answer(404, 'text/plain; charset=utf-8', 'There is no such page here.\n');
      return;
    }
    const hashed = file.includes(`${sep}assets${sep}`);
    response.writeHead(200, {
      ...HEADERS,
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      'Content-Length': statSync(file).size,
      // Files of the build carry their content in their name; the page itself is asked for each time.
      'Cache-Control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    });
    if (request.method === 'HEAD') response.end();
    else {
      // The build may be replaced while it is being read; that answer ends early, the server stays.
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
    }
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({ server, address: `http://127.0.0.1:${server.address().port}/` });
    });
  });
}

/** The file of the build that an address names, or null: nothing outside the folder, no folder listing. */
function fileOf(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://local').pathname);
  } catch {
    return null;
  }
  if (path.includes('\0')) return null;
  const file = join(folder, normalize(path === '/' ? '/index.html' : path));
  if (!file.startsWith(folder + sep)) return null;
  return existsSync(file) && statSync(file).isFile() ? file : null;
}
