import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { pipeline } from 'node:stream';
import { createGzip } from 'node:zlib';
import { HEADERS_FILE, headersFor, readHeaders } from './headers.mjs';
import { TYPES } from './media-types.mjs';
import { PlainError } from './project.mjs';

/** Types worth compressing: text of some kind. */
const COMPRESSIBLE = /^text\/|javascript|json|xml/;

/**
 * The file a request path asks for, or null for a path that is malformed, hidden or outside the folder.
 * @param {string} pathname as sent, still percent-encoded
 * @returns {string | null} relative path below the served folder, `/` first
 */
export function safePath(pathname) {
  let path;
  try {
    path = decodeURIComponent(pathname);
  } catch {
    return null;
  }
  if (/[\0\\]/.test(path)) return null;
  // Also refuses `..`, and hidden files such as the build's own mark.
  if (path.split('/').some((part) => part.startsWith('.'))) return null;
  return path.startsWith('/') ? path : null;
}

/**
 * @param {string} path
 * @returns {Promise<'file' | 'folder' | null>}
 */
async function kindOf(path) {
  const stats = await stat(path).catch(() => null);
  if (!stats) return null;
  return stats.isDirectory() ? 'folder' : stats.isFile() ? 'file' : null;
}

/**
 * @param {string} folder
 * @param {string} pathname below the base
 * @param {string} base
 * @returns {Promise<{ status: 200 | 404, file: string } | { status: 301, location: string }>}
 */
async function resolve(folder, pathname, base) {
  const missing = /** @type {const} */ ({ status: 404, file: join(folder, '404.html') });
  const path = safePath(pathname);
  if (path === null || path === `/${HEADERS_FILE}`) return missing;
  const target = join(folder, ...path.split('/'));
  const kind = await kindOf(target);
  if (path.endsWith('/')) {
    const index = join(target, 'index.html');
    return kind === 'folder' && (await kindOf(index)) === 'file' ? { status: 200, file: index } : missing;
  }
  if (kind === 'file') return { status: 200, file: target };
  // One slash only, lest `//host` read as another site.
  if (kind === 'folder') return { status: 301, location: `${base}${pathname.replace(/^\/+/, '')}/` };
  return missing;
}

/**
 * The rules of a headers file, read again when a build has written it anew.
 * @param {string} file
 */
function headerRules(file) {
  let writtenMs = 0;
  /** @type {import('./headers.mjs').HeaderRule[]} */
  let rules = [];
  return async () => {
    const stats = await stat(file).catch(() => null);
    if (stats?.mtimeMs !== writtenMs) rules = readHeaders(await readFile(file, 'utf8').catch(() => ''));
    writtenMs = stats?.mtimeMs ?? 0;
    return rules;
  };
}

/** @param {Record<string, string>} headers */
function lowerCase(headers) {
  return Object.fromEntries(Object.entries(headers).map(([name, value]) => [name.toLowerCase(), value]));
}

/**
 * @param {{ folder: string, base: string, rules: readonly import('./headers.mjs').HeaderRule[] }} site
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer({ folder, base, rules }, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const [pathname = '/', query] = (request.url ?? '/').split('?', 2);
  const isBelow = pathname.startsWith(base);
  const found = await resolve(folder, isBelow ? pathname.slice(base.length - 1) : '/404.html', base);
  if (!isBelow && found.status === 200) found.status = 404;
  if (found.status === 301) {
    const location = query === undefined ? found.location : `${found.location}?${query}`;
    response.writeHead(301, { location }).end();
    return;
  }
  if ((await kindOf(found.file)) !== 'file') {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found\n');
    return;
  }
  const type = TYPES.get(extname(found.file)) ?? 'application/octet-stream';
  const zipped = COMPRESSIBLE.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  response.writeHead(found.status, {
    'x-content-type-options': 'nosniff',
    'cache-control': 'no-cache',
    ...lowerCase(headersFor(rules, found.status === 404 ? `${base}404.html` : pathname)),
    'content-type': type,
    vary: 'accept-encoding',
    ...(zipped ? { 'content-encoding': 'gzip' } : {}),
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  const done = () => {};
  if (zipped) pipeline(createReadStream(found.file), createGzip(), response, done);
  else pipeline(createReadStream(found.file), response, done);
}

/**
 * Serves a folder of static files: right types, a 404 page, `/folder` sent on to `/folder/`,
 * nothing outside the folder and nothing hidden, and the headers that its headers file asks for.
 * @param {{ folder: string, port: number, host: string, base?: string }} options port 0 picks a free one; `base` is the
 *   folder of the host in which the site stands
 * @returns {Promise<{ port: number, close: () => Promise<void> }>} rejects with a PlainError when the port is taken
 */
export async function serve({ folder, port, host, base = '/' }) {
  const rulesNow = headerRules(join(folder, HEADERS_FILE));
  const server = createServer((request, response) => {
    rulesNow()
      .then((rules) => answer({ folder, base, rules }, request, response))
      .catch(() => {
        if (!response.headersSent) response.writeHead(500);
        response.end();
      });
  });
  await new Promise((resolve, reject) => {
    server.once('error', (error) => reject(listenProblem(error, port, host)));
    server.listen({ port, host }, () => resolve(undefined));
  });
  const address = server.address();
  return {
    port: typeof address === 'object' && address ? address.port : port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {NodeJS.ErrnoException} error
 * @param {number} port
 * @param {string} host
 */
function listenProblem(error, port, host) {
  if (error.code === 'EADDRINUSE') {
    return new PlainError(
      `Port ${port} is already in use on ${host}. Stop what is using it, or choose another: PORT=${port + 1} npm start`,
    );
  }
  if (error.code === 'EACCES')
    return new PlainError(`Port ${port} may not be opened by this user. Choose one above 1023.`);
  if (error.code === 'ENOTFOUND' || error.code === 'EADDRNOTAVAIL') {
    return new PlainError(`HOST=${host} is not an address of this machine.`);
  }
  return error;
}
