/*
 * The service worker: one edition of the whole site, kept on the device. Every file of an edition lies in a few packs
 * named by what is in them, so an edition is kept whole or not at all, and one that is interrupted goes on where it
 * stopped. Pages in use stay with the edition they came from: a new one waits until a person takes it.
 *
 * EDITION, what this edition is made of, is written above this by site/tools/offline.mjs.
 */

/**
 * @typedef {{ url: string, bytes: number, sha256: string }} Part
 * @typedef {{ path: string, headers: Record<string, string> }} Rule
 * @typedef {{ packs: string[], types: Record<string, string>, rules: Rule[], files: [string, number, number, number][] }} Index
 * @typedef {{ base: string, index: string, parts: Part[] }} Edition
 * @typedef {Event & { waitUntil: (work: Promise<unknown>) => void, respondWith: (answer: Promise<Response>) => void,
 *   request: Request, data: unknown }} WorkerEvent
 * @typedef {{ postMessage: (message: unknown) => void }} Client
 * @typedef {{ addEventListener: (name: string, hear: (event: WorkerEvent) => void) => void, skipWaiting: () => Promise<void>,
 *   clients: { claim: () => Promise<void>, matchAll: (options: object) => Promise<Client[]> } }} WorkerScope
 */

/* global EDITION */
const {
  base,
  index: indexUrl,
  parts,
} = /** @type {{ EDITION: Edition }} */ (/** @type {unknown} */ (globalThis)).EDITION;
const scope = /** @type {WorkerScope} */ (/** @type {unknown} */ (globalThis));

/** One store for all editions: equal packs are kept once. */
const STORE = `larderwright ${base}`;
/** Where it is written which editions are kept, the newest first. */
const KEPT = `${base}offline/kept`;
const STANDING = `${base}limits-standing.json`;
const store = () => caches.open(STORE);

/** @param {ArrayBuffer} bytes */
async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** @param {unknown} message */
async function tell(message) {
  for (const client of await scope.clients.matchAll({ includeUncontrolled: true }))
    client.postMessage(message);
}

/** Fetches what is not kept yet. A part that came short or changed on the way is refused, and the next visit tries again. */
async function fill() {
  const cache = await store();
  const of = parts.reduce((sum, part) => sum + part.bytes, 0);
  let kept = 0;
  for (const { url, bytes, sha256: wanted } of parts) {
    if (!(await cache.match(url))) {
      const response = await fetch(url, { cache: 'no-cache' });
      const body = await response.arrayBuffer();
      if (!response.ok || (await sha256(body)) !== wanted) throw new Error(`${url} did not come whole`);
      await cache.put(url, new Response(body));
    }
    kept += bytes;
    await tell({ say: 'kept', kept, of });
  }
}

/** Editions that pages in use may still ask for: this one and the one before. The rest goes. */
async function settle() {
  const cache = await store();
  const before = await cache.match(KEPT).then((answer) => answer?.json() ?? []);
  /** @type {{ index: string, urls: string[] }[]} */
  const known = Array.isArray(before) ? before : [];
  const editions = [
    { index: indexUrl, urls: parts.map(({ url }) => url) },
    ...known.filter(({ index }) => index !== indexUrl),
  ].slice(0, 2);
  await cache.put(KEPT, new Response(JSON.stringify(editions)));
  const wanted = new Set([KEPT, STANDING, ...editions.flatMap(({ urls }) => urls)]);
  for (const { url } of await cache.keys()) if (!wanted.has(new URL(url).pathname)) await cache.delete(url);
  opened.clear();
  await scope.clients.claim();
}

/** @type {Map<string, Promise<{ index: Index, at: Map<string, [number, number, number]>, packs: Map<string, Promise<Blob | undefined>> } | null>>} */
const opened = new Map();

/**
 * @param {string} url of the list of an edition
 */
function open(url) {
  const already = opened.get(url);
  if (already) return already;
  const opening = store()
    .then((cache) => cache.match(url))
    .then(async (answer) => {
      if (!answer) return null;
      /** @type {Index} */
      const index = await answer.json();
      return { index, at: new Map(index.files.map(([path, ...rest]) => [path, rest])), packs: new Map() };
    });
  opened.set(url, opening);
  return opening;
}

/**
 * A file of an edition, with the headers it was to be served with.
 * @param {string} listUrl
 * @param {string} path below the base
 * @param {number} [status]
 * @returns {Promise<Response | null>}
 */
async function fromEdition(listUrl, path, status = 200) {
  const edition = await open(listUrl);
  const place = edition?.at.get(path);
  if (!edition || !place) return null;
  const [packAt, offset, length] = place;
  const url = edition.index.packs[packAt] ?? '';
  const pack =
    edition.packs.get(url) ??
    store()
      .then((cache) => cache.match(url))
      .then((answer) => answer?.blob());
  edition.packs.set(url, pack);
  const blob = await pack;
  if (!blob) return null;
  const address = base + path.replace(/(^|\/)index\.html$/, '$1');
  const headers = Object.assign(
    {},
    ...edition.index.rules
      .filter((rule) =>
        rule.path.endsWith('*') ? address.startsWith(rule.path.slice(0, -1)) : address === rule.path,
      )
      .map((rule) => rule.headers),
  );
  const type = edition.index.types[path.slice(path.lastIndexOf('.'))] ?? 'application/octet-stream';
  return new Response(blob.slice(offset, offset + length, type), {
    status,
    headers: { ...headers, 'Content-Type': type },
  });
}

/** The list of withdrawn limits: what the network says, else what it said last, marked as such. */
async function standing() {
  const cache = await store();
  try {
    const heard = await fetch(STANDING, { cache: 'no-cache' });
    if (!heard.ok) throw new Error(`${heard.status}`);
    await cache.put(STANDING, heard.clone());
    return heard;
  } catch {
    const last = (await cache.match(STANDING)) ?? (await fromEdition(indexUrl, 'limits-standing.json'));
    if (!last) return Response.error();
    return new Response(last.body, {
      headers: { 'Content-Type': 'application/json', 'X-Larderwright-Kept': '1' },
    });
  }
}

/** @param {Request} request */
async function answer(request) {
  const path = decodeURIComponent(new URL(request.url).pathname).slice(base.length);
  const page = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  const own = await fromEdition(indexUrl, page);
  if (own) return own;
  if ((await open(indexUrl))?.at.has(`${path}/index.html`)) return Response.redirect(`${base}${path}/`, 301);
  // A page of the edition before, still open, asks for a part that is gone from this one.
  const cache = await store();
  const editions = await cache.match(KEPT).then((kept) => kept?.json() ?? []);
  for (const { index } of editions) {
    const older = index === indexUrl ? null : await fromEdition(index, page);
    if (older) return older;
  }
  try {
    return await fetch(request);
  } catch (error) {
    const missing = request.mode === 'navigate' ? await fromEdition(indexUrl, '404.html', 404) : null;
    if (missing) return missing;
    throw error;
  }
}

scope.addEventListener('install', (event) => event.waitUntil(fill()));
scope.addEventListener('activate', (event) => event.waitUntil(settle()));
scope.addEventListener('message', ({ data }) => {
  if (data === 'take over') void scope.skipWaiting();
});
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin || !pathname.startsWith(base)) return;
  if (pathname === STANDING) event.respondWith(standing());
  else if (!pathname.startsWith(`${base}offline/`) && pathname !== `${base}sw.js`)
    event.respondWith(answer(request));
});
